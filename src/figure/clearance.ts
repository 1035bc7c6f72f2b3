/** Free places in a picture: what is already there as rounded bars, and whether words or an arrow would touch it. */
import type { Point } from '../mechanics/pose.ts';
import { clamp, distance } from './plane.ts';

/** A bar with round ends: everything within `radiusM` of the line from `a` to `b`. */
export interface Bar {
  readonly a: Point;
  readonly b: Point;
  readonly radiusM: number;
}

/** Free metres between two bars, negative where they overlap. */
export function gapBetween(one: Bar, two: Bar): number {
  return segmentDistance(one, two) - one.radiusM - two.radiusM;
}

/** The least gap between a bar and all others; Infinity when there are none. */
export function clearanceOf(bar: Bar, others: readonly Bar[]): number {
  return others.reduce((least, other) => Math.min(least, gapBetween(bar, other)), Infinity);
}

/** The chain of bars along the points. */
export function chain(points: readonly Point[], radiusM: number): readonly Bar[] {
  return points.slice(1).map((b, index) => ({ a: points[index] as Point, b, radiusM }));
}

function segmentDistance(one: Bar, two: Bar): number {
  if (cross(one, two)) return 0;
  return Math.min(
    pointDistance(one.a, two),
    pointDistance(one.b, two),
    pointDistance(two.a, one),
    pointDistance(two.b, one),
  );
}

function pointDistance(point: Point, { a, b }: Bar): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : clamp(((point.x - a.x) * dx + (point.y - a.y) * dy) / squared, 0, 1);
  return distance(point, { x: a.x + dx * share, y: a.y + dy * share });
}

function cross(one: Bar, two: Bar): boolean {
  const side = (bar: Bar, point: Point) =>
    (bar.b.x - bar.a.x) * (point.y - bar.a.y) - (bar.b.y - bar.a.y) * (point.x - bar.a.x);
  return side(one, two.a) * side(one, two.b) < 0 && side(two, one.a) * side(two, one.b) < 0;
}
