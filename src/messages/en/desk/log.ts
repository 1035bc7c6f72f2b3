/** The log sheet of the desk. */
import { capital } from '../plain.ts';
import type { LogColumn } from '../../../content/log/columns.ts';

/** Heads of the columns, as short as the cells under them. */
export const LOG_HEADS: Readonly<Record<LogColumn, string>> = {
  date: 'Date',
  occasion: 'Time',
  kind: 'What',
  card: 'Exercise',
  side: 'Side',
  edit: 'Edit',
  done: 'Done',
  sets: 'Sets',
  repetitions: 'Reps',
  seconds: 'Sec.',
  loadKg: 'kg',
  painDuring: 'Pain',
  morning: 'Morning',
  minutes: 'Min.',
  km: 'km',
  note: 'Note',
};

export const LOG_TITLE = 'Log and review';
export const LOG_LEAD =
  'A line for each thing that was done. Tab and arrows go from cell to cell, Enter goes down, Control and D copies the cell above. A day alone, such as 12, and the first letters of a word are enough. Blocks from a spreadsheet and the shared text of the leaflet can be pasted into any cell.';
export const LOG_NEEDS = 'Alias and revision of the consult say whose log it is: write them first.';
export const OPEN_LOG = 'Open a log';
export const SAVE_LOG = 'Save the log';
export const EARLIER_LINES = 'Earlier lines';
export const LATER_LINES = 'Later lines';

/** @example cellName('sets', 4) // => 'Sets, line 5' */
export function cellName(column: LogColumn, line: number): string {
  return `${LOG_HEADS[column]}, line ${line + 1}`;
}

/** @example linesText(0, 100, 140) // => 'Lines 1 to 100 of 140' */
export function linesText(from: number, to: number, all: number): string {
  return `Lines ${from + 1} to ${to} of ${all}`;
}

export function logOpenedText(file: string, lines: number): string {
  return `${file}: ${lines === 1 ? '1 line' : `${lines} lines`} in the log.`;
}

export function logNotOpenedText(file: string, found: string, expected: string, fix: string): string {
  return `${file} was not opened: ${found}; must be ${expected}. ${capital(fix)}.`;
}

/** A Problem beneath its line. @example lineProblemText(4, 'morning: 12', 'a number from 0 to 10', 'write it') */
export function lineProblemText(line: number | null, found: string, expected: string, fix: string): string {
  return `${line === null ? 'The log' : `Line ${line + 1}`}: ${found}; must be ${expected}. ${capital(fix)}.`;
}

export const PASTED = 'the pasted text';
export const LOG_CHANGED = 'not saved';
export const LOG_SAVED = 'saved';
