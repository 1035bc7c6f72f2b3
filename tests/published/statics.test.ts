/** Reactions and joint moments against hand-worked statics, and against Newton's third law at the hip. */
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import { postureOf } from '../../src/mechanics/kinematics.ts';
import { loadingAt, loadingOf } from '../../src/mechanics/loading.ts';
import { legMoments } from '../../src/mechanics/moment.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { sumOf, weightsOf } from '../../src/mechanics/weight.ts';
import { cardNamed, cards } from './exercise-cards.ts';

const BASE = { mode: 'active', horizontal: 'none', range: 'fixed' } as const;

const prone: Movement = {
  ...BASE,
  supports: [],
  loadAt: 'work.ankle',
  start: {
    trunk: 90,
    work: { hip: 0, knee: 0, ankle: 0 },
    other: { hip: 0, knee: 0, ankle: 0 },
  },
};

const plank: Movement = {
  ...BASE,
  supports: ['upperBack', 'both.heel'],
  start: { trunk: -90, work: { hip: 0, knee: 0, pitch: 90 } },
};

describe('specification 13.1: prone, straight leg, 5 kg at the ankle (70 kg, 1.75 m)', () => {
  const leg = loadingAt(prone, REFERENCE_BODY, 5, 0)!.work;
  it('knee flexor moment 31.6946 N·m', () => expect(Math.abs(leg.kneeMomentNm - 31.6946)).toBeLessThan(5e-4));
  it('hip extensor moment 83.4331 N·m', () => expect(Math.abs(leg.hipMomentNm - 83.4331)).toBeLessThan(5e-4));
  it('worked out term by term', () => {
    const kneeNm = 9.81 * (3.255 * 0.1864065 + 1.015 * 0.464625 + 5 * 0.4305);
    const hipNm = 9.81 * (7 * 0.185649 + 3.255 * 0.6151565 + 1.015 * 0.893375 + 5 * 0.85925);
    expect(leg.kneeMomentNm).toBeCloseTo(kneeNm, 4);
    expect(leg.hipMomentNm).toBeCloseTo(hipNm, 4);
  });
});

describe('specification 13.2: straight plank on upper back and heels', () => {
  const posture = postureOf(plank.start, REFERENCE_BODY);
  const { reactions, work } = loadingOf(plank, posture, REFERENCE_BODY, 0, 'none');
  it.each([
    ['back, N', reactions[0]!.upN, 516.138],
    ['both heels, N', reactions[1]!.upN, 170.562],
    ['hip extensor moment of one leg, N·m', work.hipMomentNm, 37.811],
    ['knee flexor moment of one leg, N·m', work.kneeMomentNm, 31.955],
  ])('%s', (_title, value, expected) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(0.002));

  it('the same pose written out for both legs gives the same moment', () => {
    const twice: Movement = {
      ...plank,
      supports: ['upperBack', 'both.heel'],
      start: { ...plank.start, other: plank.start.work },
    };
    const loading = loadingOf(twice, postureOf(twice.start, REFERENCE_BODY), REFERENCE_BODY, 0, 'none');
    expect(loading.work.hipMomentNm).toBeCloseTo(37.810529, 6);
    expect(Math.abs(loading.work.hipMomentNm - work.hipMomentNm)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(loading.other!.hipMomentNm - work.hipMomentNm)).toBeLessThanOrEqual(1e-12);
  });
});

describe("Newton's third law: the moments of both legs and of the upper body about the hip cancel", () => {
  const resting = cards.filter(({ movement }) => movement.solve);
  it.each(resting.flatMap(({ name }) => [0, 0.5, 1].map((t) => [name, t] as const)))(
    '%s at %d',
    (name, t) => {
      const { movement, loadKg } = cardNamed(name);
      const posture = closePose(movement, poseAt(movement, t), REFERENCE_BODY, loadKg)!;
      const weights = weightsOf(posture, REFERENCE_BODY, movement.loadAt, loadKg);
      for (const friction of ['minEffort', 'none'] as const) {
        const { reactions } = loadingOf(movement, posture, REFERENCE_BODY, loadKg, friction);
        const work = legMoments('work', posture.work, weights.work, reactions);
        const other = legMoments('other', posture.other, weights.other, reactions);
        const onUpper = reactions.filter(({ support }) => !/^(work|other|both)/.test(support));
        const upperNm =
          onUpper.reduce((sum, { at, upN, forwardN }) => sum + at.x * upN - at.y * forwardN, 0) -
          weights.upper.reduce((sum, { at, downN }) => sum + at.x * downN, 0);
        expect(Math.abs(work.hipNm + other.hipNm + upperNm)).toBeLessThanOrEqual(1e-8);
      }
    },
  );

  it('vertical reactions add up to the weight: 882.9 N with 20 kg in the hands', () => {
    const { movement, loadKg } = cardNamed('RDL 20 kg to 70 deg hip');
    const { reactions, points } = loadingAt(movement, REFERENCE_BODY, loadKg, 1)!;
    expect(Math.abs(reactions[0]!.upN - 882.9)).toBeLessThanOrEqual(1e-9);
    const { downN, momentNm } = sumOf(weightsOf(points, REFERENCE_BODY, movement.loadAt, loadKg));
    expect(Math.abs(momentNm + points.work.mid.x * downN)).toBeLessThanOrEqual(1e-6);
  });
});
