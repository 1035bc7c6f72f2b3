/** One rung of the ladder: what every exercise of the session is just then, and how it came about. */
import type { ChangeKind } from './dose.ts';
import type { TimedDose } from './work.ts';

/** The state of one exercise on a rung. */
export interface Prescribed {
  /** The slot's name or number; stays the same when a step goes on to a harder card. */
  readonly exercise: string;
  readonly card: string;
  readonly dose: TimedDose;
  /** Hip bend at the squeezed end; null where the range cannot be graded or is not modelled. */
  readonly rangeDeg: number | null;
  readonly loadKg: number;
  readonly daysPerWeek: number;
}

/** One entry of a slot's progression. `by` and `to` in the unit of what changes; null: by the kit, to the stage's end. */
export interface ProgressionEntry {
  readonly change: ChangeKind;
  readonly by: number | null;
  readonly to: number | null;
}

/** The caps of a stage and of a person, as the model words them. */
export const CAPS = [
  'hipFlexion',
  'kneeFlexion',
  'ankleDorsiflexion',
  'compression',
  'tension',
  'demand',
  'provokedAngle',
] as const;
export type Cap = (typeof CAPS)[number];

/** What can stand against a step. */
export type Limit =
  | Cap
  /** Over the growth of a step in peak squeeze, hip moment, squeeze and pull over the session, work, kilograms of an unmodelled card. */
  | 'compressionGrowth'
  | 'hipMomentGrowth'
  | 'compressionTimeGrowth'
  | 'tensionTimeGrowth'
  | 'workGrowth'
  | 'loadGrowth'
  | 'weekGrowth'
  | 'cardsAboveHalfCap'
  | 'minutes'
  /** No heavier load in the kit · the stage keeps to the tested load. */
  | 'kit'
  | 'testedLoad'
  /** The next range is more than a step's degrees away · the card has but one range. */
  | 'rangeStep'
  | 'fixedRange'
  | 'noHarderCard'
  /** One of the two cards has no pose, so that they cannot be compared. */
  | 'unmodelled'
  /** This kind of dose does not change so · no end was given to go to. */
  | 'kind'
  | 'noTarget'
  /** Would lead back to a rung already left · the ladder is as long as ladders get. */
  | 'alreadyLeft'
  | 'steps';

/** A value that changes: degrees, kilograms, repetitions, seconds, sets, days, or the id of a card. */
export type Amount = number | string;

/** One exercise's part in a step. */
export interface StepChange {
  readonly exercise: string;
  readonly from: Amount;
  readonly to: Amount;
  /** What the progression would have liked. */
  readonly wished: Amount;
  /** What stood against the whole of it, so that less was taken or something eased; null when nothing did. */
  readonly stoppedBy: Limit | null;
  /** What was taken down so that the step stays small enough. */
  readonly eased: readonly {
    readonly change: ChangeKind;
    /** Null where one of two cards cannot be graded. */
    readonly from: Amount | null;
    readonly to: Amount | null;
  }[];
}

/** An entry of a progression that could not move at this step. */
export interface Stopped {
  readonly exercise: string;
  readonly change: ChangeKind;
  readonly wished: Amount;
  readonly stoppedBy: Limit;
}

export interface Rung {
  /** From 1. */
  readonly step: number;
  readonly exercises: readonly Prescribed[];
  /** The one kind of thing that is new; null on the first rung. */
  readonly change: ChangeKind | null;
  readonly changed: readonly StepChange[];
  readonly stopped: readonly Stopped[];
}

/** The value of what a change changes; null where the exercise has none of it. */
export function amountOf(change: ChangeKind, { card, dose, ...at }: Prescribed): Amount | null {
  switch (change) {
    case 'range':
      return at.rangeDeg;
    case 'load':
      return at.loadKg;
    case 'repetitions':
      return dose.repetitions;
    case 'hold':
      return dose.holdSeconds;
    case 'sets':
      return dose.sets;
    case 'tempo':
      return dose.tempo.goSeconds + dose.tempo.backSeconds;
    case 'days':
      return at.daysPerWeek;
    case 'lever':
      return card;
  }
}
