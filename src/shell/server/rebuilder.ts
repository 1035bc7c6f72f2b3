/** Works again when woken, once things have settled, and never twice at a time. */
import { EXIT } from '../exit.ts';
import type { Report } from '../report.ts';
import { Stop } from '../io/stop.ts';

// An editor that empties a file and then fills it does both at once; here it is given the time [choice].
const BEGIN_MS = 10;
// After so long nobody is in the middle of a save any more: what a file says by then, it says [choice].
const SETTLE_MS = 150;
// Another build holds the lock, or a file was saved under ours.
const BUSY_MS = 1000;

export interface Rebuilder {
  wake(): void;
  /** Nothing begins any more; what runs comes to its end. */
  stop(): void;
}

/** How things stand around a build that is at work. */
export interface Meanwhile {
  /** Whether a file was saved since it began: it may then stop as busy, and a newer one begins at once. */
  readonly isStale: () => boolean;
  /** Waits until the last save is so long ago that it was a whole one. */
  readonly settled: () => Promise<void>;
}

/**
 * A fault is printed, and the next waking tries again; where another build was in the way, it tries by itself.
 */
export function rebuilder(
  work: (meanwhile: Meanwhile) => Promise<void>,
  report: Pick<Report, 'fault'>,
  beginMs = BEGIN_MS,
  busyMs = BUSY_MS,
  settleMs = SETTLE_MS,
): Rebuilder {
  let wokenAtMs = 0;
  let waiting: NodeJS.Timeout | undefined;
  let isRunning = false;
  let isWoken = false;
  let isStopped = false;

  const wakeIn = (ms: number): void => {
    clearTimeout(waiting);
    if (!isStopped) waiting = setTimeout(() => void go(), ms);
  };
  const go = async (): Promise<void> => {
    if (isRunning) return;
    isWoken = false;
    isRunning = true;
    const settled = () => waited(wokenAtMs + settleMs - Date.now());
    const isBusy = await isHeldUp(() => work({ isStale: () => isWoken, settled }), report);
    isRunning = false;
    if (isWoken) wakeIn(beginMs);
    else if (isBusy) wakeIn(busyMs);
  };
  return {
    wake: () => {
      isWoken = true;
      wokenAtMs = Date.now();
      wakeIn(beginMs);
    },
    stop: () => {
      isStopped = true;
      clearTimeout(waiting);
    },
  };
}

function waited(ms: number): Promise<void> {
  return new Promise((done) => setTimeout(done, Math.max(0, ms)));
}

async function isHeldUp(work: () => Promise<void>, report: Pick<Report, 'fault'>): Promise<boolean> {
  try {
    await work();
    return false;
  } catch (error) {
    if (error instanceof Stop && error.exit === EXIT.busy) return true;
    report.fault(error);
    return false;
  }
}
