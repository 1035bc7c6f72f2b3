/** The dated plan as codes and numbers, an entry a day: what every output reads. */
import { isFree, type PlanDay } from '../../scheduling/planDay.ts';
import type { PlannedRun } from '../../scheduling/plannedRun.ts';
import type { PlanWeek } from '../../scheduling/planWeek.ts';
import { partsOf, type Parted } from './parts.ts';
import type { PlanOf } from './datedPlan.ts';
import type { PlanEntry, PlanGrowth, PlannedExercise } from '../terms/planEntry.ts';

interface DatedParts extends Parted {
  readonly dated: PlanOf;
}

/** One entry for each day, in their order. */
export function planEntries(decided: DatedParts): PlanEntry[] {
  return decided.dated.plan.days.map((day) => entryOf(day, decided));
}

/** One entry for each week: what grows in it and what begins. */
export function planGrowth({ dated }: DatedParts): PlanGrowth[] {
  return dated.plan.weeks.map(({ week, from, to, turn }: PlanWeek) => ({
    week,
    from,
    to,
    grows: turn.grows,
    because: turn.because,
    begins: turn.begins,
  }));
}

function entryOf(day: PlanDay, decided: DatedParts): PlanEntry {
  const { on, weekday, week, session, between, daily, runs, raceKm, other, easyAfterRace } = day;
  const part = partsOf(decided)[day.part];
  const named = (exercises: readonly string[]): PlannedExercise[] =>
    exercises.map((slot) => ({ slot, card: part?.cards.get(slot)?.id ?? '' }));
  return {
    on,
    weekday,
    week,
    step: part?.step ?? 1,
    sessions:
      session === null
        ? []
        : [
            {
              exercises: named(session.exercises),
              begins: named(session.begins),
              without: named(session.without),
            },
          ],
    between: named(between),
    daily: named(daily),
    runs: runs.map(runEntry),
    races: raceKm === null ? [] : [{ km: raceKm }],
    other,
    easyAfterRace,
    free: isFree(day),
  };
}

function runEntry({ kind, km, minutes, walkRun }: PlannedRun): PlanEntry['runs'][number] {
  return {
    kind,
    km,
    minutes,
    walkRun:
      walkRun === null
        ? null
        : {
            cycles: walkRun.cycles,
            walkMinutes: walkRun.walkMinutes,
            runMinutes: walkRun.runMinutes,
          },
  };
}
