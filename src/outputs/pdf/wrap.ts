/** Text into lines: where to break, and how wide each piece is. Pure measuring; nothing is drawn here. */
import { recall, type Chunk, type Line, type Measurer, type Piece } from './measurer.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { SIGNS } from './signs.ts';
import { chunksIn, DUST_PT, sumPt, textWithin, wordEnd, type Text } from './words.ts';

/**
 * The lines of these runs at a width in points (above 0). No line is wider than the width unless one letter is; a word
 * wider than the width is broken between letters. No text gives no line.
 */
export function wrap(runs: readonly Run[], roomPt: number, measurer: Measurer): readonly Line[] {
  const [only] = runs;
  if (runs.length !== 1 || !only || only.tag || only.href !== undefined)
    return wrapped(runs, roomPt, measurer);
  // A page is tried in several ways before it is drawn, mostly with the same words at the same width.
  return recall(
    measurer.wrapped,
    only.text,
    (known) => known.roomPt === roomPt && isSame(known.style, only.style),
    () => ({ style: only.style, roomPt, lines: wrapped(runs, roomPt, measurer) }),
  ).lines;
}

function isSame(one: TextStyle, other: TextStyle): boolean {
  return (
    one === other ||
    (one.cut === other.cut &&
      one.sizePt === other.sizePt &&
      one.leadingPt === other.leadingPt &&
      one.colour === other.colour &&
      one.tabular === other.tabular)
  );
}

function wrapped(runs: readonly Run[], roomPt: number, measurer: Measurer): readonly Line[] {
  const lines: Line[] = [];
  const text = textWithin(runs, roomPt, measurer);
  const { chunks } = text;
  let [first, usedPt] = [0, 0];
  for (let at = 0; at < chunks.length;) {
    const end = wordEnd(chunks, at);
    const widthPt = sumPt(chunks, at, end);
    if (at > first && usedPt + widthPt > roomPt + DUST_PT) {
      lines.push(lineOf(text, first, at));
      [first, usedPt] = [at, 0];
    }
    usedPt += widthPt + (chunks[end - 1]?.spacePt ?? 0);
    at = end;
  }
  if (first < chunks.length) lines.push(lineOf(text, first, chunks.length));
  return lines;
}

/** Width in points of runs set in one line. */
export function naturalWidthPt(runs: readonly Run[], measurer: Measurer): number {
  let [lineWidthPt, lastSpacePt] = [0, 0];
  for (const { widthPt, spacePt } of chunksIn(runs, measurer)) {
    lineWidthPt += widthPt + spacePt;
    lastSpacePt = spacePt;
  }
  return lineWidthPt - lastSpacePt;
}

/** Width in points of the widest part that may not be broken. */
export function widestWordPt(runs: readonly Run[], measurer: Measurer): number {
  let [widestPt, wordPt] = [0, 0];
  for (const { widthPt, then } of chunksIn(runs, measurer)) {
    wordPt += widthPt;
    widestPt = Math.max(widestPt, wordPt);
    if (then !== 'chunk') wordPt = 0;
  }
  return widestPt;
}

type Laid = { -readonly [key in keyof Piece]: Piece[key] };

function laidOf({ style, href, tag }: Run, text: string, xPt: number, widthPt: number): Laid {
  const laid: Laid = { text, style, xPt, widthPt };
  if (href !== undefined) laid.href = href;
  if (tag !== undefined) laid.tag = tag;
  return laid;
}

/** Neighbours of one run become one piece, so that a line is drawn in few strokes; a sign stands alone. */
function lineOf({ chunks, runs }: Text, from: number, end: number): Line {
  const pieces: Laid[] = [];
  /** The piece that letters of its run join. */
  let open: Laid | null = null;
  let [xPt, lastSpacePt] = [0, 0];
  for (let at = from; at < end; at += 1) {
    const { text, widthPt, spacePt } = chunks[at] as Chunk;
    const run = runs[at] as Run;
    const space = spacePt > 0 ? ' ' : '';
    if (SIGNS.has(text)) {
      pieces.push(laidOf(run, text, xPt, widthPt));
      open = space === '' ? null : laidOf(run, space, xPt + widthPt, spacePt);
      if (open) pieces.push(open);
    } else if (open && runs[at - 1] === run) {
      open.text += text + space;
      open.widthPt += widthPt + spacePt;
    } else {
      open = laidOf(run, text + space, xPt, widthPt + spacePt);
      pieces.push(open);
    }
    xPt += widthPt + spacePt;
    lastSpacePt = spacePt;
  }
  return { pieces, widthPt: xPt - lastSpacePt };
}
