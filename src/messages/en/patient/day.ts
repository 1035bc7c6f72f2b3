/** What one day of the dated plan holds, in words. */
import type { PlanDay } from '../../../scheduling/planDay.ts';
import type { PlannedRun } from '../../../scheduling/plannedRun.ts';
import { capital, listText, numberText } from '../plain.ts';
import { RUN_WORDS, runText, shortRunText } from './running.ts';

/** The entries of a day as they stand alone, each in a line: the plan's own work begins with a capital. */
export function tableEntries(day: PlanDay, words: DayWords, form: DayForm): string[] {
  const own: readonly DayEntry['kind'][] = ['session', 'between', 'daily'];
  return dayEntries(day, words, form).map(({ kind, text }) => (own.includes(kind) ? capital(text) : text));
}

/** A whole day in one line: its first word alone has a capital. @example 'Longer easy run, 9 km; the holds' */
export function dayLine(day: PlanDay, words: DayWords, form: DayForm): string {
  return capital(
    dayEntries(day, words, form)
      .map(({ text }) => text)
      .join('; '),
  );
}

/** What a day is told with. */
export interface DayWords {
  /** The title of an exercise (slot name) in a part of the plan. */
  readonly titleOf: (part: number, exercise: string) => string;
  /** The step of a part; null for the first, which needs no number. */
  readonly stepOf: (part: number) => number | null;
}

/** `full` for a sentence, `short` for a narrow column, `kinds` where the amounts of the runs differ from week to week. */
export type DayForm = 'full' | 'short' | 'kinds';

/** One entry of a day. */
export interface DayEntry {
  readonly kind: 'race' | 'other' | 'run' | 'session' | 'between' | 'daily' | 'easy';
  readonly text: string;
}

export const BETWEEN_WORDS = 'the holds';
const DAILY_WORDS = 'moving gently';
const EASY_DAY = 'easy day';

/** Everything on a day, in the order in which it is done; an easy day after a race says so last. */
export function dayEntries(day: PlanDay, words: DayWords, form: DayForm): DayEntry[] {
  const { raceKm, other, runs, session, between, daily, easyAfterRace } = day;
  const bare = (text: string) => (form === 'short' ? text.replace(/^the /, '') : text);
  return [
    ...(raceKm === null ? [] : [{ kind: 'race' as const, text: `race, ${numberText(raceKm)} km` }]),
    ...other.map((text) => ({ kind: 'other' as const, text })),
    ...runs.map((run) => ({ kind: 'run' as const, text: runIn(run, form) })),
    ...(session === null ? [] : [{ kind: 'session' as const, text: sessionText(day, words, form) }]),
    ...(between.length === 0 ? [] : [{ kind: 'between' as const, text: bare(BETWEEN_WORDS) }]),
    ...(daily.length === 0 ? [] : [{ kind: 'daily' as const, text: DAILY_WORDS }]),
    ...(easyAfterRace ? [{ kind: 'easy' as const, text: EASY_DAY }] : []),
  ];
}

function runIn(run: PlannedRun, form: DayForm): string {
  if (form === 'kinds') return RUN_WORDS[run.kind];
  return form === 'short' ? shortRunText(run) : runText(run);
}

/** @example 'exercises of step 2, new: Small hops on both feet, after the run' */
function sessionText({ part, session, other, easyOther }: PlanDay, words: DayWords, form: DayForm): string {
  if (session === null) return '';
  const step = words.stepOf(part);
  const titles = (exercises: readonly string[]) =>
    listText(exercises.map((exercise) => words.titleOf(part, exercise)));
  return [
    step === null ? 'exercises' : `exercises of step ${step}`,
    session.without.length === 0 ? '' : ` without ${titles(session.without)}`,
    session.begins.length > 0 && form !== 'kinds' ? `, new: ${titles(session.begins)}` : '',
    form !== 'short' && session.afterRun ? ', after the run' : '',
    form !== 'short' && session.afterOther
      ? `, after ${listText(other.filter((id) => !easyOther.includes(id)))}`
      : '',
  ].join('');
}
