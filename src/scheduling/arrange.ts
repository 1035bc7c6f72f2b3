/** Every way to put hard runs and other hard things on the days of a week that repeats. */
import { ahead, daysIn, type DayMask } from './circle.ts';

export interface HardEvent {
  /** Days to the next hard thing. */
  readonly recoveryDays: number;
  readonly allowed: DayMask;
  /** `stands`: is never given up · `waits`: may be left out for now, and no lift shares its day · `run`: may be dropped, and a lift follows it readily. */
  readonly hold: 'stands' | 'waits' | 'run';
  /** Its day is named. */
  readonly pinned: boolean;
  /** Runs of different families keep at least this far apart (2: no neighbours, 8: never in one week); null: no family. */
  readonly family: { readonly name: string; readonly daysApart: number } | null;
}

/** How many events of each hold are given up. */
export interface GivenUpCount {
  readonly waits: number;
  readonly run: number;
}

/**
 * Every way to put the events on days so that no two disturb each other, with exactly so many given up (null). Events
 * that stand on named days are not judged among themselves: the planner can neither move them nor ask for less.
 */
export function arrangements(events: readonly HardEvent[], givenUp: GivenUpCount): (number | null)[][] {
  const found: (number | null)[][] = [];
  const days: (number | null)[] = [];
  const settle = (index: number, left: GivenUpCount): void => {
    const event = events[index];
    if (event === undefined) {
      if (left.waits === 0 && left.run === 0) found.push([...days]);
      return;
    }
    for (const day of daysIn(event.allowed)) {
      if (agrees(event, day, events, days) && !mirrors(event, day, events[index - 1], days[index - 1]))
        take(index, day, left);
    }
    if (event.hold !== 'stands' && left[event.hold] > 0)
      take(index, null, { ...left, [event.hold]: left[event.hold] - 1 });
  };
  const take = (index: number, day: number | null, left: GivenUpCount): void => {
    days.push(day);
    settle(index + 1, left);
    days.pop();
  };
  settle(0, givenUp);
  return found;
}

/** Days of the hard runs, and of the other hard things. */
export interface Taken {
  readonly runs: DayMask;
  readonly others: DayMask;
}

/** The days that one way to put the events takes. */
export function takenDays(events: readonly HardEvent[], days: readonly (number | null)[]): Taken {
  const ofHold = (run: boolean) =>
    days.reduce<DayMask>(
      (mask, day, index) =>
        day !== null && (events[index]?.hold === 'run') === run ? mask | (1 << day) : mask,
      0,
    );
  return { runs: ofHold(true), others: ofHold(false) };
}

function agrees(
  event: HardEvent,
  day: number,
  events: readonly HardEvent[],
  days: readonly (number | null)[],
): boolean {
  if (event.recoveryDays > 7 && !immovable(event)) return false;
  return days.every((otherDay, index) => {
    const other = events[index];
    if (other === undefined || otherDay === null) return true;
    if (immovable(other) && immovable(event)) return true;
    if (otherDay === day) return false;
    const from = ahead(otherDay, day);
    const to = ahead(day, otherDay);
    return (
      from >= other.recoveryDays && to >= event.recoveryDays && Math.min(from, to) >= apart(event, other)
    );
  });
}

function immovable({ hold, pinned }: HardEvent): boolean {
  return hold === 'stands' && pinned;
}

function apart(one: HardEvent, other: HardEvent): number {
  if (one.family === null || other.family === null || one.family.name === other.family.name) return 0;
  return Math.max(one.family.daysApart, other.family.daysApart);
}

// Two things of a kind swapped are the same week: only the one in the order of the days, what is given up last, is looked at.
function mirrors(
  event: HardEvent,
  day: number,
  before: HardEvent | undefined,
  dayBefore: number | null | undefined,
): boolean {
  if (before === undefined || dayBefore === undefined || !alike(event, before)) return false;
  return dayBefore === null || day < dayBefore;
}

function alike(one: HardEvent, other: HardEvent): boolean {
  return (
    one.hold === other.hold &&
    one.recoveryDays === other.recoveryDays &&
    one.allowed === other.allowed &&
    one.family?.name === other.family?.name
  );
}
