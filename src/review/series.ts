/** What was asked for and what was done, day by day, for the clinician's pictures: as it was written, and no share of it. */
import { morningBands } from '../scheduling/morning.ts';
import type { Period } from './facts.ts';
import type { Work } from './goingOn.ts';
import { isRun } from './running.ts';
import { isDone } from './sessions.ts';
import type { LoadSeries, ReviewSeries, RunDay } from './terms.ts';

/** Series of the days that are judged. */
export function seriesOf({ sessions, mornings }: Work, period: Period): ReviewSeries {
  const { consult, protocol, entries } = period;
  return {
    sessions: sessions.map(({ entries: own, ...one }) => ({ ...one, written: own.length > 0 })),
    mornings: mornings.map(({ on, score }) => ({ on, score })),
    bands: morningBands(consult.usualMorningPain, protocol.morningCheck),
    loads: loadsOf(period),
    runs: { planned: plannedRuns(period), done: doneRuns(period) },
    sitting: {
      toleranceMinutes: consult.sitting.toleranceMinutes,
      goalMinutes: consult.sitting.goalMinutes ?? null,
      done: entries.flatMap(({ kind, date: on, minutes }) =>
        kind === 'sitting' && minutes !== null ? [{ on, minutes }] : [],
      ),
    },
  };
}

function loadsOf({ earlier, entries }: Period): LoadSeries[] {
  return earlier.exercises.flatMap(({ card, values: { loadKg: plannedKg } }) => {
    if (typeof plannedKg !== 'number' || plannedKg === 0) return [];
    const done = entries.flatMap((one) =>
      one.card === card && isDone(one) && one.loadKg !== null ? [{ on: one.date, loadKg: one.loadKg }] : [],
    );
    return [{ card, plannedKg, done }];
  });
}

function plannedRuns({ earlier, from, until }: Period): RunDay[] {
  return earlier.plan
    .filter(({ on, runs }) => on >= from && on < until && runs.length > 0)
    .map(({ on, runs }) => ({
      on,
      km: sumOf(runs.map(({ km }) => km)),
      minutes: sumOf(runs.map(({ minutes }) => minutes)),
    }));
}

function doneRuns({ entries }: Period): RunDay[] {
  return entries
    .filter((entry) => entry.kind === 'run' && isRun(entry))
    .map(({ date: on, km, minutes }) => ({ on, km, minutes }));
}

function sumOf(values: readonly (number | null)[]): number | null {
  const known = values.flatMap((value) => value ?? []);
  return known.length === 0 ? null : known.reduce((sum, value) => sum + value, 0);
}
