/** Why the first session comes late, in the patient's words: it should come soon after the start (house rules 6, the protocol's `firstSessionDays`). */
import type { WeekPlan } from '../../../scheduling/plan.ts';
import type { IsoDate } from '../../../units/date.ts';
import type { Reason } from '../../../units/reason.ts';
import { listText, weekdayAndDay } from '../plain.ts';

/** The first session of the dated plan, and which day of it that is, from 1. */
export interface FirstSession {
  readonly on: IsoDate;
  readonly day: number;
}

/**
 * A sentence or two where the week itself puts the first session late; none where it comes in time, or where a race has
 * moved it, which the race's own lines say.
 * @example 'Your first session comes on Tuesday 9 March. An earlier day would leave too little rest beside football and the other hard days of your week.'
 */
export function lateFirstTexts(week: WeekPlan, first: FirstSession | null): string[] {
  const late = week.gaveUp.find(({ code }) => code === 'late-first');
  if (late === undefined || first === null || late.inputs['onDay'] !== first.day) return [];
  return [`Your first session comes on ${weekdayAndDay(first.on)}. ${whyText(late, week)}`];
}

function whyText({ inputs }: Reason, { days }: WeekPlan): string {
  if (inputs['because'] === 'no-day-with-time') return 'You have no time for one before that.';
  const hard = days.flatMap(({ other, easyOther }) => other.filter((id) => !easyOther.includes(id)));
  return hard.length === 0
    ? 'An earlier day would leave too little rest between the hard days of your week.'
    : `An earlier day would leave too little rest beside ${listText([...new Set(hard), 'the other hard days of your week'])}.`;
}
