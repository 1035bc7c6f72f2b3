/** What counts as a word when cards are searched: the same for the index, made at the build, and for what is typed. */

/** Words in small letters without accents and without the s of a plural. @example wordsOf('Ball curls, slow') // => ['ball', 'curl', 'slow'] */
export function wordsOf(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return (plain.match(/[\p{L}\p{N}]+/gu) ?? []).map((word) =>
    word.length > 3 ? word.replace(/s$/, '') : word,
  );
}
