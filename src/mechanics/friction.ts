/**
 * The push or drag of the feet between two supports, which statics leaves open.
 *
 * People settle it by effort: of all pairs the floor can hold, the one that costs the working leg least. The cost is
 * convex in the pair while the ankle moment keeps its sign, so its slope rises and its root is the answer.
 */
import { costSlope, effortOf, type Leg } from './leg.ts';
import type { LegMoments } from './moment.ts';
import type { Effort } from './sharing.ts';

/** Coefficient of friction a foot or back can count on, dry shoe on mat or floor [choice]. */
export const FRICTION = 0.3;

/** Where to stop: the slope down to rounding, or the force known far below anything that could be shown. */
const FLAT = 1e-13;
const WIDTH_N = 1e-9;
const MOST_STEPS = 80;

/**
 * The friction force in newtons within ± `mostN` that costs the leg least, forward on its foot positive.
 * `still`: the leg's moments without it; `pushed`: under one newton of it. They go up in a straight line.
 */
export function leastEffortN(leg: Leg, still: LegMoments, pushed: LegMoments, mostN: number): number {
  if (mostN <= 0) return 0;
  const rate = minus(pushed, still);
  let effort: Effort | null = null;
  const at = (frictionN: number) => {
    const moments = plus(still, rate, frictionN);
    effort = effortOf(leg, moments, effort);
    return { cost: effort.cost, slope: costSlope(leg, moments, rate, effort) };
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

/**
 * Where the rising function crosses zero between `low` and `high`, or the end nearest to it. It is made of straight
 * pieces: the line through two points of one piece meets its root. A line that leads out of what is left is no help,
 * and the middle is looked at.
 */
function rootOf(slopeAt: (frictionN: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [last, atLast] = [low, slopeAt(low)];
  if (atLast >= 0) return low;
  let [before, atBefore] = [high, slopeAt(high)];
  if (atBefore <= 0) return high;
  const flat = FLAT * (atBefore - atLast);
  for (let step = 0; step < MOST_STEPS && to - from > WIDTH_N; step++) {
    const onLine = last - (atLast * (last - before)) / (atLast - atBefore);
    const next = onLine > from && onLine < to ? onLine : (from + to) / 2;
    [before, atBefore] = [last, atLast];
    [last, atLast] = [next, slopeAt(next)];
    if (Math.abs(atLast) <= flat) return last;
    if (atLast < 0) from = last;
    else to = last;
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
