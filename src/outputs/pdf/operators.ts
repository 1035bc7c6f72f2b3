/** Numbers, colours, rules and text as PDF operators (ISO 32000-1 annex A). */
import type { GlyphRun } from 'fontkit';
import type { EmbeddedFont } from 'pdfkit';
import { forEachWord, type Face } from './fonts.ts';
import { TABULAR } from './letterPairs.ts';
import type { ShownText } from './pdfkit/content.ts';
import type { TextStyle } from './sheet.ts';

/** A number as PDF writes it: hundredths of a point, no exponent. */
export function pt(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** `#rrggbb` as three operands of `rg` or `RG`. */
export function rgb(colour: string): string {
  const value = Number.parseInt(colour.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255]
    .map((part) => String(Math.round((part / 255) * 1000) / 1000))
    .join(' ');
}

/** Stroked lines of one width: `[x1, y1, x2, y2]` each, points. */
export function ruleOperators(
  rules: readonly (readonly number[])[],
  widthPt: number,
  colour: string,
): string {
  const lines = rules.map(
    ([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => `${pt(x1)} ${pt(y1)} m ${pt(x2)} ${pt(y2)} l`,
  );
  return `q ${pt(widthPt)} w ${rgb(colour)} RG ${lines.join(' ')} S Q`;
}

/**
 * One stretch of text from its left end on a baseline, points from the upper left corner. It does what pdfkit's own
 * text does, in one string instead of ten: glyphs into the font's subset, kerning between them.
 */
export function shownText(
  font: EmbeddedFont,
  face: Face,
  text: string,
  { sizePt, colour, tabular }: TextStyle,
  xPt: number,
  baselinePt: number,
): ShownText {
  const glyphs = `[${shownGlyphs(font, face, text, tabular)}]`;
  return { font: `/${font.id} ${pt(sizePt)}`, colour: rgb(colour), xPt, baselinePt, glyphs };
}

/** Shaped as it was measured: word by word, or whole in tabular figures. */
function shownGlyphs(font: EmbeddedFont, face: Face, text: string, tabular: boolean): string {
  if (tabular) return `(${showRun(font, face.font.layout(text, TABULAR))})`;
  let shown = '(';
  forEachWord(text, (word) => {
    shown += showRun(font, face.font.layout(word));
  });
  return `${shown})`;
}

function showRun(font: EmbeddedFont, { glyphs, positions }: GlyphRun): string {
  let shown = '';
  glyphs.forEach((glyph, at) => {
    const code = font.subset.includeGlyph(glyph.id);
    font.widths[code] ??= glyph.advanceWidth;
    font.unicode[code] ??= glyph.codePoints;
    shown += letter(code >> 8) + letter(code & 255);
    const kern = glyph.advanceWidth - (positions[at]?.xAdvance ?? glyph.advanceWidth);
    if (kern !== 0) shown += `)${Math.round(kern)}(`;
  });
  return shown;
}

/** A byte of a string (7.3.4.2): half as long as in hexadecimal digits. */
function letter(byte: number): string {
  return ESCAPED.get(byte) ?? String.fromCharCode(byte);
}

/** What would end the string, or be read as another end of a line. */
const ESCAPED = new Map([
  [0x0d, '\\r'],
  [0x28, '\\('],
  [0x29, '\\)'],
  [0x5c, '\\\\'],
]);
