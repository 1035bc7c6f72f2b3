import { describe, expect, it } from 'vitest';
import { armTo } from '../../src/drawing/arm.ts';
import { clearanceOf, gapBetween } from '../../src/drawing/clearance.ts';
import { footKnots } from '../../src/drawing/foot.ts';
import { headOf } from '../../src/drawing/head.ts';
import { limbSides } from '../../src/drawing/limb.ts';
import { along, between, directionFrom, distance, turned } from '../../src/drawing/plane.ts';
import {
  ARM_LENGTHS,
  FOOT_KNOTS,
  HEAD_REST,
  KNEE,
  NECK,
  SHANK,
  THIGH,
} from '../../src/drawing/proportions.ts';
import { contactOf, stancesOf, type Leg } from '../../src/drawing/stance.ts';
import { postureOf } from '../../src/mechanics/kinematics.ts';
import { cards } from '../published/exercise-cards.ts';
import { BODY, sceneFrom, sceneOf } from './scenes.ts';

const H = 1.75;
const origin = { x: 0, y: 0 };

describe('stance', () => {
  it.each(cards.map(({ name, movement, loadKg }) => ({ name, scene: sceneFrom(movement, loadKg) })))(
    '$name: rests on what the card names, and there only as high as its closure says',
    ({ scene }) => {
      for (const stance of stancesOf(scene)) {
        const heights = scene.supports.map((support) => contactOf(stance, support).y);
        if (heights.length > 0 && scene.supports[0] !== 'seat')
          expect(Math.min(...heights)).toBeCloseTo(0, 9);
        if (scene.supports[0] === 'upperBack')
          expect(heights[0]! - heights[1]!).toBeCloseTo(scene.supportRiseM, 6);
      }
    },
  );

  it('keeps the planted foot of a movement where it is', () => {
    const [start, end] = stancesOf(sceneOf('RDL 20 kg to 70 deg hip'));
    expect(distance(start!.work.mid, end!.work.mid)).toBeLessThan(1e-9);
  });

  it('reads the rise of a step from the foot that hangs, when the card gives none', () => {
    const [start] = stancesOf(sceneOf('Step-up 20 cm', { props: ['step'], supportRiseM: 0 }));
    expect(start!.work.groundY).toBeGreaterThan(0.05);
    expect(Math.min(start!.other.heel.y, start!.other.fore.y)).toBeCloseTo(0, 9);
  });
});

describe('head', () => {
  const stances = cards.flatMap(({ name, movement, loadKg }) =>
    stancesOf(sceneFrom(movement, loadKg)).map((stance, index) => ({
      name: `${name}, frame ${index}`,
      stance,
    })),
  );

  it.each(stances)(
    '$name: the neck bends, it neither stretches nor lets the head through the floor',
    ({ stance }) => {
      const { centre } = headOf(stance, null);
      const neck = distance(stance.shoulder, centre) / H;
      expect(neck).toBeGreaterThan(NECK.length - NECK.base);
      expect(neck).toBeLessThan(NECK.length + NECK.base + 0.004);
      expect(centre.y).toBeGreaterThanOrEqual(Math.min(HEAD_REST.back, HEAD_REST.face) * H - 1e-9);
    },
  );
});

describe('neck on the floor', () => {
  it('bends in a steep bridge, shoulders lowest: the head does not climb on a stretched neck', () => {
    const pose = { trunk: -140, work: { hip: 0, knee: 95, pitch: 0 } };
    const frames = [{ name: 'hold' as const, posture: postureOf(pose, BODY), hipFlexionDeg: 0 }];
    const [stance] = stancesOf(
      sceneOf('Double-leg bridge, from the floor', { supports: ['upperBack'], frames }),
    );
    const { centre } = headOf(stance!, null);
    expect(centre.y).toBeCloseTo(HEAD_REST.back * H, 9);
    expect(distance(stance!.shoulder, centre) / H).toBeGreaterThan(NECK.length - NECK.base);
  });
});

describe('knee', () => {
  const hip = { x: 0, y: 0.9 };
  const knee = { x: 0, y: 0.9 - 0.245 * H };
  const shape = { upper: THIGH, lower: SHANK, joint: KNEE, folds: 'back' } as const;

  it.each([70, 95, 116, 130, 150])(
    'folded to %i°: thigh and calf meet at a crease, neither enters the other',
    (deg) => {
      // Knee flexion turns the shank backwards: clockwise for a body that looks along +x.
      const ankle = turned(along(knee, 0.246 * H, { x: 0, y: -1 }), knee, (-deg * Math.PI) / 180);
      const { fold } = limbSides(hip, knee, ankle, shape, H);
      const [thigh, calf] = [directionFrom(knee, hip), directionFrom(knee, ankle)];
      const halfway = directionFrom(origin, between(thigh, calf, 0.5));
      const across = { x: -halfway.y, y: halfway.x };
      const side = (point: { x: number; y: number }) =>
        (point.x - knee.x) * across.x + (point.y - knee.y) * across.y;
      const thighSide = Math.sign(side(hip));
      for (const knot of fold.slice(0, THIGH.length)) expect(side(knot) * thighSide).toBeGreaterThan(-1e-9);
      for (const knot of fold.slice(-SHANK.length)) expect(side(knot) * thighSide).toBeLessThan(1e-9);
    },
  );
});

describe('foot', () => {
  const leg = (pitchDeg: number, liftM: number): Leg => {
    const pitch = (pitchDeg * Math.PI) / 180;
    const forward = { x: Math.cos(pitch), y: Math.sin(pitch) };
    const dorsal = { x: -forward.y, y: forward.x };
    const fore = { x: 0, y: liftM };
    const ankle = along(along(fore, -0.075 * H, forward), 0.039 * H, dorsal);
    const at = (f: number) => along(along(ankle, f * H, forward), -0.039 * H, dorsal);
    return {
      ankle,
      knee: along(ankle, 0.4, { x: 0, y: 1 }),
      heel: at(-0.035),
      mid: at(0.03),
      fore,
      footCom: at(0.03),
      groundY: 0,
      planted: true,
    };
  };

  it.each([0, -20, -35, -55, -70])(
    'heel raised to a pitch of %i°: the toes bend and lie along the floor',
    (pitch) => {
      const knots = footKnots(leg(pitch, 0), H);
      const [toeSole, ball] = [knots[3]!, knots[4]!];
      expect(toeSole.y).toBeCloseTo(0, 6);
      expect(ball.y).toBeCloseTo(0, 6);
      // The bend is a turn about the ball: no toe grows.
      expect(distance(toeSole, ball)).toBeCloseTo(
        (FOOT_KNOTS.toeSole.forward - FOOT_KNOTS.ball.forward) * H,
        9,
      );
    },
  );

  it('in the air keeps its toes straight', () => {
    const [toeSole, ball] = [footKnots(leg(-40, 0.4), H)[3]!, footKnots(leg(-40, 0.4), H)[4]!];
    expect(Math.atan2(toeSole.y - ball.y, toeSole.x - ball.x)).toBeCloseTo((-40 * Math.PI) / 180, 6);
  });

  it('hanging through the floor gives way at the ankle', () => {
    const hanging = { ...leg(-80, 0), planted: false };
    const low = { ...hanging, ankle: { x: 0, y: 0.06 * H } };
    expect(Math.min(...footKnots(low, H).map(({ y }) => y))).toBeGreaterThanOrEqual(-1e-9);
  });
});

describe('arm', () => {
  const shoulder = { x: 0, y: 1.4 };
  const reach = (ARM_LENGTHS.upper + ARM_LENGTHS.lower + ARM_LENGTHS.grip) * H;

  it.each([
    ['down', { x: 0.02, y: 0.8 }],
    ['ahead', { x: 0.5, y: 1.3 }],
    ['to the belly', { x: 0.12, y: 1.1 }],
  ])('reaches %s with bones of their own length and an elbow that bends the right way', (_, hand) => {
    const arm = armTo(shoulder, { hand, grips: true }, H, 0);
    expect(distance(shoulder, arm.elbow)).toBeCloseTo(ARM_LENGTHS.upper * H, 9);
    expect(distance(arm.elbow, arm.hand)).toBeCloseTo((ARM_LENGTHS.lower + ARM_LENGTHS.grip) * H, 9);
    // Looking along +x the forearm turns forward, counter-clockwise, about the elbow.
    const [u, f] = [directionFrom(shoulder, arm.elbow), directionFrom(arm.elbow, arm.hand)];
    expect(u.x * f.y - u.y * f.x).toBeGreaterThan(0);
  });

  it('out of reach ends on the way there', () => {
    const arm = armTo(shoulder, { hand: { x: 3, y: 1.4 }, grips: false }, H, 0);
    expect(arm.hand.y).toBeCloseTo(1.4, 9);
    expect(arm.hand.x).toBeLessThanOrEqual(reach);
  });
});

describe('clearance', () => {
  const bar = (ax: number, ay: number, bx: number, by: number, radiusM = 0) => ({
    a: { x: ax, y: ay },
    b: { x: bx, y: by },
    radiusM,
  });

  it.each([
    ['side by side', bar(0, 0, 1, 0, 0.1), bar(0, 1, 1, 1, 0.2), 0.7],
    ['crossing', bar(-1, 0, 1, 0), bar(0, -1, 0, 1), 0],
    ['end to side (3-4-5)', bar(0, 0, 0, 0), bar(3, 4, 9, 4), 5],
    ['overlapping', bar(0, 0, 1, 0, 0.5), bar(0, 0.3, 1, 0.3, 0.1), -0.3],
  ])('%s', (_, one, two, gap) => {
    expect(gapBetween(one, two)).toBeCloseTo(gap, 12);
    expect(clearanceOf(one, [two], 9)).toBeCloseTo(gap, 12);
    expect(clearanceOf(one, [two], gap - 1)).toBeCloseTo(gap - 1, 12);
  });
});
