/** What a command prints: Problems and faults on standard error, the answer on standard output. */
import type { Problem } from '../content/problem.ts';
import type { SourceFile } from '../content/source.ts';
import { visible, visibleInLine, visibleJson } from '../content/visible.ts';
import { EXIT } from './exit.ts';
import { Stop } from './io/stop.ts';
import type { Flags } from './flags.ts';

export interface Report {
  /** A line for the reader; nothing with --quiet. With --json it goes to standard error. */
  say(text: string): void;
  /** A line that must be seen, on standard error. */
  warn(text: string): void;
  problems(problems: readonly Problem[], files: readonly SourceFile[]): Promise<void>;
  /** The one object of --json; nothing without it. */
  answer(value: object): void;
  /** What was asked for is a text: as it stands, or as the one object with --json. */
  text(name: string, text: string): void;
  /** Problems that leave no answer: printed, and in the one object of a failure. Returns the exit code. */
  refuse(message: string, problems: readonly Problem[], files: readonly SourceFile[]): Promise<number>;
  /** A stop or a fault of ours, printed, and as the one object of a failure. Returns the exit code. */
  fault(error: unknown): number;
}

/** The object that --json prints where there is no answer. */
export interface Failure {
  readonly ok: false;
  readonly exit: number;
  readonly message: string;
  readonly nearest: string | null;
  readonly problems: readonly Problem[];
}

/** Where a report writes: those of the process, or a test's own. */
export interface Streams {
  readonly stdout: Pick<NodeJS.WriteStream, 'write' | 'isTTY'>;
  readonly stderr: Pick<NodeJS.WriteStream, 'write' | 'isTTY'>;
}

export function reportFor(
  manner: Pick<Flags, 'json' | 'quiet' | 'color'>,
  { stdout, stderr }: Streams,
): Report {
  const own: Report = {
    say: (text) => {
      if (!manner.quiet) (manner.json ? stderr : stdout).write(`${visible(text)}\n`);
    },
    warn: (text) => {
      stderr.write(`${visible(text)}\n`);
    },
    problems: async (problems, files) => {
      if (problems.length === 0) return;
      const [{ lineFinder, problemText }, { paintFor }] = await Promise.all([
        import('../content/problemText.ts'),
        import('./io/paint.ts'),
      ]);
      const lineOf = lineFinder(files);
      const paint = paintFor(stderr, manner.color);
      for (const problem of problems)
        stderr.write(`${problemText(problem, lineOf(problem.file, problem.line), paint)}\n\n`);
    },
    answer: (value) => {
      if (manner.json) stdout.write(`${visibleJson(JSON.stringify(value, null, 2))}\n`);
    },
    text: (name, text) => {
      stdout.write(manner.json ? `${JSON.stringify({ ok: true, [name]: text }, null, 2)}\n` : `${text}\n`);
    },
    refuse: async (message, problems, files) => {
      await own.problems(problems, files);
      own.warn(message);
      own.answer({ ok: false, exit: EXIT.content, message, nearest: null, problems } satisfies Failure);
      return EXIT.content;
    },
    fault: (error) => {
      const failure = failureOf(error);
      own.warn(faultText(failure, error));
      own.answer(failure);
      return failure.exit;
    },
  };
  return own;
}

function failureOf(error: unknown): Failure {
  const message = error instanceof Error ? error.message : String(error);
  const { exit, nearest } = error instanceof Stop ? error : { exit: EXIT.ourFault, nearest: null };
  return { ok: false, exit, message, nearest, problems: [] };
}

function faultText({ exit, message, nearest }: Failure, error: unknown): string {
  if (!(error instanceof Stop)) {
    const trace = error instanceof Error ? (error.stack ?? message) : message;
    return `loadleaf: this is our fault, not yours. No file was left half written.\n${trace}`;
  }
  return [
    `loadleaf: ${visibleInLine(message)}`,
    ...(nearest === null ? [] : [`Did you mean ${visibleInLine(nearest)}?`]),
    ...(exit === EXIT.usage ? ['See: loadleaf --help'] : []),
  ].join('\n');
}
