/** Whether a word was meant that the keys made another of. */

/** A word of fewer letters has too many neighbours. */
const LEAST_LETTERS = 4;

/**
 * Whether one slip made `asked` of a beginning of `word`: a letter put for another, left out, doubled or put in, or two
 * that changed places. @example isSlipOf('hamstirng', 'hamstring') // => true
 */
export function isSlipOf(asked: string, word: string): boolean {
  if (asked.length < LEAST_LETTERS) return false;
  const at = firstDifference(asked, word);
  const goesOn = (from: number, to: number) => word.startsWith(asked.slice(from), to);
  return (
    goesOn(at + 1, at + 1) ||
    goesOn(at, at + 1) ||
    goesOn(at + 1, at) ||
    (asked[at] === word[at + 1] && asked[at + 1] === word[at] && goesOn(at + 2, at + 2))
  );
}

function firstDifference(asked: string, word: string): number {
  let at = 0;
  while (at < asked.length && asked[at] === word[at]) at += 1;
  return at;
}
