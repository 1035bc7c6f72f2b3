/** Runs as words: chunks that may not be parted, and what is done where they must be. */
import { chunksOf, lettersWidthPt } from './chunks.ts';
import type { Chunk, Measurer } from './measurer.ts';
import type { Run } from './run.ts';

/** Chunks one after the other, each with the run it comes from. */
export interface Text {
  readonly chunks: readonly Chunk[];
  readonly runs: readonly Run[];
}

/** Letters with the marks that stand on them. */
const GRAPHEME = /.\p{M}*/gsu;

/** Below any printer's dot, points. */
export const DUST_PT = 0.01;

/** Chunks to be measured: one run's as they are kept, since a table asks for those of every cell. */
export function chunksIn(runs: readonly Run[], measurer: Measurer): readonly Chunk[] {
  const [only] = runs;
  const chunks = only && runs.length === 1 ? chunksOf(only.text, only.style, measurer) : [];
  return chunks[0]?.text ? chunks : textOf(runs, measurer).chunks;
}

/** The runs in chunks, from the first that has a letter: what stands before it is not set. */
function textOf(runs: readonly Run[], measurer: Measurer): Text {
  const chunks: Chunk[] = [];
  const owners: Run[] = [];
  for (const run of runs)
    for (const chunk of chunksOf(run.text, run.style, measurer)) {
      if (chunks.length === 0 && chunk.text === '') continue;
      chunks.push(chunk);
      owners.push(run);
    }
  return { chunks, runs: owners };
}

/** Where the word ends that begins here: after a chunk behind which a line may break. */
export function wordEnd(chunks: readonly Chunk[], from: number): number {
  let end = from;
  while (chunks[end]?.then === 'chunk') end += 1;
  return Math.min(end + 1, chunks.length);
}

export function sumPt(chunks: readonly Chunk[], from: number, end: number): number {
  let widthPt = 0;
  for (let at = from; at < end; at += 1) widthPt += chunks[at]?.widthPt ?? 0;
  return widthPt;
}

/** The runs in chunks no word of which is wider than a room in points, unless one letter is. */
export function textWithin(runs: readonly Run[], roomPt: number, measurer: Measurer): Text {
  const text = textOf(runs, measurer);
  return hasTooWide(text.chunks, roomPt) ? broken(text, roomPt, measurer) : text;
}

/** The text with every word too wide for a line taken apart into letters, with a chance to break at each full line. */
function broken(text: Text, roomPt: number, measurer: Measurer): Text {
  const chunks: Chunk[] = [];
  const runs: Run[] = [];
  for (let from = 0, end = 0; from < text.chunks.length; from = end) {
    end = wordEnd(text.chunks, from);
    const word = { chunks: text.chunks.slice(from, end), runs: text.runs.slice(from, end) };
    const set = isTooWide(text.chunks, from, end, roomPt) ? inLetters(word, roomPt, measurer) : word;
    chunks.push(...set.chunks);
    runs.push(...set.runs);
  }
  return { chunks, runs };
}

function hasTooWide(chunks: readonly Chunk[], roomPt: number): boolean {
  for (let from = 0, end = 0; from < chunks.length; from = end) {
    end = wordEnd(chunks, from);
    if (isTooWide(chunks, from, end, roomPt)) return true;
  }
  return false;
}

function isTooWide(chunks: readonly Chunk[], from: number, end: number, roomPt: number): boolean {
  return sumPt(chunks, from, end) > roomPt + DUST_PT;
}

function inLetters(word: Text, roomPt: number, measurer: Measurer): Text {
  const chunks: Chunk[] = [];
  const runs: Run[] = [];
  let usedPt = 0;
  const endWith = (end: Pick<Chunk, 'then' | 'spacePt'>) => {
    const last = chunks.pop();
    if (last) chunks.push({ ...last, ...end });
  };
  word.chunks.forEach((chunk, at) => {
    const run = word.runs[at] as Run;
    for (const text of chunk.text.match(GRAPHEME) ?? []) {
      const widthPt = lettersWidthPt(text, run.style, measurer);
      if (usedPt > 0 && usedPt + widthPt > roomPt) {
        endWith({ then: 'break', spacePt: 0 });
        usedPt = 0;
      }
      chunks.push({ text, widthPt, then: 'chunk', spacePt: 0 });
      runs.push(run);
      usedPt += widthPt;
    }
  });
  const { then = 'break', spacePt = 0 } = word.chunks.at(-1) ?? {};
  endWith({ then, spacePt });
  return { chunks, runs };
}
