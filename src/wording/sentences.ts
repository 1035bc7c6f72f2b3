/** A text cut into sentences and words, each with where it begins. */

export interface Words {
  readonly text: string;
  /** Offset in the text that was cut. */
  readonly from: number;
}

// A point after these ends no sentence.
const ABBREVIATIONS = /(?:^|[\s(])(?:e\.g|i\.e|etc|vs|approx|Dr|St|cf)\.$/;

/**
 * The sentences of one paragraph or list entry, without the space around them. What ends without a stop ends there all
 * the same, so that a list entry counts as a sentence; a colon or semicolon ends none.
 * @example sentencesIn('Stand. Sit down').map(({ text }) => text) // => ['Stand.', 'Sit down']
 */
export function sentencesIn(text: string): readonly Words[] {
  const sentences: Words[] = [];
  let from = 0;
  for (const { index, 0: stop } of text.matchAll(/[.!?…]+["'”’)]*(?=\s)|$/g)) {
    const end = index + stop.length;
    if (ABBREVIATIONS.test(text.slice(from, end))) continue;
    const written = text.slice(from, end);
    const sentence = written.trim();
    if (sentence !== '') sentences.push({ text: sentence, from: from + written.indexOf(sentence) });
    from = end;
  }
  return sentences;
}

/**
 * The words of a text: letters and digits, joined by hyphens, apostrophes and decimal points. A hyphenated word is one.
 * @example wordsIn("Don't sit-to-stand 2.5 times").length // => 4
 */
export function wordsIn(text: string): readonly Words[] {
  return [...text.matchAll(/[\p{L}\p{N}]+(?:[-'’.][\p{L}\p{N}]+)*/gu)].map(({ index, 0: word }) => ({
    text: word,
    from: index,
  }));
}
