/** Fast work is proposed after heavy work was shown, not from looks at movements alone (house rules 4 and 11.1). */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { day, person, RUNNER, testedSet } from './person.ts';
import { programmeOf, workshop } from './shipped.ts';

const LOOKED_AT: Partial<Consult> = {
  tests: ['single-leg-bridge-raised', 'hip-hinge', 'single-leg-hinge'].map((test) => ({ test, pain: 1 })),
  running: RUNNER,
};

describe('the proposal of fast work', () => {
  it.each<[string, Consult['testedSets'], number]>([
    ['every test mild, nothing lifted', [], 3],
    ['a set without a weight', [testedSet('hip-hinge', 0, 12, 3)], 3],
    ['a set that hurt', [testedSet('romanian-deadlift', 20, 10, 3, { pain: 4 })], 3],
    ['a hold with a weight', [testedSet('prone-curl-hold', 3, 1, 0)], 3],
    ['a set with a weight', [testedSet('romanian-deadlift', 20, 10, 3)], 4],
  ])('%s', (_, testedSets, stage) => {
    const { stage: made } = programmeOf(person({ ...LOOKED_AT, testedSets }));
    expect(made.proposed).toBe(stage);
    if (stage === 3) expect(made.because.join(' ')).toContain('fast work comes after heavy work');
  });

  it('comes after the stage before was done, with whatever there is at home', () => {
    const second = {
      ...LOOKED_AT,
      id: 'vole-r2',
      revision: 2,
      seenOn: day('2026-12-15'),
      startOn: day('2026-12-16'),
      reviewOn: day('2027-01-06'),
    } as Partial<Consult>;
    const made = assembleProgramme(person(second), programmeOf(person(LOOKED_AT)), workshop);
    expect('programme' in made && made.programme.stage.proposed).toBe(4);
  });
});
