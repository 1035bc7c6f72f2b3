/** A flare is always less than the present dose (house rules 11.5): a table, and the law. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flareDose } from '../../src/dosing/flareDose.ts';

const half = { setsFactor: 0.5, holdFactor: 0.5 };

describe('a hold in a flare', () => {
  it.each([
    // sets  seconds  a day  in a flare
    [4, 30, 1, { sets: 2, holdSeconds: 15, timesPerDay: 1 }],
    [5, 45, 2, { sets: 2, holdSeconds: 20, timesPerDay: 1 }],
    [3, 20, 1, { sets: 1, holdSeconds: 10, timesPerDay: 1 }],
    [1, 15, 1, { sets: 1, holdSeconds: 5, timesPerDay: 1 }],
    [10, 5, 2, { sets: 5, holdSeconds: 5, timesPerDay: 1 }],
    [1, 5, 2, { sets: 1, holdSeconds: 5, timesPerDay: 1 }],
    [1, 5, 1, null],
    [3, null, 1, null],
  ] as const)('%d of %d s, %d a day', (sets, holdSeconds, timesPerDay, expected) => {
    expect(flareDose({ sets, holdSeconds, timesPerDay }, half)).toEqual(expected);
  });

  it('is never more in any number, and less in all', () => {
    const whole = (max: number) => fc.integer({ min: 1, max });
    const factor = fc.double({ min: 0.1, max: 1, noNaN: true });
    fc.assert(
      fc.property(whole(10), whole(120), whole(4), factor, factor, (sets, holdSeconds, timesPerDay, a, b) => {
        const less = flareDose({ sets, holdSeconds, timesPerDay }, { setsFactor: a, holdFactor: b });
        if (less === null) return;
        expect(less.sets).toBeLessThanOrEqual(sets);
        expect(less.holdSeconds).toBeLessThanOrEqual(holdSeconds);
        expect(less.timesPerDay).toBeLessThanOrEqual(timesPerDay);
        expect(less.sets * less.holdSeconds).toBeLessThan(sets * holdSeconds * timesPerDay);
      }),
      { seed: 20261130 },
    );
  });
});
