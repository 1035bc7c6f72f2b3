/** Belt mechanics in closed form: what a frictionless belt presses on a round body. */
import { describe, expect, it } from 'vitest';
import { beltForceN, wrapDeg } from '../../src/mechanics/belt.ts';
import { hamstringElongationM } from '../../src/mechanics/muscle.ts';
import { passiveTensionN } from '../../src/mechanics/passiveTension.ts';

const everyDegree = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);

describe('resultant of a belt, 2 T sin(bend / 2)', () => {
  it.each([
    [0, 0],
    [60, 1],
    [90, Math.SQRT2],
    [120, Math.sqrt(3)],
    [180, 2],
  ])('bent by %d degrees: %d times the tension', (bendDeg, expected) => {
    expect(Math.abs(beltForceN(1, bendDeg) - expected)).toBeLessThanOrEqual(1e-12);
  });

  it('is the sum of the pressure T/R over the arc (900 N, 0.02 m, 90 degrees: 1272.792206 N)', () => {
    const pressureNPerM = 900 / 0.02;
    const slices = 200_000;
    let sumN = 0;
    for (let i = 0; i < slices; i++) {
      const fromMiddle = ((i + 0.5) / slices - 0.5) * (Math.PI / 2);
      sumN += pressureNPerM * Math.cos(fromMiddle) * 0.02 * (Math.PI / 2 / slices);
    }
    expect(sumN).toBeCloseTo(1272.792206, 4);
    expect(beltForceN(900, 90)).toBeCloseTo(1272.792206, 4);
  });
});

describe('the bend over bone', () => {
  it('is 0 at and below the onset', () => {
    for (const onset of [0, 20, 30, 45])
      for (const hip of everyDegree(-30, onset)) expect(wrapDeg(hip, onset)).toBe(0);
  });

  it('never falls with hip flexion, and falls when the onset is later', () => {
    for (const hip of everyDegree(-30, 134)) {
      expect(wrapDeg(hip + 1)).toBeGreaterThanOrEqual(wrapDeg(hip));
      expect(wrapDeg(hip, 30)).toBeLessThanOrEqual(wrapDeg(hip));
    }
  });

  it.each([
    [15, 15.8, 0.28],
    [30, 31.2, 0.54],
    [45, 46.0, 0.78],
    [60, 60.5, 1.01],
    [75, 74.4, 1.21],
    [90, 87.9, 1.39],
    [105, 100.9, 1.54],
  ])(
    'specification, section 8: at hip %d it is %d degrees and squeezes %d times the pull',
    (hip, bend, ratio) => {
      expect(Math.abs(wrapDeg(hip) - bend)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(beltForceN(1, wrapDeg(hip)) - ratio)).toBeLessThanOrEqual(0.006);
    },
  );
});

describe('the passive pull', () => {
  it('never falls as the hip bends over a straight knee, 0 to 100 degrees', () => {
    for (const hip of everyDegree(0, 99))
      expect(passiveTensionN(hip + 1, 0)).toBeGreaterThanOrEqual(passiveTensionN(hip, 0));
  });

  it('never rises as the knee bends under a hip at 90', () => {
    for (const knee of everyDegree(0, 109))
      expect(passiveTensionN(90, knee + 1)).toBeLessThanOrEqual(passiveTensionN(90, knee));
  });

  it('is nothing where the hamstrings are slack', () => {
    expect(hamstringElongationM(0, 90)).toBeLessThan(0);
    expect(passiveTensionN(0, 90)).toBe(0);
  });
});
