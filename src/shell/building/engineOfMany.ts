/** What the engine is told while many sets are made: when to compile for speed, and how much garbage may lie about. */
import { setFlagsFromString } from 'node:v8';

/** From so many persons on, what is kept of each to the end is as much as all the rest [measured: 7 kB each]. */
const MANY = 2_000;

/**
 * The engine compiles a function for speed once it has run through so many bytes of its code, thrice over; of its own
 * accord 67,584. Of 200 sets it was at that for two fifths of the processor's time, over and over for functions that live
 * for one document [measured]. At ten times as much 58 to 62 s become 48; forty times costs the sets what it saves [choice].
 */
const COMPILED_AFTER_BYTES = 675_840;

/**
 * Told when the threads that help have read their program: code that was kept is good only for an engine that was told
 * the same. Garbage grows by a share of what is alive (`main.ts`); where twice as much is alive, half the share is as much
 * as ever.
 */
export function tellOfMany(persons: number): void {
  setFlagsFromString(`--interrupt-budget=${COMPILED_AFTER_BYTES}`);
  if (persons >= MANY) setFlagsFromString('--heap-growing-percent=30');
}
