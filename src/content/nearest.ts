/** The word that was probably meant. */
import { distance } from 'fastest-levenshtein';

/**
 * The known word nearest to what was written, or null when none is near: one letter of a word may differ, of long words
 * one in four up to four, of words under three none. Case does not count; two letters that changed places count as one.
 * @example nearest('masKg', ['massKg', 'alias']) // => 'massKg'
 */
export function nearest(written: string, known: readonly string[]): string | null {
  const lower = written.toLowerCase();
  let best: { word: string; away: number } | null = null;
  for (const word of known) {
    const most = limit(word, written);
    if (Math.abs(word.length - written.length) > most) continue;
    const away = letters(lower, word.toLowerCase());
    if (away <= most && (best === null || away < best.away)) best = { word, away };
  }
  return best?.word ?? null;
}

function limit(word: string, written: string): number {
  const length = Math.max(word.length, written.length);
  return length < 3 ? 0 : Math.min(4, Math.max(1, Math.floor(length / 4)));
}

// The distance of the library counts "alais" for "alias" as two; it is the commonest slip of all.
function letters(written: string, word: string): number {
  const from = [...written].findIndex((letter, index) => letter !== word[index]);
  const turned = `${written.slice(0, from)}${written[from + 1] ?? ''}${written[from] ?? ''}${written.slice(from + 2)}`;
  return from !== -1 && turned === word ? 1 : distance(written, word);
}
