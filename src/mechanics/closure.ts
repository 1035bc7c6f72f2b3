/**
 * Closing a pose: turning its unknown until the body balances over its support, or rests on both.
 *
 * Turned by an angle q, every point of the body moves on a circle or stays, so both conditions read
 * a cos q + b sin q + c = 0 exactly: three evaluations give a, b, c and an arctangent gives the root.
 */
import { toDegrees } from '../units/angle.ts';
import type { Body } from './body.ts';
import { anglesOf, pointsOf, postureOf, type Angles } from './kinematics.ts';
import type { Closure, Movement, SupportPoint } from './movement.ts';
import type { BodyPoints, Point, Pose, Posture } from './pose.ts';
import { PLACE } from './support.ts';
import { sumOf, weightsOf } from './weight.ts';

/**
 * The posture in which `pose` rests on the movement's supports with `loadKg` in place: the first root in the range of
 * the closure, or the pose as it stands when nothing is to be solved. Null when no angle in the range closes it.
 */
export function closePose(movement: Movement, pose: Pose, body: Body, loadKg: number): Posture | null {
  const { solve } = movement;
  if (!solve) return postureOf(pose, body);
  const angles = anglesOf(pose);
  const turned = (deg: number) => pointsOf(turnedTo(angles, solve.unknown, deg), body);
  const gap = (deg: number) => closureGap(movement, solve, turned(deg), body, loadKg);
  const rootDeg = firstRootDeg(gap(0), gap(90), gap(180), solve.range);
  return rootDeg === null ? null : { pose: withUnknown(pose, solve.unknown, rootDeg), ...turned(rootDeg) };
}

/** Where a support touches, metres from the hip. `both.*` is the same point of either foot. */
export function supportAt(posture: BodyPoints, support: SupportPoint): Point {
  const { owner, part } = PLACE[support];
  if (part === null) return posture[owner];
  return (owner === 'other' ? posture.other : posture.work)[part];
}

/** Metres by which the first support stands above the second; 0 with fewer than two. */
export function supportRiseM(posture: BodyPoints, supports: readonly SupportPoint[]): number {
  const [first, second] = supports;
  return first && second ? supportAt(posture, first).y - supportAt(posture, second).y : 0;
}

/** What is left to close: moment about the support in N·m (balance), or metres of height. */
function closureGap(
  movement: Movement,
  solve: Closure,
  posture: BodyPoints,
  body: Body,
  loadKg: number,
): number {
  if (solve.kind === 'height') return supportRiseM(posture, movement.supports) - (solve.dh ?? 0);
  const support = movement.supports[0];
  if (!support) return Number.NaN;
  const { downN, momentNm } = sumOf(weightsOf(posture, body, movement.loadAt, loadKg));
  return momentNm + supportAt(posture, support).x * downN;
}

/** The lowest root in `range` (degrees) of the cosine wave through its values at 0, 90 and 180 degrees; else null. */
function firstRootDeg(
  at0: number,
  at90: number,
  at180: number,
  [lowDeg, highDeg]: readonly [number, number],
): number | null {
  const middle = (at0 + at180) / 2;
  const cosine = (at0 - at180) / 2;
  const sine = at90 - middle;
  const height = Math.hypot(cosine, sine);
  // A wave that does not reach zero, or no wave at all: the unknown moves nothing.
  if (!(height > 1e-12) || Math.abs(middle) > height) return null;
  const crestDeg = toDegrees(Math.atan2(sine, cosine));
  const awayDeg = toDegrees(Math.atan2(Math.sqrt(height * height - middle * middle), -middle));
  const roots = [crestDeg - awayDeg, crestDeg + awayDeg].map((deg) => firstTurnFrom(lowDeg, deg));
  const first = Math.min(...roots);
  return first <= highDeg ? first : null;
}

// The angle's whole turns are chosen so that it is the first one not below `lowDeg`.
function firstTurnFrom(lowDeg: number, deg: number): number {
  return deg - 360 * Math.floor((deg - lowDeg) / 360);
}

function withUnknown(pose: Pose, unknown: Closure['unknown'], deg: number): Pose {
  if (unknown === 'trunk') return { ...pose, trunk: deg };
  return { ...pose, other: { ...(pose.other ?? pose.work), knee: deg } };
}

/** The same turn of the same angle where nothing is left out. */
function turnedTo(angles: Angles, unknown: Closure['unknown'], deg: number): Angles {
  if (unknown === 'trunk') return { ...angles, trunk: deg };
  return angles.other ? { ...angles, other: { ...angles.other, knee: deg } } : angles;
}
