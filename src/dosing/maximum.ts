/** What one set to failure says of the greatest load that can be lifted once. */
import { refuseDose, type DoseRefusal } from './doseRefusal.ts';

// w load, r repetitions to failure: maximum = w x factor(r). The names of the usual handbooks [secondary].
const FACTOR = {
  epley: (r: number) => 1 + r / 30, // Epley 1985
  brzycki: (r: number) => 36 / (37 - r), // Brzycki 1993
} as const;

/** The two a clinic chooses between. */
export type ClinicFormula = keyof typeof FACTOR;

/** At 15 repetitions seven published formulas already part by 11 % either way, and Brzycki has a pole at 37 [choice]. */
export const MOST_TO_FAILURE = 15;

// 20 repetitions with 5 in reserve; further down no formula was meant to go [choice].
const MOST_WANTED = 25;

export type MaximumAnswer =
  { readonly maximumKg: number; readonly formula: ClinicFormula } | DoseRefusal<'tooManyRepetitions'>;

/**
 * The one-repetition maximum in kilograms from a load (kg, 0 or more) and whole repetitions to failure (1 or more).
 * One repetition is the load itself, which Epley misses. Over 15 repetitions: none.
 * @example oneRepetitionMaximum(60, 8, 'epley') // => { maximumKg: 76, formula: 'epley' }
 */
export function oneRepetitionMaximum(
  loadKg: number,
  repetitionsToFailure: number,
  formula: ClinicFormula,
): MaximumAnswer {
  if (repetitionsToFailure > MOST_TO_FAILURE) return refuseDose('tooManyRepetitions');
  return { maximumKg: loadKg * factor(repetitionsToFailure, formula), formula };
}

/**
 * The factor from a load lifted `testedToFailure` times (1-15) to one that can be lifted `wantedToFailure` times.
 * Up to 15 by the clinic's formula; from 16 to 25 both are asked and the lower ratio holds [choice: the formulas
 * are stretched there, so the gentler one decides]. Over 25 wanted or 15 tested: null.
 * @example effortRatio(10, 10, 'brzycki') // => 1
 */
export function effortRatio(
  testedToFailure: number,
  wantedToFailure: number,
  formula: ClinicFormula,
): number | null {
  if (testedToFailure > MOST_TO_FAILURE || wantedToFailure > MOST_WANTED) return null;
  return wantedToFailure > MOST_TO_FAILURE
    ? gentlerRatio(testedToFailure, wantedToFailure)
    : ratio(testedToFailure, wantedToFailure, formula);
}

/** As `effortRatio`, always the lower of Epley's and Brzycki's; both numbers 1 to 36. */
export function gentlerRatio(fromToFailure: number, toFailure: number): number {
  return Math.min(ratio(fromToFailure, toFailure, 'epley'), ratio(fromToFailure, toFailure, 'brzycki'));
}

function ratio(from: number, to: number, formula: ClinicFormula): number {
  return factor(from, formula) / factor(to, formula);
}

function factor(repetitions: number, formula: ClinicFormula): number {
  if (!(repetitions >= 1)) throw new RangeError(`repetitions to failure ${repetitions}, expected 1 or more`);
  return repetitions === 1 ? 1 : FACTOR[formula](repetitions);
}
