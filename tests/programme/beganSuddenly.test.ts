/** Whoever it struck in one moment is not told that there was too much work: not in this plan, not in a later one. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { beganSuddenly } from '../../src/decisions/screen/suddenStart.ts';
import { ownLines } from './leafletText.ts';
import { ALL_CLEAR, day, person } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

const imaging = { kind: 'MRI', on: day('2026-11-05'), result: 'tendon and sit bone whole' };
const clearance = (flag: Consult['clearances'][number]['flag']): Consult['clearances'][number] => ({
  flag,
  by: 'sports doctor',
  on: day('2026-11-06'),
  decision: 'slow loading may begin',
  imaging,
});
const CHANGED: Partial<Consult> = { changedBefore: ['hills', 'distance', 'long-drives'] };
const POPPED: Partial<Consult> = {
  ...CHANGED,
  screen: { ...ALL_CLEAR, popBruise: 'yes' },
  clearances: [clearance('popBruise')],
};
const AFTER_A_POP: readonly (readonly [string, Partial<Consult>])[] = [
  ['in the first plan', POPPED],
  ['when it is asked again later', { ...POPPED, screen: ALL_CLEAR }],
  [
    'with the outer hip',
    { ...POPPED, protocol: 'gluteal-tendon', tests: [{ test: 'week-one-exercises', pain: 2 }] },
  ],
];
const TOO_MUCH_WORK =
  /more to do than it was used to|more than the tendon was used to|not used to that yet|pressed the tendon on the bone more/;

describe('it began in one moment', () => {
  it.each([
    ['a pop that was cleared', 'popBruise', 'yes', true],
    ['a pop, and no new one at a later visit', 'popBruise', 'no', true],
    ['a sudden start under 18', 'suddenOnsetUnder18', 'yes', true],
    ['a gradual start under 18, with the entry for it', 'suddenOnsetUnder18', 'no', false],
    ['a cleared hop pain', 'hopPain', 'yes', false],
  ] as const)('%s', (_, flag, answer, expected) => {
    const screen = { ...ALL_CLEAR, [flag]: answer };
    expect(beganSuddenly({ screen, clearances: [clearance(flag)] })).toBe(expected);
  });
});

describe('the story of too much work', () => {
  const texts = (different: Partial<Consult>) => {
    const programme = programmeOf(person(different));
    return [...ownLines(programme), JSON.stringify(programme.advice)];
  };

  it('is told where it began bit by bit', () => {
    expect(texts(CHANGED).filter((text) => TOO_MUCH_WORK.test(text)).length).toBeGreaterThanOrEqual(4);
  });

  it.each(AFTER_A_POP)('is not told after a pop %s', (_, different) => {
    const told = texts(different);
    expect(told.filter((text) => TOO_MUCH_WORK.test(text))).toEqual([]);
    const { whySudden } = shipped.protocols.get(different.protocol ?? 'proximal-hamstring')!;
    for (const sentence of whySudden) expect(told).toContain(sentence);
  });
});
