/** How easily a text is read, and how many years of school it asks for, by published formulas. */
import { sentencesIn, wordsIn } from '../wording/sentences.ts';
import { syllablesIn } from './syllables.ts';

export interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  /** Words of three syllables or more. */
  readonly longWords: number;
}

/** A word of so many syllables is a long one (McLaughlin's polysyllable). */
export const LONG_WORD_SYLLABLES = 3;

/** SMOG is made for 30 sentences, is scaled for fewer, and says nothing below 10 [secondary]. */
const SMOG_SENTENCES = 30;
const LEAST_SMOG_SENTENCES = 10;

/**
 * The counts of all texts together; each text, a list entry too, ends a sentence. `syllables`: for many texts one that
 * remembers.
 */
export function countsOf(texts: readonly string[], syllables = syllablesIn): Counts {
  const words = texts.flatMap(wordsIn).map(({ text }) => syllables(text));
  return {
    sentences: texts.reduce((sum, text) => sum + sentencesIn(text).length, 0),
    words: words.length,
    syllables: words.reduce((sum, count) => sum + count, 0),
    longWords: words.filter((count) => count >= LONG_WORD_SYLLABLES).length,
  };
}

/**
 * The Flesch-Kincaid grade, a school year from -3.4 upwards; null without a word. Kincaid 1975: 0.39 words a sentence
 * + 11.8 syllables a word - 15.59 [read].
 * @example fleschKincaid({ sentences: 1, words: 1, syllables: 1, longWords: 0 })?.toFixed(2) // => '-3.40'
 */
export function fleschKincaid({ sentences, words, syllables }: Counts): number | null {
  if (words === 0 || sentences === 0) return null;
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/**
 * Flesch's reading ease, about 100 for very easy and 0 for very hard; null without a word. Flesch 1948: 206.835 - 1.015
 * words a sentence - 84.6 syllables a word [read].
 */
export function fleschReadingEase({ sentences, words, syllables }: Counts): number | null {
  if (words === 0 || sentences === 0) return null;
  return 206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);
}

/**
 * The SMOG grade, a school year from 3.13 upwards; null for fewer than 10 sentences. McLaughlin 1969: 3.1291 + 1.0430
 * times the root of the long words in 30 sentences [secondary].
 */
export function smog({ sentences, longWords }: Counts): number | null {
  if (sentences < LEAST_SMOG_SENTENCES) return null;
  return 3.1291 + 1.043 * Math.sqrt((longWords * SMOG_SENTENCES) / sentences);
}
