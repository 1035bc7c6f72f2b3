import { describe, expect, it } from 'vitest';
import { circlesIn } from '../../src/content/circle.ts';

const circles = (...pairs: [string, string | null][]) =>
  circlesIn(new Map(pairs)).map((ids) => ids.join(' '));

describe('circlesIn', () => {
  it('finds none in a chain, or in one that leads out of the library', () => {
    expect(circles(['a', 'b'], ['b', 'c'], ['c', null], ['d', 'elsewhere'])).toEqual([]);
  });

  it('begins each circle at its first id, whichever way it was entered', () => {
    expect(circles(['a', 'd'], ['d', 'c'], ['c', 'b'], ['b', 'd'])).toEqual(['b d c b']);
  });

  it('finds each of several once, and a card that names itself', () => {
    expect(circles(['x', 'x'], ['b', 'a'], ['a', 'b'], ['c', 'a'])).toEqual(['a b a', 'x x']);
  });
});
