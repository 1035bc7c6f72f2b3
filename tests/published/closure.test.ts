/** Exact closure against the plain way: 72 steps to the first sign change, then 60 bisections. */
import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/mechanics/body.ts';
import { closePose, supportAt } from '../../src/mechanics/closure.ts';
import { postureOf } from '../../src/mechanics/kinematics.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import type { Pose, Posture } from '../../src/mechanics/pose.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { sumOf, weightsOf } from '../../src/mechanics/weight.ts';
import { scanRoot } from '../mechanics/reference.mjs';
import { cards } from './exercise-cards.ts';

const BODIES: readonly Body[] = [
  { massKg: 70, heightM: 1.75 },
  { massKg: 30, heightM: 1.2 },
  { massKg: 250, heightM: 2.2 },
];
const closing = cards.filter(({ movement }) => movement.solve);
const cases = closing.flatMap((card) =>
  BODIES.flatMap((body) =>
    [0, 0.2, 0.4, 0.6, 0.8, 1].flatMap((t) =>
      [0, card.loadKg + 12].map((kg) => ({ card, body, t, loadKg: card.movement.loadAt ? kg : 0 })),
    ),
  ),
);

describe('closure against scan and bisection', () => {
  it(`${cases.length} cases agree within 1e-10 degrees and leave nothing open`, () => {
    expect(cases.length).toBeGreaterThan(576);
    for (const { card, body, t, loadKg } of cases) {
      const { movement } = card;
      const pose = poseAt(movement, t);
      const posture = closePose(movement, pose, body, loadKg)!;
      const gap = (deg: number) => openGap(movement, withAngle(movement, pose, deg), body, loadKg);
      const [low, high] = movement.solve!.range;
      expect(Math.abs(angleOf(movement, posture) - scanRoot(gap, low, high)!)).toBeLessThanOrEqual(1e-10);
      expect(Math.abs(gap(angleOf(movement, posture)))).toBeLessThanOrEqual(1e-9);
    }
  });

  it('gives nothing where the plain way finds no root either', () => {
    const { movement } = closing[0]!;
    const lifted: Movement = { ...movement, solve: { ...movement.solve!, dh: 2 } };
    expect(closePose(lifted, lifted.start, BODIES[0]!, 0)).toBeNull();
    const narrow: Movement = { ...movement, solve: { ...movement.solve!, range: [-60, -50] } };
    expect(closePose(narrow, narrow.start, BODIES[0]!, 0)).toBeNull();
    expect(
      scanRoot((deg) => openGap(narrow, withAngle(narrow, narrow.start, deg), BODIES[0]!, 0), -60, -50),
    ).toBeNull();
  });

  it('gives nothing where the unknown moves neither support', () => {
    const { movement } = closing[0]!;
    const stuck: Movement = {
      ...movement,
      solve: { ...movement.solve!, unknown: 'other.knee', range: [0, 130] },
    };
    expect(
      closePose(stuck, { ...stuck.start, other: { hip: 0, knee: 0, ankle: 0 } }, BODIES[0]!, 0),
    ).toBeNull();
  });
});

function withAngle({ solve }: Movement, pose: Pose, deg: number): Pose {
  if (solve!.unknown === 'trunk') return { ...pose, trunk: deg };
  return { ...pose, other: { ...pose.other!, knee: deg } };
}

function angleOf({ solve }: Movement, { pose }: Posture): number {
  return solve!.unknown === 'trunk' ? pose.trunk : pose.other!.knee;
}

function openGap(movement: Movement, pose: Pose, body: Body, loadKg: number): number {
  const posture = postureOf(pose, body);
  const [first, second] = movement.supports;
  if (movement.solve!.kind === 'height')
    return supportAt(posture, first!).y - supportAt(posture, second!).y - (movement.solve!.dh ?? 0);
  const { downN, momentNm } = sumOf(weightsOf(posture, body, movement.loadAt, loadKg));
  return supportAt(posture, first!).x * downN + momentNm;
}
