/** Sport that may wait and found no room in the week: what of it is kept, and what is left out for now. */
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import type { Placement } from './place.ts';
import type { SortedWish } from './puzzle.ts';
import type { Reason } from './reason.ts';
import type { FixedPoint } from './wish.ts';

export interface LeftOut {
  readonly id: string;
  /** Days on which it stays, Monday first. */
  readonly keptDays: readonly Weekday[];
  /** Named days on which it is left out. */
  readonly leftDays: readonly Weekday[];
  /** Times a week left out, with a named day or without. */
  readonly leftTimes: number;
}

/** One entry for each thing of which anything was left out. */
export function leftOutOf(
  wished: readonly FixedPoint[],
  { fixed }: Pick<SortedWish, 'fixed'>,
  { events }: Placement,
): LeftOut[] {
  const ids = [...new Set(wished.map(({ id }) => id))];
  return ids.flatMap((id) => {
    const own = fixed.map((point, index) => ({ ...point, placed: events[index] ?? null }));
    const left = own.filter((point) => point.id === id && point.placed === null);
    if (left.length === 0) return [];
    const isKept = (day: number) => own.some((point) => point.id === id && point.placed === day);
    return [
      {
        id,
        keptDays: WEEKDAYS.filter((_, day) => isKept(day)),
        leftDays: left.flatMap(({ day }) => (day === null ? [] : [day])),
        leftTimes: left.length,
      },
    ];
  });
}

/** The same as plain figures and text. */
export function leftOutInputs({ id, keptDays, leftDays, leftTimes }: LeftOut): Reason['inputs'] {
  return {
    id,
    keptTimes: keptDays.length,
    keptDays: keptDays.join(' '),
    leftTimes,
    leftDays: leftDays.join(' '),
  };
}
