import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { forcesOf, legOf } from '../../src/mechanics/leg.ts';
import { LUMPS } from '../../src/mechanics/muscle.ts';

const leg = legOf({ hip: 10, knee: 60 }, REFERENCE_BODY);
const sum = (arms: readonly number[], forcesN: readonly number[]) =>
  forcesN.reduce((total, force, i) => total + force * arms[i]!, 0);

describe('a thigh that lies on the bench', () => {
  it('lets the bench take the hip moment while the knee muscles do not lift it', () => {
    const { forcesN } = forcesOf(leg, { hipNm: 80, kneeNm: 30, ankleNm: 0 }, 'thighSupported');
    expect(sum(leg.arms.kneeM, forcesN)).toBeCloseTo(30, 9);
    expect(sum(leg.arms.hipM, forcesN)).toBeLessThan(80);
    // Knee flexors only, in the proportion of area squared and arm.
    const pulling = LUMPS.filter((_, i) => forcesN[i]! > 0);
    expect(pulling).toEqual(['hamstrings', 'bicepsShortHead']);
  });

  it('is a free leg as soon as they would', () => {
    const moments = { hipNm: 10, kneeNm: 60, ankleNm: 0 };
    const { forcesN } = forcesOf(leg, moments, 'thighSupported');
    expect(forcesN).toEqual(forcesOf(leg, moments, 'active').forcesN);
    expect(sum(leg.arms.hipM, forcesN)).toBeCloseTo(10, 9);
  });
});

describe('a relaxed leg', () => {
  it('pulls with its passive tension and nothing else', () => {
    const stretched = legOf({ hip: 90, knee: 0 }, REFERENCE_BODY);
    const { forcesN, cost } = forcesOf(stretched, { hipNm: -41, kneeNm: 0, ankleNm: 0 }, 'passive');
    expect(forcesN[0]).toBeCloseTo(1142.39, 2);
    expect(forcesN.slice(1).every((force) => force === 0)).toBe(true);
    expect(cost).toBe(0);
  });
});

describe('the calf', () => {
  it('pulls at the knee no more than the ankle lets it', () => {
    const calf = LUMPS.indexOf('gastrocnemii');
    const at = (ankleNm: number) =>
      forcesOf(leg, { hipNm: 20, kneeNm: 60, ankleNm }, 'active').forcesN[calf]!;
    expect(at(-5)).toBe(0);
    expect(at(10)).toBeCloseTo(10 / ((0.05 * 1.75) / 1.8), 6);
    expect(at(500)).toBeLessThan(500 / leg.achillesArmM);
  });
});
