/** Which cards a slot could hold, and what stands against the others. */
import type { SlotOffer } from '../talk.ts';
import type { Bench } from './bench.ts';
import type { Made } from './make.ts';

export function offersOf(_made: Extract<Made, { programme: unknown }>, _bench: Bench): readonly SlotOffer[] {
  return [];
}
