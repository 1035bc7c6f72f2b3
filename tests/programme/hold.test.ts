/** Holds: a share of what was held, short where the screen says so, on every step of the ladder. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { ALL_CLEAR, person } from './person.ts';
import { programmeOf } from './shipped.ts';

// Sore enough for stage 1, and used to it: the hold itself is within the pain rule.
const SORE = { usualMorningPain: 3 };
const STAGE_1 = [{ test: 'long-lever-bridge-hold', pain: 4 }];

function held(different: Partial<Consult>): { now: unknown; decidedBy: unknown; longest: number } {
  const { steps, record } = programmeOf(person({ ...SORE, tests: STAGE_1, ...different }));
  const cells = steps.flatMap(({ prescriptions }) =>
    prescriptions.filter(({ slot }) => slot === 'Main hold').flatMap((one) => one.cells),
  );
  const seconds = cells.filter(({ cell }) => cell === 'holdSeconds');
  const ahead = [...JSON.stringify(record.stepsAhead).matchAll(/Main hold: (\d+) to (\d+)/g)].map(
    ([, , to]) => Number(to),
  );
  return {
    now: seconds[0]?.value,
    decidedBy: seconds[0]?.decidedBy,
    longest: Math.max(...seconds.map(({ value }) => Number(value)), ...ahead),
  };
}

describe('the first hold', () => {
  it.each([
    ['untested: the shortest', undefined, 15, 'dose'],
    ['55 s: the dose', 55, 30, 'dose'],
    ['70 s: half of it, so that it is not far below', 70, 35, 'testedSet'],
    ['100 s: the longest', 100, 45, 'dose'],
    ['36 s: 70 %, rounded down to 5', 36, 25, 'testedSet'],
    ['10 s: 5', 10, 5, 'testedSet'],
  ])('%s', (_, seconds, now, decidedBy) => {
    const tests = [
      { test: 'long-lever-bridge-hold', pain: 4, ...(seconds === undefined ? {} : { seconds }) },
    ];
    expect(held({ tests })).toMatchObject({ now, decidedBy });
  });

  it('too short to take a share of: another card', () => {
    const tests = [{ test: 'long-lever-bridge-hold', pain: 4, seconds: 6 }];
    const { exercises, record } = programmeOf(person({ ...SORE, tests }));
    expect(exercises[0]?.card).toBe('prone-curl-hold');
    expect(record.passedOver).toContainEqual(
      expect.objectContaining({ card: 'long-lever-bridge-hold', limit: 'testedSet', value: 6 }),
    );
  });
});

describe('the ladder of a hold', () => {
  it('ends at 45 s where nothing was tested', () => {
    expect(held({}).longest).toBe(45);
  });

  it('ends at the share of what was shown', () => {
    const tests = [{ test: 'long-lever-bridge-hold', pain: 4, seconds: 52 }];
    expect(held({ tests }).longest).toBe(35);
  });

  it('stays short where the screen or the cannot-do list says so', () => {
    const screen = { ...ALL_CLEAR, hernia: 'yes' } as const;
    expect(held({ screen }).longest).toBe(15);
    expect(held({ cannotDo: ['uncontrolled-blood-pressure'] }).longest).toBe(15);
  });

  it('a clearance does not lift what the cannot-do list still says', () => {
    const clearances = [
      { flag: 'uncontrolledBloodPressure' as const, by: 'doctor', on: person().seenOn, decision: 'fine' },
    ];
    const screen = { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes' } as const;
    expect(held({ screen, clearances }).longest).toBe(45);
    expect(held({ screen, clearances, cannotDo: ['uncontrolled-blood-pressure'] }).longest).toBe(15);
  });
});
