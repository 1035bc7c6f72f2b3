/** What is wrong with how a refusal is told, and with what was built. */
import type { Consult } from '../src/content/library.ts';
import { PROBLEM_CODES, type Problem } from '../src/content/problem.ts';
import { lineFinder, problemText } from '../src/content/problemText.ts';
import type { SourceFile } from '../src/content/source.ts';
import type { Programme } from '../src/programme/programme.ts';
import { DOSE_LAWS } from '../tests/laws/doseLaws.ts';
import { PLAN_LAWS } from '../tests/laws/planLaws.ts';

/** What a terminal obeys. */
export const OBEYED = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Every Problem has a place that is there, what was found and expected, and a cure; its text sends nothing to a terminal. */
export function problemFaults(problems: readonly Problem[], files: readonly SourceFile[]): string[] {
  const lineOf = lineFinder(files);
  return problems.flatMap((problem) => {
    const { code, file, line, column, found, expected, fix } = problem;
    const there = files.find((one) => one.file === file);
    const text = problemText(problem, lineOf(file, line));
    const faults = [
      PROBLEM_CODES.includes(code) ? null : `${code} is no code`,
      there === undefined && file !== 'clinic.md' ? `${file} is no file` : null,
      isInside(there, line, column) ? null : `${line}:${column} is no place`,
      found === '' || expected === '' || fix === '' ? 'found, expected or fix is empty' : null,
      /\bundefined\b|\[object |\bNaN\b/.test(`${fix} ${expected}`) ? 'words of a program' : null,
      OBEYED.test(text) ? 'sends what a terminal obeys' : null,
    ].filter((one) => one !== null);
    return faults.map((fault) => `${fault}: ${JSON.stringify(text.slice(0, 400))}`);
  });
}

function isInside(file: SourceFile | undefined, line: number, column: number): boolean {
  if (file === undefined) return line === 1 && column === 1;
  const lines = new TextDecoder().decode(file.bytes).replaceAll('\r\n', '\n').split('\n');
  const text = lines[line - 1];
  return text !== undefined && column >= 1 && column <= text.length + 1;
}

/** The laws that a programme breaks, with how. */
export function lawFaults(programme: Programme, consult: Consult): string[] {
  return Object.entries({ ...PLAN_LAWS, ...DOSE_LAWS }).flatMap(([name, law]) => {
    try {
      law(programme, consult);
      return [];
    } catch (error) {
      return [`${name}: ${error instanceof Error ? error.message : String(error)}`];
    }
  });
}
