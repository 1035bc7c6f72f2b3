/** The end of a movement from which its range is measured: the one that asks less of the tendon. */
import type { Body } from './body.ts';
import type { JointAngle } from './jointAngle.ts';
import { loadingsAt, type Loading } from './loading.ts';
import type { Movement } from './movement.ts';

export type MovementEnd = 'start' | 'end';

/** A part of a movement by its fractions, 0 start to 1 end, `from` not above `to`. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

export const WHOLE: Interval = { from: 0, to: 1 };

/** Below this two squeezes or pulls count as equal, body weights. */
const EQUAL_BW = 1e-9;

/** Below this two angles count as equal, degrees. */
const EQUAL_DEG = 1e-9;

/**
 * The gentler end under this load: less squeeze, with equal squeeze less pull, else the start. A hold is its start. A
 * tendon guarded at another joint than the hip has no squeeze here: its gentler end is the one that bends that joint less.
 */
export function gentleEndOf(
  movement: Movement,
  body: Body,
  loadKg: number,
  guardedBy: JointAngle = 'hipFlexion',
): MovementEnd {
  return gentleEndsOf(movement, body, guardedBy)(loadKg);
}

/** The same for several loads: what no load changes at the ends is worked out once. */
export function gentleEndsOf(
  movement: Movement,
  body: Body,
  guardedBy: JointAngle = 'hipFlexion',
): (loadKg: number) => MovementEnd {
  if (!movement.end) return () => 'start';
  const [atStart, atEnd] = [loadingsAt(movement, body, 0), loadingsAt(movement, body, 1)];
  return (loadKg) => {
    const [start, end] = [atStart(loadKg), atEnd(loadKg)];
    if (!start || !end) return end ? 'end' : 'start';
    const lessBentDeg = bentDeg(start, guardedBy) - bentDeg(end, guardedBy);
    if (guardedBy !== 'hipFlexion' && Math.abs(lessBentDeg) > EQUAL_DEG)
      return lessBentDeg > 0 ? 'end' : 'start';
    return gentlerOf(start, end) === end ? 'end' : 'start';
  };
}

/** The fraction of the movement at a distance 0 to 1 from its gentler end. */
export function fractionFrom(gentleEnd: MovementEnd, distance: number): number {
  return gentleEnd === 'start' ? distance : 1 - distance;
}

function bentDeg({ work }: Loading, angle: JointAngle): number {
  return work[`${angle}Deg`];
}

function gentlerOf(start: Loading, end: Loading): Loading {
  const squeezeBw = end.work.compressionBw - start.work.compressionBw;
  if (Math.abs(squeezeBw) > EQUAL_BW) return squeezeBw < 0 ? end : start;
  return end.work.tensionBw - start.work.tensionBw < -EQUAL_BW ? end : start;
}
