/** The library as it reads in one language. */
import type { Library } from '../library.ts';
import type { Language } from '../schema/words.ts';

/** Cards with the words of that language where there are some, else as they stand; ids and numbers are the same. */
export function libraryIn(library: Library, language: Language): Library {
  const words = library.inLanguage.get(language);
  if (words === undefined) return library;
  return {
    ...library,
    exercises: worded(library.exercises, words.exercises),
    advice: worded(library.advice, words.advice),
  };
}

// In the order in which the cards stand.
function worded<T>(cards: ReadonlyMap<string, T>, words: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  return new Map([...cards].map(([id, card]) => [id, words.get(id) ?? card]));
}
