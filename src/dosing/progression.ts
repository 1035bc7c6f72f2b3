/** The published ladder of repetition maxima. */
import type { Mark } from '../units/source.ts';

export interface WeeksOfSets {
  readonly weeks: readonly [number, number];
  readonly sets: number;
  readonly repetitionMaximum: number;
  readonly mark: Mark;
}

/** Heavy slow resistance as in Beyer 2015, AJSM 43:1704, from a clinical reference graphic; weeks 6-8 were not on it. */
export const HEAVY_SLOW_RESISTANCE: readonly WeeksOfSets[] = [
  { weeks: [1, 1], sets: 3, repetitionMaximum: 15, mark: 'secondary' },
  { weeks: [2, 3], sets: 3, repetitionMaximum: 12, mark: 'secondary' },
  { weeks: [4, 5], sets: 4, repetitionMaximum: 10, mark: 'secondary' },
  { weeks: [6, 8], sets: 4, repetitionMaximum: 8, mark: 'memory' },
  { weeks: [9, 12], sets: 4, repetitionMaximum: 6, mark: 'secondary' },
];

/** The rungs of a repetition-maximum dose, lightest first. */
export const REPETITION_MAXIMA: readonly number[] = HEAVY_SLOW_RESISTANCE.map((row) => row.repetitionMaximum);

/** Where the ladder of repetition maxima ends unless the protocol says otherwise: 15RM to 8RM (summary of Goom 2016, secondary). */
export const LAST_REPETITION_MAXIMUM = 8;
