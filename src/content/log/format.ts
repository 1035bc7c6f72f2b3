/** The log as text: RFC 4180, with the first line of a shared log before it. Pure, and the same in page and shell. */
import { LOG_COLUMNS, type LogRow } from './columns.ts';

/** Of the text's own form, not of the programme. */
const LOG_FORMAT = 1;
const LOG_WORD = 'loadleaf-log';

/** Whose log it is. */
export interface LogHead {
  readonly alias: string;
  readonly revision: number;
}

export type LogHeadReading = LogHead | 'none' | 'broken' | 'other-format';

/** The header, as a line of the file. */
const LOG_HEADER = LOG_COLUMNS.join(',');

// Lines end as RFC 4180 says, 2.1.
export const LINE_END = '\r\n';

/** The first line of a shared log. @example logHeadLine({ alias: 'otter', revision: 1 }) // => 'loadleaf-log 1 otter r1' */
export function logHeadLine({ alias, revision }: LogHead): string {
  return `${LOG_WORD} ${LOG_FORMAT} ${alias} r${revision}`;
}

/** What the first line says: `none` where it is no such line at all. Spaces around it do not count. */
export function readLogHead(line: string): LogHeadReading {
  const words = line.trim().split(/\s+/);
  if (words[0]?.toLowerCase() !== LOG_WORD) return 'none';
  const [, format = '', alias = '', revision = ''] = words;
  if (!/^\d+$/.test(format)) return 'broken';
  if (Number(format) !== LOG_FORMAT) return 'other-format';
  const isWhole =
    words.length === 4 && /^[a-z0-9][a-z0-9-]{0,63}$/.test(alias) && /^r[1-9]\d{0,2}$/.test(revision);
  return isWhole ? { alias, revision: Number(revision.slice(1)) } : 'broken';
}

/** The file beside the consult: header and lines. */
export function logFile(rows: readonly LogRow[]): string {
  return [LOG_HEADER, ...rows.map(logLine)].map((line) => `${line}${LINE_END}`).join('');
}

/** What the leaflet shares: the same, with the line before it that says whose it is. */
export function sharedLog(head: LogHead, rows: readonly LogRow[]): string {
  return `${logHeadLine(head)}${LINE_END}${logFile(rows)}`;
}

/** One line without its end. An empty cell is empty, never nought. */
export function logLine(row: LogRow): string {
  return LOG_COLUMNS.map((column) => cellText(row[column])).join(',');
}

/** The text of a cell as it is meant: without the mark that keeps a spreadsheet from reckoning. */
export function withoutMark(text: string): string {
  return MARKED.test(text) ? text.slice(1) : text;
}

// A spreadsheet takes a text with one of these in front for a formula (OWASP, CSV injection: an apostrophe before it).
const FORMULA = /^[=+\-@\t\r]/;
const MARKED = /^'[=+\-@\t\r']/;

/** A cell as it is written. */
export function cellText(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = FORMULA.test(value) || MARKED.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
