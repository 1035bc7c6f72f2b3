/** What is left of a hold in a flare: shorter, fewer and once a day. */
import { roundDown } from '../units/round.ts';
import type { Dose } from './dose.ts';
import { GRAIN_SECONDS } from './hold.ts';

/** What a flare takes off, from the protocol. */
export interface FlareDoseRules {
  /** For example 0.5. */
  readonly setsFactor: number;
  readonly holdFactor: number;
}

export interface FlareDose {
  readonly sets: number;
  readonly holdSeconds: number;
  readonly timesPerDay: 1;
}

type Present = Pick<Dose, 'sets' | 'holdSeconds' | 'timesPerDay'>;

/**
 * Less than the present hold (rules 11.5): sets and seconds by their factors, rounded down (one set of 5 s at the
 * least), once a day. Null where that leaves nothing less than there is, and for what is not held: it is left out then.
 * @example flareDose({ sets: 4, holdSeconds: 30, timesPerDay: 2 }, { setsFactor: 0.5, holdFactor: 0.5 }) // => 2 holds of 15 s, once
 */
export function flareDose(
  { sets, holdSeconds, timesPerDay }: Present,
  rules: FlareDoseRules,
): FlareDose | null {
  if (holdSeconds === null) return null;
  const less: FlareDose = {
    sets: Math.min(sets, Math.max(1, roundDown(sets * rules.setsFactor, 1))),
    holdSeconds: Math.min(
      holdSeconds,
      Math.max(GRAIN_SECONDS, roundDown(holdSeconds * rules.holdFactor, GRAIN_SECONDS)),
    ),
    timesPerDay: 1,
  };
  return heldSeconds(less) < heldSeconds({ sets, holdSeconds, timesPerDay }) ? less : null;
}

function heldSeconds({ sets, holdSeconds, timesPerDay }: Present): number {
  return sets * (holdSeconds ?? 0) * timesPerDay;
}
