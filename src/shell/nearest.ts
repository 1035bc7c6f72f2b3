/** The word of a command line that was probably meant. */
import { distance } from 'fastest-levenshtein';

/**
 * The word nearest to what was written, or null when none is near. More generous than content's own, for the words are
 * few: two letters may differ, of long words a third.
 * @example nearestOf('biuld', ['build', 'check']) // => 'build'
 */
export function nearestOf(written: string, words: readonly string[]): string | null {
  const most = Math.max(2, Math.floor(written.length / 3));
  const ranked = words
    .map((word) => ({ word, away: distance(written.toLowerCase(), word.toLowerCase()) }))
    .filter(({ word, away }) => away <= most && away < word.length)
    .sort((a, b) => a.away - b.away);
  return ranked[0]?.word ?? null;
}
