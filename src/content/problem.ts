/** An author's mistake as data: where, what was found, what was expected, and the cure. */

/** The closed list of codes; each has a test of its full printed text. */
export const PROBLEM_CODES = [
  'not-utf8',
  'bad-character',
  'too-large',
  'link-out',
  'cannot-read',
  'no-front-matter',
  'yaml',
  'alias',
  'duplicate-key',
  'unknown-key',
  'missing-key',
  'wrong-type',
  'out-of-range',
  'not-a-date',
  'csv',
  'contradiction',
  'wrong-word',
  'does-not-fit',
  'implausible',
  'untouched-starter',
  'duplicate-id',
  'wrong-file-name',
  'no-such-card',
  'circle',
  'shipped-changed',
  'prose',
  'heading',
  'link',
  'no-such-country',
  'screen-block',
  'no-card-for-slot',
  'pose-cannot-close',
  'nothing-fits',
  'letter-not-in-font',
  'image',
  'load-not-in-kit',
  'no-free-day',
  'issued',
  'words-against-dose',
  // Warnings: wording, evidence and review dates only, never a number.
  'over-shipped',
  'review-overdue',
  'card-unused',
  'words-against-angle',
  'figure-missing',
  'hand-in-the-air',
  'said-to-move-stays',
  'body-enters-thing',
  'arc-against-number',
  'foot-off-the-ground',
  'easier-is-harder',
  'harder-is-easier',
  'card-length',
  'long-sentence',
  'reading-grade',
  'trade-word',
  'banned-word',
  'evidence-weak',
  'stage-leaves-out',
] as const;
export type ProblemCode = (typeof PROBLEM_CODES)[number];

export interface Place {
  /** Relative to the content folder (or to the consults folder, with `consults/` before it), `/` between folders. */
  readonly file: string;
  /** Both from 1; the column counts UTF-16 units as editors do. */
  readonly line: number;
  readonly column: number;
}

export interface Problem extends Place {
  readonly code: ProblemCode;
  readonly severity: 'error' | 'warning';
  /** Into the front matter, for example `tests[0].pain`; empty for the whole file. */
  readonly path: string;
  /** Reads after "is" (or "found" where there is no path): what stands there, as written. */
  readonly found: string;
  /** Reads after "must be". */
  readonly expected: string;
  /** Reads after "Fix:": what to write or do. */
  readonly fix: string;
}

/** What a Problem says beside its code and place; `path` is left out where a whole file or its body is meant. */
export interface ProblemWords {
  readonly path?: string;
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** An error at a place. */
export function errorAt(place: Place, code: ProblemCode, words: ProblemWords): Problem {
  return problemAt('error', place, code, words);
}

/** A warning at a place: about wording, evidence or a review date, never about a number. */
export function warningAt(place: Place, code: ProblemCode, words: ProblemWords): Problem {
  return problemAt('warning', place, code, words);
}

/** The Problems in the order of their places, then of their codes and paths; file names by code unit. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return problems.toSorted(
    (a, b) =>
      byCodeUnit(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      byCodeUnit(a.code, b.code) ||
      byCodeUnit(a.path, b.path),
  );
}

function problemAt(
  severity: Problem['severity'],
  { file, line, column }: Place,
  code: ProblemCode,
  words: ProblemWords,
): Problem {
  return { code, severity, file, line, column, path: '', ...words };
}

function byCodeUnit(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
