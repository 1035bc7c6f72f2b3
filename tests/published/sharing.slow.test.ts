/**
 * Load sharing against closed forms, against the Goldfarb-Idnani dual method (npm quadprog, a port of the R package),
 * and against the enumeration of all sets of free muscles.
 */
import fc from 'fast-check';
// @ts-expect-error: quadprog ships no types
import quadprog from 'quadprog';
import { describe, expect, it } from 'vitest';
import { armsAt, STRENGTH_N, STRESS_N_PER_CM2 } from '../../src/mechanics/muscle.ts';
import { shareLoad, type SharingProblem } from '../../src/mechanics/sharing.ts';
import { passiveTensionN } from '../../src/mechanics/passiveTension.ts';
import { enumerateShares } from '../mechanics/reference.mjs';

const NONE = Infinity;
const AREA_CM2 = STRENGTH_N.map((strength) => strength / STRESS_N_PER_CM2);

describe('hand-worked examples of the specification', () => {
  it('13.3, two hip extensors and no knee moment: 561.331 N and 798.337 N', () => {
    const { forcesN } = shareLoad({
      arms: { hipM: [0.05, 0.04], kneeM: [0, 0] },
      hipNm: 60,
      kneeNm: 0,
      leastN: [0, 0],
      mostN: [NONE, NONE],
      weights: [60 ** 2, 80 ** 2],
    });
    expect(forcesN[0]).toBeCloseTo((3600 * 0.05 * 60) / 19.24, 8);
    expect(forcesN[0]).toBeCloseTo(561.331, 3);
    expect(forcesN[1]).toBeCloseTo(798.337, 3);
  });

  it('13.4, a pair that statics alone determines: 500 N and 1200 N', () => {
    const { forcesN } = shareLoad({
      arms: { hipM: [0.06, 0.05], kneeM: [0.03, 0] },
      hipNm: 90,
      kneeNm: 15,
      leastN: [0, 0],
      mostN: [NONE, NONE],
      weights: [68.43 ** 2, 95.45 ** 2],
    });
    expect(forcesN[0]).toBeCloseTo(500, 8);
    expect(forcesN[1]).toBeCloseTo(1200, 8);
  });

  it('no moments, no forces', () => {
    const { forcesN, cost } = shareLoad(leg(40, 30, 0, 0, 0));
    expect(forcesN.every((force) => Math.abs(force) < 1e-9)).toBe(true);
    expect(cost).toBeCloseTo(0, 12);
  });
});

// In thousandths: quadprog calls bounds of 1e-300 inconsistent.
const thousandths = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((n) => n / 1000);
const posed = fc.record({
  hip: thousandths(-30, 135),
  knee: thousandths(-5, 150),
  hipNm: thousandths(-250, 500),
  kneeNm: thousandths(-400, 250),
  ankleNm: thousandths(-60, 250),
});

describe('quadprog 1.6 (Goldfarb & Idnani 1983)', () => {
  it('500 random cases agree within 1e-6 N', () => {
    let [compared, calfHeld, hamstringsHeld] = [0, 0, 0];
    for (const { hip, knee, hipNm, kneeNm, ankleNm } of fc.sample(posed, { numRuns: 500, seed: 3 })) {
      const problem = leg(hip, knee, hipNm, kneeNm, Math.max(0, ankleNm) / 0.05, passiveTensionN(hip, knee));
      const { forcesN } = shareLoad(problem);
      const expected = byQuadprog(problem);
      forcesN.forEach((force, i) => expect(Math.abs(force - expected[i]!)).toBeLessThanOrEqual(1e-6));
      compared += 1;
      if (forcesN[6] === problem.mostN[6]) calfHeld += 1;
      if (forcesN[0] === problem.leastN[0]) hamstringsHeld += 1;
    }
    expect(compared).toBe(500);
    // Both bounds that make the problem more than a formula were met often enough to count.
    expect(calfHeld).toBeGreaterThan(40);
    expect(hamstringsHeld).toBeGreaterThan(40);
  });
});

describe('enumeration of the 128 sets of free muscles (specification, section 7)', () => {
  const grid = [-15, 0, 20, 40, 60, 80, 100, 120].flatMap((hip) =>
    [0, 25, 50, 80, 110].flatMap((knee) =>
      [-60, -20, 0, 15, 40, 80, 120, 200].flatMap((hipNm) =>
        [-150, -80, -30, -5, 0, 10, 40, 90, 150].map((kneeNm) => ({ hip, knee, hipNm, kneeNm })),
      ),
    ),
  );

  it(`agrees on a grid of ${grid.length} cases within 1e-6 N, and each meets its optimality conditions`, () => {
    expect(grid.length).toBe(2880);
    for (const { hip, knee, hipNm, kneeNm } of grid) {
      const problem = leg(hip, knee, hipNm, kneeNm, (hip * knee) % 7 < 3 ? 0 : 400);
      const shares = shareLoad(problem);
      const expected = enumerateShares(problem)!;
      shares.forcesN.forEach((force, i) =>
        expect(Math.abs(force - expected.forcesN[i]!)).toBeLessThanOrEqual(1e-6),
      );
      expect(Math.abs(shares.cost - expected.cost)).toBeLessThanOrEqual(1e-9 * (1 + expected.cost));
      expect(moment(problem.arms.hipM, shares.forcesN) - hipNm).toBeCloseTo(0, 9);
      expect(moment(problem.arms.kneeM, shares.forcesN) - kneeNm).toBeCloseTo(0, 9);
      const [a, b] = shares.multipliers;
      shares.forcesN.forEach((force, i) => {
        const wished = AREA_CM2[i]! ** 2 * (a * problem.arms.hipM[i]! + b * problem.arms.kneeM[i]!);
        const held = Math.min(problem.mostN[i]!, Math.max(0, wished));
        expect(Math.abs(force - held)).toBeLessThanOrEqual(1e-6);
      });
    }
  });
});

function leg(
  hip: number,
  knee: number,
  hipNm: number,
  kneeNm: number,
  calfN: number,
  passiveN = 0,
): SharingProblem {
  return {
    arms: armsAt(hip, knee, 1.8),
    hipNm,
    kneeNm,
    leastN: [passiveN, 0, 0, 0, 0, 0, 0],
    mostN: [NONE, NONE, NONE, NONE, NONE, NONE, calfN],
    weights: AREA_CM2.map((area) => area ** 2),
  };
}

function moment(arms: readonly number[], forcesN: readonly number[]): number {
  return forcesN.reduce((sum, force, i) => sum + force * arms[i]!, 0);
}

// In stress x = force / area, so that the quadratic form is the identity; quadprog counts rows and columns from 1.
// It calls 0 <= x <= 0 inconsistent, so a calf that may not pull is given no arm and no upper bound instead: same answer.
function byQuadprog({ arms, hipNm, kneeNm, leastN, mostN, weights }: SharingProblem): number[] {
  const areaCm2 = weights.map(Math.sqrt);
  const n = areaCm2.length;
  const each = (value: (i: number) => number) => [0, ...areaCm2.map((_, i) => value(i))];
  const pulls = (i: number) => (mostN[i]! > 0 ? areaCm2[i]! : 0);
  const calfN = mostN[n - 1]!;
  const columns = [
    each((i) => arms.hipM[i]! * pulls(i)),
    each((i) => arms.kneeM[i]! * pulls(i)),
    ...areaCm2.map((_, k) => each((i) => (i === k ? 1 : 0))),
    ...(calfN > 0 ? [each((i) => (i === n - 1 ? -1 : 0))] : []),
  ];
  const bounds = [
    0,
    hipNm,
    kneeNm,
    ...leastN.map((force, i) => force / areaCm2[i]!),
    -calfN / areaCm2[n - 1]!,
  ];
  const identity = [[], ...areaCm2.map((_, row) => each((i) => (i === row ? 2 : 0)))];
  const byRow = [[], ...areaCm2.map((_, row) => [0, ...columns.map((column) => column[row + 1]!)])];
  const answer = quadprog.solveQP(
    identity,
    each(() => 0),
    byRow,
    bounds.slice(0, columns.length + 1),
    2,
  ) as {
    solution: number[];
    message: string;
  };
  expect(answer.message).toBe('');
  return answer.solution.slice(1, n + 1).map((stress, i) => stress * areaCm2[i]!);
}
