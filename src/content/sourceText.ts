/** An author's text with its lines, so that an offset can be said as line and column. */
import type { Place } from './problem.ts';

export interface SourceText {
  readonly file: string;
  /** Without byte order mark, lines ended by a single line feed; neither moves a line or a column. */
  readonly text: string;
  /** Offset of the first character of each line. */
  readonly lineStarts: readonly number[];
}

/** The text of `file` with its line starts. */
export function sourceText(file: string, text: string): SourceText {
  const ends = [...text.matchAll(/\n/g)].map(({ index }) => index + 1);
  return { file, text, lineStarts: [0, ...ends] };
}

/** Line and column (both from 1, in UTF-16 units) of an offset; an offset outside the text counts as its nearer end. */
export function placeAt(source: SourceText, offset: number): Place {
  const inside = Math.min(Math.max(offset, 0), source.text.length);
  const index = lineIndexOf(source.lineStarts, inside);
  return { file: source.file, line: index + 1, column: inside - (source.lineStarts[index] ?? 0) + 1 };
}

/** The first place of a file, for what concerns it as a whole. */
export function topOf(file: string): Place {
  return { file, line: 1, column: 1 };
}

// The last line that starts at or before the offset, by halving.
function lineIndexOf(lineStarts: readonly number[], offset: number): number {
  let [low, high] = [0, lineStarts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
