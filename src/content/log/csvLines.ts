/** A text of RFC 4180 as lines of cells, each with its place; what breaks the form costs its own line alone. */

export interface CsvCell {
  /** Without its quotes. */
  readonly text: string;
  /** Of its first character, in the whole text. */
  readonly offset: number;
  readonly quoted: boolean;
}

export interface CsvLine {
  readonly offset: number;
  /** As it stands in the text, without its end. */
  readonly raw: string;
  readonly cells: readonly CsvCell[];
  /** What breaks the form, and where; null for a good line. */
  readonly broken: { readonly what: 'open-quote' | 'after-quote'; readonly offset: number } | null;
}

export type Separator = ',' | ';' | '\t';

// A quote that was forgotten must not swallow the lines that follow; no note is as long.
const MOST_CELL_CHARACTERS = 2000;

/** Every line from `from` on, lines ended by a single line feed; one without any character is left out. */
export function csvLines(text: string, separator: Separator, from = 0): CsvLine[] {
  const lines: CsvLine[] = [];
  let offset = from;
  while (offset < text.length) {
    const line = lineAt(text, offset, separator);
    if (line.raw !== '') lines.push(line);
    offset += line.raw.length + 1;
  }
  return lines;
}

function lineAt(text: string, start: number, separator: Separator): CsvLine {
  const cells: CsvCell[] = [];
  let at = start;
  for (;;) {
    const cell = cellAt(text, at, separator);
    if ('broken' in cell) return { ...physicalLine(text, start), cells, broken: cell.broken };
    cells.push(cell.cell);
    if (text[cell.end] !== separator)
      return { offset: start, raw: text.slice(start, cell.end), cells, broken: null };
    at = cell.end + 1;
  }
}

function physicalLine(text: string, start: number): Pick<CsvLine, 'offset' | 'raw'> {
  const end = text.indexOf('\n', start);
  return { offset: start, raw: text.slice(start, end === -1 ? text.length : end) };
}

type CellReading =
  { readonly cell: CsvCell; readonly end: number } | { readonly broken: NonNullable<CsvLine['broken']> };

function cellAt(text: string, offset: number, separator: Separator): CellReading {
  if (text[offset] === '"') return quotedAt(text, offset, separator);
  let end = offset;
  while (end < text.length && text[end] !== separator && text[end] !== '\n') end += 1;
  return { cell: { text: text.slice(offset, end), offset, quoted: false }, end };
}

function quotedAt(text: string, offset: number, separator: Separator): CellReading {
  let end = offset + 1;
  for (; ; end += 1) {
    if (end >= text.length || end - offset > MOST_CELL_CHARACTERS)
      return { broken: { what: 'open-quote', offset } };
    if (text[end] !== '"') continue;
    if (text[end + 1] !== '"') break;
    end += 1;
  }
  const after = text[end + 1];
  if (after !== undefined && after !== separator && after !== '\n')
    return { broken: { what: 'after-quote', offset: end + 1 } };
  const cell = { text: text.slice(offset + 1, end).replaceAll('""', '"'), offset, quoted: true };
  return { cell, end: end + 1 };
}
