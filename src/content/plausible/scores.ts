/** Tests and scores that contradict each other, or last longer than anybody holds. */
import type { ExerciseCard, Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';
import { rangeDoubt } from './loads.ts';

type Test = ConsultFrontMatter['tests'][number];

export function scoreDoubts(
  { tests, outcomes }: ConsultFrontMatter,
  limits: Plausible,
  { exercises }: Nameable,
): Doubt[] {
  return [
    ...tests.flatMap((test, index) => [
      ...testCount(test, index, exercises.get(test.test) ?? null),
      ...testTwice(test, index, tests),
      ...above(test.seconds, limits.holdToSeconds.value, {
        rule: 'testHold',
        path: ['tests', index, 'seconds'],
        inputs: {},
      }),
      ...rangeDoubt(
        test.painFreeHipFlexionDeg,
        ['tests', index, 'painFreeHipFlexionDeg'],
        exercises.get(test.test) ?? null,
        limits,
      ),
    ]),
    ...outcomes.flatMap((score, index) => scoreTwice(score, index, outcomes)),
  ];
}

/** Seconds of what moves, or repetitions of a hold: the number, or the name of the test, is another's. */
function testCount({ test, seconds, repetitions }: Test, index: number, card: ExerciseCard | null): Doubt[] {
  if (card === null) return [];
  const [key, value, fitting] =
    card.kind === 'isometric'
      ? (['repetitions', repetitions, seconds] as const)
      : (['seconds', seconds, repetitions] as const);
  if (value === undefined || fitting !== undefined) return [];
  return [{ rule: 'testCount', path: ['tests', index, key], value, inputs: { key, test } }];
}

type Score = ConsultFrontMatter['outcomes'][number];

/** Two entries of one day: one of the two days is a slip. */
function scoreTwice({ on }: Score, index: number, scores: readonly Score[]): Doubt[] {
  const before = scores.slice(0, index).findIndex((one) => one.on === on);
  return before === -1
    ? []
    : [{ rule: 'scoreTwice', path: ['outcomes', index, 'on'], value: on, inputs: { before } }];
}

/** The same test of the same leg with another pain; where no side is given, it may be the same leg. */
function testTwice({ test, pain, side }: Test, index: number, tests: readonly Test[]): Doubt[] {
  const before = tests
    .slice(0, index)
    .findIndex((one) => one.test === test && isSameLeg(one.side, side) && one.pain !== pain);
  const first = tests[before];
  if (first === undefined) return [];
  return [
    {
      rule: 'testTwice',
      path: ['tests', index, 'pain'],
      value: pain,
      inputs: { test, before, pain: first.pain },
    },
  ];
}

function isSameLeg(a: Test['side'], b: Test['side']): boolean {
  return a === undefined || b === undefined || a === b;
}
