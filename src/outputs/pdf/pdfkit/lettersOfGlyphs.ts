/**
 * Glyphs that keep their letters. fontkit 2.0.4 keeps a glyph as it was first asked for, and pdfkit 0.20.2, which cuts the
 * font, asks by its number alone. A glyph known so far only from words shaped by `letterPairs.ts` is then kept without its
 * letters, and in every later document of the process it can neither be copied nor searched nor read aloud. Not reported
 * upstream, as far as was searched.
 */
import type { Font } from 'fontkit';

/** The same font, which learns the letters of a glyph when it is first told them. */
export function learnLetters(font: Font): Font {
  const getGlyph = font.getGlyph.bind(font);
  return Object.assign(font, {
    getGlyph: (id: number, letters: readonly number[] = []) => {
      const glyph = getGlyph(id, letters);
      return glyph.codePoints.length > 0 || letters.length === 0
        ? glyph
        : Object.assign(glyph, { codePoints: [...letters] });
    },
  });
}
