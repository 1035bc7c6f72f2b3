/** What a bend looks like for this body: the model's landmarks turned round, from words to degrees. */
import type { Ask, Landmark } from '../talk.ts';
import type { Bench } from './bench.ts';

export function landmarksOf(_ask: Extract<Ask, { ask: 'landmarks' }>, _bench: Bench): readonly Landmark[] {
  return [];
}
