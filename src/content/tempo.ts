import type { z } from 'zod';
import type { Tempo } from '../dosing/dose.ts';
import type { tempo } from './schema/words.ts';

/** The tempo as authors write it (`go`, `hold`, `back`), with its unit in the names; seconds. */
export function tempoOf({ go, hold, back }: z.output<typeof tempo>): Tempo {
  return { goSeconds: go, holdSeconds: hold, backSeconds: back };
}
