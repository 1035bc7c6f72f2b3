/** How characters fill a terminal: how wide each is, and what to print in place of those that would do harm. */
import { badCharacters } from './badCharacter.ts';

/** A character as printed, with its width in columns: 0, 1 or 2. */
export interface PrintedCharacter {
  readonly text: string;
  readonly width: number;
  /** UTF-16 units of the original. */
  readonly units: number;
}

const TAB = '    ';

/** The line's characters as they may be printed: tabs as spaces, harmful characters by their number. */
export function printed(line: string): PrintedCharacter[] {
  return [...line].map((character) => {
    const text = safe(character);
    const width = text === character ? widthOf(character) : text.length;
    return { text, width, units: character.length };
  });
}

function safe(character: string): string {
  if (character === '\t') return TAB;
  if (badCharacters(character).length === 0) return character;
  return `<U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`;
}

// Wide and full-width blocks of East Asian Width (UAX #11) and emoji, first and last of each. From memory; an error
// moves a caret by a column.
const WIDE = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0x9fff],
  [0xa000, 0xa4cf],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
] as const;

function widthOf(character: string): number {
  if (/[\p{Mn}\p{Me}\p{Cf}]/u.test(character)) return 0;
  const code = character.codePointAt(0) ?? 0;
  return WIDE.some(([first, last]) => code >= first && code <= last) ? 2 : 1;
}
