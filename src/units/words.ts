/** What counts as a word when cards are searched: the same for the index, made at the build, and for what is typed. */

/** Words in small letters without accents and without the s of a plural. @example wordsOf('Ball curls, slow') // => ['ball', 'curl', 'slow'] */
export function wordsOf(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return (plain.match(/[\p{L}\p{N}]+/gu) ?? []).map((word) =>
    word.length > 3 ? word.replace(/s$/, '') : word,
  );
}

const NEGATIVES: readonly string[] = ['no', 'without'];

/** The same with `no` and `without` joined to what they deny. @example searchWords('Curl, no weights') // => ['curl', 'noweight'] */
export function searchWords(text: string): string[] {
  const words = wordsOf(text);
  return words.flatMap((word, at) => {
    if (NEGATIVES.includes(words[at - 1] ?? '')) return [`no${word}`];
    return NEGATIVES.includes(word) && at < words.length - 1 ? [] : [word];
  });
}

/** Where in a card a word stands, the best place first. */
export const FIELDS = ['name', 'term', 'tendon', 'text'] as const;
export type Field = (typeof FIELDS)[number];
