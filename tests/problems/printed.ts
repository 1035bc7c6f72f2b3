/** The full text an author sees, for files of the sample library with something spoilt. */
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { filesWith, spoilt, type SAMPLE } from '../content/sample.ts';

/** All Problems of library and consults as printed, parted by empty lines; empty when there is none. */
export function printed(files: readonly SourceFile[]): string {
  const reading = readLibrary(files);
  const problems = [...reading.problems, ...readConsults(files, reading.known).problems];
  const lineOf = lineFinder(files);
  return problems.map((problem) => problemText(problem, lineOf(problem.file, problem.line))).join('\n\n');
}

/** What is printed when one passage of one file is replaced. */
export function printedWith(file: keyof typeof SAMPLE, passage: string, by: string): string {
  return printed(filesWith({ [file]: spoilt(file, passage, by) }));
}

export const OTTER = 'consults/otter-r1.md';
export const BRIDGE = 'exercises/bridge.md';
export const HAMSTRING = 'protocols/hamstring.md';
