/** How much garbage may lie about while many sets are made. */
import { setFlagsFromString } from 'node:v8';

/** From so many persons on, what is kept of each to the end is as much as all the rest [measured: 7 kB each]. */
const MANY = 2_000;

/**
 * The engine lets garbage grow by a share of what is alive (`main.ts`); where twice as much is alive, half the share is as
 * much garbage as ever.
 */
export function spareGarbage(persons: number): void {
  if (persons >= MANY) setFlagsFromString('--heap-growing-percent=30');
}
