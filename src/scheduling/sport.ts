/** What is hard besides sessions and runs, thing by thing: on which days it stands, and what of it is left out for now. */
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import type { Placement } from './weekSolver.ts';
import type { SortedWish } from './weekProblem.ts';
import type { Reason } from '../units/reason.ts';

export interface SportDays {
  readonly id: string;
  /** May it be left out for now? Where not, sessions may share its days. */
  readonly mayWait: boolean;
  /** Named days on which it stays, Monday first. */
  readonly namedDays: readonly Weekday[];
  /** Days which the plan chose for it, as none was named. */
  readonly chosenDays: readonly Weekday[];
  /** Named days on which it is left out for now. */
  readonly leftDays: readonly Weekday[];
  /** Times a week left out, with a named day or without. */
  readonly leftTimes: number;
}

/** One entry for each thing, those with named days first. */
export function sportDays({ fixed }: SortedWish, { events }: Placement): SportDays[] {
  const points = fixed.map((point, index) => ({ ...point, placed: events[index] ?? null }));
  return [...new Set(fixed.map(({ id }) => id))].map((id) => {
    const own = points.filter((point) => point.id === id);
    const left = own.filter(({ placed }) => placed === null);
    const placedDays = (named: boolean) =>
      WEEKDAYS.filter((_, day) =>
        own.some((point) => point.placed === day && (point.day !== null) === named),
      );
    return {
      id,
      mayWait: own.some(({ mayWait }) => mayWait === true),
      namedDays: placedDays(true),
      chosenDays: placedDays(false),
      leftDays: left.flatMap(({ day }) => (day === null ? [] : [day])),
      leftTimes: left.length,
    };
  });
}

/** The same as the inputs of a reason. */
export function leftOutInputs({
  id,
  namedDays,
  chosenDays,
  leftDays,
  leftTimes,
}: SportDays): Reason['inputs'] {
  const kept = [...namedDays, ...chosenDays];
  return {
    id,
    keptTimes: kept.length,
    keptDays: kept,
    leftTimes,
    leftDays,
  };
}

/** The days on which a sport stays in the week. */
export function keptDays({ namedDays, chosenDays }: SportDays): readonly Weekday[] {
  return [...namedDays, ...chosenDays];
}

/** Is all of it left out? */
export function isLeftOut(sport: SportDays): boolean {
  return sport.leftTimes > 0 && keptDays(sport).length === 0;
}
