/** The week that stands for the others: of the dated plan's weeks the fullest. */
import type { DatedPlan } from './datedPlan.ts';
import type { PlanDay } from './planDay.ts';

/** Its days, up to seven; the earliest of those with as much in them. Of the first part, which is the present one. */
export function usualWeek({ days }: Pick<DatedPlan, 'days'>): PlanDay[] {
  const weeks = [...new Set(days.map(({ week }) => week))].map((week) =>
    days.filter((day) => day.week === week && day.part === 0),
  );
  return weeks.reduce((best, week) => (fullness(week) > fullness(best) ? week : best), weeks[0] ?? []);
}

function fullness(days: readonly PlanDay[]): number {
  return days.reduce(
    (sum, { session, between, daily, runs, other }) =>
      sum + (session?.exercises.length ?? 0) + between.length + daily.length + runs.length + other.length,
    0,
  );
}
