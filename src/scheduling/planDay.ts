/** One day of the dated plan: codes and numbers, no words. */
import type { IsoDate } from '../units/date.ts';
import type { Weekday } from '../units/weekday.ts';
import type { PlannedRun } from './plannedRun.ts';

export interface PlanDay {
  readonly on: IsoDate;
  readonly weekday: Weekday;
  /** From 1, seven days each from the start. */
  readonly week: number;
  /** Which part of the plan it belongs to, from 0; a protocol that goes by weeks has several. */
  readonly part: number;
  readonly session: PlannedSession | null;
  /** Exercises (slot names) for the days between the sessions, and for every day. */
  readonly between: readonly string[];
  readonly daily: readonly string[];
  readonly runs: readonly PlannedRun[];
  /** Kilometres of the race run on this day. */
  readonly raceKm: number | null;
  /** Other things, by name, and those of them that are not hard. */
  readonly other: readonly string[];
  readonly easyOther: readonly string[];
  /** One of the easy days after a race. */
  readonly easyAfterRace: boolean;
}

export interface PlannedSession {
  /** Slot names, in the order of the session. */
  readonly exercises: readonly string[];
  /** Done for the first time, after the plan has begun without it. */
  readonly begins: readonly string[];
  /** Not in it yet: its turn has not come. */
  readonly without: readonly string[];
  /** It follows a run, or other hard things, on the same day. */
  readonly afterRun: boolean;
  readonly afterOther: boolean;
}

/** Whether nothing at all is planned. */
export function isFree({ session, between, daily, runs, raceKm, other }: PlanDay): boolean {
  return (
    session === null &&
    raceKm === null &&
    [between, daily, runs, other].every((entries) => entries.length === 0)
  );
}
