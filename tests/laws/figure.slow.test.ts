/** Laws of the figure: whatever a joint can do, the picture stays finite, bounded, within its frame and over its floor. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawScene } from '../../src/drawing/scene.ts';
import type { SupportPoint } from '../../src/mechanics/movement.ts';
import { postureOf } from '../../src/mechanics/kinematics.ts';
import type { LegPose, Pose } from '../../src/mechanics/pose.ts';
import { PROPS, type SideScene as Scene, type WeightKind } from '../../src/mechanics/scene.ts';
import { boundsOf, floorY, shapesOf } from '../drawing/scenes.ts';

const SEED = { seed: 20260303, numRuns: 150 } as const;

// The limits of the card schema: outside them no human joint goes.
const angle = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const leg: fc.Arbitrary<LegPose> = fc.oneof(
  fc.record({ hip: angle(-30, 135), knee: angle(-5, 150), pitch: angle(-80, 80) }),
  fc.record({ hip: angle(-30, 135), knee: angle(-5, 150), ankle: angle(-60, 40) }),
);
const pose: fc.Arbitrary<Pose> = fc
  .record({
    trunk: angle(-180, 180),
    lumbar: angle(0, 80),
    arms: fc.oneof(fc.constant('trunk' as const), fc.constant('hang' as const), angle(-180, 200)),
    work: leg,
    other: fc.option(leg, { nil: undefined }),
  })
  .map(({ other, ...rest }) => (other === undefined ? rest : { ...rest, other }));

const SUPPORTS: readonly SupportPoint[] = [
  'upperBack',
  'seat',
  'shoulder',
  'hands',
  'work.mid',
  'work.knee',
  'other.fore',
  'other.heel',
  'both.mid',
  'both.heel',
  'both.ankle',
  'both.knee',
];
const WEIGHTS: readonly WeightKind[] = ['dumbbell', 'kettlebell', 'bar', 'rucksack', 'bottles'];

const scene: fc.Arbitrary<Scene> = fc
  .record({
    heightM: angle(1.2, 2.2),
    side: fc.constantFrom('right', 'left', 'both'),
    supports: fc.uniqueArray(fc.constantFrom(...SUPPORTS), { maxLength: 2 }),
    supportRiseM: angle(-1, 1),
    props: fc.uniqueArray(fc.constantFrom(...PROPS), { maxLength: 3 }),
    weight: fc.option(
      fc.record({
        kind: fc.constantFrom(...WEIGHTS),
        at: fc.constantFrom('hands', 'shoulder', 'pelvisFront', 'work.ankle', 'both.ankle', 'work.knee'),
        kg: angle(0.5, 150),
      }),
    ),
    poses: fc.array(pose, { minLength: 1, maxLength: 2 }),
  })
  .map(({ heightM, poses, ...rest }) => {
    const body = { massKg: 70, heightM };
    const names = poses.length === 1 ? (['hold'] as const) : (['start', 'end'] as const);
    const frames = poses.map((each, index) => ({
      name: names[index] ?? 'end',
      posture: postureOf(each, body),
      hipFlexionDeg: Math.round(each.work.hip / 5) * 5,
    }));
    return { view: 'side', body, frames, ...rest } as Scene;
  });

describe('laws of the figure', () => {
  it('every number of every picture is whole and finite', () => {
    fc.assert(
      fc.property(scene, (any) => {
        for (const { shapes, labels, viewBox } of drawScene(any)) {
          for (const { d, width } of shapes) {
            expect(d).toMatch(/^[MLCZ\d\s-]+$/);
            expect(Number.isInteger(width)).toBe(true);
          }
          for (const { x, y, size } of labels) expect([x, y, size].every(Number.isInteger)).toBe(true);
          expect(Object.values(viewBox).every(Number.isInteger)).toBe(true);
        }
      }),
      SEED,
    );
  });

  it('no picture is larger than the body, its reach and its furniture can be', () => {
    fc.assert(
      fc.property(scene, (any) => {
        for (const { viewBox } of drawScene(any)) {
          const most = 1000 * (3.4 * any.body.heightM + 1.6);
          expect(viewBox.width).toBeLessThan(most);
          expect(viewBox.height).toBeLessThan(most);
          expect(Math.min(viewBox.width, viewBox.height)).toBeGreaterThan(100);
        }
      }),
      SEED,
    );
  });

  it('everything lies within the view box', () => {
    fc.assert(
      fc.property(scene, (any) => {
        for (const { shapes, viewBox } of drawScene(any)) {
          const { left, right, top, bottom } = boundsOf(shapes);
          expect(Math.min(left, top)).toBeGreaterThanOrEqual(-1);
          expect(right).toBeLessThanOrEqual(viewBox.width + 1);
          expect(bottom).toBeLessThanOrEqual(viewBox.height + 1);
        }
      }),
      SEED,
    );
  });

  it('no part of a body sinks into the floor', () => {
    fc.assert(
      fc.property(scene, (any) => {
        for (const drawing of drawScene(any)) {
          const body = drawing.shapes.filter(
            ({ fill }) => fill === 'workLeg' || fill === 'body' || fill === 'arm',
          );
          expect(boundsOf(body).bottom).toBeLessThanOrEqual(floorY(drawing) + 2);
        }
      }),
      SEED,
    );
  });

  it('a left side is the right side turned about', () => {
    fc.assert(
      fc.property(scene, (any) => {
        const [right, left] = [
          drawScene({ ...any, side: 'right' })[0]!,
          drawScene({ ...any, side: 'left' })[0]!,
        ];
        expect(left.viewBox).toEqual(right.viewBox);
        const [a, b] = [boundsOf(shapesOf(right, 'body')), boundsOf(shapesOf(left, 'body'))];
        expect(Math.abs(a.left + b.right - right.viewBox.width)).toBeLessThanOrEqual(2);
      }),
      SEED,
    );
  });
});
