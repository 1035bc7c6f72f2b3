/** Laws of the forward model, over chance poses and bodies. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/mechanics/body.ts';
import { beltForceN, wrapDeg } from '../../src/mechanics/belt.ts';
import { legOf, type LegBend, forcesOf } from '../../src/mechanics/leg.ts';
import { loadingAt, type LegLoading, type Loading } from '../../src/mechanics/loading.ts';
import type { Movement, SupportPoint } from '../../src/mechanics/movement.ts';
import { LUMPS, STRENGTH_N, STRESS_N_PER_CM2 } from '../../src/mechanics/muscle.ts';
import type { LegPose, Pose } from '../../src/mechanics/pose.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { cards } from '../published/exercise-cards.ts';
import { goldenLow } from '../mechanics/reference.mjs';
import { closePose } from '../../src/mechanics/closure.ts';
import { legMoments } from '../../src/mechanics/moment.ts';
import { reactionsOf } from '../../src/mechanics/reaction.ts';
import { weightsOf } from '../../src/mechanics/weight.ts';

const SEED = { seed: 20, numRuns: 300 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const body: fc.Arbitrary<Body> = fc.record({ massKg: between(30, 250), heightM: between(1.2, 2.2) });
const leg: fc.Arbitrary<LegPose> = fc.oneof(
  fc.record({ hip: between(-30, 135), knee: between(-5, 150), pitch: between(-80, 80) }),
  fc.record({ hip: between(-30, 135), knee: between(-5, 150), ankle: between(-60, 40) }),
);
const arms = fc.oneof(fc.constant('trunk' as const), fc.constant('hang' as const), between(-180, 200));
const pose: fc.Arbitrary<Pose> = fc
  .record({ trunk: between(-180, 180), lumbar: between(0, 80), arms, work: leg, other: fc.option(leg) })
  .map(({ other, ...rest }) => (other ? { ...rest, other } : rest));
const feet = ['heel', 'mid', 'fore', 'knee', 'ankle'] as const;
const support: fc.Arbitrary<SupportPoint> = fc.oneof(
  fc.constantFrom('upperBack' as const, 'seat' as const, 'shoulder' as const, 'hands' as const),
  fc
    .tuple(fc.constantFrom('work' as const, 'other' as const, 'both' as const), fc.constantFrom(...feet))
    .map(([owner, part]) => `${owner}.${part}` as const),
);
const movement: fc.Arbitrary<Movement> = fc.record({
  supports: fc.array(support, { maxLength: 2 }),
  mode: fc.constantFrom('active' as const, 'thighSupported' as const, 'passive' as const),
  horizontal: fc.constantFrom('minEffort' as const, 'none' as const),
  loadAt: fc.constantFrom('hands', 'shoulder', 'pelvisFront', 'work.ankle', 'both.ankle', 'work.knee'),
  start: pose,
  range: fc.constant('fixed' as const),
});

describe('any pose inside the joint limits', () => {
  it('gives finite numbers, or says that it cannot rest', () => {
    let resting = 0;
    fc.assert(
      fc.property(movement, body, between(0, 60), (chance, person, loadKg) => {
        const loading = loadingAt(chance, person, loadKg, 0);
        if (!loading) return;
        resting += 1;
        for (const number of numbersOf(loading)) expect(Number.isFinite(number)).toBe(true);
      }),
      { ...SEED, numRuns: 2000 },
    );
    expect(resting).toBeGreaterThan(400);
  });

  it('both moment equations hold to 1e-9 N·m, and every force is optimal between its bounds', () => {
    let seen = 0;
    fc.assert(
      fc.property(movement, body, between(0, 60), (chance, person, loadKg) => {
        const active: Movement = { ...chance, mode: 'active' };
        const loading = loadingAt(active, person, loadKg, 0);
        if (!loading) return;
        seen += 1;
        equationsHold(loading.work, loading.angles.work, person);
        if (loading.other) equationsHold(loading.other, loading.angles.other!, person);
      }),
      { ...SEED, numRuns: 2000 },
    );
    expect(seen).toBeGreaterThan(300);
  });
});

const card = fc.constantFrom(...cards);
const t = between(0, 1);

describe('scaling', () => {
  it('with mass and load doubled, pull doubles and squeeze in body weights stays, while the passive pull is out of play', () => {
    let seen = 0;
    fc.assert(
      fc.property(card, t, between(35, 110), (chance, at, massKg) => {
        const once = loadingAt(chance.movement, { massKg, heightM: 1.75 }, chance.loadKg, at);
        const twice = loadingAt(
          chance.movement,
          { massKg: 2 * massKg, heightM: 1.75 },
          2 * chance.loadKg,
          at,
        );
        if (!once || !twice || isStretched(once) || chance.movement.mode === 'passive') return;
        seen += 1;
        nearly(twice.work.tensionN, 2 * once.work.tensionN);
        nearly(twice.work.compressionBw, once.work.compressionBw);
      }),
      SEED,
    );
    expect(seen).toBeGreaterThan(100);
  });

  it('with height alone changed, pull stays: arms and levers grow alike', () => {
    fc.assert(
      fc.property(card, t, between(1.2, 2.2), (chance, at, heightM) => {
        const here = loadingAt(chance.movement, { massKg: 70, heightM: 1.75 }, chance.loadKg, at);
        // A bench keeps its height whoever lies on it, so only cards on one floor scale.
        if (!here || (chance.movement.solve?.dh ?? 0) !== 0 || isStretched(here)) return;
        const there = loadingAt(chance.movement, { massKg: 70, heightM }, chance.loadKg, at)!;
        nearly(there.work.tensionN, here.work.tensionN);
      }),
      SEED,
    );
  });

  it('without mass or load there is no pull but the passive one', () => {
    for (const { movement: chance } of cards) {
      const loading = loadingAt(chance, { massKg: 1e-9, heightM: 1.75 }, 0, 0.5);
      const passiveN = legOf(poseAt(chance, 0.5).work, { massKg: 70, heightM: 1.75 }).leastN[0]!;
      expect(Math.abs(loading!.work.tensionN - passiveN)).toBeLessThan(
        1e-6 + 1e-6 * passiveN + passiveN * 1e-9,
      );
    }
  });
});

describe('friction', () => {
  const between2 = cards.filter(
    ({ movement: chance }) =>
      chance.supports.length === 2 && chance.horizontal === 'minEffort' && chance.mode === 'active',
  );

  it('least effort never costs more than vertical reactions alone, and stays within what the floor can hold', () => {
    fc.assert(
      fc.property(fc.constantFrom(...between2), t, body, (chance, at, person) => {
        const least = loadingAt(chance.movement, person, chance.loadKg, at, 'minEffort');
        const none = loadingAt(chance.movement, person, chance.loadKg, at, 'none');
        if (!least || !none) return;
        expect(least.work.effort).toBeLessThanOrEqual(none.work.effort * (1 + 1e-9));
        const leastUpN = Math.min(...none.reactions.map(({ upN }) => upN));
        expect(Math.abs(least.frictionN)).toBeLessThanOrEqual(0.3 * leastUpN * (1 + 1e-12));
      }),
      SEED,
    );
  });

  it('is where a golden section of 50 steps finds it, or cheaper', () => {
    const person = { massKg: 70, heightM: 1.75 };
    for (const { movement: chance, loadKg } of between2)
      for (const at of [0, 0.3, 0.6, 1]) {
        const posture = closePose(chance, poseAt(chance, at), person, loadKg)!;
        const weights = weightsOf(posture, person, chance.loadAt, loadKg);
        const working = legOf(posture.pose.work, person);
        const costAt = (frictionN: number) => {
          const reactions = reactionsOf(posture, chance.supports, weights, frictionN);
          return forcesOf(working, legMoments('work', posture.work, weights.work, reactions), 'active').cost;
        };
        const mostN =
          0.3 * Math.min(...reactionsOf(posture, chance.supports, weights, 0).map(({ upN }) => upN));
        const plain = costAt(goldenLow(costAt, -mostN, mostN));
        const ours = loadingAt(chance, person, loadKg, at)!.work.effort;
        expect(ours).toBeLessThanOrEqual(plain * (1 + 1e-9) + 1e-12);
      }
  });
});

function equationsHold(loading: LegLoading, bend: LegBend, person: Body): void {
  const { arms: lever, leastN, achillesArmM } = legOf(bend, person);
  const forces = loading.forcesN;
  const sum = (arm: readonly number[]) => forces.reduce((total, force, i) => total + force * arm[i]!, 0);
  const dust = 1e-9 * Math.max(1, (Math.abs(loading.hipMomentNm) + Math.abs(loading.kneeMomentNm)) / 1000);
  expect(Math.abs(sum(lever.hipM) - loading.hipMomentNm)).toBeLessThanOrEqual(dust);
  expect(Math.abs(sum(lever.kneeM) - loading.kneeMomentNm)).toBeLessThanOrEqual(dust);
  const calfN = Math.max(0, loading.ankleMomentNm) / achillesArmM;
  forces.forEach((force, i) => {
    expect(force).toBeGreaterThanOrEqual(leastN[i]!);
    if (LUMPS[i] === 'gastrocnemii') expect(force).toBeLessThanOrEqual(calfN);
  });
  stressesAreOneSlope(forces, lever.hipM, lever.kneeM, leastN, calfN);
}

/** Of all lumps strictly between their bounds, force / area² is one linear function of the two arms (the multipliers). */
function stressesAreOneSlope(
  forces: readonly number[],
  hipM: readonly number[],
  kneeM: readonly number[],
  leastN: readonly number[],
  calfN: number,
): void {
  const weight = (i: number) => (STRENGTH_N[i]! / STRESS_N_PER_CM2) ** 2;
  const free = forces
    .map((_, i) => i)
    .filter((i) => {
      const room = 1e-6 * (1 + Math.abs(forces[i]!));
      return forces[i]! > leastN[i]! + room && !(LUMPS[i] === 'gastrocnemii' && forces[i]! > calfN - room);
    });
  const [first, second] = bestPair(free, hipM, kneeM);
  if (first === undefined || second === undefined) return;
  const det = hipM[first]! * kneeM[second]! - hipM[second]! * kneeM[first]!;
  const [p, q] = [forces[first]! / weight(first), forces[second]! / weight(second)];
  const a = (p * kneeM[second]! - q * kneeM[first]!) / det;
  const b = (q * hipM[first]! - p * hipM[second]!) / det;
  const scale = Math.max(...forces);
  forces.forEach((force, i) => {
    const wished = weight(i) * (a * hipM[i]! + b * kneeM[i]!);
    const most = LUMPS[i] === 'gastrocnemii' ? calfN : Infinity;
    expect(Math.abs(force - Math.min(most, Math.max(leastN[i]!, wished)))).toBeLessThanOrEqual(
      1e-6 * (1 + scale),
    );
  });
}

function bestPair(
  free: readonly number[],
  hipM: readonly number[],
  kneeM: readonly number[],
): readonly number[] {
  let best: readonly number[] = [];
  let most = 1e-5;
  for (const i of free)
    for (const k of free) {
      const det = Math.abs(hipM[i]! * kneeM[k]! - hipM[k]! * kneeM[i]!);
      if (i < k && det > most) [best, most] = [[i, k], det];
    }
  return best;
}

function isStretched({ work, angles }: Loading): boolean {
  const [passiveN] = legOf(angles.work, { massKg: 70, heightM: 1.75 }).leastN;
  return work.tensionN <= 2 * passiveN! + 1e-9;
}

function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

function nearly(value: number, expected: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(expected)));
}

it('squeeze is the belt force of pull and bend in every loading', () => {
  fc.assert(
    fc.property(card, t, (chance, at) => {
      const { work } = loadingAt(chance.movement, { massKg: 70, heightM: 1.75 }, chance.loadKg, at)!;
      expect(work.compressionN).toBe(beltForceN(work.tensionN, wrapDeg(work.hipFlexionDeg)));
    }),
    SEED,
  );
});
