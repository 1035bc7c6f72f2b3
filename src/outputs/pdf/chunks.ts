/** The parts of a text between which a line may break, with their widths; measured once a document. */
import { widthPt } from './fonts.ts';
import { recall, type Chunk, type Measurer } from './measurer.ts';
import type { TextStyle } from './sheet.ts';
import { SIGNS } from './signs.ts';

/** Every white space but those that hold words together. */
const SPACES = /[^\S\u00a0\u202f]+/gu;

/** After a hyphen, dash or slash inside a word; never in a span of numbers such as 3–4 or 2/10. */
const SOFT_BREAK = /(?<=\p{L}[-–—/])(?=\p{L})/u;

const SIGN = new RegExp(`([${[...SIGNS.keys()].join('')}])`, 'u');

/** The chunks of a text; a space at its head comes as an empty chunk. */
export function chunksOf(text: string, style: TextStyle, measurer: Measurer): readonly Chunk[] {
  return recall(
    measurer.measured,
    text,
    // What the width of a text hangs on.
    (known) =>
      known.style.cut === style.cut &&
      known.style.sizePt === style.sizePt &&
      known.style.tabular === style.tabular,
    () => ({ style, chunks: measured(text, style, measurer) }),
  ).chunks;
}

/** Width in points of letters in one style, or of a drawn sign. */
export function lettersWidthPt(text: string, style: TextStyle, { fonts }: Measurer): number {
  const sign = SIGNS.get(text);
  return sign ? sign.widthEm * style.sizePt : widthPt(fonts[style.cut], text, style.sizePt, style.tabular);
}

function measured(text: string, style: TextStyle, measurer: Measurer): readonly Chunk[] {
  const spacePt = lettersWidthPt(' ', style, measurer);
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
        const drawnPt = letters === '' ? spacePt : lettersWidthPt(drawn, style, measurer);
        const widthPt = drawn === letters && letters !== '' ? drawnPt : drawnPt - spacePt;
        return { text: letters, widthPt, then, spacePt: then === 'space' ? spacePt : 0 };
      }),
    );
  });
}
