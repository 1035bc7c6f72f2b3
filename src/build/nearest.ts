import { distance } from 'fastest-levenshtein';

/** The word nearest to what was written, or null when none is near enough to be meant. @example nearestOf('biuld', ['build', 'check']) // => 'build' */
export function nearestOf(written: string, words: readonly string[]): string | null {
  const ranked = words
    .map((word) => ({ word, away: distance(written, word) }))
    .sort((a, b) => a.away - b.away);
  const best = ranked[0];
  return best !== undefined && best.away <= Math.max(2, Math.floor(written.length / 3)) ? best.word : null;
}
