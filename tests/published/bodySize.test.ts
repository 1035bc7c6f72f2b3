/**
 * Body size and the least of the hamstrings. Handsfield et al. 2014, J Biomech 47:631-638 [secondary]: muscle volume
 * follows body mass times height; over a length that follows height this makes force follow mass. Base, limits and the
 * least share are the house's [choice]. Printed figures: sections 0.2, 7 and 11 of the model's specification.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY, type Body, type MuscleSettings } from '../../src/mechanics/body.ts';
import { WHOLE } from '../../src/mechanics/gentle.ts';
import { forcesOf, legOf } from '../../src/mechanics/leg.ts';
import { loadingAt } from '../../src/mechanics/loading.ts';
import { armsAt } from '../../src/mechanics/muscle.ts';
import { demandOf, strengthFactor } from '../../src/mechanics/strength.ts';
import { sweep } from '../../src/mechanics/sweep.ts';
import { cardNamed, cards } from './exercise-cards.ts';

const SCALED: MuscleSettings = { baseMassKg: 75, massFromKg: 45, massToKg: 100, leastHamstringShare: 0 };
const HOUSE: MuscleSettings = { ...SCALED, leastHamstringShare: 0.2 };
const TEMPO = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
const peakOf = (name: string, body: Body, kg = cardNamed(name).loadKg) =>
  sweep(cardNamed(name).movement, body, kg, WHOLE, TEMPO)!.peak;

describe('greatest force by body mass: times mass over 75 kg, mass held between 45 and 100 kg', () => {
  // mass, kg | factor on every greatest force
  it.each([
    [30, 0.6],
    [44.9, 0.6],
    [45, 0.6],
    [60, 0.8],
    [75, 1],
    [90, 1.2],
    [100, 4 / 3],
    [100.1, 4 / 3],
    [250, 4 / 3],
  ])('%d kg: %d', (massKg, factor) => {
    expect(strengthFactor({ massKg, heightM: 1.75, muscles: SCALED })).toBeCloseTo(factor, 12);
  });

  it('is 1 at every mass in the published model', () => {
    expect([45, 75, 120].map((massKg) => strengthFactor({ massKg, heightM: 1.75 }))).toEqual([1, 1, 1]);
  });

  // A lean of 30° on the knees, 1.75 m, no weight: the same pull in body weights whoever leans.
  // mass, kg | pull, BW (section 11) | share of strength with one force for everybody (issue) | by body mass
  it.each([
    [47, 3.51, 0.64, 1.02],
    [75, 3.51, 1.02, 1.02],
    [120, 3.51, 1.62, 1.22],
  ])('a kneeling lean of %d kg: pull %d BW, strength %d, now %d', (massKg, pullBw, before, now) => {
    const name = 'Nordic curl, 30 deg lean (strap)';
    const body = { massKg, heightM: 1.75 };
    const [fixed, scaled] = [peakOf(name, body), peakOf(name, { ...body, muscles: SCALED })];
    expect(Math.abs(scaled.tensionBw - pullBw)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(fixed.demand - before)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(scaled.demand - now)).toBeLessThanOrEqual(0.01);
  });

  // Minimal squared stress: one factor on all areas cancels out of every force (section 7, "only ratios matter").
  it.each(cards.flatMap(({ name }) => [47, 70, 75, 120].map((massKg) => ({ name, massKg }))))(
    '$name at $massKg kg: pull, squeeze and moments stay to the last digit, the share of strength goes by the factor',
    ({ name, massKg }) => {
      const body = { massKg, heightM: 1.75 };
      const [fixed, scaled] = [peakOf(name, body), peakOf(name, { ...body, muscles: SCALED })];
      const { demand, ...others } = scaled;
      expect(others).toEqual(expect.objectContaining(withoutDemand(fixed)));
      expect(demand).toBeCloseTo(fixed.demand / strengthFactor({ ...body, muscles: SCALED }), 12);
    },
  );
});

describe('the least share of the hamstrings in hip extension [choice]', () => {
  const armM = (hip: number, knee: number) => armsAt(hip, knee, REFERENCE_BODY.heightM).hipM[0]!;
  const houseBody = { ...REFERENCE_BODY, muscles: HOUSE };
  const scaledBody = { ...REFERENCE_BODY, muscles: SCALED };

  it.each(cards.map(({ name }) => name))(
    'a fifth leaves the printed row of section 11 as it is: %s',
    (name) => {
      const [house, printed] = [peakOf(name, houseBody), peakOf(name, scaledBody)];
      expect(house).toEqual(printed);
    },
  );

  // Section 0.2: a step of 40 cm, weights at the sides. kg | squeeze by least effort alone
  it.each([
    [0, 0.7],
    [20, 0.2],
    [40, 0.09],
  ])('a step of 40 cm with %d kg, printed %d BW, no longer spares the hamstrings', (kg, printed) => {
    const movement = { ...cardNamed('Step-up 40 cm').movement, loadAt: 'hands' as const };
    const peakBw = (muscles: MuscleSettings) =>
      sweep(movement, { ...REFERENCE_BODY, muscles }, kg, WHOLE, TEMPO)!.peak.compressionBw;
    expect(Math.abs(peakBw(SCALED) - printed)).toBeLessThanOrEqual(0.0051);
    const { work } = loadingAt(movement, houseBody, kg, 0)!;
    const shareOfMoment = (work.tensionN * armM(work.hipFlexionDeg, work.kneeFlexionDeg)) / work.hipMomentNm;
    expect(shareOfMoment).toBeGreaterThanOrEqual(0.2 - 1e-9);
    if (kg > 0) {
      expect(shareOfMoment).toBeCloseTo(0.2, 9);
      expect(peakBw(HOUSE)).toBeGreaterThan(2 * printed);
    } else expect(peakBw(HOUSE)).toBe(peakBw(SCALED));
  });

  it('changes no push between two supports', () => {
    const { movement } = cardNamed('Split squat');
    const half = { ...REFERENCE_BODY, muscles: { ...SCALED, leastHamstringShare: 0.5 } };
    const [house, least] = [half, REFERENCE_BODY].map((body) => loadingAt(movement, body, 20, 1)!);
    expect(house!.frictionN).toBe(least!.frictionN);
    expect(house!.work.tensionN).toBeGreaterThan(least!.work.tensionN);
  });

  it('raises pull to exactly that share where least effort gives less, and never lowers pull or the share of strength', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 115, noNaN: true }),
        fc.double({ min: 0, max: 110, noNaN: true }),
        fc.double({ min: -60, max: 250, noNaN: true }),
        fc.double({ min: -150, max: 80, noNaN: true }),
        fc.double({ min: -20, max: 120, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (hip, knee, hipNm, kneeNm, ankleNm, leastHamstringShare) => {
          const moments = { hipNm, kneeNm, ankleNm };
          const with_ = (share: number) =>
            legOf({ hip, knee }, { ...REFERENCE_BODY, muscles: { ...SCALED, leastHamstringShare: share } });
          const [least] = forcesOf(with_(0), moments, 'active').forcesN;
          const leg = with_(leastHamstringShare);
          const { forcesN } = forcesOf(leg, moments, 'active');
          const floorN = (leastHamstringShare * Math.max(0, hipNm)) / armM(hip, knee);
          expect(Math.abs(forcesN[0]! - Math.max(least!, floorN))).toBeLessThanOrEqual(1e-5 * (1 + floorN));
          expect(dot(leg.arms.hipM, forcesN)).toBeCloseTo(hipNm, 6);
          expect(dot(leg.arms.kneeM, forcesN)).toBeCloseTo(kneeNm, 6);
        },
      ),
      { numRuns: 500, seed: 7 },
    );
  });

  it('at a fifth the share of strength never falls by it', () => {
    for (const hip of [0, 30, 60, 90, 110])
      for (const knee of [0, 30, 60, 90, 110])
        for (const hipNm of [20, 60, 120, 200])
          for (const kneeNm of [-140, -100, -60, -20]) {
            const moments = { hipNm, kneeNm, ankleNm: 20 };
            const demand = (muscles: MuscleSettings) =>
              demandOf(
                forcesOf(legOf({ hip, knee }, { ...REFERENCE_BODY, muscles }), moments, 'active').forcesN,
                1,
              );
            expect(demand(HOUSE)).toBeGreaterThanOrEqual(demand(SCALED) - 1e-9);
          }
  });

  it('asks nothing where the bench carries the thigh, in a stretch, or of a hip that flexes', () => {
    const leg = (muscles: MuscleSettings) => legOf({ hip: 60, knee: 20 }, { ...REFERENCE_BODY, muscles });
    const half = { ...SCALED, leastHamstringShare: 0.5 };
    for (const [mode, hipNm] of [
      ['thighSupported', 120],
      ['passive', 120],
      ['active', -40],
    ] as const) {
      const moments = { hipNm, kneeNm: -20, ankleNm: 10 };
      expect(forcesOf(leg(half), moments, mode).forcesN).toEqual(
        forcesOf(leg(SCALED), moments, mode).forcesN,
      );
    }
  });
});

function withoutDemand({ demand: _, ...others }: ReturnType<typeof peakOf>) {
  return others;
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, i) => sum + value * right[i]!, 0);
}
