/** A Problem as the author reads it on a terminal: place, message, the line itself, a caret under the place, the cure. */
import { isPicture } from './pictures.ts';
import type { Problem } from './problem.ts';
import { printed, type PrintedCharacter } from './screenWidth.ts';
import type { SourceFile } from './source.ts';

/** Paints a part of the text, for a terminal with colours. */
export interface ProblemPaint {
  readonly severity: (text: string, severity: Problem['severity']) => string;
  readonly caret: (text: string) => string;
  readonly quiet: (text: string) => string;
}

const PLAIN: ProblemPaint = { severity: (text) => text, caret: (text) => text, quiet: (text) => text };

/** Three to four lines without a line feed at the end. `line`: the text of the Problem's line, null when there is none. */
export function problemText(problem: Problem, line: string | null, paint: ProblemPaint = PLAIN): string {
  const { file, severity, code } = problem;
  const place = `${file}:${problem.line}:${problem.column}:`;
  return [
    `${place} ${paint.severity(severity, severity)} ${code} ${messageOf(problem)}`,
    ...(line === null || line === '' ? [] : excerpt(line, problem.column, paint)),
    `Fix: ${problem.fix}${/[.:)…?]$/.test(problem.fix) ? '' : '.'}`,
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
  const characters = printed(line);
  const at = indexOfColumn(characters, column);
  const { from, to } = windowAround(characters, at);
  const before = `${from > 0 ? CUT : ''}${textOf(characters.slice(from, at))}`;
  const after = `${textOf(characters.slice(at, to))}${to < characters.length ? CUT : ''}`;
  const indent = (from > 0 ? 1 : 0) + widthOf(characters.slice(from, at));
  return [
    paint.quiet(`${INDENT}${before}${after}`.trimEnd()),
    `${INDENT}${' '.repeat(indent)}${paint.caret('^')}`,
  ];
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
