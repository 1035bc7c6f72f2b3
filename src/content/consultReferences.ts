/** What a consult says of the library: protocol, cards, tests, country, cells. */
import { distance } from 'fastest-levenshtein';
import type { z } from 'zod';
import type { FrontMatter } from './frontMatter.ts';
import { listed } from './inWords.ts';
import { issueWords, problemsOf } from './issue.ts';
import { keepStageOf, numberedStages } from './keepStage.ts';
import type { ExerciseCard, Known, Protocol } from './library.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem, type ProblemCode } from './problem.ts';
import { checkCard } from './reference.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';
import { OVERRIDES, PAIN_CHOICE, PAIN_DECISION, RUN_CHOICE, RUNNING_DECISION } from './schema/override.ts';

/** Everything the consult names that the library does not know; of what is broken there, nothing is said. */
export function consultReferences(
  front: FrontMatter,
  consult: ConsultFrontMatter,
  { exercises, protocols, clinic }: Known,
): Problem[] {
  const cards = [...exercises.keys()];
  const protocol = protocols.get(consult.protocol);
  return [
    ...checkCard(front, ['protocol'], consult.protocol, [...protocols.keys()], { folder: 'protocols' }),
    ...(clinic === null ? [] : checkCountry(front, consult.country, Object.keys(clinic.emergency))),
    ...(protocol ? checkStage(front, consult.stage, protocol) : []),
    ...consult.testedSets.flatMap(({ card, loadKg }, index) => [
      ...checkCard(front, ['testedSets', index, 'card'], card, cards),
      ...(loadKg > 0 && carriesNothing(exercises.get(card) ?? null)
        ? [weightOnNothing(front, card, ['testedSets', index, 'loadKg'])]
        : []),
    ]),
    ...(protocol === null
      ? []
      : checkTests(front, consult, [...(protocol?.tests.map(({ id }) => id) ?? []), ...cards])),
    ...consult.overrides.flatMap((override, index) =>
      checkOverride(front, override, ['overrides', index], cards),
    ),
    ...overriddenTwice(front, consult),
  ];
}

function wrong(
  front: FrontMatter,
  code: ProblemCode,
  path: Path,
  words: { readonly expected: string; readonly fix: string },
): Problem {
  return errorAt(placeOfValue(front, path), code, {
    path: pathText(path),
    found: writtenAt(front, path),
    ...words,
  });
}

// Of a card without a pose nobody can tell where a weight would be.
function carriesNothing(card: ExerciseCard | null): boolean {
  return card !== null && card.movement !== null && card.movement.loadAt === undefined;
}

function weightOnNothing(front: FrontMatter, card: string, path: Path): Problem {
  return wrong(front, 'does-not-fit', path, {
    expected: `0: ${card} is done without a weight`,
    fix: 'write 0, or the card that was done with this weight',
  });
}

function checkCountry(front: FrontMatter, country: string, known: readonly string[]): Problem[] {
  if (known.includes(country)) return [];
  const expected = `one of the countries in clinic.md: ${listed(known, 'or')}`;
  const fix = `add the emergency wording for ${country} to clinic.md, or write one of its countries`;
  return [wrong(front, 'no-such-country', ['country'], { expected, fix })];
}

function checkStage(
  front: FrontMatter,
  stage: ConsultFrontMatter['stage'],
  { id, stages }: Protocol,
): Problem[] {
  const numbers = numberedStages(stages).map((_, index) => index + 1);
  const known = ['auto', ...numbers, ...(keepStageOf(stages) === null ? [] : ['keep'])];
  if (known.includes(stage)) return [];
  const expected = `a stage of ${id}: ${listed(known, 'or')}`;
  return [wrong(front, 'does-not-fit', ['stage'], { expected, fix: `write ${listed(known, 'or')}` })];
}

// A clinic may note tests its protocol does not know; one letter or two beside a known one is a slip.
const SLIP = 2;

function checkTests(front: FrontMatter, { tests }: ConsultFrontMatter, known: readonly string[]): Problem[] {
  return tests.flatMap(({ test }, index) => {
    const meant = known.includes(test) ? null : nearest(test, known);
    if (meant === null || distance(test, meant) > SLIP) return [];
    const expected = `another name, or ${meant} if that is meant`;
    return [wrong(front, 'wrong-word', ['tests', index, 'test'], { expected, fix: `write ${meant}` })];
  });
}

// Which of two numbers for one cell is meant, nobody can tell.
function overriddenTwice(front: FrontMatter, { overrides }: ConsultFrontMatter): Problem[] {
  return overrides.flatMap(({ path }, index) => {
    if (overrides.findIndex((other) => other.path === path) === index) return [];
    const expected = 'another cell than that of an entry before';
    return [
      wrong(front, 'does-not-fit', ['overrides', index, 'path'], { expected, fix: 'keep one of the two' }),
    ];
  });
}

function checkOverride(
  front: FrontMatter,
  { path: target, value }: ConsultFrontMatter['overrides'][number],
  at: Path,
  cards: readonly string[],
): Problem[] {
  const path = [...at, 'path'];
  const valuePath = [...at, 'value'];
  if (target === RUNNING_DECISION) return shapeProblems(front, RUN_CHOICE, value, valuePath);
  if (target === PAIN_DECISION) return shapeProblems(front, PAIN_CHOICE, value, valuePath);
  const [card = '', cell = ''] = target.split('.');
  const noCard = checkCard(front, path, card, cards, { after: `.${cell}` });
  const cellShape: z.ZodType | undefined = Object.hasOwn(OVERRIDES, cell)
    ? OVERRIDES[cell as keyof typeof OVERRIDES]
    : undefined;
  if (cellShape === undefined) return [...noCard, unknownCell(front, path, card, cell)];
  return [...noCard, ...shapeProblems(front, cellShape, value, valuePath)];
}

function shapeProblems(front: FrontMatter, shape: z.ZodType, value: unknown, path: Path): Problem[] {
  const parsed = shape.safeParse(value, { error: issueWords });
  return parsed.success ? [] : problemsOf(front, shape, parsed.error.issues, path);
}

function unknownCell(front: FrontMatter, path: Path, card: string, cell: string): Problem {
  const cells = Object.keys(OVERRIDES);
  const meant = nearest(cell, cells);
  return wrong(front, 'wrong-word', path, {
    expected: `a card and one of ${listed(cells, 'or')}`,
    fix: meant === null ? `write a cell of the dosage table after ${card}.` : `write ${card}.${meant}`,
  });
}
