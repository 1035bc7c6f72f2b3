/** What a review says, as codes and numbers: the move, what decided it, and what has to be asked. */
import type { LogEntry } from '../content/log/log.ts';
import type { StageName } from '../decisions/terms/stageName.ts';
import type { Missing } from '../dosing/goingOn.ts';
import type { MorningBands, MorningCode, PainGate } from '../scheduling/morning.ts';
import type { IsoDate } from '../units/date.ts';
import type { Source } from '../units/source.ts';

/** From the most permissive to the least. */
export const MOVES = ['moveOn', 'stay', 'easeBack', 'startAgain', 'beSeen'] as const;
export type Move = (typeof MOVES)[number];

/** The less permissive of the two. */
export function gentler(a: Move, b: Move): Move {
  return MOVES.indexOf(a) >= MOVES.indexOf(b) ? a : b;
}

/** The gentlest of the moves. */
export function gentlestOf(grounds: readonly { readonly move: Move }[]): Move {
  return grounds.reduce<Move>((worst, { move }) => gentler(worst, move), 'moveOn');
}

export type RuleCode =
  | 'alarm'
  | MorningCode
  /** Two weeks above usual, if not rising. */
  | 'above-usual'
  /** Back to usual since, but the dose has not been done since. */
  | 'not-done-since'
  | 'away'
  | 'long-away'
  | PainGate['because']['code']
  | 'pain-not-written'
  /** Planned sessions of which no line says anything. */
  | 'session-not-written'
  /** The same of what is done between the sessions, and of runs. */
  | 'between-not-written'
  | 'run-not-written'
  /** Earned but for mornings without a score, each of which may have been a bad one. */
  | 'morning-not-written'
  | `missing-${Missing['what']}`
  | 'all-met'
  | 'nothing-written'
  | 'contradiction'
  | 'unread'
  | 'outside'
  | 'since-log'
  | 'stage-met'
  | 'last-stage'
  | 'exercise-holds'
  | 'runs-done'
  | 'runs-few'
  | 'runs-none'
  | 'sitting-reached'
  | 'sitting-short'
  | 'sitting-none';

/** One ground with the entries of the log that show it, and the rule's source. */
export interface Because {
  readonly rule: RuleCode;
  /** The move it alone would lead to. */
  readonly move: Move;
  readonly inputs: Readonly<Record<string, number | string | readonly string[] | null>>;
  readonly source: Source;
  readonly entries: readonly LogEntry[];
}

/** A question for the review, because the log does not say. */
export interface Ask {
  readonly code:
    | 'nothing-written'
    | 'mornings'
    /** The morning of the review itself, which no leaflet asks for. */
    | 'today'
    | 'sessions'
    | 'between'
    | 'pain'
    | 'contradiction'
    | 'unread'
    | 'outside'
    | 'away'
    | 'contact'
    | 'since-log'
    | 'tests'
    | 'runs'
    | 'sitting';
  readonly days: readonly IsoDate[];
  readonly inputs: Readonly<Record<string, number | string>>;
}

export interface ExerciseReview {
  readonly card: string;
  readonly decision: Move;
  readonly because: readonly Because[];
  readonly done: DoneDose;
}

/** What was done last and tolerated; null where it was not written down. */
export interface DoneDose {
  readonly on: IsoDate | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly seconds: number | null;
  readonly loadKg: number | null;
}

/** Running or sitting, by its own rules. */
export interface HabitReview {
  readonly decision: Move;
  readonly because: readonly Because[];
}

export interface GoalReview {
  readonly what: string;
  readonly on: IsoDate | null;
  readonly doneTimes: number | null;
  readonly neededTimes: number;
}

/** One week of what was planned and done. */
export interface ReviewWeek {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly sessions: PlannedAndDone;
  readonly runDays: PlannedAndDone;
  /** Null where none were written down. */
  readonly km: number | null;
  /** Scores of the morning check, least and most; null where none were written down. */
  readonly mornings: { readonly least: number; readonly most: number; readonly written: number } | null;
  /** The heaviest and the lightest load of each exercise, kilograms. */
  readonly loads: readonly { readonly card: string; readonly leastKg: number; readonly mostKg: number }[];
  /** The longest sitting; null where none was written down. */
  readonly sittingMinutes: number | null;
}

export interface PlannedAndDone {
  readonly planned: number;
  readonly done: number;
}

export interface ReviewSeries {
  readonly sessions: readonly {
    readonly on: IsoDate;
    readonly planned: boolean;
    readonly done: boolean;
    readonly inFull: boolean;
    /** A line speaks of it, whatever it says. */
    readonly written: boolean;
  }[];
  /** Every morning; null where none was written down. */
  readonly mornings: readonly { readonly on: IsoDate; readonly score: number | null }[];
  readonly bands: MorningBands;
  /** Exercises with a weight, in the order of the session. */
  readonly loads: readonly LoadSeries[];
  readonly runs: { readonly planned: readonly RunDay[]; readonly done: readonly RunDay[] };
  readonly sitting: {
    readonly toleranceMinutes: number;
    readonly goalMinutes: number | null;
    readonly done: readonly { readonly on: IsoDate; readonly minutes: number }[];
  };
}

export interface LoadSeries {
  readonly card: string;
  readonly plannedKg: number;
  /** Of both sides each; days in order. */
  readonly done: readonly { readonly on: IsoDate; readonly loadKg: number }[];
}

/** A day's running; null where it is not told in this unit. */
export interface RunDay {
  readonly on: IsoDate;
  readonly km: number | null;
  readonly minutes: number | null;
}

export interface Review {
  readonly alias: string;
  /** The revision that is looked back on. */
  readonly revision: number;
  readonly from: IsoDate;
  /** The day after the last one that is judged. */
  readonly until: IsoDate;
  readonly decision: Move;
  /** Of the next revision; `before`: of this one. */
  readonly stage: StageName;
  readonly step: number;
  readonly before: { readonly stage: StageName; readonly step: number };
  readonly because: readonly Because[];
  readonly exercises: readonly ExerciseReview[];
  /** Null for somebody who does not run; of sitting where nothing is counted. */
  readonly running: HabitReview | null;
  readonly sitting: HabitReview | null;
  readonly goals: readonly GoalReview[];
  readonly asks: readonly Ask[];
  readonly weeks: readonly ReviewWeek[];
  readonly series: ReviewSeries;
  /** Kilometres: the longest run of the last thirty days, and a week's mean; null where none was written down. */
  readonly runsDone: { readonly longestKm: number; readonly weeklyKm: number } | null;
  readonly counts: {
    readonly sessionsDone: number;
    readonly sessionsPlanned: number;
    /** Sessions done in this stage, those of the revisions before included. */
    readonly stageSessions: number;
    /** Of the mornings that were written down; null where none was. */
    readonly worstMorning: number | null;
    readonly lastMorning: number | null;
  };
}
