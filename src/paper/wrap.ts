/** Text into lines: where to break, and how wide each piece is. Pure measuring; nothing is drawn here. */
import { chunksOf, lettersWidthPt, type Chunk } from './chunks.ts';
import type { Fonts } from './fonts.ts';
import type { TextStyle } from './sheet.ts';
import { SIGNS } from './signs.ts';
import type { Tag } from './tag.ts';

/** A stretch of text in one style, perhaps a link, perhaps an element of its own within its paragraph. */
export interface Run {
  readonly text: string;
  readonly style: TextStyle;
  readonly href?: string;
  readonly tag?: Tag;
}

/** A run's part on one line. Every line but a paragraph's last keeps the space it was broken at, for who reads aloud. */
export interface Piece extends Run {
  readonly xPt: number;
  readonly widthPt: number;
}

export interface Line {
  readonly pieces: readonly Piece[];
  /** Without the space at the end. */
  readonly widthPt: number;
}

/** What may not be parted: chunks between two chances to break, each with the run it comes from. */
interface Word {
  readonly parts: readonly { readonly chunk: Chunk; readonly run: Run }[];
  readonly widthPt: number;
  readonly spacePt: number;
}

/** Letters with the marks that stand on them. */
const GRAPHEME = /.\p{M}*/gsu;

/** Texts kept before starting afresh. */
const MEMORY_TEXTS = 6_000;

/** Below any printer's dot, points. */
const DUST_PT = 0.01;

/**
 * The lines of these runs at a width in points (above 0). No line is wider than the width unless one letter is; a word
 * wider than the width is broken between letters. No text gives no line.
 */
export function wrap(runs: readonly Run[], roomPt: number, fonts: Fonts): readonly Line[] {
  const [only] = runs;
  if (runs.length !== 1 || !only || only.tag || only.href !== undefined) return wrapped(runs, roomPt, fonts);
  // A page is tried in several ways before it is drawn, mostly with the same words at the same width.
  const key = keyOf(only, roomPt);
  const known = fonts.lines.get(key) as readonly Line[] | undefined;
  if (known) return known;
  const lines = wrapped(runs, roomPt, fonts);
  if (fonts.lines.size >= MEMORY_TEXTS) fonts.lines.clear();
  fonts.lines.set(key, lines);
  return lines;
}

function keyOf({ text, style }: Run, roomPt: number): string {
  const { cut, sizePt, leadingPt, colour, tabular, slanted } = style;
  return `${cut} ${sizePt} ${leadingPt} ${colour} ${tabular} ${slanted} ${roomPt}\u0000${text}`;
}

function wrapped(runs: readonly Run[], roomPt: number, fonts: Fonts): readonly Line[] {
  const lines: Line[] = [];
  let words: Word[] = [];
  let usedPt = 0;
  const set = (word: Word): void => {
    if (words.length > 0 && usedPt + word.widthPt > roomPt + DUST_PT) {
      lines.push(lineOf(words));
      words = [];
      usedPt = 0;
    }
    words.push(word);
    usedPt += word.widthPt + word.spacePt;
  };
  for (const word of wordsOf(runs, fonts))
    if (word.widthPt <= roomPt + DUST_PT) set(word);
    else for (const part of broken(word, roomPt, fonts)) set(part);
  if (words.length > 0) lines.push(lineOf(words));
  return lines;
}

/** Width in points of runs set in one line. */
export function naturalWidthPt(runs: readonly Run[], fonts: Fonts): number {
  const words = wordsOf(runs, fonts);
  const lastSpacePt = words.at(-1)?.spacePt ?? 0;
  return words.reduce((sum, { widthPt, spacePt }) => sum + widthPt + spacePt, -lastSpacePt);
}

/** Width in points of the widest part that may not be broken. */
export function widestWordPt(runs: readonly Run[], fonts: Fonts): number {
  return wordsOf(runs, fonts).reduce((most, { widthPt }) => Math.max(most, widthPt), 0);
}

function wordsOf(runs: readonly Run[], fonts: Fonts): readonly Word[] {
  const words: Word[] = [];
  let open: { chunk: Chunk; run: Run }[] = [];
  const close = (): void => {
    const last = open.at(-1);
    if (last && (words.length > 0 || open.some(({ chunk }) => chunk.text !== '')))
      words.push({ parts: open, widthPt: sumPt(open), spacePt: last.chunk.spacePt });
    open = [];
  };
  for (const run of runs)
    for (const chunk of chunksOf(run.text, run.style, fonts)) {
      open.push({ chunk, run });
      if (chunk.then !== 'chunk') close();
    }
  close();
  return words;
}

function sumPt(parts: Word['parts']): number {
  return parts.reduce((sum, { chunk }) => sum + chunk.widthPt, 0);
}

function broken({ parts, spacePt }: Word, roomPt: number, fonts: Fonts): readonly Word[] {
  const words: Word[] = [];
  let open: { chunk: Chunk; run: Run }[] = [];
  for (const { chunk, run } of parts)
    for (const text of chunk.text.match(GRAPHEME) ?? []) {
      const letter: Chunk = {
        text,
        widthPt: lettersWidthPt(text, run.style, fonts),
        then: 'break',
        spacePt: 0,
      };
      if (open.length > 0 && sumPt(open) + letter.widthPt > roomPt) {
        words.push({ parts: open, widthPt: sumPt(open), spacePt: 0 });
        open = [];
      }
      open.push({ chunk: letter, run });
    }
  const last = open.at(-1);
  if (last) open[open.length - 1] = { ...last, chunk: { ...last.chunk, spacePt } };
  words.push({ parts: open, widthPt: sumPt(open), spacePt });
  return words;
}

interface Laid {
  text: string;
  readonly xPt: number;
  widthPt: number;
  readonly run: Run;
}

function pieceOf({ text, xPt, widthPt, run }: Laid): Piece {
  const { style, href, tag } = run;
  if (href === undefined && tag === undefined) return { text, style, xPt, widthPt };
  return { ...run, text, xPt, widthPt };
}

/** Neighbours of one run become one piece, so that a line is drawn in few strokes; a sign stands alone. */
function lineOf(words: readonly Word[]): Line {
  const pieces: Laid[] = [];
  let xPt = 0;
  for (const { parts } of words)
    for (const { chunk, run } of parts) {
      const last = pieces.at(-1);
      const sign = SIGNS.has(chunk.text);
      const text = chunk.spacePt > 0 && !sign ? `${chunk.text} ` : chunk.text;
      const widthPt = chunk.widthPt + (sign ? 0 : chunk.spacePt);
      if (last?.run === run && !sign && !SIGNS.has(last.text)) {
        last.text += text;
        last.widthPt += widthPt;
      } else pieces.push({ text, xPt, widthPt, run });
      xPt += widthPt;
      if (sign && chunk.spacePt > 0) {
        pieces.push({ text: ' ', xPt, widthPt: chunk.spacePt, run });
        xPt += chunk.spacePt;
      }
    }
  const spacePt = words.at(-1)?.spacePt ?? 0;
  return { pieces: pieces.map(pieceOf), widthPt: xPt - spacePt };
}
