/**
 * Closing a pose: turning its unknown until the body balances over its support, or rests on both.
 *
 * Turned by an angle q, every point of the body moves on a circle or stays, so both conditions read
 * a cos q + b sin q + c = 0 exactly: three evaluations give a, b, c and an arctangent gives the root. A load adds to
 * them in proportion to its kilograms.
 */
import { toDegrees } from '../units/angle.ts';
import { GRAVITY } from './anthropometry.ts';
import type { Body } from './body.ts';
import { anglesOf, pointsOf, type Angles } from './kinematics.ts';
import type { Closure, Movement, SupportPoint } from './movement.ts';
import type { BodyPoints, Point, Pose, Posture } from './pose.ts';
import { PLACE } from './support.ts';
import { bodyWeights, loadWeights, sumOf, type Hanging } from './weight.ts';

/**
 * The posture in which `pose` rests on the movement's supports with `loadKg` in place: the first root in the range of
 * the closure, or the pose as it stands when nothing is to be solved. Null when no angle in the range closes it.
 */
export function closePose(movement: Movement, pose: Pose, body: Body, loadKg: number): Posture | null {
  const closed = closingOf(movement, pose, body)(loadKg);
  return closed && { pose: withUnknown(pose, movement.solve?.unknown, closed.angles), ...closed.points };
}

/** A body that rests on its supports. */
export interface ClosedBody {
  readonly angles: Angles;
  readonly points: BodyPoints;
}

/** The same for several loads on one pose, all of one shape: what no load changes is worked out once. */
export function closingOf(
  { solve, supports, loadAt }: Movement,
  pose: Pose,
  body: Body,
): (loadKg: number) => ClosedBody | null {
  const angles = anglesOf(pose);
  if (!solve) {
    const asItStands = { angles, points: pointsOf(angles, body) };
    return () => asItStands;
  }
  const { unknown, range, dh = 0 } = solve;
  const turnedBy = (deg: number): ClosedBody => {
    const turned = turnedTo(angles, unknown, deg);
    return { angles: turned, points: pointsOf(turned, body) };
  };
  const closedBy = (gaps: QuarterTurns) => {
    const rootDeg = firstRootDeg(gaps, range);
    return rootDeg === null ? null : turnedBy(rootDeg);
  };
  const quarters = [turnedBy(0).points, turnedBy(90).points, turnedBy(180).points] as const;
  // A load moves the body only where it must be balanced.
  if (solve.kind === 'height') {
    const closed = closedBy(eachOf(quarters, (points) => supportRiseM(points, supports) - dh));
    return () => closed;
  }
  const [support] = supports;
  if (!support) return () => null;
  const tipsNm = (weightsAt: (points: BodyPoints) => Hanging) =>
    eachOf(quarters, (points) => tippingNm(weightsAt(points), supportAt(points, support)));
  const bareNm = tipsNm((points) => bodyWeights(points, body));
  const perKgNm = tipsNm((points) => loadWeights(points, loadAt, GRAVITY));
  return (loadKg) => closedBy(eachOf(bareNm, (nm, turn) => nm + loadKg * perKgNm[turn]));
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

/** Moment of weights about a support, N·m, counter-clockwise positive. */
function tippingNm(weights: Hanging, support: Point): number {
  const { downN, momentNm } = sumOf(weights);
  return momentNm + support.x * downN;
}

/** Values at 0, 90 and 180 degrees of the unknown. */
type QuarterTurns = readonly [number, number, number];

function eachOf<T>(
  [at0, at90, at180]: readonly [T, T, T],
  value: (at: T, turn: 0 | 1 | 2) => number,
): QuarterTurns {
  return [value(at0, 0), value(at90, 1), value(at180, 2)];
}

/** The lowest root in `range` (degrees) of the cosine wave through these values; else null. */
function firstRootDeg(
  [at0, at90, at180]: QuarterTurns,
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

/** The pose with what was found; it says no more than it did. */
function withUnknown(pose: Pose, unknown: Closure['unknown'] | undefined, { trunk, other }: Angles): Pose {
  if (unknown === 'trunk') return { ...pose, trunk };
  if (unknown === 'other.knee' && pose.other && other)
    return { ...pose, other: { ...pose.other, knee: other.knee } };
  return pose;
}

// Written out, for spread objects differ in shape from one another: this is done tens of thousands of times.
function turnedTo(
  { trunk, lumbar, arms, work, other }: Angles,
  unknown: Closure['unknown'],
  deg: number,
): Angles {
  if (unknown === 'trunk') return { trunk: deg, lumbar, arms, work, other };
  if (other === null) return { trunk, lumbar, arms, work, other };
  const { hip, foot, inTheAir } = other;
  return { trunk, lumbar, arms, work, other: { hip, knee: deg, foot, inTheAir } };
}
