/** Weeks of the dated plan that are alike day by day, so that each kind of week is printed once. */
import type { IsoDate } from '../units/date.ts';
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import type { PlanDay } from './planDay.ts';
import type { PlannedRun } from './plannedRun.ts';

export interface WeekGroup {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly weeks: number;
  /** One for each weekday there is, in the order in which the days first come. */
  readonly days: readonly GroupDay[];
}

export interface GroupDay {
  readonly weekday: Weekday;
  /** Its first day. */
  readonly day: PlanDay;
  /** Its runs are as far or as long in every week of the group. */
  readonly sameAmounts: boolean;
}

/** The weeks in their order, neighbours that are alike put together; a part of a week is alike as far as it goes. */
export function weekGroups(days: readonly PlanDay[]): WeekGroup[] {
  const groups: PlanDay[][] = [];
  for (const week of byWeek(days)) {
    const last = groups.at(-1);
    if (last !== undefined && agree(last, week)) last.push(...week);
    else groups.push([...week]);
  }
  return groups.map(groupOf);
}

function byWeek(days: readonly PlanDay[]): PlanDay[][] {
  const last = days.at(-1)?.week ?? 0;
  return Array.from({ length: last }, (_, index) => days.filter(({ week }) => week === index + 1));
}

function groupOf(days: readonly PlanDay[]): WeekGroup {
  const [first, last] = [days[0], days.at(-1)] as [PlanDay, PlanDay];
  const weekdays = [...new Set(days.map(({ weekday }) => weekday))];
  return {
    from: first.on,
    to: last.on,
    weeks: last.week - first.week + 1,
    days: weekdays.map((weekday) => {
      const own = days.filter((day) => day.weekday === weekday);
      const amounts = new Set(own.map(({ runs }) => JSON.stringify(runs.map(amountOf))));
      return { weekday, day: own[0] as PlanDay, sameAmounts: amounts.size === 1 };
    }),
  };
}

function agree(group: readonly PlanDay[], week: readonly PlanDay[]): boolean {
  return WEEKDAYS.every((weekday) => {
    const before = group.find((day) => day.weekday === weekday);
    const day = week.find((one) => one.weekday === weekday);
    return before === undefined || day === undefined || shapeOf(before) === shapeOf(day);
  });
}

/** Everything about a day but how far its runs go, and what is done for the first time. */
function shapeOf({ part, session, between, daily, runs, raceKm, other, easyAfterRace }: PlanDay): string {
  return JSON.stringify([
    part,
    session === null ? null : [session.exercises, session.afterRun, session.afterOther],
    between,
    daily,
    runs.map(({ kind }) => kind),
    raceKm,
    other,
    easyAfterRace,
  ]);
}

function amountOf({ km, minutes, walkRun }: PlannedRun) {
  return [km, minutes, walkRun?.cycles, walkRun?.runMinutes];
}
