/** Texts that come from files and names, as they may be sent to a terminal: what it would obey is shown, not sent. */
import { badCharacters } from './badCharacter.ts';

/** Control and bidi characters by their number; lines and tabs stay. @example visible('a\u001b[2J') // => 'a<U+001B>[2J' */
export function visible(text: string): string {
  return written(text, numbered);
}

/** The same of a text that must not break its line, shortened in its middle where it is longer than a screen. */
export function visibleInLine(text: string): string {
  const line = visible(text).replaceAll('\n', '<U+000A>').replaceAll('\t', ' ');
  if (line.length <= LONGEST) return line;
  return `${line.slice(0, LONGEST / 2)} … ${line.slice(line.length - LONGEST / 2)}`;
}

/** JSON with the same characters as escapes: the same value, which a terminal may be shown. */
export function visibleJson(json: string): string {
  return written(json, (character) =>
    [...Array(character.length).keys()]
      .map((at) => `\\u${character.charCodeAt(at).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}

// Some twenty lines of a terminal; the longest cure of ours names all keys of a consult.
const LONGEST = 1600;

function numbered(character: string): string {
  return `<U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`;
}

function written(text: string, as: (character: string) => string): string {
  const bad = badCharacters(text);
  if (bad.length === 0) return text;
  let [result, from] = ['', 0];
  for (const { index } of bad) {
    const character = String.fromCodePoint(text.codePointAt(index) ?? 0);
    result += text.slice(from, index) + as(character);
    from = index + character.length;
  }
  return result + text.slice(from);
}
