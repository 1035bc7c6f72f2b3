/** The two sides of a limb with one bend: thigh and shank, or upper arm and forearm. */
import type { Point } from '../mechanics/pose.ts';
import type { Knot } from './outline.ts';
import { along, between, directionFrom, distance, opposite, turnFrom } from './plane.ts';
import type { Girth } from './proportions.ts';

export interface LimbShape {
  readonly upper: readonly Girth[];
  readonly lower: readonly Girth[];
  readonly joint: { readonly fold: number; readonly stretch: number };
  /** The side to which the joint folds, seen with the face towards +x: a knee folds back, an elbow forward. */
  readonly folds: 'front' | 'back';
}

/** Knots of both sides, each from the trunk outward. */
export interface LimbSides {
  readonly fold: readonly Knot[];
  readonly stretch: readonly Knot[];
}

// Flesh meets flesh in a sharply folded joint: a knot stays on its own side of the line that halves the angle.
const ROUND_FROM_RAD = 0.35;
const CREASE_FROM_RAD = 1.2;

/**
 * The sides of the limb from `start` over `joint` to `end`. Girths are fractions of `heightM`.
 * Total: coinciding points give a limb without length, never a NaN.
 */
export function limbSides(
  start: Point,
  joint: Point,
  end: Point,
  shape: LimbShape,
  heightM: number,
): LimbSides {
  const upper = directionFrom(start, joint);
  const lower = directionFrom(joint, end);
  const bend = (shape.folds === 'front' ? 1 : -1) * turnFrom(upper, lower);
  const foldOf = (outward: Point) => (shape.folds === 'front' ? leftOf(outward) : opposite(leftOf(outward)));
  const [foldUpper, foldLower] = [foldOf(upper), foldOf(lower)];
  const side = (name: 'fold' | 'stretch', sign: 1 | -1, closes: boolean) => {
    const knot = (from: Point, to: Point, girth: Girth, across: Point): Knot => {
      const middle = between(from, to, girth.share);
      const width = girth[name] * heightM;
      const room = closes ? distance(middle, joint) * Math.tan((Math.PI - Math.abs(bend)) / 2) : width;
      return along(middle, sign * Math.min(width, room), across);
    };
    return {
      upper: shape.upper.map((girth) => knot(start, joint, girth, foldUpper)),
      lower: shape.lower.map((girth) => knot(joint, end, girth, foldLower)),
    };
  };
  const fold = side('fold', 1, bend > 0);
  const stretch = side('stretch', -1, bend < 0);
  return {
    fold: [
      ...fold.upper,
      crease(joint, foldUpper, foldLower, bend, shape.joint.fold * heightM),
      ...fold.lower,
    ],
    stretch: [
      ...stretch.upper,
      ...cap(joint, foldUpper, foldLower, bend, shape.joint.stretch * heightM),
      ...stretch.lower,
    ],
  };
}

function crease(joint: Point, foldUpper: Point, foldLower: Point, bend: number, width: number): Knot {
  const half = halfway(foldUpper, foldLower);
  const point = along(joint, width / Math.max(Math.cos(bend / 2), 0.35), half);
  return bend > CREASE_FROM_RAD ? { ...point, corner: true } : point;
}

function cap(joint: Point, foldUpper: Point, foldLower: Point, bend: number, width: number): readonly Knot[] {
  const middle = along(joint, -width, halfway(foldUpper, foldLower));
  if (Math.abs(bend) < ROUND_FROM_RAD) return [middle];
  const ends = [along(joint, -width, foldUpper), along(joint, -width, foldLower)] as const;
  return bend < CREASE_FROM_RAD ? ends : [ends[0], middle, ends[1]];
}

function halfway(a: Point, b: Point): Point {
  return directionFrom({ x: 0, y: 0 }, { x: a.x + b.x, y: a.y + b.y });
}

function leftOf(outward: Point): Point {
  return { x: -outward.y, y: outward.x };
}
