/** Which entries a day has: the morning, its exercises, running, sitting and a line. */
import { IN_USE } from '../../messages/en/patient/inUse.ts';
import type { DayInUse, PacedExercise, SheetInUse } from '../../programme/sheetInUse.ts';
import type { Today } from '../../scheduling/today.ts';
import { entryForm, type Book } from './entry.ts';

const BARE = { occasion: 1, card: '', side: null } as const;

export function morningForm(book: Book, date: string): HTMLElement {
  return entryForm(book, { ...BARE, date, kind: 'morning' }, IN_USE.morning, ['morning']);
}

export function runForm(book: Book, date: string): HTMLElement {
  const fields = ['done', 'km', 'minutes', 'painDuring'] as const;
  return entryForm(book, { ...BARE, date, kind: 'run' }, IN_USE.run, fields);
}

export function sittingForm(book: Book, date: string): HTMLElement {
  const labels = { minutes: IN_USE.satMinutes };
  return entryForm(book, { ...BARE, date, kind: 'sitting' }, IN_USE.sitting, ['minutes'], labels);
}

export function lineForm(book: Book, date: string): HTMLElement {
  const labels = { note: IN_USE.line };
  return entryForm(book, { ...BARE, date, kind: 'other' }, IN_USE.line, ['note'], labels);
}

/** One entry for each time a day that the exercise is done. */
export function exerciseForms(
  book: Book,
  date: string,
  paced: PacedExercise,
  title: string,
  between: boolean,
): HTMLElement[] {
  const { holdSeconds, sets, repetitions, loadKg, timesPerDay, card } = paced;
  const kind = between ? 'between' : 'session';
  const counted = holdSeconds === null ? 'repetitions' : 'seconds';
  const planned = {
    sets: String(sets),
    [counted]: String(holdSeconds ?? repetitions ?? ''),
    loadKg: String(loadKg ?? ''),
  };
  const fields = [
    'done',
    'painDuring',
    'sets',
    counted,
    ...(loadKg === null ? [] : (['loadKg'] as const)),
    'note',
  ] as const;
  return Array.from({ length: timesPerDay }, (_, at) =>
    entryForm(
      book,
      { date, occasion: at + 1, kind, card, side: 'both' },
      timesPerDay > 1 ? `${title} (${at + 1})` : title,
      fields,
      timesPerDay > 1 ? { done: `${IN_USE.done} (${at + 1})` } : {},
      planned,
    ),
  );
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

export function pacedOf({ exercises }: SheetInUse, card: string): PacedExercise | undefined {
  return exercises.find((one) => one.card === card);
}

export function titleOf(card: string): string {
  const article = document.querySelector(`[data-exercise="${card}"]`);
  return article?.querySelector('h3')?.textContent ?? card;
}
