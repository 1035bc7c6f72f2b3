import { expect, it } from 'vitest';
import { brackets } from '../../src/mechanics/bracket.ts';

it.each([
  ['nothing', [], []],
  ['within a quarter of the lowest is one bracket, just beyond the next', [1, 1.25, 1.2501], [0, 0, 1]],
  ['counted from the lowest, whatever the order', [0.56, 0.33, 0.69, 0.7], [1, 0, 1, 1]],
  [
    'measured from the lowest of the bracket, not from neighbour to neighbour',
    [1, 1.2, 1.4, 1.6],
    [0, 0, 1, 1],
  ],
  ['no squeeze is its own bracket', [0, 0, 0.05, 0.06, 0.07], [0, 0, 1, 1, 2]],
])('%s', (_title, values, expected) => expect(brackets(values)).toEqual(expected));
