/** The dated plan week by week: what its runs come to, and what grows. */
import type { IsoDate } from '../units/date.ts';
import { roundTo } from '../units/round.ts';
import type { PlanDay } from './planDay.ts';
import type { PlannedRun } from './plannedRun.ts';
import type { Turn } from './turns.ts';

export interface PlanWeek {
  /** From 1. */
  readonly week: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly runs: readonly PlannedRun[];
  readonly racesKm: readonly number[];
  /** Races included; null where nothing goes by distance. */
  readonly longestKm: number | null;
  readonly weeklyKm: number | null;
  readonly turn: Turn;
}

const NO_TURN: Omit<Turn, 'week'> = { grows: null, because: null, begins: null };

/** `turns`: one for each week of training; a week that only holds a race on the review day has none. */
export function planWeeks(days: readonly PlanDay[], turns: readonly Turn[]): PlanWeek[] {
  const last = days.at(-1)?.week ?? 0;
  return Array.from({ length: last }, (_, index) => {
    const own = days.filter(({ week }) => week === index + 1);
    const [first, end] = [own[0], own.at(-1)] as [PlanDay, PlanDay];
    const runs = own.flatMap((day) => day.runs);
    const racesKm = own.flatMap(({ raceKm }) => raceKm ?? []);
    const kms = [...runs.flatMap(({ km }) => km ?? []), ...racesKm];
    return {
      week: index + 1,
      from: first.on,
      to: end.on,
      runs,
      racesKm,
      longestKm: kms.length === 0 ? null : Math.max(...kms),
      weeklyKm:
        kms.length === 0
          ? null
          : // As fine as a race's length is printed, so that the days add up.
            roundTo(
              kms.reduce((sum, km) => sum + km, 0),
              0.01,
            ),
      turn: turns[index] ?? { week: index + 1, ...NO_TURN },
    };
  });
}
