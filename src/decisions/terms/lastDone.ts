/** What a person did last of one exercise. */
import type { Tempo } from '../../dosing/dose.ts';
import type { StageName } from './stageName.ts';

export interface LastDone {
  readonly card: string;
  readonly revision: number;
  readonly stage: StageName;
  readonly sets: number;
  /** Exactly one of the two is a number. */
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  /** Null where the exercise has no tempo. */
  readonly tempo: Tempo | null;
  readonly reserve: number | null;
  /** Null where it was felt for. */
  readonly loadKg: number | null;
  readonly rangeDeg: number | null;
  readonly timesPerDay: number;
}
