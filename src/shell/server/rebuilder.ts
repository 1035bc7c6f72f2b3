/** Works again when woken, once things have settled, and never twice at a time. */
import { EXIT } from '../exit.ts';
import type { Report } from '../report.ts';
import { Stop } from '../io/stop.ts';

// An editor that saves in two strokes must not start two builds.
const SETTLE_MS = 150;
// Another build holds the lock, or a file was saved under ours.
const BUSY_MS = 1000;

export interface Rebuilder {
  wake(): void;
  /** Nothing begins any more; what runs comes to its end. */
  stop(): void;
}

/**
 * A fault is printed, and the next waking tries again; where another build was in the way, it tries by itself. Work that
 * takes long may ask whether it is stale, and stop as busy: a newer one begins at once.
 */
export function rebuilder(
  work: (isStale: () => boolean) => Promise<void>,
  report: Pick<Report, 'fault'>,
  settleMs = SETTLE_MS,
  busyMs = BUSY_MS,
): Rebuilder {
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
    const isBusy = await isHeldUp(() => work(() => isWoken), report);
    isRunning = false;
    if (isWoken) wakeIn(settleMs);
    else if (isBusy) wakeIn(busyMs);
  };
  return {
    wake: () => {
      isWoken = true;
      wakeIn(settleMs);
    },
    stop: () => {
      isStopped = true;
      clearTimeout(waiting);
    },
  };
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
