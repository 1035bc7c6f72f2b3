/**
 * Free places in a picture: what is already there as rounded bars, and whether words or an arrow would touch it.
 * Asked some ten thousand times a picture, so it counts in plain numbers and looks away from what is far.
 */
import type { Point } from '../mechanics/pose.ts';

/** A bar with round ends: everything within `radiusM` of the line from `a` to `b`. */
export interface Bar {
  readonly a: Point;
  readonly b: Point;
  readonly radiusM: number;
}

/** Free metres between two bars, negative where they overlap. */
export function gapBetween(one: Bar, two: Bar): number {
  return Math.sqrt(squaredDistance(one, two)) - one.radiusM - two.radiusM;
}

/** The least gap between a bar and the others, or `enough` when none comes nearer than that. */
export function clearanceOf(bar: Bar, others: readonly Bar[], enough: number): number {
  let least = enough;
  for (const other of others) {
    const reach = least + bar.radiusM + other.radiusM;
    if (reach > 0 && !farApart(bar, other, reach)) least = Math.min(least, gapBetween(bar, other));
  }
  return least;
}

/** The chain of bars along the points. */
export function chain(points: readonly Point[], radiusM: number): readonly Bar[] {
  return points.slice(1).map((b, index) => ({ a: points[index] as Point, b, radiusM }));
}

// The boxes round the two lines are further apart than `reach` along an axis.
function farApart(one: Bar, two: Bar, reach: number): boolean {
  return (
    Math.min(one.a.x, one.b.x) - Math.max(two.a.x, two.b.x) > reach ||
    Math.min(two.a.x, two.b.x) - Math.max(one.a.x, one.b.x) > reach ||
    Math.min(one.a.y, one.b.y) - Math.max(two.a.y, two.b.y) > reach ||
    Math.min(two.a.y, two.b.y) - Math.max(one.a.y, one.b.y) > reach
  );
}

function squaredDistance(one: Bar, two: Bar): number {
  if (cross(one, two)) return 0;
  return Math.min(squaredTo(one.a, two), squaredTo(one.b, two), squaredTo(two.a, one), squaredTo(two.b, one));
}

function squaredTo(point: Point, { a, b }: Bar): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / length;
  const share = Math.min(Math.max(along, 0), 1);
  const [x, y] = [a.x + dx * share - point.x, a.y + dy * share - point.y];
  return x * x + y * y;
}

function cross(one: Bar, two: Bar): boolean {
  return side(one, two.a) * side(one, two.b) < 0 && side(two, one.a) * side(two, one.b) < 0;
}

function side({ a, b }: Bar, point: Point): number {
  return (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
}
