/** From a tested set to the load of the wanted one: the lower of external kilograms and hip moment. */
import { effortRatio, type ClinicFormula } from './maximum.ts';
import { refuseDose, type DoseRefusal } from './doseRefusal.ts';
import { unusable, type TestedSet, type Unusable, type WantedSet } from './tested.ts';

export interface LoadRules {
  readonly formula: ClinicFormula;
  /** A test that hurt more is not used. */
  readonly painAtMost: number;
  /** A test of more repetitions (with those in reserve) is kept as capacity. At most 15. */
  readonly capacityAbove: number;
  /** False under 18: no maximum is worked out, the tested load is kept or none given. */
  readonly maximumAllowed: boolean;
}

/** Largest hip moment of the card at the tested range, N·m: without a weight and with the tested one. */
export interface HipMomentPair {
  readonly unloadedNm: number;
  readonly testedNm: number;
}

export interface LoadReason {
  /** `capacity`: the tested load itself, no maximum behind it · `limit`: the stage's own `atMostKg`. */
  readonly decidedBy: 'kilograms' | 'hipMoment' | 'capacity' | 'limit';
  readonly testedToFailure: number;
  readonly wantedToFailure: number;
  /** Wanted effort over tested effort; 1 for capacity. */
  readonly ratio: number;
  readonly byKilogramsKg: number;
  /** Null where no moments were given or the test was without a weight. */
  readonly byHipMomentKg: number | null;
  /** False: the range of the test was not written down, and is taken as the card's. */
  readonly rangeRecorded: boolean;
}

export type NoLoadReason =
  | Unusable
  | {
      /** `capacity`: more is wanted than was shown, and no maximum may be worked out · `unloaded`: even without a weight it is more than the test allows. */
      readonly rule: 'capacity' | 'unloaded' | 'tooManyRepetitions';
      readonly testedToFailure: number;
      readonly wantedToFailure: number;
    };

export type LoadAnswer = { readonly loadKg: number; readonly why: LoadReason } | DoseRefusal<NoLoadReason>;

/**
 * The load in kilograms for the wanted set, not yet rounded to a kit. Repetitions plus reserve count as repetitions
 * to failure on both sides. The ratio of effort scales the kilograms and, where `moment` is given, the hip moment
 * (body weight and load together); the lower load holds. A test over `capacityAbove` gives its own load for
 * no more than was shown. None, with the reason, where the test may not be used or nothing can be known from it.
 */
export function loadFor(
  tested: TestedSet,
  wanted: WantedSet,
  rules: LoadRules,
  moment: HipMomentPair | null,
): LoadAnswer {
  const barred = unusable(tested, wanted, rules.painAtMost);
  if (barred) return refuseDose(barred);
  const testedToFailure = tested.repetitions + tested.reserve;
  const wantedToFailure = wanted.repetitions + wanted.reserve;
  const effort = { testedToFailure, wantedToFailure };
  if (testedToFailure > rules.capacityAbove || !rules.maximumAllowed) {
    return wantedToFailure > testedToFailure
      ? refuseDose({ rule: 'capacity', ...effort })
      : lowest(tested, wanted, { ...effort, ratio: 1 }, null, 'capacity');
  }
  const ratio = effortRatio(testedToFailure, wantedToFailure, rules.formula);
  if (ratio === null) return refuseDose({ rule: 'tooManyRepetitions', ...effort });
  return lowest(tested, wanted, { ...effort, ratio }, moment, 'kilograms');
}

type Effort = Pick<LoadReason, 'testedToFailure' | 'wantedToFailure' | 'ratio'>;

function lowest(
  tested: TestedSet,
  wanted: WantedSet,
  effort: Effort,
  moment: HipMomentPair | null,
  base: 'kilograms' | 'capacity',
): LoadAnswer {
  const byKilogramsKg = tested.loadKg * effort.ratio;
  const byHipMomentKg = moment && scaledByMoment(tested.loadKg, effort.ratio, moment);
  // Less effort than the test with nothing to take off: the body alone is too much.
  const nothingToTakeOff = tested.loadKg === 0 && effort.ratio < 1;
  if (nothingToTakeOff || (byHipMomentKg !== null && byHipMomentKg < 0))
    return refuseDose({ rule: 'unloaded', ...effort });
  const limits = [
    { decidedBy: base, kg: byKilogramsKg },
    { decidedBy: 'hipMoment', kg: byHipMomentKg ?? Infinity },
    { decidedBy: 'limit', kg: wanted.atMostKg ?? Infinity },
  ] as const;
  const { kg, decidedBy } = limits.reduce((least, next) => (next.kg < least.kg ? next : least));
  const rangeRecorded = tested.rangeDeg !== null;
  return { loadKg: kg, why: { decidedBy, ...effort, byKilogramsKg, byHipMomentKg, rangeRecorded } };
}

// At a fixed pose the hip moment is affine in the load: moment = unloaded + slope x load. May be below zero.
function scaledByMoment(
  testedKg: number,
  ratio: number,
  { unloadedNm, testedNm }: HipMomentPair,
): number | null {
  const slope = (testedNm - unloadedNm) / testedKg;
  // Where the weight does not turn the hip (slope 0 or against it) the moment says nothing of the load.
  if (testedKg === 0 || slope <= 0) return null;
  return (testedNm * ratio - unloadedNm) / slope;
}
