/** Where the plan holds fewer kilometres a week than the person runs: it is said, not left to be found. */
import type { PlanWeek } from '../../scheduling/planWeek.ts';
import type { Person } from '../person/person.ts';

export interface LessKm {
  readonly usualKm: number;
  /** The fullest week without a race. */
  readonly plannedKm: number;
}

/** Less than this is rounding of the runs, kilometres [choice]. */
const ROUNDING_KM = 1;

/** Null where it is as much, nothing is recorded, or nothing goes by distance. */
export function lessKmThanUsual({ consult }: Person, weeks: readonly PlanWeek[]): LessKm | null {
  const usualKm = consult.running.weeklyKm ?? null;
  const kms = weeks.flatMap(({ racesKm, weeklyKm }) => (racesKm.length === 0 ? (weeklyKm ?? []) : []));
  if (usualKm === null || kms.length === 0) return null;
  const plannedKm = Math.max(...kms);
  return usualKm - plannedKm < ROUNDING_KM ? null : { usualKm, plannedKm };
}
