/** What a consult says of the library: protocol, cards, tests, country, cells. */
import type { z } from 'zod';
import { chosenReferences } from './chosenReferences.ts';
import { cappedAngleOf, PAIN_FREE_KEYS } from './guardedAngle.ts';
import type { FrontMatter } from './frontMatter.ts';
import { slug } from './cure.ts';
import { mostHipDeg } from './hipBend.ts';
import { listed } from './inWords.ts';
import { issueWords, problemsOf } from './issue.ts';
import { keepStageOf, numberedStages } from './keepStage.ts';
import type { ExerciseCard, Nameable, Protocol } from './library.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem, type ProblemCode } from './problem.ts';
import { checkCard } from './reference.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';
import { ID_PATTERN } from './schema/words.ts';
import { OVERRIDES, PAIN_CHOICE, PAIN_DECISION, RUN_CHOICE, RUNNING_DECISION } from './schema/override.ts';

/** Everything the consult names that the library does not know; of what is broken there, nothing is said. */
export function consultReferences(
  front: FrontMatter,
  consult: ConsultFrontMatter,
  { exercises, protocols, clinic }: Nameable,
): Problem[] {
  const cards = [...exercises.keys()];
  const protocol = protocols.get(consult.protocol);
  const wordsOf = (id: string) => whatItIs(exercises.get(id) ?? null);
  return [
    ...checkCard(front, ['protocol'], consult.protocol, [...protocols.keys()], { folder: 'protocols' }),
    ...(clinic === null ? [] : checkCountry(front, consult.country, Object.keys(clinic.emergency))),
    ...(clinic === null ? [] : checkBands(front, consult, Object.keys(clinic.defaults.bandNewtons))),
    ...(protocol ? checkStage(front, consult, protocol) : []),
    ...consult.testedSets.flatMap(({ card, loadKg }, index) => [
      ...checkCard(front, ['testedSets', index, 'card'], card, cards, { wordsOf }),
      ...(loadKg > 0 && carriesNothing(exercises.get(card) ?? null)
        ? [weightOnNothing(front, card, ['testedSets', index, 'loadKg'])]
        : []),
    ]),
    ...(protocol ? checkTests(front, consult, testsThereAre(protocol, exercises)) : []),
    ...(protocol ? otherJoints(front, consult, protocol) : []),
    ...consult.overrides.flatMap((override, index) =>
      checkOverride(front, override, ['overrides', index], cards, wordsOf),
    ),
    ...overriddenTwice(front, consult),
    ...chosenReferences(front, consult, protocol ?? null, { exercises }),
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
  { stage, discharge }: ConsultFrontMatter,
  { id, stages }: Protocol,
): Problem[] {
  const numbers = numberedStages(stages).map((_, index) => index + 1);
  const known = ['auto', ...numbers, ...(keepStageOf(stages) === null ? [] : ['keepGoing'])];
  if (!known.includes(stage)) {
    const expected = `a stage of ${id}: ${listed(known, 'or')}`;
    return [wrong(front, 'does-not-fit', ['stage'], { expected, fix: `write ${listed(known, 'or')}` })];
  }
  // Where nothing was treated, as in a programme to prevent, nothing ends.
  return stage === 'keepGoing' && numbers.length > 0 && discharge === undefined ? [noDischarge(front)] : [];
}

function noDischarge(front: FrontMatter): Problem {
  return errorAt(placeOfValue(front, ['stage']), 'missing-key', {
    path: 'discharge',
    found: 'missing',
    expected: 'there with stage: keepGoing: who decided to end the treatment, and when',
    fix: 'add discharge with decidedBy and on; or write the stage of somebody who is still treated',
  });
}

/** A test or card a consult may name, with what it is in words; those of the protocol first. */
interface Named {
  readonly id: string;
  readonly words: string;
}

function testsThereAre(
  { tests, stages }: Protocol,
  exercises: Nameable['exercises'],
): { readonly own: readonly Named[]; readonly others: readonly Named[] } {
  const slotted = stages.flatMap(({ slots }) => slots.flatMap(({ cards }) => cards));
  const ids = [...new Set([...slotted, ...exercises.keys()])];
  const taken = new Set(tests.map(({ id }) => id));
  return {
    own: tests.map(({ id, name }) => ({ id, words: withBend(name, exercises.get(id) ?? null) })),
    others: ids
      .filter((id) => exercises.has(id) && !taken.has(id))
      .map((id) => ({ id, words: whatItIs(exercises.get(id) ?? null) ?? id })),
  };
}

/** A card's title with its hip bend; null for a card that is broken. */
function whatItIs(card: ExerciseCard | null): string | null {
  return card === null ? null : withBend(card.title, card);
}

function withBend(words: string, card: ExerciseCard | null): string {
  const deg = card === null ? null : mostHipDeg(card);
  return deg === null ? words : `${words}, hip bend up to ${deg}°`;
}

function checkTests(
  front: FrontMatter,
  { tests, protocol }: ConsultFrontMatter,
  { own, others }: ReturnType<typeof testsThereAre>,
): Problem[] {
  const all = [...own, ...others];
  return tests.flatMap(({ test }, index) => {
    if (all.some(({ id }) => id === test)) return [];
    const near = nearest(
      test,
      all.map(({ id }) => id),
    );
    const meant = all.find(({ id }) => id === near);
    const expected = `a test of ${protocol}, or the id of the card that was tried`;
    return [
      wrong(front, 'wrong-word', ['tests', index, 'test'], {
        expected,
        // Two ids a letter apart may be two tests: what each is stands beside it, and the author decides.
        fix: `${meant === undefined ? '' : `write ${named(meant)}, if that was done. `}The tests of ${protocol} are ${asMany(own.map(named), 'tests', '; ', 'in the protocol')}. The cards are ${asMany(
          others.map(({ id }) => id),
          'cards',
          ', ',
          'in exercises/',
        )}`,
      }),
    ];
  });
}

// A cure longer than a terminal shows is cut in its middle; what is listed here ends at a whole word well before that.
const LISTED_CHARACTERS = { tests: 950, cards: 450 } as const;

/** As many as can be read at once, and how many more there are where. */
function asMany(words: readonly string[], what: 'tests' | 'cards', joint: string, where: string): string {
  let length = 0;
  const shown = words.filter((word) => (length += word.length + joint.length) <= LISTED_CHARACTERS[what]);
  const more = words.length - shown.length;
  return `${shown.join(joint)}${more === 0 ? '' : ` and ${more} more ${where}`}`;
}

// What hurts at a joint that no cap is on would be printed nowhere, and keep nothing off.
function otherJoints(
  front: FrontMatter,
  { tests }: ConsultFrontMatter,
  { id, angle }: Pick<Protocol, 'id' | 'angle'>,
): Problem[] {
  const key = PAIN_FREE_KEYS[cappedAngleOf(angle)];
  const others = Object.values(PAIN_FREE_KEYS).filter((one) => one !== key);
  return tests.flatMap((test, index) =>
    others
      .filter((other) => test[other] !== undefined)
      .map((other) =>
        wrong(front, 'does-not-fit', ['tests', index, other], {
          expected: `${key}: ${id} is guarded by ${angle}`,
          fix: `write ${key} with the angle of that joint, or take ${other} out`,
        }),
      ),
  );
}

function named({ id, words }: Named): string {
  return `${id} (${words})`;
}

function checkBands(front: FrontMatter, { kit }: ConsultFrontMatter, known: readonly string[]): Problem[] {
  return kit.bands.flatMap((band, index) => {
    if (known.includes(band)) return [];
    const expected = `a band of clinic.md: ${known.length === 0 ? 'there is none' : listed(known, 'or')}`;
    return [wrong(front, 'wrong-word', ['kit', 'bands', index], { expected, fix: bandCure(band, known) })];
  });
}

/** In clinic.md a band goes by an id; a name in words of one's own is told with its hyphens. */
function bandCure(band: string, known: readonly string[]): string {
  const id = slug(band);
  if (known.includes(id)) return `write ${id}`;
  const meant = nearest(id, known);
  const add = `add ${ID_PATTERN.test(id) ? id : 'an id of small letters, digits and hyphens'} with its force to bandNewtons in clinic.md${id === band ? '' : ' and write it so here'}`;
  return meant === null ? `${add}, or take it out` : `write ${meant} if that is meant, or ${add}`;
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
  wordsOf: (id: string) => string | null,
): Problem[] {
  const path = [...at, 'path'];
  const valuePath = [...at, 'value'];
  if (target === RUNNING_DECISION) return shapeProblems(front, RUN_CHOICE, value, valuePath);
  if (target === PAIN_DECISION) return shapeProblems(front, PAIN_CHOICE, value, valuePath);
  const [card = '', cell = ''] = target.split('.');
  const noCard = checkCard(front, path, card, cards, { after: `.${cell}`, wordsOf });
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
