/** Where the words of a table stand in a text. */
import type { Lexicon } from '../messages/en/author/lexicon.ts';

export interface Hit {
  /** As written. */
  readonly word: string;
  readonly offset: number;
  readonly instead: string;
}

/** Finds the words of a table in a text, in their order; where two rows begin at one place the earlier row counts. */
export function finderOf(lexicon: Lexicon): (text: string) => readonly Hit[] {
  const rows = lexicon.map(([pattern]) => `(${pattern})`).join('|');
  const all = new RegExp(`(?<![\\p{L}\\p{N}])(?:${rows})(?![\\p{L}\\p{N}])`, 'giu');
  return (text) =>
    [...text.matchAll(all)].map((match) => {
      const row = match.slice(1).findIndex((group) => group !== undefined);
      return { word: match[0], offset: match.index, instead: lexicon[row]?.[1] ?? '' };
    });
}
