/** What went wrong outside the author's files: the disk, a lock, or us. */
import { EXIT } from './exit.ts';

/** An end that is nobody's mistake in content: the command stops with this code and this sentence. */
export class Stop extends Error {
  readonly exit: number;

  constructor(exit: number, message: string) {
    super(message);
    this.exit = exit;
  }
}

/** Prints the fault on standard error and returns its exit code. */
export function ourFault(error: unknown): number {
  if (error instanceof Stop) {
    process.stderr.write(`loadleaf: ${error.message}\n`);
    return error.exit;
  }
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`loadleaf: this is our fault, not yours. Nothing was half-written.\n${text}\n`);
  return EXIT.ourFault;
}
