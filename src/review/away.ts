/** Days missed: from the first planned session that was not done to the next thing that was (house rules 5). */
import { afterMissed } from '../scheduling/flare.ts';
import { daysBetween, type IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import { isDone, type SessionDay } from './sessions.ts';

export interface Away {
  readonly from: IsoDate;
  /** The day on which something was done again, or the end of the period. */
  readonly to: IsoDate;
  readonly days: number;
  readonly isOver: boolean;
  readonly start: 'one-step-back' | 'stage-start';
}

/** The breaks that are long enough to change the step, in order; the work of the days between counts as something done. */
export function breaksOf(sessions: readonly SessionDay[], period: Period): readonly Away[] {
  const done = [
    ...new Set([
      ...sessions.filter((one) => one.done).map(({ on }) => on),
      ...period.entries.filter((one) => one.kind === 'between' && isDone(one)).map(({ date }) => date),
    ]),
  ].sort();
  const stops = [...done.map((on) => ({ on, isOver: true })), { on: period.until, isOver: false }];
  return stops.flatMap(({ on, isOver }, index) => {
    const after = done[index - 1] ?? null;
    const from = sessions.find(
      (one) => one.planned && !one.done && (after === null || one.on > after) && one.on < on,
    )?.on;
    if (from === undefined) return [];
    const days = daysBetween(from, on);
    const { start } = afterMissed(days, false, period.protocol.missedDays);
    return start === 'same-step' ? [] : [{ from, to: on, days, isOver, start }];
  });
}
