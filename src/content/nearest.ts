/** The word that was probably meant. */
import { distance } from 'fastest-levenshtein';

/**
 * The known word nearest to what was written, or null when none is near: at most one letter in three may differ, and
 * never more than four. Case does not count. @example nearest('masKg', ['massKg', 'alias']) // => 'massKg'
 */
export function nearest(written: string, known: readonly string[]): string | null {
  const lower = written.toLowerCase();
  let best: { word: string; away: number } | null = null;
  for (const word of known) {
    const away = distance(lower, word.toLowerCase());
    if (away <= limit(word, written) && (best === null || away < best.away)) best = { word, away };
  }
  return best?.word ?? null;
}

function limit(word: string, written: string): number {
  return Math.min(4, Math.floor(Math.max(word.length, written.length) / 3));
}
