/** How long a session takes, with both sides, rests, set-up and change of sides. */
import { repetitionSeconds, type TimedDose } from './work.ts';

/** What a session needs to know of one exercise to be timed. */
export interface TimedExercise {
  readonly exercise: string;
  readonly dose: TimedDose;
  /** `each`: one leg after the other, so a set is done twice. */
  readonly legs: 'together' | 'each';
  /** Seconds to get ready for it, and the pause before it. */
  readonly setUpSeconds: number;
  readonly sideChangeSeconds: number;
}

/** Seconds once through the exercises: work, rests between sets, both sides, set-up. */
export function sessionSeconds(exercises: readonly TimedExercise[]): number {
  return exercises.reduce((sum, exercise) => sum + exerciseSeconds(exercise), 0);
}

/** Seconds on a day, each exercise as often as it is done. */
export function daySeconds(exercises: readonly TimedExercise[]): number {
  return exercises.reduce((sum, exercise) => sum + exercise.dose.timesPerDay * exerciseSeconds(exercise), 0);
}

/** Seconds once through one exercise. The rest comes after both sides: while one works the other does not count as resting. */
export function exerciseSeconds({ dose, legs, setUpSeconds, sideChangeSeconds }: TimedExercise): number {
  const set = setSeconds(dose);
  const bothSides = legs === 'each' ? 2 * set + sideChangeSeconds : set;
  return setUpSeconds + dose.sets * bothSides + (dose.sets - 1) * dose.restSeconds;
}

// A hold's tempo is the way into it and out of it.
function setSeconds(dose: TimedDose): number {
  if (dose.holdSeconds !== null) return dose.tempo.goSeconds + dose.holdSeconds + dose.tempo.backSeconds;
  return (dose.repetitions ?? 0) * repetitionSeconds(dose.tempo);
}
