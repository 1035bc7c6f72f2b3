/** Filters against the plain way of looking at every card, and what counts as a word. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedIn, queryOf } from '../../src/client/catalogue/address.ts';
import { holds, isAdmitted, type Values } from '../../src/client/catalogue/match.ts';
import { wordsOf } from '../../src/units/words.ts';
import { shipped } from '../outputs/html/libraries.ts';
import type { Filter, CardView } from '../../src/catalogue/view.ts';

const SEED = { seed: 20261125, numRuns: 500 };
const { cards, filters } = shipped;
const rules = Object.fromEntries(filters.map(({ key, rule }) => [key, rule]));

/** One word or several of each filter, as a reader could tick them. */
const choices = fc.record(
  Object.fromEntries(
    filters.map(({ key, rule, options }) => {
      const values = options.map(({ value }) => value);
      return [key, fc.subarray(values, { maxLength: rule === 'atMost' ? 1 : values.length })];
    }),
  ),
);

/** The rules in words, written out again without looking at the code: what a reader would do with a pencil. */
function admits({ key }: Filter, chosen: readonly string[], { facets }: CardView): boolean {
  if (chosen.length === 0) return true;
  switch (key) {
    case 'bend':
      return Number(facets.bend[0]) <= Number(chosen[0]);
    case 'kit':
      return facets.kit.filter((thing) => !chosen.includes(thing)).length === 0;
    case 'cannot':
      return facets.cannot.filter((need) => chosen.includes(need)).length === 0;
    default:
      return chosen.filter((word) => facets[key].includes(word)).length > 0;
  }
}

describe('filters', () => {
  it('on the shipped cards admit what a look at every card admits', () => {
    const counts: number[] = [];
    fc.assert(
      fc.property(choices, (chosen: Values) => {
        const byRule = cards.filter(({ facets }) => isAdmitted(rules, chosen, facets));
        const byHand = cards.filter((card) =>
          filters.every((filter) => admits(filter, chosen[filter.key] ?? [], card)),
        );
        expect(byRule.map(({ id }) => id)).toEqual(byHand.map(({ id }) => id));
        counts.push(byHand.length);
      }),
      SEED,
    );
    // A law over nothing but empty lists would prove little.
    expect(counts.filter((count) => count > 0 && count < cards.length).length).toBeGreaterThan(50);
  });

  it('never let more through when another word of `none` is chosen, nor fewer when one of `any` or `within` is', () => {
    const word = fc.constantFrom('a', 'b', 'c', 'd');
    fc.assert(
      fc.property(fc.uniqueArray(word, { minLength: 1 }), word, fc.uniqueArray(word), (chosen, more, own) => {
        const wider = [...new Set([...chosen, more])];
        if (holds('none', wider, own)) expect(holds('none', chosen, own)).toBe(true);
        for (const rule of ['any', 'within'])
          if (holds(rule, chosen, own)) expect(holds(rule, wider, own)).toBe(true);
      }),
      SEED,
    );
  });

  it('know the case of household things only', () => {
    const bare = cards.filter(({ facets }) => isAdmitted(rules, { kit: ['nothing'] }, facets));
    expect(bare.length).toBeGreaterThan(0);
    expect(bare.every(({ facets }) => facets.kit.length === 0)).toBe(true);
  });

  it('refuse a rule they do not know', () => {
    expect(() => holds('some', ['a'], ['a'])).toThrow('no such rule');
  });
});

describe('words', () => {
  it.each([
    ['Ball curls, slow', ['ball', 'curl', 'slow']],
    ['Übung für Läufer', ['ubung', 'fur', 'laufer']],
    ['30°–45°', ['30', '45']],
    ['', []],
    ['🏃 — ', []],
    ['press', ['pres']],
    ['yes', ['yes']],
  ])('of %j', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
});

describe('the address', () => {
  const known = Object.fromEntries(
    filters.map(({ key, options }) => [key, options.map(({ value }) => value)]),
  );
  const keys = filters.map(({ key }) => key);

  it('brings back what was asked', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), choices, (text, chosen: Values) => {
        const back = askedIn(`?${queryOf({ text, chosen }, keys)}`, known);
        expect(back.text).toBe(text.trim());
        for (const key of keys)
          expect(back.chosen[key]).toEqual(known[key]?.filter((one) => chosen[key]?.includes(one)));
      }),
      SEED,
    );
  });

  it('passes over words nobody knows', () => {
    expect(askedIn('?kind=nonsense&hack=1&kind=isometric', known).chosen['kind']).toEqual(['isometric']);
    expect(askedIn('', known).text).toBe('');
  });

  it('is empty when nothing is asked', () => {
    expect(queryOf({ text: '  ', chosen: {} }, keys)).toBe('');
  });
});
