import { describe, expect, it } from 'vitest';
import { CENTRE, LENGTH, MASS } from '../../src/mechanics/anthropometry.ts';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { ankleDegOf, postureOf } from '../../src/mechanics/kinematics.ts';

const standing = postureOf({ trunk: 0, work: { hip: 0, knee: 0, pitch: 0 } }, REFERENCE_BODY);
const seated = postureOf({ trunk: 0, work: { hip: 90, knee: 90, pitch: 0 } }, REFERENCE_BODY);
const prone = postureOf({ trunk: 90, work: { hip: 0, knee: 0, ankle: 0 } }, REFERENCE_BODY);

describe('segment fractions agree with their published sums', () => {
  it.each([
    [
      'Winter table 4.1: two legs, trunk with head and arms make the whole mass',
      2 * (MASS.foot + MASS.shank + MASS.thigh) + MASS.trunkHead + MASS.arms,
      1,
      1e-12,
    ],
    [
      'Drillis & Contini: hip to floor is 0.530 of height',
      LENGTH.thigh + LENGTH.shank + LENGTH.ankle,
      0.53,
      1e-12,
    ],
    [
      'Drillis & Contini: shoulder to floor is 0.818 of height',
      LENGTH.thigh + LENGTH.shank + LENGTH.ankle + LENGTH.trunk,
      0.818,
      1e-12,
    ],
    ['Winter table 4.1, row HAT: centre at 0.626 of hip to shoulder, arms down', hatCentre(), 0.626, 0.01],
  ])('%s', (_title, value, expected, tolerance) => {
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
  });
});

describe('points of a pose, from the lengths by plane trigonometry', () => {
  it.each([
    ['standing: hip to sole', standing.work.mid.y, -0.9275],
    ['standing: shoulder above hip', standing.shoulder.y, 0.504],
    ['standing: hands hang beside the thigh', standing.hands.y, 0.504 - 0.6755],
    ['hip 90 knee 90: knee forward', seated.work.knee.x, 0.42875],
    ['hip 90 knee 90: ankle forward as far', seated.work.ankle.x, 0.42875],
    ['hip 90 knee 90: ankle below knee', seated.work.knee.y - seated.work.ankle.y, 0.4305],
    ['hip 90 knee 90: sit bone below hip', seated.seat.y, (-0.0348 * 1.75) / 1.8],
    [
      'prone: toes hang down, foot centre past the ankle',
      prone.work.ankle.x - prone.work.footCom.x,
      0.034125,
    ],
    ['prone: upper back lies above the trunk line', prone.upperBack.y, 0.06 * 1.75],
  ])('%s', (_title, value, expected) => {
    expect(value).toBeCloseTo(expected, 12);
  });

  it('a symmetric pose has one pair of legs', () => {
    expect(standing.other).toEqual(standing.work);
  });

  it('a foot given by its ankle and one given by its angle to the ground agree', () => {
    const leg = { hip: 40, knee: 55 };
    const byPitch = postureOf({ trunk: 20, lumbar: 5, work: { ...leg, pitch: 12 } }, REFERENCE_BODY);
    const ankle = ankleDegOf({ ...leg, pitch: 12 }, 15);
    const byAnkle = postureOf({ trunk: 20, lumbar: 5, work: { ...leg, ankle } }, REFERENCE_BODY);
    expect(byAnkle.work.fore.x).toBeCloseTo(byPitch.work.fore.x, 12);
    expect(byAnkle.work.fore.y).toBeCloseTo(byPitch.work.fore.y, 12);
  });

  it('bending the spine in place of the hip leaves trunk and legs where they were', () => {
    const byHip = postureOf({ trunk: 40, work: { hip: 70, knee: 20, pitch: 0 } }, REFERENCE_BODY);
    const bySpine = postureOf(
      { trunk: 40, lumbar: 20, work: { hip: 50, knee: 20, pitch: 0 } },
      REFERENCE_BODY,
    );
    expect(bySpine.work.mid.x).toBeCloseTo(byHip.work.mid.x, 12);
    expect(bySpine.shoulder).toEqual(byHip.shoulder);
  });
});

function hatCentre(): number {
  const trunk = CENTRE.trunkHead * MASS.trunkHead;
  const arms = ((LENGTH.trunk - CENTRE.arm * LENGTH.arm) / LENGTH.trunk) * MASS.arms;
  return (trunk + arms) / (MASS.trunkHead + MASS.arms);
}
