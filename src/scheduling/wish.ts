/** What a week should hold, before it is known whether it fits. */
import type { Weekday } from '../units/weekday.ts';
import type { HardFeature } from './hardRun.ts';
import type { RecoveryKind } from './recovery.ts';
import type { RunKind } from './run.ts';

export interface WeekWish {
  readonly lifts: WishedLifts;
  /** Most wanted first: what has to be dropped is dropped from the end. */
  readonly runs: readonly WishedRun[];
  /** Days on which a run is possible. */
  readonly runDays: readonly Weekday[];
  /** Id of the run that is longer than all others, which keeps clear of other hard things; none where they are alike. */
  readonly longestRun?: string | null;
  /** How many run days may follow each other; left out or null: as many as there are. */
  readonly runRow?: RunRow | null;
  readonly hillsAndFast: HillsAndFast;
  /** Hard things the week holds besides. */
  readonly fixed: readonly FixedPoint[];
  /** Things that are not hard, on their days: they stand in the week and take nothing from it. */
  readonly easyFixed?: readonly EasyPoint[];
  /** The weekday on which the programme starts; left out where that is not known. */
  readonly startDay?: Weekday;
  /** Days on which the work between sessions may stand; empty when there is none. */
  readonly betweenDays: readonly Weekday[];
  /** Is there work for every day? */
  readonly daily: boolean;
}

export interface RunRow {
  readonly most: number;
  /** Runs a week that the person has as a habit: so many may stand although more days than `most` follow each other. */
  readonly ownRuns: number;
}

export interface WishedLifts {
  readonly perWeek: number;
  /** `light`: holds of the first stage, which keep their own spacing and stay off the recovery clock. */
  readonly kind: 'light' | Exclude<RecoveryKind, 'easy-run'>;
  readonly hoursBetween: number;
  /** What keeps a session clear of the next run or sport: the stage's own spacing, as between two sessions, or the clock alone. */
  readonly clearOfOthers?: 'stage' | 'clock';
  /** Days with time for a session. */
  readonly days: readonly Weekday[];
}

export interface WishedRun {
  readonly id: string;
  readonly kind: RunKind;
  readonly features: readonly HardFeature[];
}

/** Another hard activity. `day` is null when it may be on any day. */
export interface FixedPoint {
  readonly id: string;
  readonly day: Weekday | null;
  readonly recovery: Exclude<RecoveryKind, 'easy-run'>;
  /** May it be left out for now where nothing else makes room? Otherwise it stands, and a session may follow it on its day. */
  readonly mayWait?: boolean;
}

export interface EasyPoint {
  readonly id: string;
  readonly day: Weekday;
}

/** May hills and fast running share a week? Where they may, still not on neighbouring days. */
export type HillsAndFast = 'never-one-week' | 'never-neighbours';
