/** Words in another language than the leaflet, found in its texts: who hears them needs them in their own sounds. */

export interface ForeignWord {
  readonly word: string;
  /** Language tag (BCP 47), for example `de`. */
  readonly language: string;
}

/** A stretch of a text; without a language it is in the leaflet's own. */
export interface Spoken {
  readonly text: string;
  readonly language: string | null;
}

/** The text in stretches of one language; joined they are the text. Of words that begin at one place the longest. */
export function spoken(text: string, foreign: readonly ForeignWord[]): readonly Spoken[] {
  const byLength = [...foreign].sort((one, other) => other.word.length - one.word.length);
  const parts: Spoken[] = [];
  let own = '';
  for (let at = 0; at < text.length;) {
    const found = byLength.find(({ word }) => word !== '' && isWordAt(text, word, at));
    if (found === undefined) {
      own += text.charAt(at);
      at += 1;
      continue;
    }
    if (own !== '') parts.push({ text: own, language: null });
    own = '';
    parts.push({ text: found.word, language: found.language });
    at += found.word.length;
  }
  return own === '' ? parts : [...parts, { text: own, language: null }];
}

const LETTER = /\p{L}/u;

/** Whole words only: no part of a longer one. */
function isWordAt(text: string, word: string, at: number): boolean {
  const [before, after] = [text.charAt(at - 1), text.charAt(at + word.length)];
  return text.startsWith(word, at) && !LETTER.test(before) && !LETTER.test(after);
}
