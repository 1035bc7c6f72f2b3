/** What the engine is told while many sets are made: when to compile for speed, and how much garbage may lie about. */
import { setFlagsFromString } from 'node:v8';

/** What `main.ts` lets lie about, per cent of what is alive. */
const GARBAGE_PERCENT = 60;
/** Alive in program and thread where nobody is kept, and what is kept of each person to the end [measured: 4 kB read, 4 made]. */
const ALIVE_KB = 80_000;
const KEPT_KB = 8;

/**
 * The engine compiles a function for speed once it has run through so many bytes of its code, thrice over; of its own
 * accord 67,584. Of 200 sets it was at that for two fifths of the processor's time, over and over for functions that live
 * for one document [measured]. At ten times as much 58 to 62 s become 48; forty times costs the sets what it saves [choice].
 */
const COMPILED_AFTER_BYTES = 675_840;

/**
 * Told when the threads that help have read their program: code that was kept is good only for an engine that was told
 * the same.
 */
export function tellOfMany(persons: number): void {
  setFlagsFromString(`--interrupt-budget=${COMPILED_AFTER_BYTES}`);
  setFlagsFromString(`--heap-growing-percent=${garbagePercent(persons)}`);
}

/**
 * The more is alive, the smaller a share of it, so that there is about as much garbage for thousands as for a few. Dear:
 * at 20 per cent throughout, 60 sets took a third more of the processor's time than at 60 [measured].
 */
function garbagePercent(persons: number): number {
  return Math.round((GARBAGE_PERCENT * ALIVE_KB) / (ALIVE_KB + KEPT_KB * persons));
}
