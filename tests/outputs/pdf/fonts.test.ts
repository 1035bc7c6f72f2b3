import { create } from 'fontkit';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faceOf, fontsOf, forgetWords, openFonts, widthPt } from '../../../src/outputs/pdf/fonts.ts';
import { fonts } from './make.ts';

const regular = readFileSync('shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf');

describe('fonts', () => {
  it('takes TrueType and nothing else', () => {
    const woff2 = readFileSync('shared/fonts/atkinson-hyperlegible-next-latin-700-normal.woff2');
    expect(() => openFonts(regular, woff2)).toThrow('the bold font is not a TrueType file');
    expect(() => openFonts(new Uint8Array(), regular)).toThrow('the regular font is not a TrueType file');
  });

  it('sets all digits of a table to one width, and a 1 narrower in running text', () => {
    const widths = (tabular: boolean) =>
      new Set([...'0123456789'].map((digit) => widthPt(fonts.regular, digit, 10, tabular)));
    expect(widths(true).size).toBe(1);
    expect(widthPt(fonts.regular, '1', 10, false)).toBeLessThan(widthPt(fonts.regular, '1', 10, true));
  });

  it('measures a line as pdfkit sets it: word by word, each with its space', () => {
    const face = create(regular);
    const words = ['Push ', 'the ', 'heels ', 'away.'];
    const sum = words.reduce((total, word) => total + face.layout(word).advanceWidth, 0);
    expect(widthPt(fonts.regular, words.join(''), 10, false)).toBeCloseTo(sum / 100, 10);
  });

  it('keeps a word once shaped, and forgets it when told', () => {
    const font = create(regular);
    let shaped = 0;
    const counting = Object.assign(Object.create(font) as typeof font, {
      layout: (text: string, features?: readonly string[]) => {
        shaped++;
        return font.layout(text, features);
      },
    });
    const face = faceOf('regular', counting);
    widthPt(face, 'hold hold hold', 10, false);
    widthPt(face, 'hold hold hold', 12, false);
    expect(shaped).toBe(2);
    forgetWords(fontsOf(face, face));
    widthPt(face, 'hold', 10, false);
    expect(shaped).toBe(3);
  });

  // As a leaflet of words shaped by pairs of letters does, before one with a letter that is none of a pair.
  it('knows the letters of a glyph that was first asked for by its number', () => {
    const { regular: face } = openFonts(regular, regular);
    const [id = 0] = create(regular)
      .layout('u')
      .glyphs.map((glyph) => glyph.id);
    face.font.getGlyph(id);
    expect(face.font.layout('umu').glyphs.map(({ codePoints }) => codePoints)).toEqual([[117], [109], [117]]);
  });

  it('refuses an em of another size, in which a kept word would grow at each use', () => {
    const odd = Object.assign(Object.create(create(regular)) as ReturnType<typeof create>, {});
    Object.defineProperty(odd, 'unitsPerEm', { value: 2048 });
    expect(() => faceOf('bold', odd)).toThrow('the bold font has 2048 units per em; 1000 expected');
  });
});
