/** A slice of `npm run fuzz` from a seed of its own: the same cases in every run. */
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../fuzz/families.ts';
import { runFamily } from '../../fuzz/run.ts';

const SEED = 20261130;

/** Cases of each family, and what at least becomes of them: a slice in which all is refused tries nothing. */
const SLICES: Readonly<Record<string, readonly [cases: number, refused: number, built: number]>> = {
  consults: [40, 10, 6],
  libraries: [8, 1, 1],
  texts: [8, 1, 1],
  disks: [6, 2, 0],
  addresses: [300, 100, 3],
  photos: [40, 15, 2],
  desk: [4, 1, 1],
};

describe('a slice of every attack', () => {
  it('is of all of them', () => {
    expect(FAMILIES.map(({ name }) => name)).toEqual(Object.keys(SLICES));
  });

  it.each(FAMILIES)('$name: $what', async (family) => {
    const [cases = 0, refused = 0, built = 0] = SLICES[family.name] ?? [];
    const faults: string[] = [];
    const figures = await runFamily(
      family,
      { seconds: Infinity, seed: SEED, from: 1, cases },
      (number, verdict) => faults.push(...verdict.faults.map((fault) => `${number}: ${fault}`)),
    );
    expect(faults).toEqual([]);
    expect(figures).toMatchObject({ cases, failed: 0 });
    expect(figures.refused).toBeGreaterThanOrEqual(refused);
    expect(figures.built).toBeGreaterThanOrEqual(built);
  });
});
