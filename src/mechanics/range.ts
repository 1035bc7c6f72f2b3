/** How far a movement may go under the caps, measured from its gentler end. */
import type { Body } from './body.ts';
import { brokenCap, demandsUpTo, type Caps, type Limit } from './cap.ts';
import { fractionFrom, gentleEndOf, type MovementEnd, type Interval } from './gentle.ts';
import { angleAtDeg, type JointAngle } from './jointAngle.ts';
import type { Movement } from './movement.ts';
import { SAMPLES, intervalFrom } from './sweep.ts';

/** What ended a range: a cap, a pose that can no longer rest, or nothing (`full`). */
export type RangeDecision = Limit | 'pose' | 'full';

export interface AdmittedRange {
  readonly admitted: true;
  readonly gentleEnd: MovementEnd;
  /** Share of the whole movement, 0 to 1; 1 for a hold. */
  readonly fraction: number;
  /** The part of the movement that is used. */
  readonly interval: Interval;
  /** Guarded angle of the working leg at the far end, degrees. */
  readonly angleDeg: number;
  readonly decidedBy: RangeDecision;
}

/** Not even the gentler end is admitted; `pose`: it cannot rest there. */
export interface Barred {
  readonly admitted: false;
  readonly barredBy: Limit | 'pose';
}

/** Within one step of 1/40 these settle a fraction to 6e-12. */
const BISECTIONS = 32;

/**
 * The largest part of a movement, from its gentler end, on which every cap holds at any load from nothing to `loadKg`.
 * Never wider when a cap is tightened: 40 steps to the first break, then bisection, both by whether any cap breaks alone, so that a
 * tighter cap can only move the answer towards the gentler end.
 */
export function largestRange(
  movement: Movement,
  body: Body,
  loadKg: number,
  caps: Caps,
): AdmittedRange | Barred {
  const gentleEnd = gentleEndOf(movement, body, loadKg, caps.angle);
  const breakAt = (distance: number) =>
    breakIn(movement, body, loadKg, caps, fractionFrom(gentleEnd, distance));
  const holdsAt = (distance: number) => breakAt(distance) === null;
  const reached = (fraction: number) => rangeTo(fraction, gentleEnd, movement, body, loadKg, caps.angle);
  const atGentleEnd = breakAt(0);
  if (atGentleEnd) return { admitted: false, barredBy: atGentleEnd };
  const steps = movement.end ? SAMPLES - 1 : 0;
  for (let step = 1; step <= steps; step++) {
    if (holdsAt(step / steps)) continue;
    const fraction = bisect(holdsAt, (step - 1) / steps, step / steps);
    const beyond = breakAt(fraction + (step / steps - fraction) * HAIR) ?? breakAt(step / steps);
    return { ...reached(fraction), decidedBy: beyond ?? 'full' };
  }
  return { ...reached(1), decidedBy: 'full' };
}

/** Whether every cap holds along the whole movement, for exercises that are done in full or not at all; else which bars it. */
export function admits(movement: Movement, body: Body, loadKg: number, caps: Caps): AdmittedRange | Barred {
  const range = largestRange(movement, body, loadKg, caps);
  if (!range.admitted || range.decidedBy === 'full') return range;
  return { admitted: false, barredBy: range.decidedBy };
}

/** What breaks at fraction `t`: a cap, the pose itself, or nothing. */
export function breakIn(
  movement: Movement,
  body: Body,
  loadKg: number,
  caps: Caps,
  t: number,
): Limit | 'pose' | null {
  const demands = demandsUpTo(movement, body, loadKg, t);
  return demands ? brokenCap(movement, demands, caps) : 'pose';
}

/** The last place from `holds` towards `breaks` where the yes-or-no still says yes, as near as numbers go. */
export function bisect(isHeld: (at: number) => boolean, holds: number, breaks: number): number {
  let [held, broken] = [holds, breaks];
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (held + broken) / 2;
    if (isHeld(middle)) held = middle;
    else broken = middle;
  }
  return held;
}

// Just beyond the solved range, where exactly the deciding cap is broken.
const HAIR = 1e-6;

/** The range that ends at so much of the way, without what decided it. */
export function rangeTo(
  fraction: number,
  gentleEnd: MovementEnd,
  movement: Movement,
  body: Body,
  loadKg: number,
  angle: JointAngle,
): Omit<AdmittedRange, 'decidedBy'> {
  const angleDeg = angleAtDeg(movement, body, loadKg, fractionFrom(gentleEnd, fraction), angle);
  return { admitted: true, gentleEnd, fraction, interval: intervalFrom(gentleEnd, fraction), angleDeg };
}
