/** The log file beside a consult, read: every line an entry, or a Problem with its place and cure. */
import { nameOf } from '../fileName.ts';
import { decode, type SourceFile } from '../source.ts';
import { errorAt, sortProblems, type Place, type Problem } from '../problem.ts';
import { placeAt, type SourceText } from '../sourceText.ts';
import { SCREEN_ITEMS, type ScreenItem } from '../schema/consult.ts';
import { logKey } from './columns.ts';
import { csvLines, type CsvLine } from './csvLines.ts';
import { readLogHead, logHeadLine, type LogHead } from './format.ts';
import { layoutOf, separatorOf } from './header.ts';
import type { Alarm, Log, LogEntry } from './log.ts';
import { rowAt, type RowRules } from './rowAt.ts';
import { settle, type Contradiction, type Numbered } from './settle.ts';

export interface LogReading {
  readonly log: Log;
  readonly problems: readonly Problem[];
}

// A file that is no log would print for ever; the first hundred tell enough, and all count as unread.
const MOST_PROBLEMS = 100;

/** Whose log a file is by its name; null for a file that is none. @example logOfName('otter-r1.log.csv') // => { alias: 'otter', revision: 1 } */
export function logOfName(file: string): LogHead | null {
  const [, alias, revision] =
    /^([a-z0-9][a-z0-9-]{0,63})-r([1-9]\d{0,2})\.log\.csv$/.exec(nameOf(file)) ?? [];
  return alias === undefined ? null : { alias, revision: Number(revision) };
}

/** Never throws, whatever the bytes. `cards`: ids of the library, null where it is not known. */
export function readLog(file: SourceFile, whose: LogHead, cards: RowRules['cards']): LogReading {
  const { source, problems } = decode(asUtf8(file));
  const nothing = { ...whose, file: file.file, entries: [], contradicted: [], unread: 1 };
  if (source === null) return { log: { ...nothing, alarms: alarmsIn(file) }, problems };
  return readLines(source, whose, cards);
}

function readLines(source: SourceText, whose: LogHead, cards: RowRules['cards']): LogReading {
  const at = (offset: number) => placeAt(source, offset);
  const head = headOf(source, whose);
  const separator = separatorOf(source.text, head.length);
  const { columns, lines, problems: ofHeader } = layoutOf(csvLines(source.text, separator, head.length), at);
  const rules = { separator, columns, at, cards };
  const [numbered, broken] = columns.length === 0 ? [[], []] : rowsOf(lines, rules);
  const settled = settle(numbered);
  const problems = [
    ...head.problems,
    ...ofHeader,
    ...broken.flatMap(({ problems: own }) => own),
    ...settled.contradictions.map((one) => contradictionProblem(one, source)),
  ];
  return {
    log: {
      ...whose,
      file: source.file,
      // Of somebody else nothing is taken over.
      entries: head.problems.length > 0 ? [] : settled.entries,
      contradicted: settled.contradicted,
      unread: broken.length + ofHeader.length + head.problems.length,
      alarms: [
        ...alarmsOf(numbered, settled.entries),
        ...(columns.length === 0 ? lines : broken.map(({ line }) => line)).flatMap((line) =>
          saysAlarm(line.raw) ? [{ item: itemIn(line.raw), date: null, ...lineOf(at(line.offset)) }] : [],
        ),
      ],
    },
    problems: sortProblems(problems).slice(0, MOST_PROBLEMS),
  };
}

interface Broken {
  readonly line: CsvLine;
  readonly problems: readonly Problem[];
}

function rowsOf(lines: readonly CsvLine[], rules: RowRules): [Numbered[], Broken[]] {
  const numbered: Numbered[] = [];
  const broken: Broken[] = [];
  for (const line of lines) {
    const row = rowAt(line, rules);
    if (row === null) continue;
    if ('entry' in row) numbered.push({ entry: row.entry, line: rules.at(line.offset).line });
    else broken.push({ line, problems: row.problems });
  }
  return [numbered, broken];
}

// What a shared log begins with; a spreadsheet may have written its own first line before the header.
export function headOf(
  { text, file }: SourceText,
  whose: LogHead,
): { length: number; problems: readonly Problem[] } {
  const end = text.indexOf('\n');
  const line = end === -1 ? text : text.slice(0, end);
  const reading = readLogHead(line.replace(/[,;\t"]+$/, ''));
  const length = /^sep=.$/i.test(line) || reading !== 'none' ? line.length + 1 : 0;
  if (reading === 'none') return { length, problems: [] };
  const isRight = typeof reading === 'object' && logHeadLine(reading) === logHeadLine(whose);
  return { length, problems: isRight ? [] : [headProblem(file, line, whose)] };
}

function headProblem(file: string, line: string, whose: LogHead): Problem {
  return errorAt({ file, line: 1, column: 1 }, 'does-not-fit', {
    found: line.trim().slice(0, 80),
    expected: `${logHeadLine(whose)}, as the file is called`,
    fix: 'give the log to the person and revision it is of; the name of the file must say the same',
  });
}

function contradictionProblem({ first, second, column }: Contradiction, { file }: SourceText): Problem {
  const value = ({ entry }: Numbered) => String(entry[column] ?? 'empty');
  return errorAt({ file, line: second.line, column: 1 }, 'contradiction', {
    path: column,
    found: `${value(second)}, and ${value(first)} in line ${first.line}, with the same edit`,
    expected: 'the same in both, or a higher edit in the one that holds',
    fix: 'ask what is right, and write it with a higher edit',
  });
}

// Taken back where a later edit answers no. One that is contradicted counts: it may have been.
function alarmsOf(numbered: readonly Numbered[], settled: readonly LogEntry[]): Alarm[] {
  const takenBack = new Map(
    settled.flatMap((one): [string, number][] =>
      one.kind === 'alarm' && one.done === 'no' ? [[logKey(one), one.edit]] : [],
    ),
  );
  return numbered.flatMap(({ entry, line }) => {
    const isAlarm = entry.kind === 'alarm' && entry.done !== 'no';
    if (!isAlarm || (takenBack.get(logKey(entry)) ?? -1) > entry.edit) return [];
    return [{ item: entry.card as ScreenItem, date: entry.date, line, column: 1 }];
  });
}

function saysAlarm(raw: string): boolean {
  return /alarm/i.test(raw);
}

function itemIn(raw: string): ScreenItem | null {
  return SCREEN_ITEMS.find((item) => raw.includes(item)) ?? null;
}

function lineOf({ line, column }: Place): Pick<Alarm, 'line' | 'column'> {
  return { line, column };
}

// Of a file that is no text: its bytes may still say so, in whatever encoding.
function alarmsIn({ bytes }: SourceFile): Alarm[] {
  const letters = new TextDecoder('latin1').decode(bytes).replaceAll('\0', '');
  return saysAlarm(letters) ? [{ item: itemIn(letters), date: null, line: 1, column: 1 }] : [];
}

// Spreadsheets save "Unicode text" as UTF-16 with its mark; without one nobody can tell the encoding.
export function asUtf8(file: SourceFile): SourceFile {
  const [first, second] = file.bytes;
  const encoding =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : null;
  if (encoding === null) return file;
  return { ...file, bytes: new TextEncoder().encode(new TextDecoder(encoding).decode(file.bytes)) };
}
