/** How long a dose is under tension. */
import type { Dose, Tempo } from './dose.ts';

/** A dose whose tempo is settled: the protocol's own, or the card's. */
export type TimedDose = Dose & { readonly tempo: Tempo };

// A landing has no tempo; it is counted as a second [choice].
const CONTACT_SECONDS = 1;

/** Seconds of one repetition. @example repetitionSeconds({ goSeconds: 3, holdSeconds: 0, backSeconds: 3 }) // => 6 */
export function repetitionSeconds(tempo: Tempo): number {
  return tempo.goSeconds + tempo.holdSeconds + tempo.backSeconds;
}

/** Seconds under tension of one set on one leg: the hold, or repetitions times their tempo. */
function tensionSecondsOfSet(dose: TimedDose): number {
  if (dose.holdSeconds !== null) return dose.holdSeconds;
  return (dose.repetitions ?? 0) * (repetitionSeconds(dose.tempo) || CONTACT_SECONDS);
}

/** Seconds under tension of one leg, once through the dose. 3 sets of 15 at 6 s are 270 s. */
export function tensionSeconds(dose: TimedDose): number {
  return dose.sets * tensionSecondsOfSet(dose);
}
