/** The next session after the last one that was done. */
import { addDays, type IsoDate, weekdayOf } from '../units/date.ts';
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import type { DayPlan, WeekPlan } from './plan.ts';

export interface NextSession {
  /** The first day on which the recovery clock allows a session. */
  readonly earliestOn: IsoDate;
  /** The day to do it: the planned one, or the first open one after a late session. */
  readonly nextOn: IsoDate;
  /** Days to leave clear after the last session. */
  readonly clearDays: number;
}

/**
 * The next session after one done on `lastDoneOn`: on the planned day when there was time to recover, otherwise on
 * the first day after it that suits; so a late session moves the rest and nothing is caught up. Null when the plan
 * holds no session.
 */
export function nextAfter(plan: WeekPlan, lastDoneOn: IsoDate): NextSession | null {
  if (!plan.days.some(({ session }) => session)) return null;
  const earliestOn = addDays(lastDoneOn, plan.liftGapDays);
  const planned = firstFrom(addDays(lastDoneOn, 1), (weekday) => dayOf(plan, weekday).session);
  const late = planned < earliestOn;
  const nextOn = late ? firstFrom(earliestOn, (weekday) => plan.openDays.includes(weekday)) : planned;
  return { earliestOn, nextOn, clearDays: plan.liftGapDays - 1 };
}

function dayOf(plan: WeekPlan, weekday: Weekday): DayPlan {
  return plan.days[WEEKDAYS.indexOf(weekday)] as DayPlan;
}

// A week holds every weekday, so seven days are enough for any day the plan has.
function firstFrom(start: IsoDate, suits: (weekday: Weekday) => boolean): IsoDate {
  const days = [0, 1, 2, 3, 4, 5, 6].map((day) => addDays(start, day));
  return days.find((day) => suits(weekdayOf(day))) ?? start;
}
