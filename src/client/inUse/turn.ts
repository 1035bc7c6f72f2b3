/** One thing is counted at a time: who starts another has left this one. */

let closeRunning: (() => void) | null = null;

/** Closes what was open, and remembers how this one is closed. */
export function takeTurn(close: () => void): void {
  if (closeRunning !== close) closeRunning?.();
  closeRunning = close;
}
