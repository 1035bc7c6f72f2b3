/** A value that is outside what is plausible for this person: which rule says so, with its numbers; no words. */
/** Keys and indices into the consult, outermost first. */
export type ValuePath = readonly (string | number)[];

export interface Doubt {
  readonly rule: DoubtRule;
  /** Where the value stands in the consult. */
  readonly path: ValuePath;
  /** The value as it stands there; an entry under `confirmed` must repeat it. */
  readonly value: number | string;
  /** What the rule expects, in the unit of the value. */
  readonly least?: number | string;
  readonly most?: number | string;
  /** What the rule compared it with. */
  readonly inputs: Readonly<Record<string, number | string>>;
}

export type DoubtRule =
  | 'bodyMassIndex'
  | 'heightForAge'
  | 'symptomsForAge'
  | 'liftForMass'
  | 'repetitionsToFailure'
  | 'loadedRepetitions'
  | 'setPounds'
  | 'kettlebellPounds'
  | 'setTwice'
  | 'kitAmount'
  | 'minutesPerDay'
  | 'runningKm'
  | 'trainingForAge'
  | 'weekAboveRuns'
  | 'weekAboveLongest'
  | 'unknownActivity'
  | 'testHold'
  | 'testTwice'
  | 'testCount'
  | 'easierHurtsMore'
  | 'notYet'
  | 'longAgo'
  | 'farAhead'
  | 'seenWhen'
  | 'startLate'
  | 'reviewLate'
  | 'ageSince'
  | 'heightSince'
  | 'massSince'
  | 'loadSince'
  | 'otherSide'
  | 'otherCountry'
  | 'beforeLast'
  | 'painApart'
  | 'usualPain'
  | 'painlessAngle'
  | 'lowIrritability'
  | 'sideOfArea'
  | 'sideUntested'
  | 'soundLegHurts'
  | 'sorerLeg'
  | 'rangeOverCard'
  | 'repetitionSeconds'
  | 'weeksOff'
  | 'runsPerWeek'
  | 'stepsPerMin'
  | 'runsNot'
  | 'keepsNothing'
  | 'raceKm'
  | 'longestLogged'
  | 'sittingShort'
  | 'sittingTwice'
  | 'scoreTwice'
  | 'underAge'
  | 'childAtAge'
  | 'reviewSoon'
  | 'overrideReserve'
  | 'overrideTempo'
  | 'overrideRest'
  | 'overrideMinutes'
  | 'overrideWords'
  | 'overrideCount'
  | 'overrideLoad';

/** The doubt when a number lies outside; none inside, or where it was not recorded. */
export function outside(
  value: number | undefined,
  [least, most]: readonly [number, number],
  doubt: Omit<Doubt, 'value' | 'least' | 'most'>,
): Doubt[] {
  if (value === undefined || (value >= least && value <= most)) return [];
  const bounds = { ...(least > 0 ? { least } : {}), ...(Number.isFinite(most) ? { most } : {}) };
  return [{ ...doubt, value, ...bounds }];
}

/** The doubt when a number lies above. */
export function above(
  value: number | undefined,
  most: number,
  doubt: Omit<Doubt, 'value' | 'least' | 'most'>,
): Doubt[] {
  return outside(value, [-Infinity, most], doubt);
}
