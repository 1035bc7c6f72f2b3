/** Planned days of which nobody wrote down whether the work was done, and whether it hurt. */
import type { PlanEntry } from '../decisions/terms/planEntry.ts';
import type { IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';

/**
 * Planned sessions of a card of which no line says anything, where fewer than `need` of its `triedOn` came after: one of
 * them may have been the last that hurt.
 */
export function unwrittenSessions(
  card: string,
  triedOn: readonly IsoDate[],
  need: number,
  period: Period,
): readonly IsoDate[] {
  const planned = plannedOn(period, ({ sessions }) => sessions.some((one) => asksFor(card, one.exercises)));
  return unwrittenOf(planned, writtenOn(card, 'session', period), triedOn, need, period);
}

/** The same of what is done every day, or on the days between the sessions. */
export function unwrittenBetween(
  card: string,
  triedOn: readonly IsoDate[],
  need: number,
  period: Period,
): readonly IsoDate[] {
  const planned = plannedOn(period, ({ between, daily }) => asksFor(card, [...between, ...daily]));
  return unwrittenOf(planned, writtenOn(card, 'between', period), triedOn, need, period);
}

/** The same of runs, whatever kind each was. */
export function unwrittenRuns(triedOn: readonly IsoDate[], need: number, period: Period): readonly IsoDate[] {
  const planned = plannedOn(period, ({ runs }) => runs.length > 0);
  const written = period.entries.filter(({ kind }) => kind === 'run').map(({ date }) => date);
  return unwrittenOf(planned, new Set(written), triedOn, need, period);
}

function plannedOn({ earlier, from, until }: Period, asks: (day: PlanEntry) => boolean): readonly IsoDate[] {
  return earlier.plan.filter((day) => day.on >= from && day.on < until && asks(day)).map(({ on }) => on);
}

function asksFor(card: string, exercises: readonly { readonly card: string }[]): boolean {
  return exercises.some((one) => one.card === card);
}

// A line without a card speaks of all that is done then.
function writtenOn(card: string, of: 'session' | 'between', { entries }: Period): ReadonlySet<IsoDate> {
  const own = entries.filter((one) => one.kind === of && (one.card === card || one.card === ''));
  return new Set(own.map(({ date }) => date));
}

// One on another day, before the next was due, is the planned one moved.
function unwrittenOf(
  planned: readonly IsoDate[],
  written: ReadonlySet<IsoDate>,
  triedOn: readonly IsoDate[],
  need: number,
  { from, until }: Pick<Period, 'from' | 'until'>,
): readonly IsoDate[] {
  const moved = [...written].filter((on) => !planned.includes(on)).sort();
  return planned.filter((on, index) => {
    if (written.has(on)) return false;
    const nextOn = planned[index + 1] ?? until;
    const stand = moved.findIndex((one) => one > (planned[index - 1] ?? from) && one < nextOn);
    // Each stands for one.
    if (stand >= 0) moved.splice(stand, 1);
    return stand < 0 && triedOn.filter((one) => one >= nextOn).length < need;
  });
}
