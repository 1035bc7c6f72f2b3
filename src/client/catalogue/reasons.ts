/** Reasons against a card are asked for in the search as well: they leave cards out, and find none that names them. */
import { searchWords } from '../../units/words.ts';
import { isSlipOf } from './slip.ts';

/** A choice of a filter, and what is typed for it, word by word. */
export interface Reason {
  readonly value: string;
  readonly label: string;
  readonly phrases: readonly (readonly string[])[];
}

/** Shorter beginnings are those of other words as well. */
const LEAST_LETTERS = 6;

/** `asked`: as the page has it, phrases parted by commas. */
export function reasonOf(value: string, label: string, asked: string): Reason {
  return { value, label, phrases: asked.split(',').map(searchWords) };
}

/** The reasons that were typed, and the words that are left to search for. */
export function reasonsIn(
  typed: readonly string[],
  reasons: readonly Reason[],
): { readonly reasons: readonly Reason[]; readonly rest: readonly string[] } {
  const wordsFor = ({ phrases }: Reason) =>
    phrases
      .filter((phrase) => phrase.every((word) => typed.some((one) => isMeant(one, word))))
      .flatMap((phrase) => typed.filter((one) => phrase.some((word) => isMeant(one, word))));
  const found = reasons
    .map((reason) => ({ reason, words: wordsFor(reason) }))
    .filter(({ words }) => words.length > 0);
  const used = new Set(found.flatMap(({ words }) => words));
  return { reasons: found.map(({ reason }) => reason), rest: typed.filter((word) => !used.has(word)) };
}

function isMeant(typed: string, word: string): boolean {
  if (typed === word) return true;
  return typed.length >= LEAST_LETTERS && (word.startsWith(typed) || isSlipOf(typed, word));
}
