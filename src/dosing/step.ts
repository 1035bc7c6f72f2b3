/** What one step of the ladder works with: the cards and loads there are, how far it may go, and the tries it offers. */
import type { ChangeKind } from './dose.ts';
import type { Amount, Cap, ProgressionEntry, Limit, Prescribed } from './rung.ts';

/** One card as a step can set it. Degrees and kilograms ascending; no ranges where it cannot be graded; loads start at the lightest it can be done with. */
export interface LadderCard {
  readonly card: string;
  readonly rangesDeg: readonly number[];
  readonly loadsKg: readonly number[];
  readonly legs: 'together' | 'each';
}

/** One slot of the session. `cards`: the chosen one, then the harder ones it may go on to. */
export interface LadderExercise {
  readonly when: 'session' | 'between' | 'daily';
  readonly cards: readonly [LadderCard, ...LadderCard[]];
  readonly start: Prescribed;
  readonly progression: readonly ProgressionEntry[];
  /** The stage's own limit of the load, null where there is none. */
  readonly atMostKg: number | null;
  /** The weight is felt for: `loadKg` is the greatest it may be, not what is carried, and a step takes that to so many times itself at most. Null or left out: `loadKg` is what is carried. */
  readonly feltGrowth?: number | null;
  readonly setUpSeconds: number;
  readonly sideChangeSeconds: number;
}

/** How far one step may go. */
export interface StepRules {
  readonly rangeLeastDeg: number;
  readonly rangeMostDeg: number;
  /** A load step over this share means repetitions to `repetitionsFirst`, then the next load from `repetitionsBack`. */
  readonly fineLoadShare: number;
  readonly repetitionsFirst: number;
  readonly repetitionsBack: number;
}

/** House rules of a step: 5 to 15° of range, over 10 % of load repetitions to 20 and back at 8 [choice; 10 %: ACSM 2009, read]. */
export const STEP_RULES: StepRules = {
  rangeLeastDeg: 5,
  rangeMostDeg: 15,
  fineLoadShare: 0.1,
  repetitionsFirst: 20,
  repetitionsBack: 8,
};

/** Where an exercise stands when its next step is looked for. */
export interface Standing {
  readonly exercise: LadderExercise;
  readonly at: Prescribed;
  /** The most it has carried on this ladder. */
  readonly heaviestKg: number;
  readonly rules: StepRules;
  /** The cap that bars a state of it, null when admitted. */
  readonly capOn: (at: Prescribed) => Cap | null;
}

/** What an entry of a progression offers: it is where it should end, something stops it outright, or ways to go on, most wanted first and gentlest last. */
export type Tries =
  | { readonly kind: 'end' }
  | { readonly kind: 'stopped'; readonly wished: Amount; readonly stoppedBy: Limit }
  | {
      readonly kind: 'tries';
      readonly change: ChangeKind;
      readonly wished: Amount;
      readonly attempts: Iterable<Prescribed>;
      /** What is tried where the minutes leave none of the attempts; left out where nothing is. */
      readonly forLackOfMinutes?: Tries;
    };

/** Seconds by which holds grow and shrink [choice]. */
export const HOLD_GRAIN_SECONDS = 5;

/** Sets that are left when sets give way [choice]. */
export const LEAST_SETS = 2;

export const END: Tries = { kind: 'end' };

/** Stopped outright, with what was wished. */
export function stopped(stoppedBy: Limit, wished: Amount): Tries {
  return { kind: 'stopped', wished, stoppedBy };
}

/** Ways to take a step. */
export function tries(change: ChangeKind, wished: Amount, attempts: Iterable<Prescribed>): Tries {
  return { kind: 'tries', change, wished, attempts };
}

/** The card an exercise is done with on a rung. */
export function cardOf(exercise: LadderExercise, at: Prescribed): LadderCard {
  const card = exercise.cards.find((one) => one.card === at.card);
  if (!card) throw new RangeError(`card ${at.card} is not one of the exercise ${at.exercise}`);
  return card;
}

/** Loads of a card not above the present one, heaviest first. */
export function lighter({ loadsKg }: LadderCard, fromKg: number): readonly number[] {
  return loadsKg.filter((kg) => kg <= fromKg).reverse();
}

/** The same with ever fewer repetitions (down to 8) or shorter holds (down to 5 s). */
export function* eased(at: Prescribed, rules: StepRules): Iterable<Prescribed> {
  yield at;
  const { repetitions: count, holdSeconds } = at.dose;
  if (holdSeconds !== null) {
    for (let seconds = holdSeconds - HOLD_GRAIN_SECONDS; seconds > 0; seconds -= HOLD_GRAIN_SECONDS)
      yield { ...at, dose: { ...at.dose, holdSeconds: seconds } };
  } else {
    for (let fewer = (count ?? 0) - 1; fewer >= rules.repetitionsBack; fewer--)
      yield { ...at, dose: { ...at.dose, repetitions: fewer } };
  }
}
