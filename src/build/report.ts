/** What a command prints: Problems and words on standard error, the answer on standard output. */
import type { Problem } from '../content/problem.ts';
import { lineFinder, problemText } from '../content/problemText.ts';
import type { SourceFile } from '../content/source.ts';
import type { Flags } from './flags.ts';
import { paintFor } from './paint.ts';

export interface Report {
  /** A line for the reader; nothing with --quiet. With --json it goes to standard error. */
  say(text: string): void;
  problems(problems: readonly Problem[], files: readonly SourceFile[]): void;
  /** The one object of --json; nothing without it. */
  answer(value: unknown): void;
}

export function reportFor(flags: Flags): Report {
  const stream = flags.json === true ? process.stderr : process.stdout;
  return {
    say: (text) => {
      if (flags.quiet !== true) stream.write(`${text}\n`);
    },
    problems: (problems, files) => {
      const lineOf = lineFinder(files);
      const paint = paintFor(process.stderr, flags);
      for (const problem of problems)
        process.stderr.write(`${problemText(problem, lineOf(problem.file, problem.line), paint)}\n\n`);
    },
    answer: (value) => {
      if (flags.json === true) process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
    },
  };
}
