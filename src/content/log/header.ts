/** Which cell of a line is which column: by the header, or in the order of the columns where there is none. */
import { listed } from '../inWords.ts';
import { nearest } from '../nearest.ts';
import { errorAt, type Place, type Problem } from '../problem.ts';
import { LOG_COLUMNS, type LogColumn } from './columns.ts';
import { csvLines, type CsvLine, type Separator } from './csvLines.ts';

export interface Layout {
  /** By the place of the cell; null for a column nobody knows. */
  readonly columns: readonly (LogColumn | null)[];
  /** Lines after the header. */
  readonly lines: readonly CsvLine[];
  readonly problems: readonly Problem[];
}

/** Without these a line says nothing; occasion and edit are 1 and 0 where they are left out. */
const NEEDED: readonly LogColumn[] = ['date', 'kind'];

const SEPARATORS: readonly Separator[] = [',', ';', '\t'];

/** The separator with which the first line has most cells; spreadsheets of many countries write a semicolon. */
export function separatorOf(text: string, from: number): Separator {
  const cells = (separator: Separator) => csvLines(firstLine(text, from), separator)[0]?.cells.length ?? 0;
  return SEPARATORS.reduce((best, next) => (cells(next) > cells(best) ? next : best));
}

function firstLine(text: string, from: number): string {
  const rest = text.slice(from).trimStart();
  const end = rest.indexOf('\n');
  return end === -1 ? rest : rest.slice(0, end);
}

/** The layout; no columns where the header cannot be used. `at` says the place of an offset. */
export function layoutOf(lines: readonly CsvLine[], at: (offset: number) => Place): Layout {
  const [first, ...rest] = lines;
  if (first === undefined) return { columns: LOG_COLUMNS, lines: [], problems: [] };
  const names = first.cells.map(({ text }) => columnNamed(text));
  if (names.every((name) => name === null)) return withoutHeader(first, lines, at);
  const problems = [
    ...first.cells.flatMap((cell, index) => unknownColumn(cell, names[index] ?? null, at)),
    ...first.cells.flatMap((cell, index) => {
      const name = names[index] ?? null;
      return name !== null && names.indexOf(name) < index ? [columnTwice(name, at(cell.offset))] : [];
    }),
    ...NEEDED.filter((column) => !names.includes(column)).map((column) => noColumn(column, at(first.offset))),
  ];
  return problems.some(({ code }) => code === 'missing-key' || code === 'duplicate-key')
    ? { columns: [], lines: rest, problems }
    : { columns: names, lines: rest, problems };
}

// A list of lines alone, as somebody copies them out of a message.
function withoutHeader(first: CsvLine, lines: readonly CsvLine[], at: (offset: number) => Place): Layout {
  const startsWithDate = /^\d{4}-\d{2}-\d{2}$/.test(first.cells[0]?.text.trim() ?? '');
  return startsWithDate
    ? { columns: LOG_COLUMNS, lines, problems: [] }
    : { columns: [], lines, problems: [noHeader(at(first.offset))] };
}

function columnNamed(text: string): LogColumn | null {
  const name = text.trim().toLowerCase();
  return LOG_COLUMNS.find((column) => column.toLowerCase() === name) ?? null;
}

function unknownColumn(
  { text, offset }: CsvLine['cells'][number],
  name: LogColumn | null,
  at: (offset: number) => Place,
): Problem[] {
  if (name !== null || text.trim() === '') return [];
  const meant = nearest(text.trim(), LOG_COLUMNS);
  return [
    errorAt(at(offset), 'unknown-key', {
      path: text.trim().slice(0, 40),
      found: 'an unknown column',
      expected: meant ?? listed(LOG_COLUMNS, 'or'),
      fix: meant === null ? 'take the column out' : `write ${meant}`,
    }),
  ];
}

function columnTwice(column: LogColumn, place: Place): Problem {
  return errorAt(place, 'duplicate-key', {
    path: column,
    found: 'a second column of that name',
    expected: 'there once',
    fix: 'take one of the two out; no line is read while both are there',
  });
}

function noColumn(column: LogColumn, place: Place): Problem {
  return errorAt(place, 'missing-key', {
    path: column,
    found: 'missing',
    expected: 'a column of the header',
    fix: `write the header as it is: ${LOG_COLUMNS.join(',')}`,
  });
}

function noHeader(place: Place): Problem {
  return errorAt(place, 'csv', {
    found: 'no header, and no line of a log',
    expected: `the header ${LOG_COLUMNS.join(',')}`,
    fix: 'write it as the first line, with commas, semicolons or tabs between the names',
  });
}
