/** Colour on a terminal, and only there. */
import type { ProblemPaint } from '../../content/problemText.ts';

const RED = 31;
const YELLOW = 33;
const DIM = 2;

type Stream = Pick<NodeJS.WriteStream, 'isTTY'>;

/** Undefined where colours are off: not wanted, NO_COLOR set to anything, a dumb terminal, or a pipe. */
export function paintFor(
  stream: Stream,
  wanted: boolean,
  environment: Readonly<Record<string, string | undefined>> = process.env,
): ProblemPaint | undefined {
  const { NO_COLOR, TERM } = environment;
  if (!wanted || (NO_COLOR ?? '') !== '' || TERM === 'dumb' || !stream.isTTY) return undefined;
  const escape = (code: number) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;
  return {
    severity: (text, severity) => escape(severity === 'error' ? RED : YELLOW)(text),
    caret: escape(RED),
    quiet: escape(DIM),
  };
}
