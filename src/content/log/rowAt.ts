/** One line of the log as an entry, or every Problem in it. */
import { listed } from '../inWords.ts';
import { errorAt, type Place, type Problem, type ProblemWords } from '../problem.ts';
import { SCREEN_ITEMS } from '../schema/consult.ts';
import { nearest } from '../nearest.ts';
import { cellValue, type CellFault } from './cells.ts';
import { LOG_COLUMNS, type LogColumn } from './columns.ts';
import type { CsvCell, CsvLine, Separator } from './csvLines.ts';
import type { LogEntry } from './log.ts';

export type RowReading = { readonly entry: LogEntry } | { readonly problems: readonly Problem[] };

/** What a log is held against besides its form. */
export interface RowRules {
  readonly separator: Separator;
  readonly columns: readonly (LogColumn | null)[];
  readonly at: (offset: number) => Place;
  /** Ids of the library; null where it is not known. */
  readonly cards: ReadonlyMap<string, unknown> | null;
}

/** Null for a line of nothing but empty cells. */
export function rowAt(line: CsvLine, rules: RowRules): RowReading | null {
  if (line.broken !== null) return { problems: [brokenProblem(line.broken, rules)] };
  if (line.cells.every(({ text }) => text.trim() === '')) return null;
  if (line.cells.length !== rules.columns.length) return { problems: [cellsProblem(line, rules)] };
  const values: Partial<Record<LogColumn, string | number | null>> = {};
  const problems: Problem[] = [];
  for (const [index, cell] of line.cells.entries()) {
    const column = rules.columns[index] ?? null;
    if (column === null) continue;
    const found = cellValue(column, cell.text, cell.quoted || rules.separator !== ',');
    if ('fault' in found) problems.push(faultProblem(column, cell, found.fault, rules));
    else values[column] = found.value;
  }
  if (problems.length > 0) return { problems };
  const entry = entryOf(values);
  const wrong = wrongIn(entry, values, line, rules);
  return wrong.length > 0 ? { problems: wrong } : { entry };
}

function entryOf(values: Partial<Record<LogColumn, string | number | null>>): LogEntry {
  const empty = Object.fromEntries(LOG_COLUMNS.map((column) => [column, null]));
  return {
    ...empty,
    ...values,
    occasion: values.occasion ?? 1,
    edit: values.edit ?? 0,
    card: values.card ?? '',
    note: values.note ?? '',
  } as LogEntry;
}

// What the cells say together.
function wrongIn(
  entry: LogEntry,
  values: Partial<Record<LogColumn, string | number | null>>,
  line: CsvLine,
  rules: RowRules,
): Problem[] {
  const { kind, card, morning, done, sets, edit } = entry;
  const wrong: Problem[] = [];
  const say = (column: LogColumn, code: CellFault['code'], words: Omit<ProblemWords, 'path'>) =>
    wrong.push(errorAt(placeOf(column, line, rules), code, { path: column, ...words }));
  for (const column of ['date', 'kind'] as const)
    if ((values[column] ?? null) === null)
      say(column, 'missing-key', {
        found: 'empty',
        expected: 'written in every line',
        fix: `write the ${column}`,
      });
  // A correction may take the score back.
  if (kind === 'morning' && morning === null && edit === 0)
    say('morning', 'missing-key', {
      found: 'empty',
      expected: 'the score of the morning, 0 to 10',
      fix: 'write the score, or take the line out',
    });
  if ((done === 'no' && (sets ?? 0) > 0) || (done === 'yes' && sets === 0))
    say('done', 'does-not-fit', {
      found: `${done} beside ${sets} sets`,
      expected: 'a word that fits the sets',
      fix: 'mend the word or the sets',
    });
  if (kind === 'alarm' && !(SCREEN_ITEMS as readonly string[]).includes(card))
    say('card', 'wrong-word', alarmWords(card));
  if ((kind === 'session' || kind === 'between') && card !== '' && rules.cards?.has(card) === false)
    say('card', 'no-such-card', noCardWords(card, [...rules.cards.keys()]));
  return wrong;
}

function alarmWords(card: string): Omit<ProblemWords, 'path'> {
  const near = nearest(card, SCREEN_ITEMS);
  return {
    found: card === '' ? 'empty' : card,
    expected: `an item of the screen: ${listed(SCREEN_ITEMS, 'or')}`,
    fix: near === null ? 'write the item that was answered yes' : `write ${near}`,
  };
}

function noCardWords(card: string, cards: readonly string[]): Omit<ProblemWords, 'path'> {
  const near = nearest(card, cards);
  return {
    found: card,
    expected: 'the id of an exercise of the library',
    fix: near === null ? 'write the id that stands on the leaflet of this revision' : `write ${near}`,
  };
}

function placeOf(column: LogColumn, line: CsvLine, { columns, at }: RowRules): Place {
  return at(line.cells[columns.indexOf(column)]?.offset ?? line.offset);
}

function faultProblem(column: LogColumn, cell: CsvCell, fault: CellFault, { at }: RowRules): Problem {
  const { code, expected, fix } = fault;
  return errorAt(at(cell.offset), code, { path: column, found: shortened(cell.text), expected, fix });
}

function shortened(text: string): string {
  const plain = text.trim().replaceAll('\n', ' ');
  return plain.length <= 40 ? plain : `${plain.slice(0, 37)}...`;
}

function brokenProblem({ what, offset }: NonNullable<CsvLine['broken']>, { at }: RowRules): Problem {
  return errorAt(at(offset), 'csv', {
    found: what === 'open-quote' ? 'a quote that is not closed' : 'text after a closed quote',
    expected: 'a cell of RFC 4180: quotes around the whole of it, a quote inside written twice',
    fix: what === 'open-quote' ? 'close the quote, or take it out' : 'put the whole cell in quotes',
  });
}

function cellsProblem(line: CsvLine, { columns, separator, at }: RowRules): Problem {
  const [have, need] = [line.cells.length, columns.length];
  return errorAt(at(line.offset), 'csv', {
    found: `a line of ${have} ${have === 1 ? 'cell' : 'cells'}`,
    expected: `${need} cells, as the header has`,
    fix: cellsCure(have, need, separator, line),
  });
}

function cellsCure(have: number, need: number, separator: Separator, { raw }: CsvLine): string {
  if (have < need) return 'add the cells that are missing, empty ones too, so that each stands in its column';
  return separator === ',' && /(^|,)\d+,\d+(,|$)/.test(raw)
    ? 'write decimals with a point, and put a text with a comma in quotes'
    : 'put a text that holds the separator in quotes, or take the cells out that are too many';
}
