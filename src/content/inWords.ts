/** Lists in a sentence. */

/** The words with commas and a joining word before the last. @example listed(['a', 'b', 'c'], 'or') // => 'a, b or c' */
export function listed(words: readonly (string | number)[], joint: 'and' | 'or'): string {
  if (words.length <= 1) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1)}`;
}
