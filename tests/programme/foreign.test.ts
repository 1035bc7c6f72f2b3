/** Foreign words of the emergency texts: found whole, in their language, and nothing lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countsOf, fleschKincaid } from '../../src/lint/reading.ts';
import { emergencyHtml } from '../../src/outputs/html/parts/emergency.ts';
import { spoken, type ForeignWord } from '../../src/messages/foreign.ts';
import { emergencyText } from '../../src/messages/en/patient/opening.ts';
import { readWorkspace } from '../../src/shell/io/workspace.ts';

const FOREIGN: readonly ForeignWord[] = [
  { word: 'spoed', language: 'nl' },
  { word: 'spoedeisende hulp', language: 'nl' },
  { word: 'urgences', language: 'fr' },
];
const said = (text: string) => spoken(text, FOREIGN).map(({ text: words, language }) => [words, language]);

describe('foreign words', () => {
  it.each<[string, readonly (readonly [string, string | null])[]]>([
    [
      'the spoed or urgences',
      [
        ['the ', null],
        ['spoed', 'nl'],
        [' or ', null],
        ['urgences', 'fr'],
      ],
    ],
    [
      'the spoedeisende hulp',
      [
        ['the ', null],
        ['spoedeisende hulp', 'nl'],
      ],
    ],
    ['spoedig', [['spoedig', null]]],
    ['', []],
  ])('%j', (text, parts) => {
    expect(said(text)).toEqual(parts);
  });

  it('lose and add no letter', () => {
    const words = fc.constantFrom('spoed', 'urgences', 'spoedig', ' ', 'a', ', ');
    fc.assert(
      fc.property(fc.array(words), (some) => {
        const text = some.join('');
        expect(
          spoken(text, FOREIGN)
            .map((part) => part.text)
            .join(''),
        ).toBe(text);
      }),
      { seed: 20261130 },
    );
  });
});

describe('every country of the shipped clinic', () => {
  const { library } = readWorkspace({ content: 'content', consults: 'content/consults' });
  if (library === null) throw new Error('the shipped library cannot be read');
  const { clinic } = library;

  it.each(Object.keys(clinic.emergency))(
    '%s: foreign words stand in its texts with their language',
    (country) => {
      const box = emergencyText(clinic, country);
      const page = emergencyHtml(box).markup;
      for (const { word, language } of box.foreign)
        expect(page).toContain(`<span lang="${language}">${word}</span>`);
      // Letters English does not write, outside all of them, are of a word nobody marked.
      expect(page.replace(/<span lang=[^]*?<\/span>/g, '')).not.toMatch(/[äöåæøéèñü]/i);
    },
  );

  it.each(Object.keys(clinic.emergency))(
    '%s: reads at grade 6 by Flesch and Kincaid, entry by entry of the list',
    (country) => {
      const { call, lines, then } = emergencyText(clinic, country);
      // A colon before a list and the end of an entry are where a reader stops.
      const sentences = [call, ...lines, ...then].map((text) => `${text.replace(/[:.]$/, '')}.`);
      expect(fleschKincaid(countsOf(sentences))).toBeLessThanOrEqual(6);
    },
  );

  it('has some', () => {
    expect(
      Object.keys(clinic.emergency).flatMap((one) => emergencyText(clinic, one).foreign).length,
    ).toBeGreaterThan(10);
  });
});
