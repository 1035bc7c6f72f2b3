/** What each cell of a log may hold, and the cure where it holds something else. */
import { isoDate } from '../../units/date.ts';
import { listed } from '../inWords.ts';
import { nearest } from '../nearest.ts';
import type { ProblemCode } from '../problem.ts';
import { ID_PATTERN } from '../schema/words.ts';
import { LOG_DONE, LOG_KINDS, LOG_SIDES, type LogColumn } from './columns.ts';
import { withoutMark } from './format.ts';

export interface CellFault {
  readonly code: ProblemCode;
  readonly expected: string;
  readonly fix: string;
}

export type CellValue = { readonly value: string | number | null } | { readonly fault: CellFault };

// Bounds of what can be meant at all, wide: a slip of a key lies outside. No rule of treatment hangs on them.
const NUMBERS = {
  occasion: { from: 1, to: 50, unit: '', whole: true },
  edit: { from: 0, to: 9999, unit: '', whole: true },
  sets: { from: 0, to: 30, unit: '', whole: true },
  repetitions: { from: 0, to: 300, unit: '', whole: true },
  seconds: { from: 0, to: 900, unit: ' seconds', whole: false },
  loadKg: { from: 0, to: 400, unit: ' kg', whole: false },
  painDuring: { from: 0, to: 10, unit: '', whole: false },
  morning: { from: 0, to: 10, unit: '', whole: false },
  minutes: { from: 0, to: 1440, unit: ' minutes', whole: false },
  km: { from: 0, to: 250, unit: ' km', whole: false },
} as const;
type NumberColumn = keyof typeof NUMBERS;

const WORDS = { kind: LOG_KINDS, side: LOG_SIDES, done: LOG_DONE } as const;
type WordColumn = keyof typeof WORDS;

// Longer is a letter, not a note beside a set.
const MOST_NOTE_CHARACTERS = 500;

/** The value of a cell, null where it is empty. `comma`: may a comma stand for the decimal point? */
export function cellValue(column: LogColumn, written: string, comma: boolean): CellValue {
  if (column === 'note') return noteValue(written);
  const text = written.trim();
  if (text === '') return { value: null };
  if (column === 'date') return dateValue(text);
  if (column === 'card') return cardValue(text);
  return isWordColumn(column) ? wordValue(column, text) : numberValue(column, text, comma);
}

function isWordColumn(column: string): column is WordColumn {
  return Object.hasOwn(WORDS, column);
}

function noteValue(written: string): CellValue {
  const text = withoutMark(written);
  return text.length <= MOST_NOTE_CHARACTERS
    ? { value: text }
    : fault('out-of-range', `at most ${MOST_NOTE_CHARACTERS} characters`, 'shorten the note');
}

function dateValue(text: string): CellValue {
  const date = isoDate(text);
  if (date !== null) return { value: date };
  const short = /^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}$/.test(text);
  return fault(
    'not-a-date',
    'a date that exists, YYYY-MM-DD',
    short
      ? 'write the year first, for example 2026-03-02: nobody can tell whether day or month comes first here'
      : 'write it like 2026-03-02',
  );
}

function cardValue(text: string): CellValue {
  return /^[A-Za-z0-9-]+$/.test(text)
    ? { value: text }
    : fault(
        'wrong-word',
        'the id of an exercise',
        `write its id, for example hip-hinge (${ID_PATTERN.source})`,
      );
}

function wordValue(column: WordColumn, text: string): CellValue {
  const words: readonly string[] = WORDS[column];
  const found = words.find((word) => word === text.toLowerCase());
  if (found !== undefined) return { value: found };
  const near = nearest(text, words);
  return fault(
    'wrong-word',
    listed(words, 'or'),
    near === null ? `write ${listed(words, 'or')}` : `write ${near}`,
  );
}

function numberValue(column: NumberColumn, text: string, comma: boolean): CellValue {
  const { from, to, unit, whole } = NUMBERS[column];
  const expected = `${whole ? 'a whole number' : 'a number'} from ${from} to ${to}${unit}`;
  const plain = comma && /^\d+,\d+$/.test(text) ? text.replace(',', '.') : text;
  if (!/^\d+(\.\d+)?$/.test(plain)) return fault('wrong-type', expected, numberCure(text));
  const value = Number(plain);
  if (whole && !Number.isInteger(value)) return fault('wrong-type', expected, 'write a whole number');
  return value >= from && value <= to
    ? { value }
    : fault('out-of-range', expected, 'write what was meant, or leave the cell empty');
}

function numberCure(text: string): string {
  if (/^[=+\-@]/.test(text)) return 'write the number itself, no sign and no formula';
  if (/^\d+,\d+$/.test(text)) return `write ${text.replace(',', '.')}`;
  return 'write digits alone, with a point before decimals, or leave the cell empty';
}

function fault(code: ProblemCode, expected: string, fix: string): CellValue {
  return { fault: { code, expected, fix } };
}
