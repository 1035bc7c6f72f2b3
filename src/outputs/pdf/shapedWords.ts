/** Words as they were shaped before, as plain data: shaping those of the library is most of the time of a first document. */
import type { Glyph, GlyphRun } from 'fontkit';

/** Of one cut. Only words whose every letter became one glyph are kept; the others are shaped again. */
export interface ShapedWords {
  /** Advance width and character by number of the glyph, thousandths of an em. */
  readonly glyphs: Readonly<Record<string, readonly [advanceWidth: number, codePoint: number]>>;
  /** By features and text: numbers of the glyphs, then how far each moves on. */
  readonly runs: Readonly<Record<string, readonly [glyphs: readonly number[], advances: readonly number[]]>>;
}

export const NO_WORDS: ShapedWords = { glyphs: {}, runs: {} };

/** What of a memory can be kept; see `Face.shaped` for its keys. */
export function keptWords(memory: ReadonlyMap<string, GlyphRun>): ShapedWords {
  const glyphs: Record<string, readonly [number, number]> = {};
  const runs: Record<string, readonly [number[], number[]]> = {};
  for (const [key, run] of memory) {
    if (!isPlain(key, run)) continue;
    for (const { id, advanceWidth, codePoints } of run.glyphs)
      glyphs[id] = [advanceWidth, codePoints[0] ?? 0];
    runs[key] = [run.glyphs.map(({ id }) => id), run.positions.map(({ xAdvance }) => xAdvance)];
  }
  return { glyphs, runs };
}

/** A run of those words, undefined for any other; put together when it is first asked for. */
export function readWords({ glyphs, runs }: ShapedWords): (key: string) => GlyphRun | undefined {
  const drawn = new Map<number, Glyph>();
  const glyphOf = (id: number): Glyph => {
    const known = drawn.get(id);
    if (known !== undefined) return known;
    const [advanceWidth, codePoint] = glyphs[id] ?? [0, 0];
    const glyph = { id, advanceWidth, codePoints: [codePoint] };
    drawn.set(id, glyph);
    return glyph;
  };
  const read = new Map<string, GlyphRun>();
  return (key) => {
    const known = read.get(key);
    const run = known === undefined && Object.hasOwn(runs, key) ? runs[key] : undefined;
    if (run === undefined) return known;
    const [ids, advances] = run;
    const made = {
      glyphs: ids.map(glyphOf),
      positions: advances.map((xAdvance) => ({ xAdvance })),
      advanceWidth: advances.reduce((sum, advance) => sum + advance, 0),
    };
    read.set(key, made);
    return made;
  };
}

// Nothing raised or moved aside, every glyph of just its own letter.
function isPlain(key: string, { glyphs, positions }: GlyphRun): boolean {
  const letters = [...key.slice(key.indexOf('\u0000') + 1)];
  return (
    letters.length === glyphs.length &&
    glyphs.every(
      ({ codePoints }, at) => codePoints.length === 1 && codePoints[0] === letters[at]?.codePointAt(0),
    ) &&
    positions.every((place) => !('xOffset' in place) || isInPlace(place as unknown as Offsets))
  );
}

interface Offsets {
  readonly xOffset: number;
  readonly yOffset: number;
  readonly yAdvance: number;
}

function isInPlace({ xOffset, yOffset, yAdvance }: Offsets): boolean {
  return xOffset === 0 && yOffset === 0 && yAdvance === 0;
}
