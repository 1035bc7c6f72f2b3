/**
 * Lifting the weight from where it stands, before the exercise and after it.
 *
 * Modelled as a bend of both hips with two thirds as much of the knees, feet flat, back straight, arms hanging,
 * balanced with the weight in hand: between a stiff stoop and an upright squat, as people lift when nobody tells them
 * how. A squat would look kinder, but the model under-estimates the hamstrings in tasks led by the knee, so the lift
 * may not rely on it.
 */
import type { Body } from './body.ts';
import type { Caps } from './cap.ts';
import { closePose } from './closure.ts';
import { loadingAt, type Loading } from './loading.ts';
import type { Movement } from './movement.ts';
import { bisect, largestRange, type Barred } from './range.ts';
import { poseAt } from './trajectory.ts';

/** The lift as a movement: from standing down to the floor [choice]. */
const LIFT: Movement = {
  supports: ['both.mid'],
  solve: { unknown: 'trunk', kind: 'balance', range: [-30, 120] },
  mode: 'active',
  horizontal: 'none',
  loadAt: 'hands',
  start: { trunk: 0, arms: 'hang', work: { hip: 5, knee: 10, pitch: 0 } },
  end: { trunk: 50, arms: 'hang', work: { hip: 130, knee: 95, pitch: 0 } },
  range: 'continuous',
};

/**
 * The loading at the lowest point of lifting `loadKg` from `heightM` above the floor: standing when the hands hang as
 * low as that anyway, the deepest bend when they do not reach down so far with a straight back. Null when the body
 * cannot balance with the load. The house asks only whether the caps admit it; by this the checks see that the hands do
 * come to the weight, and how far the body bends for it.
 */
export function liftFrom(heightM: number, body: Body, loadKg: number): Loading | null {
  const isAbove = (t: number) => handHeightM(body, loadKg, t) >= heightM;
  if (!isAbove(0)) return loadingAt(LIFT, body, loadKg, 0);
  return loadingAt(LIFT, body, loadKg, isAbove(1) ? 1 : bisect(isAbove, 0, 1));
}

/** What bars lifting `loadKg` from `heightM` above the floor; null when the caps admit it. */
export function liftBarredBy(
  heightM: number,
  body: Body,
  loadKg: number,
  caps: Caps,
): Barred['barredBy'] | null {
  const range = largestRange(LIFT, body, loadKg, caps);
  if (!range.admitted) return range.barredBy;
  if (range.decidedBy === 'full' || heightM >= handHeightM(body, loadKg, range.interval.to)) return null;
  return range.decidedBy;
}

/** Hands above the floor at a fraction of the lift; where the body cannot balance it has not reached down. */
function handHeightM(body: Body, loadKg: number, t: number): number {
  const posture = closePose(LIFT, poseAt(LIFT, t), body, loadKg);
  return posture ? posture.hands.y - posture.work.mid.y : Infinity;
}
