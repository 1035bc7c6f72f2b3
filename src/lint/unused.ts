/** Cards that no protocol would ever give to anybody. */
import { cardUnused } from '../messages/en/author/library.ts';
import type { Library, Protocol } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { warn } from './fieldPlace.ts';

/** Cards in no slot, no test and no morning check, and to which no slot climbs by its lever. */
export function unusedCards(library: Library, placeOf: PlaceOf): Problem[] {
  const used = new Set([...library.protocols.values()].flatMap((protocol) => usedBy(protocol, library)));
  return [...library.exercises.keys()]
    .filter((id) => !used.has(id))
    .map((id) => warn(placeOf, { kind: 'exercise', id, path: ['title'] }, 'card-unused', cardUnused(id)));
}

function usedBy({ tests, stages, morningCheck }: Protocol, library: Library): string[] {
  const slots = stages.flatMap((stage) => stage.slots);
  return [
    morningCheck.card,
    ...tests.map(({ id }) => id),
    ...stages.flatMap(({ enter }) => enter.tests),
    ...slots.flatMap(({ cards, progression }) =>
      progression.some(({ change }) => change === 'lever')
        ? cards.flatMap((id) => harderFrom(id, library))
        : cards,
    ),
  ];
}

function harderFrom(id: string, library: Library): string[] {
  const next = library.exercises.get(id)?.harder ?? null;
  return next === null ? [id] : [id, ...harderFrom(next, library)];
}
