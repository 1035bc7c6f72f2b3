/** A Problem as the author reads it on a terminal: place, message, the line itself, a caret under the place, the cure. */
import { isPicture } from './fileSize.ts';
import type { Problem } from './problem.ts';
import { printed, type PrintedCharacter } from './screenWidth.ts';
import type { SourceFile } from './source.ts';
import { visibleInLine } from './visible.ts';

/** Paints a part of the text, for a terminal with colours. */
export interface ProblemPaint {
  readonly severity: (text: string, severity: Problem['severity']) => string;
  readonly caret: (text: string) => string;
  readonly quiet: (text: string) => string;
}

const PLAIN: ProblemPaint = { severity: (text) => text, caret: (text) => text, quiet: (text) => text };

/** Three to four lines without a line feed at the end. `line`: the text of the Problem's line, null when there is none. */
export function problemText(problem: Problem, line: string | null, paint: ProblemPaint = PLAIN): string {
  const { severity, code } = problem;
  const place = `${visibleInLine(problem.file)}:${problem.line}:${problem.column}:`;
  const fix = visibleInLine(problem.fix);
  return [
    `${place} ${paint.severity(severity, severity)} ${code} ${visibleInLine(messageOf(problem))}`,
    ...(line === null || line === '' ? [] : excerpt(line, problem.column, paint)),
    `Fix: ${fix}${/[.:)…?]$/.test(fix) ? '' : '.'}`,
  ].join('\n');
}

/** What is wrong in one sentence. */
export function messageOf({ path, found, expected }: Problem): string {
  return `${path === '' ? 'found' : `${path} is`} ${found}; must be ${expected}.`;
}

/** The text of a line (from 1) of one of the files; null where there is none, and for a picture. Bytes that are no text show as U+FFFD. */
export function lineFinder(files: readonly SourceFile[]): (file: string, line: number) => string | null {
  const lines = new Map<string, readonly string[]>();
  return (file, line) => {
    const known = lines.get(file) ?? linesOf(files.find((other) => other.file === file));
    lines.set(file, known);
    return known[line - 1] ?? null;
  };
}

function linesOf(file: SourceFile | undefined): readonly string[] {
  return file === undefined || isPicture(file.file)
    ? []
    : new TextDecoder().decode(file.bytes).split(/\r?\n/);
}

const INDENT = '    ';
const WIDEST = 100;
const CUT = '…';

function excerpt(line: string, column: number, paint: ProblemPaint): string[] {
  const start = startOfReach(line, column);
  const reach = line.slice(start, start + 2 * REACH);
  const characters = printed(reach);
  const at = indexOfColumn(characters, column - start);
  const { from, to } = windowAround(characters, at);
  const isCutBefore = start > 0 || from > 0;
  const isCutAfter = start + reach.length < line.length || to < characters.length;
  const before = `${isCutBefore ? CUT : ''}${textOf(characters.slice(from, at))}`;
  const after = `${textOf(characters.slice(at, to))}${isCutAfter ? CUT : ''}`;
  const indent = (isCutBefore ? 1 : 0) + widthOf(characters.slice(from, at));
  return [
    paint.quiet(`${INDENT}${before}${after}`.trimEnd()),
    `${INDENT}${' '.repeat(indent)}${paint.caret('^')}`,
  ];
}

// So much to both sides of the place is looked at, whatever the line's length: more than is shown, in marks of no width too.
const REACH = 1000;

/** Where the reach begins, never within a character. */
function startOfReach(line: string, column: number): number {
  const start = Math.max(0, column - 1 - REACH);
  return /[\uDC00-\uDFFF]/.test(line.charAt(start)) ? start + 1 : start;
}

// Columns count UTF-16 units; a character above U+FFFF takes two of them.
function indexOfColumn(characters: readonly PrintedCharacter[], column: number): number {
  let units = 0;
  const index = characters.findIndex((character) => (units += character.units) >= column);
  return index === -1 ? characters.length : index;
}

/** The part of a long line that is shown: a third of the width before the place, the rest after it. */
function windowAround(characters: readonly PrintedCharacter[], at: number): { from: number; to: number } {
  if (widthOf(characters) <= WIDEST) return { from: 0, to: characters.length };
  let from = at;
  for (let room = WIDEST / 3; from > 0 && room > 0; from -= 1) room -= characters[from - 1]?.width ?? 0;
  let to = from;
  for (let room = WIDEST; to < characters.length && room > 0; to += 1) room -= characters[to]?.width ?? 0;
  return { from, to };
}

function textOf(characters: readonly PrintedCharacter[]): string {
  return characters.map(({ text }) => text).join('');
}

function widthOf(characters: readonly PrintedCharacter[]): number {
  return characters.reduce((sum, { width }) => sum + width, 0);
}
