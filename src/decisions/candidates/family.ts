/** The family of an exercise: cards linked by easier and harder, and those of its slot (house rules 11.2). */
import type { ExerciseCard, Library, Slot } from '../../content/library.ts';

type Cards = Library['exercises'];

/** Ids of the cards whose tests speak for this one, its own among them. */
export function familyOf(id: string, { cards }: Slot, library: Cards): ReadonlySet<string> {
  const linked = neighboursIn(library);
  const family = new Set([id]);
  for (const one of family) for (const next of linked.get(one) ?? []) family.add(next);
  for (const one of cards) family.add(one);
  return family;
}

/** The cards from one down its easier ones, itself first. */
export function easierChain(id: string, library: Cards): readonly string[] {
  const chain: string[] = [];
  for (let one: string | null = id; one !== null; one = library.get(one)?.easier ?? null) chain.push(one);
  return chain;
}

const NEIGHBOURS = new WeakMap<Cards, ReadonlyMap<string, readonly string[]>>();

// A link counts both ways, whichever of the two cards names it.
function neighboursIn(library: Cards): ReadonlyMap<string, readonly string[]> {
  const known = NEIGHBOURS.get(library);
  if (known !== undefined) return known;
  const linked = new Map<string, string[]>();
  const link = (from: string, to: string) => linked.set(from, [...(linked.get(from) ?? []), to]);
  for (const { id, easier, harder } of library.values() as Iterable<ExerciseCard>)
    for (const other of [easier, harder])
      if (other !== null) {
        link(id, other);
        link(other, id);
      }
  NEIGHBOURS.set(library, linked);
  return linked;
}
