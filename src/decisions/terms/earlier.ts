/** What the next revision needs to know of the one before: what it asked for, not how it was said. */
import type { IsoDate } from '../../units/date.ts';
import type { RunKind } from '../../scheduling/run.ts';
import type { RunLedTo } from '../../scheduling/afterReview.ts';
import type { CellName } from './cell.ts';
import type { PlanEntry } from './planEntry.ts';
import type { StageName } from './stageName.ts';

export interface Earlier {
  readonly revision: number;
  readonly seenOn: IsoDate;
  /** Protocol id. */
  readonly protocol: string;
  readonly stage: StageName;
  readonly step: number;
  /** The present step, in the order of the session. */
  readonly exercises: readonly EarlierExercise[];
  readonly plan: readonly PlanEntry[];
  /** Left out where no log was kept. */
  readonly logged?: LoggedLoads;
}

/** What was really lifted, by the log. */
export interface LoggedLoads {
  /** The step that the review led to. */
  readonly step: number;
  /** The review lets the step go on: the load may grow by one step. */
  readonly grows: boolean;
  readonly exercises: readonly LoggedLoad[];
  /** Null where no run was written down with its kilometres. */
  readonly longestRun: LoggedRun | null;
  /** What the review of running led to; null where it goes on, or nothing was run. */
  readonly running: ReviewedRunning | null;
  /** The last mornings, as many as going on looks at; null where none of them was written down. */
  readonly mornings: LoggedMornings | null;
}

/** The longest run that the 30 days before the review can hold. */
export interface LoggedRun {
  readonly revision: number;
  /** By the log, km. */
  readonly loggedKm: number;
  /** By the log, and by the consult before where its own 30 days reach into these, km. */
  readonly mostKm: number;
}

/** Less than going on, by the review of the revision before. */
export interface ReviewedRunning {
  readonly revision: number;
  readonly move: RunLedTo;
  /** What decided it: runs that hurt, the mornings, a break, a warning sign, or what is missing. */
  readonly why: 'runs' | 'mornings' | 'away' | 'alarm' | 'missing';
  /** The hardest run that was planned; null where none was. */
  readonly mostBefore: RunKind | null;
}

export interface LoggedMornings {
  readonly written: number;
  readonly worst: number;
  /** The last of them. */
  readonly until: IsoDate;
}

export interface LoggedLoad {
  readonly card: string;
  /** The last day on which it was borne. */
  readonly on: IsoDate;
  readonly loadKg: number;
}

export interface EarlierExercise {
  readonly card: string;
  /** Degrees, kilograms, seconds and counts as the record gives them; null where the cell does not apply. */
  readonly values: Readonly<Partial<Record<CellName, number | string | null>>>;
}
