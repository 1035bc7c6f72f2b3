/** The log as a grid of texts: lines as they were typed or read, each cell in the place of its column. */
import { LOG_COLUMNS, type LogColumn } from '../../content/log/columns.ts';

/** As many texts as there are columns. `raw`: a line that nobody could take apart, as it stood; written back as it stands. */
export interface LogLine {
  readonly cells: readonly string[];
  readonly raw: string | null;
}

/** Where a cell stands. */
export interface CellAt {
  readonly line: number;
  readonly column: number;
}

export const EMPTY: LogLine = { cells: LOG_COLUMNS.map(() => ''), raw: null };

export function columnAt(name: LogColumn): number {
  return LOG_COLUMNS.indexOf(name);
}

export function isEmpty({ cells, raw }: LogLine): boolean {
  return raw === null && cells.every((cell) => cell.trim() === '');
}

/** With one empty line at the end to go on in, and no more. */
export function openEnded(lines: readonly LogLine[]): readonly LogLine[] {
  const last = lines.findLastIndex((line) => !isEmpty(line));
  return [...lines.slice(0, last + 1), EMPTY];
}

/** With texts from a cell on, to the right and downwards; what goes beyond the last column is left out. */
export function withBlock(
  lines: readonly LogLine[],
  at: CellAt,
  block: readonly (readonly string[])[],
): readonly LogLine[] {
  const length = Math.max(lines.length, at.line + block.length);
  const next = Array.from({ length }, (_, index) =>
    withCells(lines[index] ?? EMPTY, at.column, block[index - at.line]),
  );
  return openEnded(next);
}

/** A line that is changed by hand is no longer the one that could not be taken apart. */
function withCells(line: LogLine, from: number, texts: readonly string[] | undefined): LogLine {
  if (texts === undefined) return line;
  return { cells: line.cells.map((cell, column) => texts[column - from] ?? cell), raw: null };
}

/** What spreadsheets put on the clipboard: tabs between cells, a line end after each line. */
export function blockOf(text: string): readonly (readonly string[])[] {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/\n$/, '')
    .split('\n')
    .map((line) => line.split('\t').map((cell) => cell.trim()));
}

/** Whether a text is a log with its head, header or first line, not cells of one. */
export function isLogText(text: string): boolean {
  return /^\s*(loadleaf-log\b|sep=.|"?date"?[,;\t]|\d{4}-\d\d-\d\d[,;])/i.test(text);
}

/** Lines that are there already are not put in again. */
export function joined(lines: readonly LogLine[], more: readonly LogLine[]): readonly LogLine[] {
  const there = new Set(lines.map(textOf));
  return openEnded([
    ...lines.filter((line) => !isEmpty(line)),
    ...more.filter((line) => !there.has(textOf(line))),
  ]);
}

function textOf({ cells, raw }: LogLine): string {
  return raw ?? JSON.stringify(cells.map((cell) => cell.trim()));
}
