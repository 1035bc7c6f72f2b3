/** Syllables of English words, by rules and a short list of exceptions. */

/** Words of a health text that the rules below count wrongly. */
const EXCEPTIONS: Readonly<Record<string, number>> = {
  anyone: 3,
  area: 3,
  areas: 3,
  business: 2,
  element: 3,
  elements: 3,
  eye: 1,
  eyes: 1,
  forearm: 2,
  forearms: 2,
  forehead: 2,
  idea: 3,
  ideas: 3,
  people: 2,
  reality: 4,
  whereas: 2,
};

/**
 * Syllables of a word, 1 or more; of a hyphenated one the sum of its parts, of a number one a digit. Good for a mean
 * over a text, not for a verse: rules of spelling err in about two words of a hundred.
 * @example syllablesIn('hamstring') // => 2
 */
export function syllablesIn(word: string): number {
  const parts =
    word
      .toLowerCase()
      .replace(/['’]/g, '')
      .match(/[a-z]+|\d/g) ?? [];
  const count = parts.reduce((sum, part) => sum + (EXCEPTIONS[part] ?? ofPart(part)), 0);
  return Math.max(1, count);
}

// A group of vowels is a syllable, unless its letters are silent or spoken apart.
function ofPart(part: string): number {
  const spoken = SILENT.reduce((text, [letters, by]) => text.replace(letters, by), part);
  const groups = spoken.match(/[aeiouy]+/g)?.length ?? 0;
  const apart = APART.reduce((sum, letters) => sum + (spoken.match(letters)?.length ?? 0), 0);
  return Math.max(1, groups + apart);
}

/** What is written and not spoken, or spoken otherwise, in the order of the steps. */
const SILENT: readonly (readonly [RegExp, string])[] = [
  [/^some(?=[a-z]{3})/, 'som'],
  [/^every/, 'evry'],
  // handle, bottles, settled; metre, litres
  [/([^aeiouylrw])le[sd]?$/, '$1ul'],
  [/([^aeiour])res?$/, '$1ur'],
  // lifted keeps its e, pressed does not; pushes keeps it, takes does not
  [/([aeiouy][^aeiouytd]+)ed$/, '$1'],
  [/([aeiouy](?:[^aeiouy]*[^aeiouyscxzgh]|th))es$/, '$1'],
  [/([aeiouy][^aeiouy]+)e$/, '$1'],
  [/([aeiouy][^aeiouy]{1,2})e(?=(?:ly|ful|fully|less|ness|ments?)$)/, '$1'],
];

/** Vowels that stand side by side and are two syllables. */
const APART: readonly RegExp[] = [
  /(?:[^ctsxgln]|^ch|ch)i[aou]/g,
  /[ln]i[au]|[ts]io(?![nu])|[ct]ia(?=t)/g,
  /[^cgp]eo(?!u)/g,
  /[^gq]ua|uou/g,
  /iet|[^ct]ient/g,
  /[^aeiouyt]iers?$|[^aeiouyr]iest$|[^aeiouy]riest$/g,
  /[aeiouy]ing/g,
  /[aeiou]y[aeou](?!d$)/g,
  /creat(?!ur)|^rea(?=ct|ss|pp)/g,
  /isms?$|[^aeiouyrln]nt$/g,
];
