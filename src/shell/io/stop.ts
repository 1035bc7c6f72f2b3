/** An end that is nobody's mistake in content: a slip on the command line, the disk, a lock. */

/** The command stops with this exit code and this sentence. */
export class Stop extends Error {
  readonly exit: number;
  /** The word that was probably meant, or null. */
  readonly nearest: string | null;

  constructor(exit: number, message: string, nearest: string | null = null) {
    super(message);
    this.exit = exit;
    this.nearest = nearest;
  }
}
