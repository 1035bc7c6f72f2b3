/**
 * The push or drag of the feet between two supports, which statics leaves open.
 *
 * People settle it by effort: of all pairs the floor can hold, the one that costs the working leg least. The cost is
 * convex in the pair while the ankle moment keeps its sign, so its slope rises and its root is the answer.
 */
import { activeForcesOf, costSlope, type Leg } from './leg.ts';
import type { LegMoments } from './moment.ts';

/** Coefficient of friction a foot or back can count on, dry shoe on mat or floor [choice]. */
export const FRICTION = 0.3;

/** Where to stop: the slope down to rounding, or the force known far below anything that could be shown. */
const FLAT = 1e-13;
const WIDTH_N = 1e-9;
const MOST_STEPS = 80;

/**
 * The friction force in newtons within ± `mostN` that costs the leg least, forward on its foot positive.
 * `momentsAt` gives the leg's moments for a force; they are affine in it.
 */
export function leastEffortN(leg: Leg, momentsAt: (frictionN: number) => LegMoments, mostN: number): number {
  if (mostN <= 0) return 0;
  const still = momentsAt(0);
  const rate = minus(momentsAt(1), still);
  let shares = activeForcesOf(leg, still);
  const at = (frictionN: number) => {
    const moments = plus(still, rate, frictionN);
    shares = activeForcesOf(leg, moments, shares);
    return { cost: shares.cost, slope: costSlope(leg, moments, rate, shares) };
  };
  // Where the ankle moment changes sign the gastrocnemii come in and the cost bends downward: each side is convex.
  const turnN = -still.ankleNm / rate.ankleNm;
  const sides =
    Math.abs(turnN) < mostN
      ? [
          [-mostN, turnN],
          [turnN, mostN],
        ]
      : [[-mostN, mostN]];
  const lows = sides.map(([from, to]) => rootOf((n) => at(n).slope, from as number, to as number));
  if (lows.length === 1) return lows[0] as number;
  return lows.reduce((best, low) => (at(low).cost < at(best).cost ? low : best));
}

/** Where the rising function crosses zero between `low` and `high`, or the end nearest to it (Illinois false position). */
function rootOf(slopeAt: (frictionN: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [atFrom, atTo] = [slopeAt(from), slopeAt(to)];
  if (atFrom >= 0) return from;
  if (atTo <= 0) return to;
  const flat = FLAT * (atTo - atFrom);
  for (let step = 0; step < MOST_STEPS && to - from > WIDTH_N; step++) {
    const middle = (from * atTo - to * atFrom) / (atTo - atFrom);
    const inside = middle > from && middle < to ? middle : (from + to) / 2;
    const atInside = slopeAt(inside);
    if (Math.abs(atInside) <= flat) return inside;
    if (atInside < 0) {
      [from, atFrom] = [inside, atInside];
      atTo /= 2;
    } else {
      [to, atTo] = [inside, atInside];
      atFrom /= 2;
    }
  }
  return (from + to) / 2;
}

function minus(left: LegMoments, right: LegMoments): LegMoments {
  return plus(left, right, -1);
}

function plus(base: LegMoments, rate: LegMoments, times: number): LegMoments {
  return {
    hipNm: base.hipNm + times * rate.hipNm,
    kneeNm: base.kneeNm + times * rate.kneeNm,
    ankleNm: base.ankleNm + times * rate.ankleNm,
  };
}
