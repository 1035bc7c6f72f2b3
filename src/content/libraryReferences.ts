/** What the files of a library say of one another. */
import { circlesIn } from './circle.ts';
import type { FrontMatter } from './frontMatter.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { listed } from './inWords.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import { checkCard } from './reference.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';
import type { ProtocolFrontMatter, StageFrontMatter } from './schema/protocol.ts';

/** A file's values with the place of each. */
export interface Placed<T> {
  readonly id: string;
  readonly value: T;
  readonly front: FrontMatter;
}

/** Easier and harder cards that are not there, or lead back to where they began. `known`: ids of all files, broken or not. */
export function exerciseReferences(
  cards: readonly Placed<ExerciseFrontMatter>[],
  known: readonly string[],
): Problem[] {
  const missing = cards.flatMap(({ front, value }) =>
    (['easier', 'harder'] as const).flatMap((key) => {
      const id = value[key];
      return id === undefined ? [] : checkCard(front, [key], id, known);
    }),
  );
  return [...missing, ...circles(cards, 'easier'), ...circles(cards, 'harder')];
}

/** Cards and tests a protocol names that are not there. */
export function protocolReferences(
  { front, value }: Placed<ProtocolFrontMatter>,
  known: readonly string[],
): Problem[] {
  const tests = value.tests.map(({ id }) => id);
  return [
    ...checkCard(front, ['morningCheck', 'card'], value.morningCheck.card, known),
    ...value.stages.flatMap((stage, index) => stageReferences(front, stage, ['stages', index], known, tests)),
  ];
}

function circles(cards: readonly Placed<ExerciseFrontMatter>[], key: 'easier' | 'harder'): Problem[] {
  const next = new Map(cards.map(({ id, value }) => [id, value[key] ?? null]));
  return circlesIn(next).flatMap((circle) => {
    const card = cards.find(({ id }) => id === circle[0]);
    return card === undefined ? [] : [circleAt(card.front, key, circle)];
  });
}

function circleAt(front: FrontMatter, key: 'easier' | 'harder', circle: readonly string[]): Problem {
  return errorAt(placeOfValue(front, [key]), 'circle', {
    path: key,
    found: circle.join(' -> '),
    expected: 'a way that ends',
    fix: `take ${key} out of the ${key === 'easier' ? 'easiest' : 'hardest'} of these cards`,
  });
}

function stageReferences(
  front: FrontMatter,
  stage: StageFrontMatter,
  path: Path,
  known: readonly string[],
  tests: readonly string[],
): Problem[] {
  const cards = stage.slots.flatMap((slot, s) =>
    slot.cards.flatMap((card, c) => checkCard(front, [...path, 'slots', s, 'cards', c], card, known)),
  );
  const asked = stage.enter.tests.flatMap((test, index) =>
    tests.includes(test) || known.includes(test)
      ? []
      : [unknownTest(front, [...path, 'enter', 'tests', index], test, [...tests, ...known])],
  );
  return [...cards, ...asked];
}

function unknownTest(front: FrontMatter, path: Path, test: string, known: readonly string[]): Problem {
  const meant = nearest(test, known);
  return errorAt(placeOfValue(front, path), 'wrong-word', {
    path: pathText(path),
    found: writtenAt(front, path),
    expected: 'a test of this protocol or the id of a card',
    fix: meant === null ? `add it to tests, or write one of ${listed(known, 'or')}` : `write ${meant}`,
  });
}
