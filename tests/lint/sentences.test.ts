import { describe, expect, it } from 'vitest';
import { sentencesIn, wordsIn } from '../../src/wording/sentences.ts';

const texts = (parts: readonly { readonly text: string }[]) => parts.map(({ text }) => text);

describe('sentencesIn', () => {
  it.each([
    ['Stand. Sit down!', ['Stand.', 'Sit down!']],
    ['no stop at all', ['no stop at all']],
    ['Take 2.5 kg. Or 3.', ['Take 2.5 kg.', 'Or 3.']],
    ['Use a band, e.g. a red one. Or none.', ['Use a band, e.g. a red one.', 'Or none.']],
    ['Is it sore? “Yes.” Then stop…', ['Is it sore?', '“Yes.”', 'Then stop…']],
    ['One: two; three', ['One: two; three']],
    ['  ', []],
    ['', []],
  ])('%s', (text, sentences) => {
    expect(texts(sentencesIn(text))).toEqual(sentences);
  });

  it('says where each begins', () => {
    const text = ' Stand.  Sit down. ';
    expect(sentencesIn(text).map(({ from }) => text.slice(from, from + 3))).toEqual(['Sta', 'Sit']);
  });
});

describe('wordsIn', () => {
  it.each([
    ["Don't sit-to-stand 2.5 times.", ["Don't", 'sit-to-stand', '2.5', 'times']],
    ['(über) – “naïve”', ['über', 'naïve']],
    ['… ! -', []],
  ])('%s', (text, words) => {
    expect(texts(wordsIn(text))).toEqual(words);
  });
});
