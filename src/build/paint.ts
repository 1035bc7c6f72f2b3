/** Colour on a terminal, and only there. */
import type { ProblemPaint } from '../content/problemText.ts';
import type { Flags } from './flags.ts';

const RED = 31;
const YELLOW = 33;
const DIM = 2;

/** Undefined where colours are off: when asked for, when NO_COLOR is set to anything, on a dumb terminal, or into a pipe. */
export function paintFor(stream: NodeJS.WriteStream, flags: Flags): ProblemPaint | undefined {
  const off =
    !flags.color || (process.env['NO_COLOR'] ?? '') !== '' || process.env['TERM'] === 'dumb' || !stream.isTTY;
  if (off) return undefined;
  const escape = (code: number) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;
  return {
    severity: (text, severity) => escape(severity === 'error' ? RED : YELLOW)(text),
    caret: escape(RED),
    quiet: escape(DIM),
  };
}
