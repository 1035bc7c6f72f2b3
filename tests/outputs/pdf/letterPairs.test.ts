/** Words put together from pairs of letters are what the shaper makes of them, whatever the word. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { create, type GlyphRun } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { openFonts } from '../../../src/outputs/pdf/fonts.ts';
import { letterPairsOf, shaperBy, TABULAR } from '../../../src/outputs/pdf/letterPairs.ts';

const faces = ['400Regular', '700Bold'].map((cut) => {
  const bytes = readFileSync(`shared/fonts/AtkinsonHyperlegibleNext_${cut}.ttf`);
  const font = create(bytes);
  const pairs = letterPairsOf(font);
  return { cut, bytes, font, pairs, shape: shaperBy(pairs) };
});

const of = ({ glyphs, positions, advanceWidth }: GlyphRun) => ({
  glyphs: glyphs.map(({ id, advanceWidth: own, codePoints }) => [id, own, [...codePoints]]),
  positions: positions.map(({ xAdvance, xOffset, yOffset, yAdvance }) => [
    xAdvance,
    xOffset,
    yOffset,
    yAdvance,
  ]),
  advanceWidth,
});

describe.each(faces)('the pairs of $cut', ({ cut, bytes, font, pairs, shape }) => {
  it.each([['in running text'], ['in tables']])('make of any letters %s what the font makes', (where) => {
    const isTabular = where === 'in tables';
    const letters = fc.array(fc.constantFrom(...Object.keys(pairs.glyphs)), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(letters, (some) => {
        const text = some.join('');
        const shaped = shape(text, isTabular);
        expect(shaped && of(shaped), text).toEqual(of(font.layout(text, isTabular ? TABULAR : undefined)));
      }),
      { numRuns: 1500 },
    );
  });

  it.each(['Bend ', 'AVATAR ', '3–4 ', '10:30', 'zażółć', 'Ĳssel', 'kg\u00a0', '“Tą', ''])(
    'make of %j what the font makes',
    (text) => {
      for (const features of [undefined, TABULAR]) {
        const shaped = shape(text, features !== undefined);
        expect(shaped && of(shaped)).toEqual(of(font.layout(text, features)));
      }
    },
  );

  it('leave to the font what is more than letters side by side', () => {
    for (const text of ['1⁄2', 'e\u0301', 'Ş\u0301', '理']) expect(shape(text, false), text).toBeUndefined();
  });

  it('are asked before the font is', () => {
    const { regular } = openFonts(bytes, bytes, { regular: pairs, bold: pairs });
    const base = Object.getPrototypeOf(regular.font) as typeof font;
    let asked = 0;
    Object.assign(base, { layout: (text: string) => ((asked += 1), font.layout(text)) });
    expect(of(regular.font.layout('Hold '))).toEqual(of(font.layout('Hold ')));
    expect(asked, cut).toBe(0);
    expect(of(regular.font.layout('e\u0301'))).toEqual(of(font.layout('e\u0301')));
    expect(asked, cut).toBe(1);
  });
});
