/** The log between its file and the grid: opened into lines, and written from them as `review` reads it. */
import { LOG_COLUMNS, type LogColumn } from '../../content/log/columns.ts';
import { csvLines, type CsvLine } from '../../content/log/csvLines.ts';
import { cellText, LINE_END, logFile, logLine, withoutMark, type LogHead } from '../../content/log/format.ts';
import { layoutOf, separatorOf } from '../../content/log/header.ts';
import { asUtf8, headOf, readLog } from '../../content/log/readLog.ts';
import { rowAt, type RowRules } from '../../content/log/rowAt.ts';
import type { Problem } from '../../content/problem.ts';
import { decode, type SourceFile } from '../../content/source.ts';
import { placeAt } from '../../content/sourceText.ts';
import { isEmpty, type LogLine } from '../log/lines.ts';

type Cards = RowRules['cards'];

export interface OpenedLog {
  readonly lines: readonly LogLine[];
  /** Of the file as a whole: with one of these nothing is opened. */
  readonly problems: readonly Problem[];
}

/** A log file, or the shared text of a leaflet; lines that cannot be taken apart come as they stand. */
export function openLog(file: SourceFile, whose: LogHead): OpenedLog {
  const { source, problems } = decode(asUtf8(file));
  if (source === null) return { lines: [], problems };
  const head = headOf(source, whose);
  const separator = separatorOf(source.text, head.length);
  const csv = csvLines(source.text, separator, head.length);
  const { columns, lines, problems: ofHeader } = layoutOf(csv, (offset) => placeAt(source, offset));
  const all = [...head.problems, ...ofHeader];
  return all.length > 0
    ? { lines: [], problems: all }
    : { lines: lines.flatMap((line) => opened(line, columns)), problems: [] };
}

function opened(line: CsvLine, columns: readonly (LogColumn | null)[]): LogLine[] {
  if (line.cells.every(({ text }) => text.trim() === '') && line.broken === null) return [];
  const isWhole = line.broken === null && line.cells.length === columns.length;
  const cell = (column: LogColumn): string => {
    if (!isWhole) return column === 'note' ? line.raw : '';
    const text = line.cells[columns.indexOf(column)]?.text ?? '';
    return column === 'note' ? withoutMark(text) : text.trim();
  };
  return [{ cells: LOG_COLUMNS.map(cell), raw: isWhole ? null : line.raw }];
}

export interface WrittenLog {
  /** The file beside the consult. */
  readonly text: string;
  /** Every Problem that `review` has with it. `line`: of the grid; null for one of the whole. */
  readonly problems: readonly { readonly line: number | null; readonly problem: Problem }[];
}

/** Lines that can be read are written in the one form there is; the others as they were typed. Empty ones are left out. */
export function writeLog(lines: readonly LogLine[], whose: LogHead, cards: Cards): WrittenLog {
  const file = `consults/${whose.alias}-r${whose.revision}.log.csv`;
  const written = lines.flatMap((line, index) =>
    isEmpty(line) ? [] : [{ index, text: line.raw ?? lineText(line.cells, file, cards) }],
  );
  const text = `${logFile([])}${written.map((one) => `${one.text}${LINE_END}`).join('')}`;
  const starts = startsOf(written.map((one) => one.text));
  const { problems } = readLog({ file, bytes: new TextEncoder().encode(text), link: 'no' }, whose, cards);
  return {
    text,
    problems: problems.map((problem) => {
      const at = starts.findLastIndex((start) => start <= problem.line);
      return { line: written[at]?.index ?? null, problem };
    }),
  };
}

/** In which line of the file each begins, below the header; a note may hold line ends of its own. */
function startsOf(texts: readonly string[]): readonly number[] {
  let next = 2;
  return texts.map((text) => {
    const start = next;
    next += text.split('\n').length;
    return start;
  });
}

/** In quotes a comma may stand for the decimal point. */
function lineText(cells: readonly string[], file: string, cards: Cards): string {
  const quoted = cells.map((cell) => `"${cell.trim().replaceAll('"', '""')}"`).join(',');
  const [line] = csvLines(quoted, ',');
  const at = () => ({ file, line: 1, column: 1 });
  const row = line === undefined ? null : rowAt(line, { separator: ',', columns: LOG_COLUMNS, at, cards });
  return row !== null && 'entry' in row
    ? logLine(row.entry)
    : cells.map((cell) => cellText(cell.trim())).join(',');
}
