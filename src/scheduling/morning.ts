/** What the morning check and the pain during exercise say about today (house rules 5). */
import { painLimits, type PainPerson, type PainRules } from './painLimits.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface MorningRules {
  readonly carryOnOver: Setting;
  readonly sameAgainOver: Setting;
  readonly easeBackAt: Setting;
  readonly contactAfterDays: Setting;
  readonly contactWhenRisingDays: Setting;
}

/** From the most permissive to the least. */
export const MORNING_ANSWERS = ['carry-on', 'same-again', 'ease-back', 'contact'] as const;
export type MorningAnswer = (typeof MORNING_ANSWERS)[number];

export type MorningCode =
  | 'within-usual'
  | 'over-usual-once'
  | 'over-usual-twice'
  | 'far-over-usual'
  | 'pain-too-high'
  | 'not-settled'
  | 'rising';

export interface MorningDecision {
  readonly answer: MorningAnswer;
  /** Everything that holds, the one that decided first. */
  readonly because: readonly Reason<MorningCode>[];
}

/**
 * The answer to this morning's score (0-10) against the person's usual. `before`: the mornings before today, the latest
 * last, null where none was written down; such a morning counts like the one before it. More pain never gives a more
 * permissive answer.
 * @example morningDecision(4, 2, [2, 2, 2], rules).answer // => 'same-again'
 */
export function morningDecision(
  today: number,
  usual: number,
  before: readonly (number | null)[],
  rules: MorningRules,
): MorningDecision {
  const mornings = [...filled(before), today];
  const bands = morningBands(usual, rules);
  const unsettledDays = lastUnsettled(mornings, bands.carryOnTo);
  const found: [boolean, MorningAnswer, Reason<MorningCode>][] = [
    [
      unsettledDays >= rules.contactAfterDays.value,
      'contact',
      reason('not-settled', { unsettledDays, usual }, rules.contactAfterDays.mark),
    ],
    [
      isRising(mornings, usual, rules),
      'contact',
      reason('rising', { days: rules.contactWhenRisingDays.value, usual }, rules.contactWhenRisingDays.mark),
    ],
    [
      today >= bands.easeBackFrom && today >= rules.easeBackAt.value,
      'ease-back',
      reason('pain-too-high', { today, usual, from: bands.easeBackFrom }, rules.easeBackAt.mark),
    ],
    [
      today >= bands.easeBackFrom,
      'ease-back',
      reason('far-over-usual', { today, usual, from: bands.easeBackFrom }, rules.sameAgainOver.mark),
    ],
    [
      unsettledDays >= 2,
      'ease-back',
      reason('over-usual-twice', { today, usual, unsettledDays }, rules.sameAgainOver.mark),
    ],
    [
      unsettledDays === 1,
      'same-again',
      reason('over-usual-once', { today, usual }, rules.sameAgainOver.mark),
    ],
  ];
  const holding = found.filter(([holds]) => holds);
  return {
    answer: holding[0]?.[1] ?? 'carry-on',
    because:
      holding.length > 0
        ? holding.map(([, , because]) => because)
        : [reason('within-usual', { today, usual }, rules.carryOnOver.mark)],
  };
}

/** Scores by what follows, for one person; `sameAgain` is null when no score lies between. */
export interface MorningBands {
  readonly usual: number;
  readonly carryOnTo: number;
  readonly sameAgain: readonly [from: number, to: number] | null;
  /** Above 10 where no score is high enough. */
  readonly easeBackFrom: number;
}

/**
 * The bands of a morning score: up to usual + 1 carry on, usual + 2 once the same again, above that ease back. From the
 * fixed score on ease back at once as well, but for usual and for one morning at usual + 2, however high usual is: so a
 * usual day always reads carry on (house rules 11.5).
 * @example morningBands(2, rules).easeBackFrom // => 5
 */
export function morningBands(usual: number, rules: MorningRules): MorningBands {
  const { carryOnOver, sameAgainOver, easeBackAt } = rules;
  const carryOnTo = Math.min(MOST_SCORE, usual + carryOnOver.value);
  const underFixed = Math.max(easeBackAt.value - 1, carryOnTo + 1);
  const sameAgainTo = Math.min(MOST_SCORE, usual + sameAgainOver.value, underFixed);
  return {
    usual,
    carryOnTo,
    sameAgain: carryOnTo < sameAgainTo ? [carryOnTo + 1, sameAgainTo] : null,
    easeBackFrom: Math.max(carryOnTo, sameAgainTo) + 1,
  };
}

const MOST_SCORE = 10;

// A morning without a score says nothing new: the last one known goes on; before the first there is none.
function filled(scores: readonly (number | null)[]): number[] {
  const known: number[] = [];
  for (const score of scores) {
    const value = score ?? known[known.length - 1];
    if (value !== undefined) known.push(value);
  }
  return known;
}

/** Mornings in a row above what is still all right, up to today; 0 when today is all right. */
function lastUnsettled(mornings: readonly number[], carryOnTo: number): number {
  const settled = mornings.map((score) => score <= carryOnTo).lastIndexOf(true);
  return mornings.length - 1 - settled;
}

/**
 * Rising for the whole time: the first half lies above usual, the second above the first, and by now the mean is over
 * usual by as much as a single morning may be. Slower than a day's ups and downs, and caught before the band is left.
 */
function isRising(mornings: readonly number[], usual: number, rules: MorningRules): boolean {
  const days = rules.contactWhenRisingDays.value;
  if (mornings.length < days || days < 2) return false;
  const last = mornings.slice(-days);
  const half = Math.floor(days / 2);
  const first = mean(last.slice(0, half));
  const second = mean(last.slice(half));
  return first > usual && second > first && second >= usual + rules.carryOnOver.value;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

export interface PainGate {
  /** May the exercise go on as it is? Otherwise do less of it, or stop it from `stop` on. */
  readonly allowed: boolean;
  readonly stop: boolean;
  readonly next: Exclude<MorningAnswer, 'contact'>;
  readonly because: Reason<
    | 'pain-small'
    | 'pain-near-usual'
    | 'pain-over-limit'
    | 'pain-over-ceiling'
    | 'pain-as-usual'
    | 'pain-over-usual'
  >;
}

/**
 * What pain during exercise (0-10) allows: up to the fixed limit, or usual + 1 below the ceiling. Above the fixed limit
 * nothing grows next time even where the pain is allowed; above the ceiling the exercise stops and eases back. Where
 * usual is high, or irritability, usual is limit and ceiling in one.
 * @example painGate(4, { usualPain: 2, irritability: 'low' }, rules).next // => 'same-again'
 */
export function painGate(during: number, person: PainPerson, rules: PainRules): PainGate {
  const { atMost, neverAbove: ceiling, usualOnly } = painLimits(person, rules);
  const usual = person.usualPain;
  if (usualOnly) {
    const allowed = during <= usual;
    return {
      allowed,
      stop: !allowed,
      next: allowed ? 'carry-on' : 'ease-back',
      because: reason(
        allowed ? 'pain-as-usual' : 'pain-over-usual',
        { during, usual },
        rules.usualOnlyFrom.mark,
      ),
    };
  }
  const small = Math.min(rules.duringAtMost.value, ceiling);
  const inputs = { during, usual, smallTo: small, nearUsualTo: atMost, ceiling };
  if (during > ceiling) {
    const because = reason('pain-over-ceiling', inputs, rules.neverAbove.mark);
    return { allowed: false, stop: true, next: 'ease-back', because };
  }
  if (during <= small) {
    const because = reason('pain-small', inputs, rules.duringAtMost.mark);
    return { allowed: true, stop: false, next: 'carry-on', because };
  }
  const allowed = during <= atMost;
  const because = reason(allowed ? 'pain-near-usual' : 'pain-over-limit', inputs, rules.overUsualAtMost.mark);
  return { allowed, stop: false, next: 'same-again', because };
}
