/** Outlines in metres, y up: lines and cubic curves only, because both surfaces take those. */
import type { Point } from '../mechanics/pose.ts';
import { along, directionFrom, distance, turned } from './plane.ts';

export type Command =
  | { readonly kind: 'M' | 'L'; readonly to: Point }
  | { readonly kind: 'C'; readonly c1: Point; readonly c2: Point; readonly to: Point }
  | { readonly kind: 'Z' };

export type Outline = readonly Command[];

/** A point a smooth outline passes through; at a corner the curve may turn sharply. */
export interface Knot extends Point {
  readonly corner?: boolean;
}

/** A corner of a smooth outline. */
export function corner(point: Point): Knot {
  return { ...point, corner: true };
}

/**
 * The smooth closed curve through the knots (at least three), as one cubic a knot.
 * Tangents are those of the circle through a knot and its neighbours' chords (Bessel), handles a third of the chord:
 * the curve does not overshoot where knots stand unevenly.
 */
export function smooth(knots: readonly Knot[]): Outline {
  const at = (index: number) => knots[(index + knots.length) % knots.length] as Knot;
  const tangents = knots.map((knot, index) => tangent(at(index - 1), knot, at(index + 1)));
  const curves = knots.map((knot, index): Command => {
    const next = at(index + 1);
    const third = distance(knot, next) / 3;
    const chord = directionFrom(knot, next);
    const leave = knot.corner ? chord : (tangents[index] as Point);
    const arrive = next.corner ? chord : (tangents[(index + 1) % knots.length] as Point);
    return { kind: 'C', c1: along(knot, third, leave), c2: along(next, -third, arrive), to: next };
  });
  return [{ kind: 'M', to: at(0) }, ...curves, { kind: 'Z' }];
}

/** The open or closed chain of straight lines through the points. */
export function polyline(points: readonly Point[], closed: boolean): Outline {
  const lines = points.map((to, index): Command => ({ kind: index === 0 ? 'M' : 'L', to }));
  return closed ? [...lines, { kind: 'Z' }] : lines;
}

/** The rectangle between two opposite corners. */
export function rectangle(a: Point, b: Point): Outline {
  return polyline([a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }], true);
}

/** A full circle; radius in metres. */
export function circle(centre: Point, radiusM: number): Outline {
  const start = { x: centre.x + radiusM, y: centre.y };
  return [{ kind: 'M', to: start }, ...arcAbout(centre, start, 2 * Math.PI), { kind: 'Z' }];
}

/** An open arc about `centre` from `start`, turning by `rad` (counter-clockwise positive). */
export function arc(centre: Point, start: Point, rad: number): Outline {
  return [{ kind: 'M', to: start }, ...arcAbout(centre, start, rad)];
}

/**
 * Two circles joined by their outer tangents, the larger one around the smaller when it swallows it.
 * The tangent points lie at acos((rA - rB) / distance) from the line of centres.
 */
export function taperedCapsule(a: Point, radiusA: number, b: Point, radiusB: number): Outline {
  const apart = distance(a, b);
  if (apart <= Math.abs(radiusA - radiusB))
    return radiusA > radiusB ? circle(a, radiusA) : circle(b, radiusB);
  const axis = directionFrom(a, b);
  const spread = Math.acos((radiusA - radiusB) / apart);
  const onA = turned(along(a, radiusA, axis), a, spread);
  const onB = turned(along(b, radiusB, axis), b, -spread);
  return [
    { kind: 'M', to: onA },
    ...arcAbout(a, onA, 2 * (Math.PI - spread)),
    { kind: 'L', to: onB },
    ...arcAbout(b, onB, 2 * spread),
    { kind: 'Z' },
  ];
}

/** The outline pressed flat against a surface: nothing of it lies below `floorY`, for a curve never leaves its hull. */
export function pressed(outline: Outline, floorY: number): Outline {
  return mapped(outline, (point) => (point.y < floorY ? { x: point.x, y: floorY } : point));
}

/** The outline moved by a vector. */
export function shifted(outline: Outline, dx: number, dy: number): Outline {
  return mapped(outline, (point) => ({ x: point.x + dx, y: point.y + dy }));
}

/** All end and control points of an outline; its curve lies within their hull. */
export function hullPoints(outline: Outline): readonly Point[] {
  const points: Point[] = [];
  for (const command of outline) {
    if (command.kind === 'C') points.push(command.c1, command.c2);
    if (command.kind !== 'Z') points.push(command.to);
  }
  return points;
}

function tangent(before: Point, knot: Point, after: Point): Point {
  const [d0, d1] = [distance(before, knot), distance(knot, after)];
  const [t0, t1] = [directionFrom(before, knot), directionFrom(knot, after)];
  return directionFrom({ x: 0, y: 0 }, { x: t0.x * d1 + t1.x * d0, y: t0.y * d1 + t1.y * d0 });
}

// One cubic spans at most a quarter turn: its error is then under 0.03 % of the radius.
function arcAbout(centre: Point, start: Point, rad: number): Command[] {
  const count = Math.max(1, Math.ceil(Math.abs(rad) / (Math.PI / 2) - 1e-9));
  const step = rad / count;
  const handle = (4 / 3) * Math.tan(step / 4) * distance(centre, start);
  return Array.from({ length: count }, (_, index): Command => {
    const from = turned(start, centre, step * index);
    const to = turned(start, centre, step * (index + 1));
    return {
      kind: 'C',
      c1: along(from, handle, leftOf(centre, from)),
      c2: along(to, -handle, leftOf(centre, to)),
      to,
    };
  });
}

function leftOf(centre: Point, point: Point): Point {
  const out = directionFrom(centre, point);
  return { x: -out.y, y: out.x };
}

function mapped(outline: Outline, move: (point: Point) => Point): Outline {
  return outline.map((command): Command => {
    if (command.kind === 'Z') return command;
    if (command.kind !== 'C') return { kind: command.kind, to: move(command.to) };
    return { kind: 'C', c1: move(command.c1), c2: move(command.c2), to: move(command.to) };
  });
}
