/** A model that is asked the same thing only once. */
import type { Tempo } from './dose.ts';
import type { Measure, Measured } from './growth.ts';

/** The same model, asked only once for each tempo, card, kind, load and range. */
export function memoized(measure: Measure): Measure {
  type ByRange = Map<number | null, Measured | null>;
  type ByCard = Map<string, Map<string, Map<number, ByRange>>>;
  // Tempos are known by identity: a step that leaves the tempo alone hands the same one on.
  const known = new Map<Tempo, ByCard>();
  return (card, at) => {
    const byCard = entry<Tempo, ByCard>(known, at.tempo, () => new Map());
    const byKind = entry(byCard, card, () => new Map());
    const byLoad = entry(byKind, at.kind, () => new Map());
    const byRange = entry<number, ByRange>(byLoad, at.loadKg, () => new Map());
    return entry(byRange, at.rangeDeg, () => measure(card, at));
  };
}

function entry<Key, Value>(known: Map<Key, Value>, key: Key, make: () => Value): Value {
  const there = known.get(key);
  if (there !== undefined) return there;
  const made = make();
  known.set(key, made);
  return made;
}
