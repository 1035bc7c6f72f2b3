/** What is counted in a set, and what a set is: codes that every language has its own words for. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Dose } from '../../dosing/dose.ts';

/** Jumps are counted by their landings, drills by their steps, all else by repetitions. */
export type Counted = 'repetition' | 'landing' | 'step';

/** What a set of it is. */
export type SetKind = 'set' | 'hold' | 'stride';

/** @example countedAs({ kind: 'energy-storage', positions: ['ballistic'] }) // => 'landing' */
export function countedAs({ kind, positions }: Pick<ExerciseCard, 'kind' | 'positions'>): Counted {
  if (kind === 'running-drill') return 'step';
  const jumps = kind === 'energy-storage' && positions.every((position) => position === 'ballistic');
  return jumps ? 'landing' : 'repetition';
}

/** A running drill of one repetition is one run, with a walk back: its sets are the strides. */
export function isStrides({ repetitions }: Dose, counted: Counted): boolean {
  return counted === 'step' && repetitions === 1;
}

/** @example setKind({ ...dose, holdSeconds: 30 }, 'repetition') // => 'hold' */
export function setKind(dose: Dose, counted: Counted): SetKind {
  if (dose.holdSeconds !== null) return 'hold';
  return isStrides(dose, counted) ? 'stride' : 'set';
}
