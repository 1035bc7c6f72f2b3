/**
 * What the typeface does with letters side by side, asked for once and kept as plain data: with it a word is shaped in no
 * time, where the shaper reads its tables first (a tenth of the time of a first document) and then walks through them for
 * every word. It is all there is to know: neither cut puts one letter in place of another, but for the marks that stand on
 * letters and the fractions of U+2044, and kerning looks no further than to the next letter. Texts with any of those, and
 * with letters the typeface lacks, are left to the shaper.
 */
import type { Font, Glyph, GlyphRun } from 'fontkit';

/** Number of a glyph, and how far it moves on, thousandths of an em. */
type KeptGlyph = readonly [id: number, advanceWidth: number];

/** Of one cut. */
export interface LetterPairs {
  readonly glyphs: Readonly<Record<string, KeptGlyph>>;
  /** Of the letters that are another glyph in tabular figures: that one. */
  readonly tabular: Readonly<Record<string, KeptGlyph>>;
  /** By the number of a glyph: which of the rows below is its own, for many have the same. */
  readonly rowOf: Readonly<Record<string, number>>;
  /** Glyphs behind it, each followed by how much further that one stands; those that stand no further are left out. */
  readonly rows: readonly (readonly number[])[];
}

/** Tabular figures: all digits of one width, so that columns of numbers stand straight. */
export const TABULAR: readonly string[] = ['tnum'];

const FRACTION_SLASH = 0x2044;

/** Asks a font for every letter it has, and for every two of them. */
export function letterPairsOf(font: Font): LetterPairs {
  const letters = font.characterSet
    .filter((codePoint) => codePoint !== FRACTION_SLASH)
    .map((codePoint) => String.fromCodePoint(codePoint))
    .filter((letter) => !/[\p{M}\p{C}]/u.test(letter));
  const glyphs = glyphsOf(letters, (letter) => font.layout(letter));
  const inTable = glyphsOf(letters, (letter) => font.layout(letter, TABULAR));
  const tabular = new Map([...inTable].filter(([letter, glyph]) => glyph.id !== glyphs.get(letter)?.id));
  return {
    glyphs: keptOf(glyphs),
    tabular: keptOf(tabular),
    ...rowsOf([
      ...rowsBehind(letters, glyphs, (text) => font.layout(text)),
      ...rowsBehind(letters, inTable, (text) => font.layout(text, TABULAR)),
    ]),
  };
}

type Shape = (text: string) => GlyphRun;

function glyphsOf(letters: readonly string[], shape: Shape): Map<string, Glyph> {
  return new Map(letters.map((letter) => [letter, only(shape(letter))]));
}

function only({ glyphs }: GlyphRun): Glyph {
  const [glyph] = glyphs;
  if (glyph === undefined || glyphs.length > 1) throw new Error('a letter is shaped as other than one glyph');
  return glyph;
}

function keptOf(glyphs: ReadonlyMap<string, Glyph>): Record<string, KeptGlyph> {
  return Object.fromEntries(
    [...glyphs].map(([letter, { id, advanceWidth }]) => [letter, [id, advanceWidth]]),
  );
}

type Row = readonly [glyph: number, row: readonly number[]];

function rowsBehind(letters: readonly string[], glyphs: ReadonlyMap<string, Glyph>, shape: Shape): Row[] {
  return letters.map((first): Row => {
    const glyph = glyphs.get(first) as Glyph;
    const steps = letters.map((next) => stepTo(glyph, glyphs.get(next) as Glyph, shape(first + next)));
    return [glyph.id, steps.filter(([, units]) => units !== 0).flat()];
  });
}

/** The next glyph, and how much further it stands behind this one. */
function stepTo(glyph: Glyph, next: Glyph, { glyphs, positions }: GlyphRun): [id: number, units: number] {
  const [first, second] = positions;
  const isPlain =
    glyphs.length === 2 &&
    glyphs[0]?.id === glyph.id &&
    glyphs[1]?.id === next.id &&
    second?.xAdvance === next.advanceWidth &&
    positions.every(({ xOffset, yOffset, yAdvance }) => xOffset === 0 && yOffset === 0 && yAdvance === 0);
  if (!isPlain || !first) throw new Error('two letters side by side are shaped as other than themselves');
  return [next.id, first.xAdvance - glyph.advanceWidth];
}

/** Rows by glyph: what it does before all letters as they are, then before those in tabular figures, each row once. */
function rowsOf(rows: readonly Row[]): Pick<LetterPairs, 'rowOf' | 'rows'> {
  const whole = new Map<number, Map<number, number>>();
  for (const [glyph, row] of rows) {
    const known = whole.get(glyph) ?? new Map<number, number>();
    for (let at = 0; at < row.length; at += 2) known.set(row[at] ?? 0, row[at + 1] ?? 0);
    whole.set(glyph, known);
  }
  const texts = new Map([...whole].map(([glyph, row]) => [glyph, [...row].flat().join()]));
  const different = [...new Set(texts.values())];
  return {
    rowOf: Object.fromEntries([...texts].map(([glyph, text]) => [glyph, different.indexOf(text)])),
    rows: different.map((text) => (text === '' ? [] : text.split(',').map(Number))),
  };
}

/** Shapes a text as the font would; undefined where a letter of it is not among those kept. */
export type ShapeByPairs = (text: string, isTabular: boolean) => GlyphRun | undefined;

export function shaperBy(pairs: LetterPairs): ShapeByPairs {
  const plain = new Map(Object.entries(pairs.glyphs).map(glyphAgain));
  const inTable = new Map([...plain, ...Object.entries(pairs.tabular).map(glyphAgain)]);
  const rows = pairs.rows.map(rowAgain);
  const rowOf = new Map(Object.entries(pairs.rowOf).map(([id, row]) => [Number(id), rows[row]]));
  return (text, isTabular) => {
    const known = isTabular ? inTable : plain;
    const glyphs: Glyph[] = [];
    for (const letter of text) {
      const glyph = known.get(letter);
      if (glyph === undefined) return undefined;
      glyphs.push(glyph);
    }
    return runOf(glyphs, rowOf);
  };
}

function runOf(glyphs: readonly Glyph[], rowOf: ReadonlyMap<number, RowAgain | undefined>): GlyphRun {
  const positions: { xAdvance: number; xOffset: 0; yOffset: 0; yAdvance: 0 }[] = [];
  let advanceWidth = 0;
  glyphs.forEach(({ id, advanceWidth: own }, at) => {
    const next = glyphs[at + 1];
    const xAdvance = own + (next ? (rowOf.get(id)?.get(next.id) ?? 0) : 0);
    positions.push({ xAdvance, xOffset: 0, yOffset: 0, yAdvance: 0 });
    advanceWidth += xAdvance;
  });
  return { glyphs, positions, advanceWidth };
}

function glyphAgain([letter, [id, advanceWidth]]: [string, KeptGlyph]): [string, Glyph] {
  return [letter, { id, advanceWidth, codePoints: [letter.codePointAt(0) ?? 0] }];
}

type RowAgain = ReadonlyMap<number, number>;

function rowAgain(row: readonly number[]): RowAgain {
  const again = new Map<number, number>();
  for (let at = 0; at < row.length; at += 2) again.set(row[at] ?? 0, row[at + 1] ?? 0);
  return again;
}
