/** Points and directions in the plane of the picture: metres, x forward, y up. */
import type { Point } from '../mechanics/pose.ts';
import { toRadians } from '../units/angle.ts';

/** The point `distance` metres from `origin` along `direction` (a unit vector). */
export function along(origin: Point, distance: number, direction: Point): Point {
  return { x: origin.x + distance * direction.x, y: origin.y + distance * direction.y };
}

/** The point `share` of the way from `a` to `b` (0 to 1; outside that, beyond the ends). */
export function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** Metres from `a` to `b`. */
export function distance(a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return Math.sqrt(dx * dx + dy * dy);
}

/** The unit vector from `a` to `b`; straight down when the two coincide, so that no limb ever has no direction. */
export function directionFrom(a: Point, b: Point): Point {
  const length = distance(a, b);
  if (length < 1e-9) return { x: 0, y: -1 };
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** The direction of an angle in degrees from straight up, forward positive. @example upwardAt(90) // => { x: 1, y: 0 } */
export function upwardAt(deg: number): Point {
  const rad = toRadians(deg);
  return { x: Math.sin(rad), y: Math.cos(rad) };
}

/** The front of a segment whose direction points towards the head: a quarter turn clockwise. */
export function frontOf(up: Point): Point {
  return { x: up.y, y: -up.x };
}

/** The opposite direction. */
export function opposite(direction: Point): Point {
  return { x: -direction.x, y: -direction.y };
}

/** `point` turned about `centre` by an angle in radians, counter-clockwise positive. */
export function turned(point: Point, centre: Point, rad: number): Point {
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  const [dx, dy] = [point.x - centre.x, point.y - centre.y];
  return { x: centre.x + dx * cos - dy * sin, y: centre.y + dx * sin + dy * cos };
}

/** Radians from direction `a` to direction `b`, counter-clockwise positive, -π to π. */
export function turnFrom(a: Point, b: Point): number {
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}

/** Maps a frame's own coordinates, `up` along the frame and `front` across it, to the plane. */
export function frameAt(origin: Point, up: Point): (upM: number, frontM: number) => Point {
  const front = frontOf(up);
  return (upM, frontM) => along(along(origin, upM, up), frontM, front);
}

/** `value` kept within `low` and `high`. */
export function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
