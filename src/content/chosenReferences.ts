/** What a consult's own choices of exercises name: cards of the library, slots of its protocol, each once. */
import type { FrontMatter } from './frontMatter.ts';
import { listed } from './inWords.ts';
import type { Nameable, Protocol } from './library.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import { checkCard } from './reference.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';

export function chosenReferences(
  front: FrontMatter,
  { chosen, leftOut, added }: ConsultFrontMatter,
  protocol: Protocol | null,
  { exercises }: Pick<Nameable, 'exercises'>,
): Problem[] {
  const ids = [...exercises.keys()];
  const lists = { chosen, leftOut, added };
  const cards = Object.entries(lists).flatMap(([key, list]) =>
    list.flatMap(({ card }, index) => checkCard(front, [key, index, 'card'], card, ids, {})),
  );
  const slots = [
    ...chosen.map(({ slot }, index) => ({ path: ['chosen', index, 'slot'], slot })),
    ...added.flatMap(({ afterSlot }, index) =>
      afterSlot === undefined ? [] : [{ path: ['added', index, 'afterSlot'], slot: afterSlot }],
    ),
  ];
  const names = [...new Set(protocol?.stages.flatMap((stage) => stage.slots.map(({ name }) => name)) ?? [])];
  const unknown = slots.filter(({ slot }) => protocol !== null && !names.includes(slot));
  return [
    ...cards,
    ...unknown.map(({ path }) =>
      wrong(
        front,
        path,
        `a slot of ${protocol?.id ?? ''}: ${listed(names, 'or')}`,
        'write the name of the slot as the protocol has it',
      ),
    ),
    ...twice(front, lists),
  ];
}

/** A card in two places, or a slot filled twice: nobody could tell which holds. */
function twice(
  front: FrontMatter,
  { chosen, leftOut, added }: Pick<ConsultFrontMatter, 'chosen' | 'leftOut' | 'added'>,
): Problem[] {
  const cards = [
    ...leftOut.map(({ card }, index) => ({ card, path: ['leftOut', index, 'card'] })),
    ...chosen.map(({ card }, index) => ({ card, path: ['chosen', index, 'card'] })),
    ...added.map(({ card }, index) => ({ card, path: ['added', index, 'card'] })),
  ];
  const again = cards.filter(({ card }, index) => cards.findIndex((one) => one.card === card) < index);
  const slots = chosen.flatMap(({ slot }, index) =>
    chosen.findIndex((one) => one.slot === slot) < index ? [{ path: ['chosen', index, 'slot'] }] : [],
  );
  return [...again, ...slots].map(({ path }) =>
    wrong(
      front,
      path,
      'named once among chosen, leftOut and added',
      'keep the entry that holds, and take the other out',
    ),
  );
}

function wrong(front: FrontMatter, path: Path, expected: string, fix: string): Problem {
  return errorAt(placeOfValue(front, path), 'does-not-fit', {
    path: pathText(path),
    found: writtenAt(front, path),
    expected,
    fix,
  });
}
