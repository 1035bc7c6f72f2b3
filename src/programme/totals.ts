/** Squeeze and pull over time, summed over a session day and over the week (house rules 4), with runs and sitting beside them. */
import { marginOf } from '../mechanics/cap.ts';
import { roundTo } from '../units/round.ts';
import { easyRunPullBw } from '../scheduling/runPull.ts';
import type { PlanDay } from '../scheduling/planDay.ts';
import type { PlannedRun } from '../scheduling/plannedRun.ts';
import { repetitionSeconds } from '../dosing/work.ts';
import { isPosed } from '../decisions/person/model.ts';
import type { Bounds, Person } from '../decisions/person/person.ts';
import { countText, numberText } from '../messages/en/plain.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';
import type { Table } from '../messages/shapes.ts';
import type { SittingPlan } from '../decisions/days/sitting.ts';

/** Body weights x seconds of the working leg, margins for two supports included. */
export interface Total {
  readonly compressionTimeBwS: number;
  readonly tensionTimeBwS: number;
}

/** One exercise over one day on which it is done; null without an estimate. */
export function dayTotal(
  { card, at, estimate }: Prescription,
  person: Person,
  { stage }: Bounds,
): Total | null {
  if (!isPosed(card) || estimate === null) return null;
  const swept = person.model.sweepTo(card, at.rangeDeg, at.loadKg, at.dose.tempo);
  if (swept === null) return null;
  const { sets, repetitions, holdSeconds, timesPerDay, tempo } = at.dose;
  // Of a hold the way in and out is measured: a second of it is as much as a second of that way.
  const cycles = repetitions ?? (holdSeconds ?? 0) / Math.max(1, repetitionSeconds(tempo));
  const margin = marginOf(card.movement, stage);
  const times = margin * sets * cycles * timesPerDay;
  return {
    compressionTimeBwS: times * swept.compressionTimeBwS,
    tensionTimeBwS: times * swept.tensionTimeBwS,
  };
}

/** A row for every exercise with an estimate, for a session day and for the week; then runs and sitting. `week`: days of the dated plan. */
export function totalsTable(
  prescriptions: readonly Prescription[],
  week: readonly PlanDay[],
  { now }: SittingPlan,
  person: Person,
  bounds: Bounds,
): Table {
  const rows = prescriptions.flatMap((one) => {
    const day = dayTotal(one, person, bounds);
    return day === null
      ? []
      : [{ title: one.card.title, days: daysIn(week, one), when: one.exercise.slot.when, day }];
  });
  const runs = week.flatMap((day) => day.runs);
  const sum = (key: keyof Total, of: (row: (typeof rows)[number]) => number) =>
    shown(rows.reduce((total, row) => total + of(row) * row.day[key], 0));
  const onSession = (row: (typeof rows)[number]) => (row.when === 'between' ? 0 : 1);
  const perWeek = (row: (typeof rows)[number]) => row.days;
  return {
    caption: 'Squeeze and pull over time, body weights × seconds of one leg (model estimates)',
    columns: ['Exercise', 'Days a week', 'Squeeze a day', 'Pull a day'],
    rows: [
      ...rows.map(({ title, days, day }) => [
        title,
        String(days),
        shown(day.compressionTimeBwS),
        shown(day.tensionTimeBwS),
      ]),
      ...(rows.length === 0
        ? []
        : [
            ['A session day', '-', sum('compressionTimeBwS', onSession), sum('tensionTimeBwS', onSession)],
            ['The week', '-', sum('compressionTimeBwS', perWeek), sum('tensionTimeBwS', perWeek)],
          ]),
      ['Runs', String(runs.length), '-', runsText(runs)],
      ['Sitting', '-', now === null ? 'no budget' : `${now.uprightMinutes} minutes at a time`, '-'],
    ],
  };
}

/** On how many days of a week an exercise is done. */
function daysIn(week: readonly PlanDay[], { exercise: { slot } }: Prescription): number {
  return week.filter(({ session, between, daily }) =>
    [...(session?.exercises ?? []), ...between, ...daily].includes(slot.name),
  ).length;
}

function shown(bwS: number): string {
  return numberText(roundTo(bwS, 1));
}

function runsText(runs: readonly PlannedRun[]): string {
  if (runs.length === 0) return '-';
  const km = runs.reduce((sum, run) => sum + (run.km ?? 0), 0);
  const minutes = runs.reduce((sum, run) => sum + (run.walkRun?.totalRunMinutes ?? run.minutes ?? 0), 0);
  const amount = km > 0 ? `${numberText(roundTo(km, 0.1))} km` : countText(minutes, 'minute');
  return `${amount} a week, each step about ${numberText(roundTo(easyRunPullBw(), 0.1))} body weights of pull`;
}
