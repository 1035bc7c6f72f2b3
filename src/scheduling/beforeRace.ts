/** The easy runs of the last days before a race, the furthest first. */
import { addDays } from '../units/date.ts';
import { runLoad } from './hardRun.ts';
import type { PlanDay } from './planDay.ts';
import type { PlannedRun } from './plannedRun.ts';
import type { JudgedRace } from './race.ts';
import type { RaceDayRules } from './raceDays.ts';

/** The same days, with the easy runs before each race in the order of their kilometres: the shortest comes last. */
export function furthestFirst(
  days: readonly PlanDay[],
  races: readonly Pick<JudgedRace, 'on'>[],
  { raceNoHeavyDays }: Pick<RaceDayRules, 'raceNoHeavyDays'>,
): readonly PlanDay[] {
  return races.reduce<readonly PlanDay[]>((all, { on }) => {
    const from = addDays(on, -raceNoHeavyDays.value);
    const isNear = (day: PlanDay) => day.on >= from && day.on < on;
    const runs = all.filter(isNear).flatMap((day) => day.runs.filter(isEasyByKm));
    const sorted = [...runs].sort((one, other) => (other.km ?? 0) - (one.km ?? 0));
    const next = (run: PlannedRun) => (isEasyByKm(run) ? (sorted.shift() ?? run) : run);
    return all.map((day) => (isNear(day) ? { ...day, runs: day.runs.map(next) } : day));
  }, days);
}

function isEasyByKm({ kind, km }: PlannedRun): boolean {
  return km !== null && !runLoad(kind).hard;
}
