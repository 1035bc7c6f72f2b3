/** Which entries a day has: the morning, its exercises, running, sitting and a line. */
import type { LogSide } from '../../content/log/columns.ts';
import { IN_USE } from '../../messages/en/patient/inUse.ts';
import type { DayInUse, ExerciseInUse, PacedExercise, SheetInUse } from '../../programme/sheetInUse.ts';
import type { Today } from '../../scheduling/today.ts';
import { entryForm, type Book } from './entry.ts';

const BARE = { occasion: 1, card: '', side: null } as const;

export function morningForm(book: Book, date: string): HTMLElement {
  return entryForm(book, {
    name: IN_USE.morning,
    keys: [{ ...BARE, date, kind: 'morning' }],
    fields: ['morning'],
  });
}

export function runForm(book: Book, date: string): HTMLElement {
  return entryForm(book, {
    name: IN_USE.run,
    keys: [{ ...BARE, date, kind: 'run' }],
    fields: ['done', 'km', 'minutes', 'painDuring'],
    labels: { done: IN_USE.runDone },
  });
}

/** Minutes alone say nothing of whether they were tolerated. */
export function sittingForm(book: Book, date: string): HTMLElement {
  return entryForm(book, {
    name: IN_USE.sitting,
    keys: [{ ...BARE, date, kind: 'sitting' }],
    fields: ['minutes', 'painDuring'],
    labels: { minutes: IN_USE.satMinutes, painDuring: IN_USE.satPain },
  });
}

export function lineForm(book: Book, date: string): HTMLElement {
  return entryForm(book, {
    name: IN_USE.line,
    keys: [{ ...BARE, date, kind: 'other' }],
    fields: ['note'],
    labels: { note: IN_USE.line },
  });
}

/** One form for each time a day that the exercise is done; where it is done each side, each leg has its entry. */
export function exerciseForms(
  book: Book,
  date: string,
  paced: PacedExercise,
  title: string,
  between: boolean,
): HTMLElement[] {
  const { holdSeconds, sets, repetitions, loadKg, timesPerDay, card } = paced;
  const counted = holdSeconds === null ? 'repetitions' : 'seconds';
  const planned = {
    sets: String(sets),
    [counted]: String(holdSeconds ?? repetitions ?? ''),
    loadKg: String(loadKg ?? ''),
  };
  const several = timesPerDay > 1;
  return Array.from({ length: timesPerDay }, (_, at) =>
    entryForm(book, {
      name: several ? `${title} (${at + 1})` : title,
      keys: sidesOf(paced).map((side) => ({
        date,
        occasion: at + 1,
        kind: between ? 'between' : 'session',
        card,
        side,
      })),
      fields: ['done', 'painDuring', 'sets', counted],
      shared: loadKg === null ? ['note'] : ['loadKg', 'note'],
      labels: several ? { done: `${IN_USE.done} (${at + 1})` } : {},
      planned,
    }),
  );
}

/** The leg that is done first stands first, as on the leaflet. */
function sidesOf({ legs, firstSide }: PacedExercise): readonly LogSide[] {
  if (legs !== 'each') return ['both'];
  return firstSide === 'left' ? ['left', 'right'] : ['right', 'left'];
}

export interface CardOfDay {
  readonly card: string;
  /** Done on the days between the sessions, or every day. */
  readonly between: boolean;
}

/** The session that is done today: the planned one, or the last one before where it is late. */
export function sessionCards(
  { on, kind, moved, done }: Today,
  days: readonly DayInUse[],
): readonly CardOfDay[] {
  if (kind !== 'session' && moved !== 'late' && !done) return [];
  const planned = days.filter((day) => day.session && day.on <= on);
  return cardsOf(planned[planned.length - 1]).filter(({ between }) => !between);
}

/** The exercises a day has by the plan, those of the session first. */
export function cardsOf(day: DayInUse | undefined): readonly CardOfDay[] {
  if (day === undefined) return [];
  const session = day.sessionCards.map((card) => ({ card, between: false }));
  return [...session, ...day.betweenCards.map((card) => ({ card, between: true }))];
}

export function pacedOf({ exercises }: SheetInUse, card: string): ExerciseInUse | undefined {
  return exercises.find((one) => one.card === card);
}

export function titleOf(card: string): string {
  const article = document.querySelector(`[data-exercise="${card}"]`);
  return article?.querySelector('h3')?.textContent ?? card;
}
