/** Which doubts a consult's `confirmed` lifts, and which of its entries confirm nothing. */
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Doubt, ValuePath } from './doubt.ts';

type Entry = ConsultFrontMatter['confirmed'][number];

/** An entry that lifts nothing: where it points nothing is doubtful, or another value stands there. */
export interface Idle {
  readonly index: number;
  /** The value that stands there and is doubtful; null where nothing there is. */
  readonly stands: number | string | null;
  readonly entry: Entry;
}

/** Which key of the entry is wrong. */
export function idleKey({ stands }: Idle): 'path' | 'value' {
  return stands === null ? 'path' : 'value';
}

export interface Weighed {
  /** Doubts that no entry lifts. */
  readonly open: readonly Doubt[];
  readonly idle: readonly Idle[];
}

/** `isJudged`: whether the doubts at a path are among these; of the others another room speaks. */
export function weighed(
  doubts: readonly Doubt[],
  confirmed: readonly Entry[],
  isJudged: (path: string) => boolean,
): Weighed {
  return {
    open: doubts.filter((doubt) => !confirmed.some((entry) => lifts(entry, doubt))),
    idle: confirmed.flatMap((entry, index) => {
      if (!isJudged(plainPath(entry.path)) || doubts.some((doubt) => lifts(entry, doubt))) return [];
      const there = doubts.find(({ path }) => wayText(path) === plainPath(entry.path));
      return [{ index, entry, stands: there?.value ?? null }];
    }),
  };
}

/** The clinician's own numbers are judged where the programme is made. */
export function isOverride(path: string): boolean {
  return path.startsWith('overrides.');
}

/** The longest run of a later revision: the log is held against it where the programme is made. */
export function isHeldToLog(path: string, last: object | null): boolean {
  return last !== null && path === 'running.longestIn30DaysKm';
}

/** As an entry writes a path. @example wayText(['tests', 0, 'pain']) // => 'tests.0.pain' */
export function wayText(path: ValuePath): string {
  return path.join('.');
}

function lifts({ path, value }: Entry, doubt: Doubt): boolean {
  return plainPath(path) === wayText(doubt.path) && String(value) === String(doubt.value);
}

/** With dots: as a Problem prints it is taken too. @example plainPath('testedSets[0].loadKg') // => 'testedSets.0.loadKg' */
export function plainPath(path: string): string {
  return path.replaceAll(/\[(\d+)\]/g, '.$1');
}
