/** What measures words for one document, and what was measured already: a page is tried in several ways. */
import type { Fonts } from './fonts.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';

/** Letters that stand together. */
export interface Chunk {
  readonly text: string;
  /** Without the space behind it. */
  readonly widthPt: number;
  /** What follows: a space, a chance to break without one, or the next chunk at once. */
  readonly then: 'space' | 'break' | 'chunk';
  /** Width of the space behind it, 0 without one. */
  readonly spacePt: number;
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

/** A text in chunks, in one style. */
export interface Measured {
  readonly style: TextStyle;
  readonly chunks: readonly Chunk[];
}

/** A text in lines, in one style at one width. */
export interface Wrapped {
  readonly style: TextStyle;
  readonly roomPt: number;
  readonly lines: readonly Line[];
}

export interface Measurer {
  readonly fonts: Fonts;
  /** By text, a case for every style it came in. */
  readonly measured: Map<string, Measured[]>;
  /** By text, a case for every style and width. */
  readonly wrapped: Map<string, Wrapped[]>;
}

export function measurerOf(fonts: Fonts): Measurer {
  return { fonts, measured: new Map(), wrapped: new Map() };
}

/** The case of this text that fits; the first time it is made. */
export function recall<Case>(
  memory: Map<string, Case[]>,
  text: string,
  fits: (known: Case) => boolean,
  make: () => Case,
): Case {
  const cases = memory.get(text) ?? [];
  const known = cases.find(fits);
  if (known !== undefined) return known;
  const made = make();
  memory.set(text, [...cases, made]);
  return made;
}
