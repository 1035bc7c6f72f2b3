/** What is done in one session with one exercise. */

/** `repetition-maximum`: as heavy as the repetitions allow · `contacts`: jumps and landings counted one by one. */
export const DOSE_KINDS = [
  'hold',
  'slow',
  'repetition-maximum',
  'eccentric',
  'contacts',
  'mobility',
] as const;
export type DoseKind = (typeof DOSE_KINDS)[number];

/** What a rung of the ladder may change; one of these a step. */
export const CHANGE_KINDS = [
  'range',
  'load',
  'repetitions',
  'hold',
  'sets',
  'tempo',
  'days',
  'lever',
] as const;
export type ChangeKind = (typeof CHANGE_KINDS)[number];

/** Seconds: the way out, stillness at the gentle end, the way back. */
export interface Tempo {
  readonly goSeconds: number;
  readonly holdSeconds: number;
  readonly backSeconds: number;
}

/** One exercise's dose in one session. `repetitions` and `holdSeconds`: exactly one of them is a number. */
export interface Dose {
  readonly kind: DoseKind;
  readonly sets: number;
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  readonly tempo: Tempo | null;
  readonly restSeconds: number;
  readonly timesPerDay: number;
  /** Repetitions left in hand; null for holds and mobility. */
  readonly reserve: number | null;
}
