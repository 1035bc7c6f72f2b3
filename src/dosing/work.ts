/** How much work a dose is: seconds under tension, repetitions, kilograms. */
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

/** Repetitions (or contacts) of one leg, once through the dose; a hold counts as one. */
export function repetitionsOf(dose: Dose): number {
  return dose.sets * (dose.repetitions ?? 1);
}

/** Repetitions of one leg on a day with all these doses, each as often as it is done. */
export function repetitionsPerDay(doses: readonly Dose[]): number {
  return doses.reduce((sum, dose) => sum + repetitionsOf(dose) * dose.timesPerDay, 0);
}

/**
 * Volume load in kilograms: repetitions times load, summed over sets (BMJ Military Health review, table 1, read).
 * @example volumeLoadKg([{ repetitions: 10, loadKg: 55 }, { repetitions: 8, loadKg: 65 }, { repetitions: 6, loadKg: 75 }]) // => 1520
 */
export function volumeLoadKg(
  sets: readonly { readonly repetitions: number; readonly loadKg: number }[],
): number {
  return sets.reduce((sum, set) => sum + set.repetitions * set.loadKg, 0);
}
