/** The two cuts of the leaflet's typeface, parsed once for all documents, with a memory of words already shaped. */
import { create, type Font, type GlyphRun } from 'fontkit';
import { learnLetters } from './pdfkit/lettersOfGlyphs.ts';
import { shaperBy, TABULAR, type LetterPairs } from './letterPairs.ts';

/** One cut. `font` is what pdfkit embeds; both draw and measure through the same memory. */
export interface Face {
  readonly name: 'regular' | 'bold';
  readonly font: Font;
  /** Forgets what was shaped. */
  forget(): void;
}

export interface Fonts {
  readonly regular: Face;
  readonly bold: Face;
  /** Texts already found to have no letter that is missing, see `letters.ts`. */
  readonly printable: Set<string>;
  /** Whether a letter can be set, of those already asked for. */
  readonly letters: Map<string, boolean>;
}

/** First four bytes of a TrueType file (ISO/IEC 14496-22, 4.3). */
const TRUETYPE = [0, 1, 0, 0];

/** PDF counts widths in thousandths of an em, and so does this room; pdfkit would rescale any other in place. */
const UNITS_PER_EM = 1000;

/** Words kept before starting afresh; a leaflet has some 600 different ones. */
const MEMORY_WORDS = 20_000;

/**
 * The parsed fonts, from the bytes of two TrueType files. Throws when a file is of another kind: a WOFF2 font passes
 * every text check and draws blank pages. With the pairs of their letters few words have to be shaped.
 */
export function openFonts(
  regular: Uint8Array,
  bold: Uint8Array,
  pairs?: Readonly<Record<Face['name'], LetterPairs>>,
): Fonts {
  return fontsOf(openFace('regular', regular, pairs?.regular), openFace('bold', bold, pairs?.bold));
}

/** The two faces with an empty memory. */
export function fontsOf(regular: Face, bold: Face): Fonts {
  return { regular, bold, printable: new Set(), letters: new Map() };
}

/** Forgets every word seen: they are patients' words, and a server that lives on has no use for them. */
export function forgetWords(fonts: Fonts): void {
  fonts.regular.forget();
  fonts.bold.forget();
  fonts.printable.clear();
  fonts.letters.clear();
}

function openFace(name: Face['name'], bytes: Uint8Array, pairs?: LetterPairs): Face {
  if (TRUETYPE.some((byte, at) => bytes[at] !== byte))
    throw new Error(
      `the ${name} font is not a TrueType file; its first bytes are ${bytes.slice(0, 4).join(' ')}`,
    );
  return faceOf(name, learnLetters(create(bytes)), pairs);
}

/** A face from a font fontkit has parsed. Throws when its em is not 1000 units. */
export function faceOf(name: Face['name'], font: Font, pairs?: LetterPairs): Face {
  if (font.unitsPerEm !== UNITS_PER_EM)
    throw new Error(`the ${name} font has ${font.unitsPerEm} units per em; ${UNITS_PER_EM} expected`);
  const byPairs = pairs && shaperBy(pairs);
  const memories = { plain: new Map<string, GlyphRun>(), tabular: new Map<string, GlyphRun>() };
  const shaped = (text: string, features?: readonly string[]): GlyphRun => {
    const isTabular = features === TABULAR;
    if (features !== undefined && !isTabular) return font.layout(text, features);
    const memory = isTabular ? memories.tabular : memories.plain;
    const known = memory.get(text);
    if (known) return known;
    const run = byPairs?.(text, isTabular) ?? font.layout(text, features);
    if (memory.size >= MEMORY_WORDS) memory.clear();
    memory.set(text, run);
    return run;
  };
  return {
    name,
    font: Object.assign(Object.create(font) as Font, { layout: shaped }),
    forget: () => {
      for (const memory of Object.values(memories)) memory.clear();
    },
  };
}

/**
 * Width in points of a text set in one line. It is the sum of its words, each with the space behind it, because that
 * is how pdfkit shapes a line: kerning ends at a space.
 */
export function widthPt(face: Face, text: string, sizePt: number, tabular: boolean): number {
  if (tabular) return (face.font.layout(text, TABULAR).advanceWidth * sizePt) / UNITS_PER_EM;
  let units = 0;
  forEachWord(text, (word) => {
    units += face.font.layout(word).advanceWidth;
  });
  return (units * sizePt) / UNITS_PER_EM;
}

/** Each word of a text with the space behind it. */
export function forEachWord(text: string, each: (word: string) => void): void {
  for (let from = 0; from < text.length;) {
    const space = text.indexOf(' ', from);
    const to = space === -1 ? text.length : space + 1;
    each(text.slice(from, to));
    from = to;
  }
}
