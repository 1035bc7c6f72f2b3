/** Steps and books: a range graded by the heights there are in the house. */
import type { Body } from './body.ts';
import type { Caps } from './cap.ts';
import { closePose } from './closure.ts';
import { fractionFrom, type MovementEnd } from './gentle.ts';
import type { Movement } from './movement.ts';
import type { Posture } from './pose.ts';
import { bisect, largestRange, rangeTo, type AdmittedRange, type Barred } from './range.ts';
import { SAMPLES } from './sweep.ts';
import { poseAt } from './trajectory.ts';

/** A range that a step decides: the hip bend it takes to stand with one foot on it and the other on the floor. */
export interface AdmittedStep extends AdmittedRange {
  readonly heightM: number;
}

/** `step`: the house has none that the card's pose can reach. */
export type NoStep = Barred | { readonly admitted: false; readonly barredBy: 'step' };

/**
 * The highest of the steps (metres) whose climb the caps admit under this load, with the part of the movement it uses;
 * else what bars the lowest. `decidedBy` is the cap that refused the next higher step, or `full` when none was refused.
 */
export function largestStep(
  movement: Movement,
  body: Body,
  loadKg: number,
  caps: Caps,
  heightsM: readonly number[],
): AdmittedStep | NoStep {
  const range = largestRange(movement, body, loadKg, caps);
  if (!range.admitted) return range;
  const reachable = heightsM
    .map((heightM) => ({ heightM, distance: distanceAt(movement, body, loadKg, heightM, range.gentleEnd) }))
    .filter((step): step is { heightM: number; distance: number } => step.distance !== null)
    .sort((left, right) => right.heightM - left.heightM);
  const step = reachable.find(({ distance }) => distance <= range.fraction);
  if (!step) return refusedBy(range, reachable.length > 0);
  const { heightM, distance } = step;
  return {
    ...range,
    heightM,
    ...rangeTo(distance, range.gentleEnd, movement, body, loadKg, caps.angle),
    decidedBy: step === reachable[0] ? 'full' : range.decidedBy,
  };
}

/** Metres by which the working sole stands above the lowest point of the other foot. */
export function stepHeightM({ work, other }: Posture): number {
  return work.mid.y - Math.min(other.heel.y, other.fore.y);
}

/** Distance from the gentler end, 0 to 1, at which the pose stands on a step of this height; null when it never does. */
function distanceAt(
  movement: Movement,
  body: Body,
  loadKg: number,
  heightM: number,
  gentleEnd: MovementEnd,
): number | null {
  const isBelow = (distance: number) => {
    const posture = closePose(movement, poseAt(movement, fractionFrom(gentleEnd, distance)), body, loadKg);
    return posture !== null && stepHeightM(posture) <= heightM + TOUCH_M;
  };
  if (!isBelow(0)) return null;
  const steps = SAMPLES - 1;
  for (let step = 1; step <= steps; step++)
    if (!isBelow(step / steps)) return bisect(isBelow, (step - 1) / steps, step / steps);
  const last = closePose(movement, poseAt(movement, fractionFrom(gentleEnd, 1)), body, loadKg);
  return last !== null && stepHeightM(last) >= heightM - TOUCH_M ? 1 : null;
}

// A card posed for a step of 20 cm stands on one of 20 cm, whatever the last digit of its pose: two millimetres.
const TOUCH_M = 0.002;

function refusedBy({ decidedBy }: AdmittedRange, anyReachable: boolean): NoStep {
  if (!anyReachable || decidedBy === 'full') return { admitted: false, barredBy: 'step' };
  return { admitted: false, barredBy: decidedBy };
}
