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
  readonly hillsAndFast: HillsAndFast;
  /** Hard things the week holds anyway; they are never dropped. */
  readonly fixed: readonly FixedPoint[];
  /** Days on which the work between sessions may stand; empty when there is none. */
  readonly betweenDays: readonly Weekday[];
  /** Is there work for every day? */
  readonly daily: boolean;
}

export interface WishedLifts {
  readonly perWeek: number;
  /** `light`: holds of the first stage, which keep their own spacing and stay off the recovery clock. */
  readonly kind: 'light' | Exclude<RecoveryKind, 'easy-run'>;
  readonly hoursBetween: number;
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
}

/** May hills and fast running share a week? Where they may, still not on neighbouring days. */
export type HillsAndFast = 'never-one-week' | 'never-neighbours';
