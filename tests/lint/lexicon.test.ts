import { describe, expect, it } from 'vitest';
import { finderOf } from '../../src/lint/lexicon.ts';

const find = finderOf([
  ['caps?', 'end'],
  ['(?<!knee )cap', 'never reached'],
  ['\\d+ ?%', 'kilograms'],
]);

describe('finderOf', () => {
  it('finds whole words of either case where they stand, in their order', () => {
    expect(find('Cap it at 50 %, no capsule, two caps.')).toEqual([
      { word: 'Cap', offset: 0, instead: 'end' },
      { word: '50 %', offset: 10, instead: 'kilograms' },
      { word: 'caps', offset: 32, instead: 'end' },
    ]);
  });

  it('finds none in a text without them', () => {
    expect(find('recap captain')).toEqual([]);
  });
});
