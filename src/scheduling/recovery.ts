/** The recovery clock: how long after something hard the next hard thing may come (house rules 6). */
import type { Setting } from '../units/reason.ts';

/** `heavy`: slow heavy lifts and runs hard by their route · `energy-storage`: jumps, hills, strides, fast running. */
export type RecoveryKind = 'heavy' | 'energy-storage' | 'easy-run';

export interface RecoveryRules {
  readonly heavyHours: Setting;
  readonly energyStorageHours: Setting;
  readonly easyRunHours: Setting;
  readonly slowFactor: Setting;
  readonly weeksAwayCount: Setting;
  readonly noviceYears: Setting;
}

/** What slows this person's recovery; null for what the consult does not record. */
export interface Recoverer {
  readonly trainingYears: number | null;
  readonly weeksAway: number | null;
  readonly tired: boolean;
  readonly sleep: 'good' | 'fair' | 'poor';
}

export type Slower = 'novice' | 'away' | 'tired' | 'short-of-sleep';

export interface Recovery {
  readonly hours: number;
  readonly baseHours: number;
  /** 1 when nothing slows this person. Several things together lengthen once, not once each. */
  readonly factor: number;
  readonly slower: readonly Slower[];
  /** What would have to be known to be sure that nothing slows: it does not lengthen, but the record prints it. */
  readonly notRecorded: readonly ('trainingYears' | 'weeksAway')[];
}

/**
 * Hours from one hard thing of this kind to the next hard thing, whole, rounded up (the gentle end).
 * @example recoveryHours('heavy', rested, rules).hours // => 48
 */
export function recoveryHours(kind: RecoveryKind, person: Recoverer, rules: RecoveryRules): Recovery {
  return slowed(baseHours(kind, rules), person, rules);
}

/** The recovery of a stage's lifts: the longer of the stage's own spacing and the clock, then what slows the person. */
export function liftRecovery(
  kind: Exclude<RecoveryKind, 'easy-run'>,
  hoursBetween: number,
  person: Recoverer,
  rules: RecoveryRules,
): Recovery {
  return slowed(Math.max(hoursBetween, baseHours(kind, rules)), person, rules);
}

/** Days on the calendar that so many hours need, at the same time of day: 48 h from Monday is Wednesday. @example calendarDays(60) // => 3 */
export function calendarDays(hours: number): number {
  return Math.ceil(hours / 24);
}

/** How many hard days of a week can lie apart, and how far they must. */
export interface HardDays {
  readonly most: number;
  readonly hoursApart: number;
}

/** The most hard days that a week which repeats can hold with this person's recovery after each. @example hardDays(rested, rules) // => { most: 3, hoursApart: 48 } */
export function hardDays(person: Recoverer, rules: RecoveryRules): HardDays {
  const { hours } = recoveryHours('heavy', person, rules);
  return { most: Math.floor(7 / calendarDays(hours)), hoursApart: hours };
}

/** The hour of the week (0 is Monday 00:00, below 168) before which nothing hard may follow what ended at `hourOfWeek`. @example notBefore(8, 48) // => 56, Wednesday 08:00 */
export function notBefore(hourOfWeek: number, hours: number): number {
  return (hourOfWeek + hours) % 168;
}

function baseHours(kind: RecoveryKind, rules: RecoveryRules): number {
  const setting = {
    heavy: rules.heavyHours,
    'energy-storage': rules.energyStorageHours,
    'easy-run': rules.easyRunHours,
  }[kind];
  return setting.value;
}

function slowed(base: number, person: Recoverer, rules: RecoveryRules): Recovery {
  const slower = whatSlows(person, rules);
  const factor = slower.length > 0 ? rules.slowFactor.value : 1;
  // 48 × 1.25 may come out a hair above 60 in binary; a hair is not an hour.
  return {
    hours: Math.ceil(base * factor - 1e-9),
    baseHours: base,
    factor,
    slower,
    notRecorded: (['trainingYears', 'weeksAway'] as const).filter((key) => person[key] === null),
  };
}

function whatSlows(person: Recoverer, rules: RecoveryRules): Slower[] {
  const slower: Slower[] = [];
  if (person.trainingYears !== null && person.trainingYears < rules.noviceYears.value) slower.push('novice');
  if (person.weeksAway !== null && person.weeksAway >= rules.weeksAwayCount.value) slower.push('away');
  if (person.tired) slower.push('tired');
  if (person.sleep === 'poor') slower.push('short-of-sleep');
  return slower;
}
