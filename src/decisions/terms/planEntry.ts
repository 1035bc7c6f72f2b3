/** The dated plan as codes and numbers. */
import type { IsoDate } from '../../units/date.ts';
import type { Weekday } from '../../units/weekday.ts';
import type { Stress } from '../../scheduling/newStress.ts';
import type { RunKind } from '../../scheduling/run.ts';
import type { Grows, Turn } from '../../scheduling/turns.ts';

/** One day of the dated plan. Week, log, calendar and running table are views of it. */
export interface PlanEntry {
  readonly on: IsoDate;
  readonly weekday: Weekday;
  /** From 1, seven days each from the start. */
  readonly week: number;
  readonly step: number;
  readonly sessions: readonly {
    readonly exercises: readonly PlannedExercise[];
    /** Done for the first time, after the plan has begun without it. */
    readonly begins: readonly PlannedExercise[];
    /** Rests on this day, or has not begun. */
    readonly without: readonly PlannedExercise[];
  }[];
  readonly between: readonly PlannedExercise[];
  readonly daily: readonly PlannedExercise[];
  readonly runs: readonly {
    readonly kind: RunKind;
    readonly km: number | null;
    readonly minutes: number | null;
    readonly walkRun: {
      readonly cycles: number;
      readonly walkMinutes: number;
      readonly runMinutes: number;
    } | null;
  }[];
  readonly races: readonly { readonly km: number }[];
  readonly other: readonly string[];
  readonly easyAfterRace: boolean;
  readonly free: boolean;
}

export interface PlannedExercise {
  readonly slot: string;
  readonly card: string;
}

export interface PlanGrowth {
  readonly week: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly grows: Grows | null;
  readonly because: Turn['because'];
  readonly begins: Stress | null;
}
