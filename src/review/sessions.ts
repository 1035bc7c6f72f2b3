/** Sessions planned and done, by day: a day has had its session once, however often it was written down. */
import type { LogEntry } from '../content/log/log.ts';
import type { EarlierExercise } from '../decisions/terms/earlier.ts';
import type { PlanEntry } from '../decisions/terms/planEntry.ts';
import type { IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';

export interface SessionDay {
  readonly on: IsoDate;
  readonly planned: boolean;
  /** At least one exercise was done, in part at least. */
  readonly done: boolean;
  /** Every exercise of the day with its whole dose. */
  readonly inFull: boolean;
  readonly entries: readonly LogEntry[];
}

/** Every day on which a session was planned or written down, in order. */
export function sessionDays({ entries, earlier, from, until }: Period): readonly SessionDay[] {
  const plans = new Map(
    earlier.plan
      .filter(({ on, sessions }) => on >= from && on < until && sessions.length > 0)
      .map((one) => [one.on, one]),
  );
  const written = new Map<IsoDate, LogEntry[]>();
  for (const entry of entries)
    if (entry.kind === 'session') written.set(entry.date, [...(written.get(entry.date) ?? []), entry]);
  const usual = cardsOfPlan(earlier.plan);
  return [...new Set([...plans.keys(), ...written.keys()])].sort().map((on) => {
    const own = written.get(on) ?? [];
    const plan = plans.get(on);
    const cards = plan === undefined ? usual : cardsOfPlan([plan]);
    return {
      on,
      planned: plan !== undefined,
      done: own.some(isDone),
      inFull: own.length > 0 && cards.every((card) => wholeDose(card, own, earlier.exercises)),
      entries: own,
    };
  });
}

/** Cards of the sessions of these days. */
function cardsOfPlan(plan: readonly PlanEntry[]): readonly string[] {
  return [
    ...new Set(
      plan.flatMap(({ sessions }) => sessions.flatMap(({ exercises }) => exercises.map(({ card }) => card))),
    ),
  ];
}

/** Whether it was done at all; sets alone say so too. */
export function isDone({ done, sets }: LogEntry): boolean {
  return done === null ? (sets ?? 0) > 0 : done !== 'no';
}

// A line without a card is about the session as a whole.
function wholeDose(
  card: string,
  entries: readonly LogEntry[],
  exercises: readonly EarlierExercise[],
): boolean {
  const own = entries.filter((entry) => entry.card === card);
  const lines = own.length > 0 ? own : entries.filter((entry) => entry.card === '');
  const values = exercises.find((one) => one.card === card)?.values ?? {};
  return lines.length > 0 && lines.every((line) => isWhole(line, own.length > 0 ? values : {}));
}

/** What was written is no less than what was planned; what was not written goes by the word. */
export function isWhole(entry: LogEntry, values: EarlierExercise['values']): boolean {
  const reaches = (written: number | null, planned: number | string | null | undefined) =>
    written === null || typeof planned !== 'number' || written >= planned - 1e-9;
  const isSaid = entry.done === 'yes' || (entry.done === null && entry.sets !== null);
  return (
    isSaid &&
    reaches(entry.sets, values.sets) &&
    reaches(entry.repetitions, values.repetitions) &&
    reaches(entry.seconds, values.holdSeconds) &&
    reaches(entry.loadKg, values.loadKg)
  );
}
