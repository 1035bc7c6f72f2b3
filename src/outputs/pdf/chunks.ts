/** The parts of a text between which a line may break, with their widths; measured once and kept with the fonts. */
import { widthPt, type Fonts } from './fonts.ts';
import { recall, type Memory } from './memory.ts';
import type { TextStyle } from './sheet.ts';
import { SIGNS } from './signs.ts';

/** Letters that stand together. */
export interface Chunk {
  readonly text: string;
  /** Without the space behind it. */
  readonly widthPt: number;
  /** What follows: a space, a chance to break without one, or the next chunk at once. */
  readonly then: 'space' | 'break' | 'chunk';
  /** Width of the space behind it, 0 without one. */
  readonly spacePt: number;
}

/** Every white space but those that hold words together. */
const SPACES = /[^\S\u00a0\u202f]+/gu;

/** After a hyphen, dash or slash inside a word; never in a span of numbers such as 3–4 or 2/10. */
const SOFT_BREAK = /(?<=\p{L}[-–—/])(?=\p{L})/u;

const SIGN = new RegExp(`([${[...SIGNS.keys()].join('')}])`, 'u');

/** What the width of a text hangs on. */
type Letters = Pick<TextStyle, 'cut' | 'sizePt' | 'tabular'>;

interface Measured {
  readonly letters: Letters;
  readonly chunks: readonly Chunk[];
}

/** The chunks of a text; a space at its head comes as an empty chunk. */
export function chunksOf(text: string, style: TextStyle, fonts: Fonts): readonly Chunk[] {
  const memory = fonts.chunks as Memory<Measured>;
  return recall(
    memory,
    text,
    ({ letters }) =>
      letters.cut === style.cut && letters.sizePt === style.sizePt && letters.tabular === style.tabular,
    () => ({ letters: style, chunks: measured(text, style, fonts) }),
  ).chunks;
}

/** Width in points of letters in one style, or of a drawn sign. */
export function lettersWidthPt(text: string, style: TextStyle, fonts: Fonts): number {
  const sign = SIGNS.get(text);
  return sign ? sign.widthEm * style.sizePt : widthPt(fonts[style.cut], text, style.sizePt, style.tabular);
}

function measured(text: string, style: TextStyle, fonts: Fonts): readonly Chunk[] {
  const spacePt = lettersWidthPt(' ', style, fonts);
  // Composed letters: the shaper splits some that are not, and then half a letter stands for no character.
  const words = text.normalize('NFC').replace(SPACES, ' ').replaceAll('\u202f', '\u00a0').split(' ');
  return words.flatMap((word, at) => {
    const spaced = at < words.length - 1;
    if (word === '' && !(spaced && at === 0)) return [];
    const parts = word.split(SOFT_BREAK).map((part) => part.split(SIGN).filter((letters) => letters !== ''));
    return parts.flatMap((signs, part) =>
      (signs.length === 0 ? [''] : signs).map((letters, index): Chunk => {
        const last = index >= signs.length - 1;
        const then = !last ? 'chunk' : part < parts.length - 1 ? 'break' : spaced ? 'space' : 'chunk';
        // Measured with its space, as it will be drawn: kerning reaches into the space.
        const drawn = then === 'space' && !SIGNS.has(letters) ? `${letters} ` : letters;
        const drawnPt = letters === '' ? spacePt : lettersWidthPt(drawn, style, fonts);
        const widthPt = drawn === letters && letters !== '' ? drawnPt : drawnPt - spacePt;
        return { text: letters, widthPt, then, spacePt: then === 'space' ? spacePt : 0 };
      }),
    );
  });
}
