/**
 * Reading formulas and counts against published figures, and against the packages `flesch-kincaid`, `smog-formula` and
 * `syllable`. The figures come from pages about the formulas, marked as in the house's reference; the quick form of SMOG
 * is the pencil-and-paper one, 3 plus a root.
 */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { fleschKincaid as fleschKincaidOfPackage } from 'flesch-kincaid';
import { smogFormula } from 'smog-formula';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import { countsOf, fleschKincaid, fleschReadingEase, smog } from '../../src/lint/reading.ts';
import { wordsIn } from '../../src/wording/sentences.ts';
import { syllablesIn } from '../../src/lint/syllables.ts';

const FORMULAS = { ease: fleschReadingEase, grade: fleschKincaid, smog };

// Printed values carry three or four places; those of pages without a derivation one or two.
// prettier-ignore
const PUBLISHED = [
  //  source                                                 formula  sentences words syllables long  expected  tolerance
  ['platypus sentence, formula [read], 37.5 [memory]',       'ease',          1,   13,       24,    0,   37.455,    0.001],
  ['platypus sentence, formula [read]',                      'grade',         1,   13,       24,    0,   11.265,    0.001],
  ['a sentence of 16 words, formula [read]',                 'ease',          1,   16,       23,    0,   68.983,    0.001],
  ['The cat sat on the mat, formula [read]',                 'ease',          1,    6,        6,    0,  116.145,    0.001],
  ['The cat sat on the mat, formula [read]',                 'grade',         1,    6,        6,    0,   -1.45,     0.001],
  ['120 words in 10 sentences, formula [read]',              'ease',         10,  120,      168,    0,   76.215,    0.001],
  ['120 words in 10 sentences, formula [read]',              'grade',        10,  120,      168,    0,    5.61,     0.001],
  ['Green Eggs and Ham, -1.3 [secondary]',                   'grade',       100,  570,      581.4,  0,   -1.3,      0.05],
  ['one word of one syllable, the floor [secondary]',        'grade',         1,    1,        1,    0,   -3.4,      0.001],
  ['64 long words in 30 sentences, formula [secondary]',     'smog',         30,  400,      700,   64,   11.473,    0.001],
  ['64 long words in 30 sentences, quick form [secondary]',  'smog',         30,  400,      700,   64,   11,        0.6],
  ['no long word, formula [secondary]',                      'smog',         30,  300,      400,    0,    3.1291,   0.0001],
  ['10 long words in 15 sentences, scaled [secondary]',      'smog',         15,  200,      300,   10,    7.7935,   0.0005],
  ['2.6 long words a sentence, formula [secondary]',         'smog',         30,  500,      900,   78,   12.341,    0.001],
  ['2.6 long words a sentence, quick form [secondary]',      'smog',         30,  500,      900,   78,   11.83,     0.6],
] as const;

describe('published values', () => {
  it.each(PUBLISHED)('%s: %s', (_, formula, sentences, words, syllables, longWords, expected, tolerance) => {
    const value = FORMULAS[formula]({ sentences, words, syllables, longWords });
    expect(Math.abs((value ?? Infinity) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it('SMOG says nothing of fewer than 10 sentences [secondary]', () => {
    expect(smog({ sentences: 9, words: 90, syllables: 120, longWords: 5 })).toBeNull();
    expect(smog({ sentences: 10, words: 90, syllables: 120, longWords: 5 })).not.toBeNull();
  });

  it('no formula says anything of no text', () => {
    for (const formula of Object.values(FORMULAS)) expect(formula(countsOf([]))).toBeNull();
  });
});

describe('counts of published texts', () => {
  it('The cat sat on the mat: 6 words, 6 syllables', () => {
    expect(countsOf(['The cat sat on the mat.'])).toEqual({
      sentences: 1,
      words: 6,
      syllables: 6,
      longWords: 0,
    });
  });

  // Published 24 say Aus-tra-lian and rep-til-ian; speakers part the last two vowels as often as not.
  it('platypus sentence: 13 words, 24 syllables, two more where -lian is parted', () => {
    const text = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
    expect(countsOf([text])).toMatchObject({ sentences: 1, words: 13, syllables: 26 });
  });
});

const counts = fc.record({
  sentences: fc.integer({ min: 10, max: 200 }),
  words: fc.integer({ min: 200, max: 4000 }),
  syllables: fc.integer({ min: 4000, max: 9000 }),
  longWords: fc.integer({ min: 0, max: 200 }),
});

describe('the packages', () => {
  it('flesch-kincaid and smog-formula give the same grades for any counts', () => {
    fc.assert(
      fc.property(counts, (given) => {
        const { sentences: sentence, words: word, syllables, longWords } = given;
        expect(fleschKincaid(given)).toBeCloseTo(
          fleschKincaidOfPackage({ sentence, word, syllable: syllables }),
          9,
        );
        expect(smog(given)).toBeCloseTo(smogFormula({ sentence, polysillabicWord: longWords }), 9);
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  // The package counts "large", "locked" and "else" as two and "crosses" as one, so not every difference is ours.
  it('syllable counts nearly every word of the library alike, none more than one apart', () => {
    const words = vocabulary();
    expect(words.length).toBeGreaterThan(700);
    const apart = words.filter((word) => syllablesIn(word) !== syllable(word));
    expect(apart.length / words.length).toBeLessThan(0.03);
    expect(apart.filter((word) => Math.abs(syllablesIn(word) - syllable(word)) > 1)).toEqual([]);
  });

  it('syllable counts the words of the trade alike', () => {
    const words = TRADE_WORDS.split(' ');
    const apart = words.filter((word) => syllablesIn(word) !== syllable(word));
    expect(apart).toEqual([]);
  });
});

const TRADE_WORDS =
  `abduction adduction anterior bilateral biomechanics compression concentric contralateral eccentric
 extension flexion gastrocnemius gluteal hamstring hypertrophy irritability isometric lateral ligament lumbar medial
 muscle palpation patella pelvis physiotherapist posterior proprioception quadriceps repetition rotation sacrum
 scapula sciatica tendinopathy tendon thoracic tibialis unilateral`.replaceAll(/\s+/g, ' ');

function vocabulary(): string[] {
  const bodies = readdirSync('content', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => readFileSync(`content/${file}`, 'utf8').split(/^---$/m)[2] ?? '');
  const words = bodies.flatMap(wordsIn).map(({ text }) => text.toLowerCase());
  return [...new Set(words)].filter((word) => /^[a-z]+$/.test(word));
}
