/** Colour on a terminal, and only there. */
import type { Flags } from './flags.ts';

export interface Paint {
  readonly bad: (text: string) => string;
  readonly warn: (text: string) => string;
  readonly good: (text: string) => string;
  readonly quiet: (text: string) => string;
}

const PLAIN: Paint = {
  bad: (text) => text,
  warn: (text) => text,
  good: (text) => text,
  quiet: (text) => text,
};

/** Off when asked for, when NO_COLOR is set (to anything but nothing), on a dumb terminal, or into a pipe. */
export function paintFor(stream: NodeJS.WriteStream, flags: Flags): Paint {
  const off =
    !flags.color || (process.env['NO_COLOR'] ?? '') !== '' || process.env['TERM'] === 'dumb' || !stream.isTTY;
  if (off) return PLAIN;
  const escape = (code: number) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;
  return { bad: escape(31), warn: escape(33), good: escape(32), quiet: escape(2) };
}
