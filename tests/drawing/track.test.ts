/** Numbers along a way: as few as tell all of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeMm, wholeOf } from '../../src/units/round.ts';
import { trackAt, trackOf } from '../../src/units/track.ts';

// A half as two engines with other last digits of sine have it.
describe.each([42.5, 42.5 - 7e-15, 42.5 + 7e-15, 42.5 - 4e-9])('%d', (half) => {
  it('is drawn at 43', () => {
    expect(wholeOf(half)).toBe(43);
    expect(wholeMm(half / 1000)).toBe(43);
    expect(trackOf([half, half], 1, 1)).toBe(43);
  });
});

it.each([[42.49, 42], [-42.5, -42], [-0.3, 0]])('%d is drawn at %d', (value, whole) => {
  expect(wholeOf(value)).toBe(whole);
}); // prettier-ignore

describe('a track', () => {
  it.each([
    ['what stays', [5, 5.1, 4.9, 5, 5, 5, 5, 5, 5], 5],
    ['what goes evenly', [0, 1, 2, 3, 4, 5, 6, 7, 8], [0, 8]],
    ['one bend in the middle', [0, 1, 2, 3, 4, 3, 2, 1, 0], [0, 4, 0]],
    ['a jump that nothing else tells', [0, 9, 0, 0, 0, 0, 0, 0, 0], [0, 9, 0, 0, 0, 0, 0, 0, 0]],
  ] as const)('of %s', (_, values, track) => {
    expect(trackOf(values, 0.2, 1)).toEqual(track);
  });

  it('comes as near to every value as it is told to', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -180, max: 180, noNaN: true }), { minLength: 9, maxLength: 9 }),
        (values) => {
          const track = trackOf(values, 0.2, 10);
          values.forEach((value, at) =>
            expect(Math.abs(trackAt(track, at / 8) - value)).toBeLessThanOrEqual(0.2),
          );
        },
      ),
    );
  });

  it.each([[-1, 0], [0, 0], [0.25, 5], [0.75, 25], [1, 40], [2, 40]])('at %f of the way is %f', (share, value) => {
    expect(trackAt([0, 10, 40], share)).toBe(value);
  }); // prettier-ignore
});
