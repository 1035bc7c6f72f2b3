/** What holds a programme back: a picture after a sudden start, a discharge too early, a step that nobody wrote, items not asked. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { SCREEN_ITEMS, type ScreenItem } from '../../src/content/schema/consult.ts';
import { ALL_CLEAR, day, person, RUNNER, testedSet } from './person.ts';
import { programmeOf, workshop } from './shipped.ts';

const IMAGING = { kind: 'MRI', on: day('2026-11-12'), result: 'no tear' };

function clearance(flag: ScreenItem, imaging: typeof IMAGING | null): Consult['clearances'][number] {
  const words = { flag, by: 'sports doctor', on: day('2026-11-15'), decision: 'loading may begin' };
  return imaging === null ? words : { ...words, imaging };
}

const POP: Partial<Consult> = {
  screen: { ...ALL_CLEAR, popBruise: 'yes' },
  clearances: [clearance('popBruise', IMAGING)],
};
const STRONG: Partial<Consult> = {
  irritability: 'low',
  tests: [
    { test: 'single-leg-bridge-raised', pain: 0 },
    { test: 'hip-hinge', pain: 0 },
    { test: 'single-leg-hinge', pain: 0 },
  ],
};

/** Items that do not stop a programme, or that under 18 alone asks for. */
const SOFT_ITEMS: readonly ScreenItem[] = [
  ...(['hopPain', 'focalBonePain', 'nightBonePain', 'missedPeriods', 'lowEnergy'] as const),
  ...(['fluoroquinolone', 'oralSteroid', 'recentInjection'] as const),
  ...(['uncontrolledBloodPressure', 'hernia', 'suddenOnsetUnder18'] as const),
];

function refusalsOf(different: Partial<Consult>, previous: Programme | null = null) {
  const made = assembleProgramme(person(different), previous, workshop);
  return 'refusals' in made ? made.refusals.map(({ code, path }) => `${code} ${path.join('.')}`) : [];
}

describe('an item that was not asked', () => {
  it.each(SCREEN_ITEMS.filter((item) => !SOFT_ITEMS.includes(item)))(
    '%s is not lifted by a clearance',
    (item) => {
      const different = {
        screen: { ...ALL_CLEAR, [item]: 'notAsked' },
        clearances: [clearance(item, IMAGING)],
      };
      expect(refusalsOf(different)).toEqual([`screen-block screen.${item}`]);
    },
  );
});

describe('a sudden pop', () => {
  it.each<[string, Partial<Consult>, readonly string[]]>([
    ['without a clearance stops', { ...POP, clearances: [] }, ['screen-block screen.popBruise']],
    [
      'cleared in words alone stops',
      { ...POP, clearances: [clearance('popBruise', null)] },
      ['screen-block screen.popBruise'],
    ],
    ['cleared by a picture goes on', POP, []],
    ['never goes on to a later stage at first', { ...POP, stage: 3 }, ['does-not-fit stage']],
    ['may begin with the first stage', { ...POP, stage: 1 }, []],
  ])('%s', (_, different, expected) => {
    expect(refusalsOf(different)).toEqual(expected);
  });

  it('is followed by stage 2 at most, whatever the tests speak for', () => {
    expect(programmeOf(person(STRONG)).stage.chosen).toBeGreaterThan(2);
    const { stage, record } = programmeOf(person({ ...STRONG, ...POP }));
    expect(stage.chosen).toBe(2);
    expect(stage.because.at(-1)).toContain('is of stage 2 at most');
    expect(record.effects.join(' ')).toContain('stage 2 at most, and at most 50 % of the load');
  });

  it('is followed by no run, unless the clinician enters an own decision', () => {
    const runs = (different: Partial<Consult>) =>
      new Set(
        programmeOf(person({ ...STRONG, running: RUNNER, ...different })).plan.flatMap(({ runs }) =>
          runs.map(({ kind }) => kind),
        ),
      );
    expect(runs({})).toContain('longer');
    expect(runs(POP)).toEqual(new Set());
    const inTurn = {
      path: 'running.decision',
      value: 'walk-run',
      reason: 'the tear is small and has settled',
    };
    expect(runs({ ...POP, overrides: [inTurn] })).toEqual(new Set(['walk-run']));
    const own = { path: 'running.decision', value: 'keep', reason: 'the surgeon lets her run on the flat' };
    expect(runs({ ...POP, overrides: [own] })).toEqual(new Set(['easy']));
  });

  it('is named in the note, which does not say that the tests decided', () => {
    const note = programmeOf(person({ ...STRONG, ...POP })).record.note.join('\n');
    expect(note).toMatch(/Screen: First programme after a cleared sudden start/);
    expect(note).toContain('the most after a sudden start');
    expect(note).not.toContain('as proposed from the tests');
  });

  it('is followed by half the tested load at most, and by more only in the programme after', () => {
    const sets = [testedSet('hip-hinge', 16, 10, 4)];
    const before = loadOf(programmeOf(person({ testedSets: sets })));
    const first = programmeOf(person({ ...POP, testedSets: sets }));
    expect(before).toBe(16);
    expect(loadOf(first)).toBe(8);
    expect(first.steps.flatMap((step) => loadsIn(step, 'hip-hinge')).every((kg) => kg <= 8)).toBe(true);
    const second = assembleProgramme(
      person({ ...POP, revision: 2, testedSets: sets, seenOn: day('2026-12-14') }),
      first,
      workshop,
    );
    expect('programme' in second && loadOf(second.programme)).toBe(16);
  });

  it('is told to the patient, the record and the note as what it changes', () => {
    const { opening, precautions, record } = programmeOf(person({ ...STRONG, ...POP }));
    expect(opening.join(' ')).not.toMatch(/strong|heav/i);
    const [part] = precautions.parts;
    expect(JSON.stringify(part)).toContain('Add no weight of your own');
    expect(JSON.stringify(part)).toContain('A new pop, a new bruise');
    const note = record.note.join(' ');
    expect(note).not.toContain('nothing that limits the programme');
    expect(note).toContain('the most after a sudden start, the tests speak for stage');
    expect(note).not.toContain('as proposed from the tests');
    expect(programmeOf(person()).precautions.parts).toEqual([]);
  });

  it('lets no entry of the clinician past the light load', () => {
    const overrides = [{ path: 'hip-hinge.loadKg', value: 12, reason: 'strong' }];
    const testedSets = [testedSet('hip-hinge', 16, 10, 4)];
    expect(refusalsOf({ ...POP, testedSets, overrides })).toEqual(['does-not-fit overrides.0.value']);
  });
});

describe('a sudden start under 18', () => {
  const young = (answer: 'no' | 'yes' | 'notAsked', imaging: typeof IMAGING | null): Partial<Consult> => ({
    ageYears: 16,
    screen: { ...ALL_CLEAR, suddenOnsetUnder18: answer },
    clearances: [clearance('suddenOnsetUnder18', imaging)],
  });
  const stopped = ['screen-block screen.suddenOnsetUnder18'];

  it.each<['no' | 'yes' | 'notAsked', typeof IMAGING | null, readonly string[]]>([
    ['yes', null, stopped],
    ['notAsked', null, stopped],
    ['no', null, []],
    ['yes', IMAGING, []],
  ])('answered %s with the picture %j', (answer, imaging, expected) => {
    expect(refusalsOf(young(answer, imaging))).toEqual(expected);
  });
});

describe('the keep-going stage', () => {
  const settled: Partial<Consult> = {
    stage: 'keepGoing',
    usualMorningPain: 1,
    tests: [{ test: 'single-leg-hinge', pain: 3 }],
  };
  it.each<[string, Partial<Consult>, readonly string[]]>([
    ['is there for somebody settled', {}, []],
    ['is refused with high irritability', { irritability: 'high' }, ['does-not-fit stage']],
    ['is refused with a usual pain of 4', { usualMorningPain: 4 }, ['does-not-fit stage']],
    [
      'is refused with 4 in a test',
      { tests: [{ test: 'single-leg-hinge', pain: 4 }] },
      ['does-not-fit stage'],
    ],
  ])('%s', (_, different, expected) => {
    expect(refusalsOf({ ...settled, ...different })).toEqual(expected);
  });
});

describe('a step left out', () => {
  const SETS = [testedSet('hip-hinge', 8, 10, 4), testedSet('slow-prone-curl', 2, 12, 3)];
  const second = (different: Partial<Consult>, previous: Programme | null) => {
    const made = assembleProgramme(
      person({ testedSets: SETS, revision: 2, ...different }),
      previous,
      workshop,
    );
    return 'programme' in made
      ? made.programme.step
      : made.refusals.map(({ code, path }) => `${code} ${path.join('.')}`);
  };
  const third = programmeOf(person({ testedSets: SETS, step: 3 }));

  it('is 1 in a first revision', () => {
    expect(programmeOf(person({})).step).toBe(1);
  });

  it('is that of the revision before where the stage is the same', () => {
    expect(third.step).toBe(3);
    expect(second({}, third)).toBe(3);
    expect(second({ step: 2 }, third)).toBe(2);
  });

  it('is 1 in another stage', () => {
    expect(second({ stage: 1 }, third)).toBe(1);
  });

  it('is a Problem where the revision before cannot be made, or the ladder is shorter now', () => {
    expect(second({}, null)).toEqual(['missing-key step']);
    expect(second({}, { ...third, step: 60 })).toEqual(['does-not-fit step']);
  });
});

function loadOf({ exercises }: Programme): unknown {
  return exercises.find(({ card }) => card === 'hip-hinge')?.cells.find(({ cell }) => cell === 'loadKg')
    ?.value;
}

function loadsIn({ prescriptions }: Programme['steps'][number], card: string): number[] {
  return prescriptions
    .filter((one) => one.card === card)
    .flatMap(({ cells }) =>
      cells.filter(({ cell }) => cell === 'loadKg').map(({ value }) => Number(value ?? 0)),
    );
}
