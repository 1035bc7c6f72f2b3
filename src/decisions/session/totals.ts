/** Squeeze and pull over time, summed over a session day and over the week (house rules 4), with runs and sitting beside them. */
import { marginOf } from '../../mechanics/cap.ts';
import { roundTo } from '../../units/round.ts';
import { easyRunPullBw } from '../../scheduling/runPull.ts';
import type { PlanDay } from '../../scheduling/planDay.ts';
import type { PlannedRun } from '../../scheduling/plannedRun.ts';
import { repetitionSeconds } from '../../dosing/work.ts';
import { isPosed } from '../person/model.ts';
import type { Bounds, Person } from '../person/person.ts';
import type { Prescription } from './prescribe.ts';

/** Body weights x seconds of the working leg, margins for two supports included. */
export interface Total {
  readonly compressionTimeBwS: number;
  readonly tensionTimeBwS: number;
}

/** One exercise over one day on which it is done; null without an estimate. */
function dayTotal({ card, at, estimate }: Prescription, person: Person, { stage }: Bounds): Total | null {
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

export interface Totals {
  /** Of exercises with an estimate, in the order of the session; `days`: on how many days of the week. */
  readonly exercises: readonly { readonly title: string; readonly days: number; readonly day: Total }[];
  readonly sessionDay: Total;
  readonly week: Total;
  /** `stepPullBw`: what one step pulls, about. */
  readonly runs: {
    readonly count: number;
    readonly km: number;
    readonly minutes: number;
    readonly stepPullBw: number;
  };
  /** Null where sitting has no budget. */
  readonly sittingMinutes: number | null;
}

/** Whole body weights × seconds. `week`: days of the dated plan. */
export function totalsOf(
  prescriptions: readonly Prescription[],
  week: readonly PlanDay[],
  sittingMinutes: number | null,
  person: Person,
  bounds: Bounds,
): Totals {
  const rows = prescriptions.flatMap((one) => {
    const day = dayTotal(one, person, bounds);
    return day === null
      ? []
      : [{ title: one.card.title, days: daysIn(week, one), when: one.exercise.slot.when, day }];
  });
  const sum = (times: (row: (typeof rows)[number]) => number): Total => ({
    compressionTimeBwS: whole(rows.reduce((all, row) => all + times(row) * row.day.compressionTimeBwS, 0)),
    tensionTimeBwS: whole(rows.reduce((all, row) => all + times(row) * row.day.tensionTimeBwS, 0)),
  });
  return {
    exercises: rows.map(({ title, days, day }) => ({
      title,
      days,
      day: {
        compressionTimeBwS: whole(day.compressionTimeBwS),
        tensionTimeBwS: whole(day.tensionTimeBwS),
      },
    })),
    sessionDay: sum(({ when }) => (when === 'between' ? 0 : 1)),
    week: sum(({ days }) => days),
    runs: runsIn(week.flatMap((day) => day.runs)),
    sittingMinutes,
  };
}

/** On how many days of a week an exercise is done. */
function daysIn(week: readonly PlanDay[], { exercise: { slot } }: Prescription): number {
  return week.filter(({ session, between, daily }) =>
    [...(session?.exercises ?? []), ...between, ...daily].includes(slot.name),
  ).length;
}

function whole(bwS: number): number {
  return roundTo(bwS, 1);
}

function runsIn(runs: readonly PlannedRun[]): Totals['runs'] {
  return {
    count: runs.length,
    km: roundTo(
      runs.reduce((sum, run) => sum + (run.km ?? 0), 0),
      0.1,
    ),
    minutes: runs.reduce((sum, run) => sum + (run.walkRun?.totalRunMinutes ?? run.minutes ?? 0), 0),
    stepPullBw: roundTo(easyRunPullBw(), 0.1),
  };
}
