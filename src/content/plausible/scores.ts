/** Tests and scores that contradict each other, or last longer than anybody holds. */
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';

type Test = ConsultFrontMatter['tests'][number];

export function scoreDoubts({ tests }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  return tests.flatMap((test, index) => [
    ...testTwice(test, index, tests),
    ...above(test.seconds, limits.holdToSeconds.value, {
      rule: 'testHold',
      path: ['tests', index, 'seconds'],
      inputs: {},
    }),
  ]);
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
