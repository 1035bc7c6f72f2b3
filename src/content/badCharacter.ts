/** Characters that no author means to write: they break terminals, turn the direction of text, or hide in it. */

export interface BadCharacter {
  readonly index: number;
  /** For a reader, for example `U+202E, which turns the direction of text`. */
  readonly name: string;
}

// Unicode properties (UAX #44): Cc control, Cs lone surrogate, Zl and Zp line and paragraph separator, Bidi_Control,
// Noncharacter_Code_Point. U+FEFF means something only as the first character of a file. Tab and line feed are text.
const BAD = /(?![\t\n])[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\p{Bidi_Control}\p{Noncharacter_Code_Point}\uFEFF]/gu;

/** All such characters of the text, in order; empty when there are none. */
export function badCharacters(text: string): BadCharacter[] {
  return [...text.matchAll(BAD)].map((match) => ({ index: match.index, name: nameOf(match[0]) }));
}

/** Expected and fix of a Problem about one, shared by file, front matter and body. */
export const BAD_CHARACTER_WORDS = {
  expected: 'text without control characters and without marks that turn its direction',
  fix: 'delete it, or write the text again by hand',
} as const;

function nameOf(character: string): string {
  const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return `U+${code}, ${kindOf(character)}`;
}

function kindOf(character: string): string {
  if (/\p{Bidi_Control}/u.test(character)) return 'which turns the direction of text';
  if (/\p{Cc}/u.test(character)) return 'a control character';
  if (/[\p{Zl}\p{Zp}]/u.test(character)) return 'a line break that editors do not show';
  return 'which is no character of a text';
}
