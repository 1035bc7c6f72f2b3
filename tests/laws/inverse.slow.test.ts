/** Laws of the inverse: the answer lies on the cap, and no tighter cap ever gives more. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/mechanics/body.ts';
import { brokenCap, demandsUpTo, type Caps } from '../../src/mechanics/cap.ts';
import { fitRangeAndLoad, type RangeAndLoadRequest } from '../../src/mechanics/rangeAndLoad.ts';
import { fractionFrom } from '../../src/mechanics/gentle.ts';
import { JOINT_ANGLES } from '../../src/mechanics/jointAngle.ts';
import { largestLoad } from '../../src/mechanics/load.ts';
import { liftBarredBy } from '../../src/mechanics/lift.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { largestRange } from '../../src/mechanics/range.ts';
import { cards } from '../published/exercise-cards.ts';

const SEED = { seed: 30, numRuns: 150 };

// Evenly spread; fast-check's own doubles crowd about 0, where every cap bars.
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 100_000 }).map((n) => min + ((max - min) * n) / 100_000);
const cap = (min: number, max: number) => fc.option(between(min, max), { freq: 3 });
const caps: fc.Arbitrary<Caps> = fc.record({
  angle: fc.constantFrom('hipFlexion' as const, ...JOINT_ANGLES),
  angleDeg: cap(0, 120),
  compressionBw: cap(0, 3),
  tensionBw: cap(0, 3),
  demand: cap(0, 1),
  supportMargin: between(1, 1.6),
});

/** Two sets of caps, none of the second looser than of the first. */
const tightened = fc
  .tuple(
    caps,
    fc.tuple(...Array.from({ length: 4 }, () => fc.option(between(0.3, 1), { freq: 2 }))),
    between(1, 1.3),
  )
  .map(([loose, factors, margin]) => {
    const [hip, squeeze, pull, demand] = factors;
    const tight: Caps = {
      angle: loose.angle,
      angleDeg: tighter(loose.angleDeg, hip, 120),
      compressionBw: tighter(loose.compressionBw, squeeze, 3),
      tensionBw: tighter(loose.tensionBw, pull, 3),
      demand: tighter(loose.demand, demand, 1),
      supportMargin: loose.supportMargin * margin,
    };
    return { loose, tight };
  });

const body: fc.Arbitrary<Body> = fc.record({ massKg: between(40, 140), heightM: between(1.4, 2.1) });
const card = fc.constantFrom(...cards);
const loadedCard = fc.constantFrom(...cards.filter(({ movement }) => movement.loadAt && movement.end));

describe('the solved range', () => {
  it('meets the cap that decided it, and a hair more breaks it', () => {
    let solved = 0;
    fc.assert(
      fc.property(card, body, caps, ({ movement, loadKg }, person, limits) => {
        const range = largestRange(movement, person, loadKg, limits);
        if (!range.admitted || range.decidedBy === 'full' || range.decidedBy === 'pose') return;
        solved += 1;
        const breakAt = (fraction: number) => {
          const demands = demandsUpTo(movement, person, loadKg, fractionFrom(range.gentleEnd, fraction));
          return brokenCap(movement, demands!, limits);
        };
        expect(breakAt(range.fraction)).toBeNull();
        expect(breakAt(range.fraction + 1e-8)).toBe(range.decidedBy);
        const at = demandsUpTo(movement, person, loadKg, fractionFrom(range.gentleEnd, range.fraction))!;
        const margin = movement.supports.length > 1 ? limits.supportMargin : 1;
        const onCap = {
          hipFlexion: [at.hipFlexionDeg, limits.angleDeg],
          kneeFlexion: [at.kneeFlexionDeg, limits.angleDeg],
          ankleDorsiflexion: [at.ankleDorsiflexionDeg, limits.angleDeg],
          compression: [margin * at.compressionBw, limits.compressionBw],
          tension: [margin * at.tensionBw, limits.tensionBw],
          demand: [at.demand, limits.demand],
        }[range.decidedBy] as [number, number];
        expect(Math.abs(onCap[0] - onCap[1])).toBeLessThanOrEqual(1e-6 * Math.max(1, onCap[1]));
      }),
      SEED,
    );
    expect(solved).toBeGreaterThan(10);
  });

  it('is never wider when a cap is tightened', () => {
    fc.assert(
      fc.property(card, body, tightened, ({ movement, loadKg }, person, { loose, tight }) => {
        const [wide, narrow] = [loose, tight].map((limits) => {
          const range = largestRange(movement, person, loadKg, limits);
          return range.admitted ? range.fraction : -1;
        });
        expect(narrow).toBeLessThanOrEqual(wide!);
      }),
      SEED,
    );
  });

  it('is never wider under a heavier load that keeps the same gentler end', () => {
    fc.assert(
      fc.property(loadedCard, between(0, 40), between(0, 40), caps, ({ movement }, kg, more, limits) => {
        const person = { massKg: 70, heightM: 1.75 };
        const light = largestRange(movement, person, kg, limits);
        const heavy = largestRange(movement, person, kg + more, limits);
        if (!heavy.admitted) return;
        // Each look samples its own loads on the way up, so the tops of two humps agree only so far.
        if (light.admitted && light.gentleEnd === heavy.gentleEnd)
          expect(heavy.fraction).toBeLessThanOrEqual(light.fraction + 1e-4);
      }),
      SEED,
    );
  });
});

describe('the solved load', () => {
  it('is never larger when a cap is tightened', () => {
    fc.assert(
      fc.property(loadedCard, body, tightened, ({ movement }, person, { loose, tight }) => {
        const [heavy, light] = [loose, tight].map((limits) => {
          const load = largestLoad(movement, person, limits);
          return load.admitted ? load.loadKg : -1;
        });
        expect(light).toBeLessThanOrEqual(heavy! + 1e-6);
      }),
      { ...SEED, numRuns: 60 },
    );
  });

  it('is admitted over the whole movement, and a hair more is not', () => {
    let solved = 0;
    fc.assert(
      fc.property(loadedCard, caps, ({ movement }, limits) => {
        const person = { massKg: 70, heightM: 1.75 };
        const load = largestLoad(movement, person, limits);
        if (!load.admitted || load.decidedBy === 'full' || load.decidedBy === 'pose') return;
        solved += 1;
        const broken = (kg: number) =>
          Array.from({ length: 41 }, (_, i) =>
            brokenCap(movement, demandsUpTo(movement, person, kg, i / 40)!, limits),
          ).some(Boolean);
        expect(broken(load.loadKg - 1e-6)).toBe(false);
        expect(broken(load.loadKg + 1e-5)).toBe(true);
      }),
      { ...SEED, numRuns: 60 },
    );
    expect(solved).toBeGreaterThan(2);
  });
});

describe('range and load together', () => {
  const kit = fc.uniqueArray(fc.constantFrom(0, 2, 4, 6, 8, 10, 12, 16, 20, 24, 30, 40), {
    minLength: 1,
    maxLength: 6,
  });
  const grade = fc.constantFrom<Movement['range']>('continuous', 'fixed', 'steps');
  const steps = fc.uniqueArray(fc.constantFrom(0.08, 0.1, 0.15, 0.18, 0.2, 0.25, 0.3), { maxLength: 4 });
  const request = fc
    .record({
      chance: fc.constantFrom(...cards),
      grade,
      body,
      kit,
      stepHeightsM: steps,
      pickUp: fc.option(between(0, 0.9)),
    })
    .map(({ chance, grade: range, body: person, kit: loads, stepHeightsM, pickUp }) => ({
      movement: { ...chance.movement, range },
      body: person,
      loadsKgDescending: chance.movement.loadAt ? [...loads].sort((left, right) => right - left) : [0],
      leastFraction: 0.5,
      stepHeightsM,
      pickUpHeightM: pickUp,
    }));

  it('neither load nor range ever rises when a cap is tightened', () => {
    let [both, lighter] = [0, 0];
    fc.assert(
      fc.property(request, tightened, (asked, { loose, tight }) => {
        const [wide, narrow] = [loose, tight].map((limits) =>
          fitRangeAndLoad({ ...asked, caps: limits } as RangeAndLoadRequest),
        );
        if (!narrow!.admitted) return;
        if (!wide!.admitted) throw new Error('the tighter caps admitted what the looser ones refused');
        both += 1;
        if (narrow!.loadKg < wide!.loadKg) lighter += 1;
        expect(narrow!.loadKg).toBeLessThanOrEqual(wide!.loadKg);
        expect(narrow!.range.fraction).toBeLessThanOrEqual(wide!.range.fraction + 1e-9);
      }),
      { ...SEED, numRuns: 800 },
    );
    expect(both).toBeGreaterThan(40);
    expect(lighter).toBeGreaterThan(0);
  });

  it('a weight that may be lifted under tight caps may be under wider ones', () => {
    let barred = 0;
    fc.assert(
      fc.property(
        body,
        between(1, 40),
        tightened,
        between(0, 1.2),
        (person, kg, { loose, tight }, heightM) => {
          const isBarred = (limits: Caps) => liftBarredBy(heightM, person, kg, limits) !== null;
          barred += isBarred(tight) ? 1 : 0;
          if (isBarred(loose)) expect(isBarred(tight)).toBe(true);
        },
      ),
      { ...SEED, numRuns: 300 },
    );
    expect(barred).toBeGreaterThan(50);
  });

  it('what may be lifted from one place may be from every higher one', () => {
    let barred = 0;
    fc.assert(
      fc.property(
        body,
        between(1, 40),
        caps,
        between(0, 1.2),
        between(0, 1.2),
        (person, kg, limits, a, b) => {
          const isBarred = (heightM: number) => liftBarredBy(heightM, person, kg, limits) !== null;
          barred += isBarred(Math.min(a, b)) ? 1 : 0;
          if (isBarred(Math.max(a, b))) expect(isBarred(Math.min(a, b))).toBe(true);
        },
      ),
      { ...SEED, numRuns: 300 },
    );
    expect(barred).toBeGreaterThan(50);
  });
});

function tighter(loose: number | null, factor: number | null | undefined, most: number): number | null {
  if (factor === null || factor === undefined) return loose;
  return factor * (loose ?? most);
}
