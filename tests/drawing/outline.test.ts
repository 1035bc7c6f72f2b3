import { describe, expect, it } from 'vitest';
import {
  arc,
  circle,
  corner,
  hullPoints,
  pressed,
  smooth,
  taperedCapsule,
  type Command,
} from '../../src/drawing/outline.ts';
import { distance, turnFrom, upwardAt } from '../../src/drawing/plane.ts';
import type { Point } from '../../src/mechanics/pose.ts';

const to = (command: Command | undefined): Point => {
  if (command === undefined || command.kind === 'Z') throw new Error('no point');
  return command.to;
};

// Points along a cubic, by de Casteljau's construction.
function along(from: Point, command: Command, share: number): Point {
  if (command.kind !== 'C') throw new Error('no curve');
  const mix = (a: Point, b: Point): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
  const [a, b, c] = [mix(from, command.c1), mix(command.c1, command.c2), mix(command.c2, command.to)];
  return mix(mix(a, b), mix(b, c));
}

describe('tapered capsule', () => {
  it.each([
    ['wide to narrow', { x: 0, y: 0 }, 0.1, { x: 0.4, y: 0.2 }, 0.05],
    ['narrow to wide', { x: 1, y: 1 }, 0.03, { x: 1, y: -1 }, 0.3],
    ['equal', { x: -1, y: 0 }, 0.2, { x: 1, y: 0 }, 0.2],
  ] as const)('%s: its straight side touches both circles (outer tangent)', (_, a, ra, b, rb) => {
    const capsule = taperedCapsule(a, ra, b, rb);
    const line = capsule.findIndex(({ kind }) => kind === 'L');
    const [p, q] = [to(capsule[line - 1]), to(capsule[line])];
    expect(distance(a, p)).toBeCloseTo(ra, 12);
    expect(distance(b, q)).toBeCloseTo(rb, 12);
    // A tangent stands square to the radius at the point it touches.
    const side = { x: q.x - p.x, y: q.y - p.y };
    expect((p.x - a.x) * side.x + (p.y - a.y) * side.y).toBeCloseTo(0, 12);
    expect((q.x - b.x) * side.x + (q.y - b.y) * side.y).toBeCloseTo(0, 12);
    // It closes where it began, after going once round each end.
    const end = to(capsule[capsule.length - 2]);
    expect(distance(end, b)).toBeCloseTo(rb, 12);
  });

  it('is the larger circle when that swallows the smaller', () => {
    const big = taperedCapsule({ x: 0, y: 0 }, 0.5, { x: 0.1, y: 0 }, 0.1);
    expect(hullPoints(big).every((point) => distance(point, { x: 0, y: 0 }) >= 0.5 - 1e-12)).toBe(true);
  });
});

describe('arc', () => {
  it('stays within 0.03 % of its radius (four cubics a turn)', () => {
    let from: Point = { x: 2, y: 0 };
    for (const command of circle({ x: 0, y: 0 }, 2).slice(1, -1)) {
      for (const share of [0.1, 0.25, 0.5, 0.75]) {
        expect(Math.abs(distance(along(from, command, share), { x: 0, y: 0 }) - 2)).toBeLessThan(2 * 0.0003);
      }
      from = to(command);
    }
  });

  it('turns the way and the angle it is asked to', () => {
    const quarter = arc({ x: 0, y: 0 }, { x: 0, y: -1 }, Math.PI / 2);
    expect(to(quarter[quarter.length - 1]).x).toBeCloseTo(1, 12);
  });
});

describe('smooth outline', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ];

  it('passes through every knot and closes', () => {
    const curve = smooth(square);
    expect(curve.slice(0, -1).map(to)).toEqual([...square, square[0]]);
    expect(curve[curve.length - 1]).toEqual({ kind: 'Z' });
  });

  it('has one tangent at a smooth knot and two at a corner', () => {
    const turnAt = (curve: ReturnType<typeof smooth>) => {
      const [before, after] = [curve[1], curve[2]];
      if (before?.kind !== 'C' || after?.kind !== 'C') throw new Error('no curve');
      const at = before.to;
      return turnFrom(
        { x: at.x - before.c2.x, y: at.y - before.c2.y },
        { x: after.c1.x - at.x, y: after.c1.y - at.y },
      );
    };
    expect(turnAt(smooth(square))).toBeCloseTo(0, 12);
    expect(turnAt(smooth(square.map(corner)))).toBeCloseTo(Math.PI / 2, 12);
  });

  it('bears knots that coincide', () => {
    const curve = smooth([square[0]!, square[0]!, square[1]!, square[2]!]);
    expect(hullPoints(curve).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
  });

  it('pressed on a floor lies on or above it, elsewhere unchanged', () => {
    const flat = pressed(circle({ x: 0, y: 0.3 }, 0.5), 0);
    expect(Math.min(...hullPoints(flat).map(({ y }) => y))).toBe(0);
    expect(Math.max(...hullPoints(flat).map(({ y }) => y))).toBeCloseTo(0.8, 12);
  });
});

describe('directions', () => {
  it.each([
    [0, 0, 1],
    [90, 1, 0],
    [-90, -1, 0],
    [180, 0, -1],
  ])('%i° from straight up is (%i, %i) (mechanics: trunk inclination)', (deg, x, y) => {
    expect(upwardAt(deg).x).toBeCloseTo(x, 12);
    expect(upwardAt(deg).y).toBeCloseTo(y, 12);
  });
});
