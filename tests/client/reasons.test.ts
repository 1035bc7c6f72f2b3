/** Reasons against a card, typed into the search: what the trade says for them, in words and slips (common practice, no source). */
import { describe, expect, it } from 'vitest';
import { reasonOf, reasonsIn } from '../../src/client/catalogue/reasons.ts';
import { askedWords } from '../../src/client/catalogue/search.ts';
import { REASON_TERMS } from '../../src/messages/en/catalogue/searchTerms.ts';

const reasons = Object.entries(REASON_TERMS).map(([value, asked]) => reasonOf(value, value, asked));

const TYPED: readonly (readonly [typed: string, reasons: readonly string[], rest: readonly string[]])[] = [
  ['osteoporosis', ['osteoporosis'], []],
  ['Osteoporosis bridge', ['osteoporosis'], ['bridge']],
  ['osteopor', ['osteoporosis'], []],
  ['osteoprosis', ['osteoporosis'], []],
  ['osteopenia', ['osteoporosis'], []],
  ['pregnant', ['pregnant-or-postpartum'], []],
  ['pregnancy', ['pregnant-or-postpartum'], []],
  ['calf raise postpartum', ['pregnant-or-postpartum'], ['calf', 'raise']],
  ['dizzy', ['dizziness'], []],
  ['dizziness', ['dizziness'], []],
  ['vertigo', ['dizziness'], []],
  ['high blood pressure', ['uncontrolled-blood-pressure'], ['high']],
  ['hypertension', ['uncontrolled-blood-pressure'], []],
  ['hip replacement', ['hip-replacement'], []],
  ['THR', ['hip-replacement'], []],
  ['pregnant, osteoporosis', ['pregnant-or-postpartum', 'osteoporosis'], []],
  // Words of cards stay words of cards.
  ['hip', [], ['hip']],
  ['hip hinge', [], ['hip', 'hinge']],
  ['hip thrust', [], ['hip', 'thrust']],
  ['side push', [], ['side', 'push']],
  ['hyperextension', [], ['hyperextension']],
  ['prone', [], ['prone']],
  ['posterior chain', [], ['posterior', 'chain']],
  ['', [], []],
];

describe('the search', () => {
  it.each(TYPED)('%j', (typed, expected, rest) => {
    const found = reasonsIn(askedWords(typed), reasons);
    expect(found.reasons.map(({ value }) => value)).toEqual(expected);
    expect(found.rest).toEqual(rest);
  });
});
