/** How a stage is entered: what was tested or done goes on, what was not begins gently (house rules 11.2, 11.4, 11.6, 11.14). */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { Cell, Programme } from '../../src/programme/programme.ts';
import type { CellName } from '../../src/decisions/terms/cell.ts';
import { ALL_CLEAR, day, FULL_KIT, NO_KIT, person, RUNNER, testedSet } from './person.ts';
import { programmeOf, refusalsOf, workshop } from './shipped.ts';

const at = ({ exercises }: Programme, slot: string) => {
  const exercise = exercises.find((one) => one.slot === slot);
  if (exercise === undefined) throw new Error(`${slot}: ${exercises.map((one) => one.slot).join(', ')}`);
  const cell = (name: CellName) => exercise.cells.find((one) => one.cell === name) as Cell;
  return {
    card: exercise.card,
    sets: cell('sets').value,
    repetitions: cell('repetitions').value,
    holdSeconds: cell('holdSeconds').value,
    loadKg: cell('loadKg').value,
    rangeDeg: cell('hipFlexionDeg').value,
  };
};
const remarks = (programme: Programme) => programme.record.remarks.join('\n');
const done = (...tests: (readonly [string, number])[]): Consult['tests'] =>
  tests.map(([test, pain]) => ({ test, pain }));

describe('an exercise', () => {
  it('tested at 45 degrees with 20 kg begins there, with its weight', () => {
    const tested = testedSet('romanian-deadlift', 20, 10, 4, { rangeDeg: 45 });
    const kit = { ...FULL_KIT, dumbbellsKg: [10, 10] };
    expect(at(programmeOf(person({ stage: 3, testedSets: [tested], kit })), 'Bow')).toMatchObject({
      card: 'romanian-deadlift',
      loadKg: 20,
      rangeDeg: 45,
    });
  });

  it('enters by how far a step was climbed in the test, though no such step stands at home', () => {
    const low = testedSet('step-up', 20, 12, 2, { rangeDeg: 30, pain: 0 });
    const easily = person({ stage: 3, irritability: 'high', testedSets: [low], kit: NO_KIT });
    const lunge = at(programmeOf(easily), 'One leg after the other');
    // The whole step, climbed to 66 degrees, would let a split squat begin at 60.
    expect(lunge).toMatchObject({ card: 'short-split-squat', loadKg: 0, rangeDeg: 50 });
  });

  it('with nothing like it tested begins in its gentlest version, and the record says so', () => {
    const programme = programmeOf(person({ stage: 3, tests: done(['single-leg-bridge-raised', 1]) }));
    expect(at(programme, 'One leg after the other')).toMatchObject({
      card: 'half-squat',
      loadKg: 0,
      rangeDeg: 35,
    });
    expect(remarks(programme)).toContain(
      'Half squat enters gently, none of its slot or ladder was tested or done before: its gentlest version: range 35° instead of 60°.',
    );
  });

  it.each([
    ['a bow without a weight was tried: no bridge on one leg yet', 'hip-hinge', [], 'bed-edge-leg-lift'],
    [
      'a heavy bow was tested: the bridge on one leg',
      'hip-hinge',
      [testedSet('romanian-deadlift', 24, 10, 3, { rangeDeg: 60 })],
      'single-leg-bridge-from-floor',
    ],
  ] as const)('of an untried family is no leap over all that was shown: %s', (_, test, testedSets, card) => {
    const programme = programmeOf(
      person({
        stage: 3,
        tests: done([test, 2]),
        testedSets: [...testedSets],
        kit: { ...FULL_KIT, bench: false },
      }),
    );
    expect(at(programme, 'Hip thrust or bridge').card).toBe(card);
  });

  it('that asks for few at first begins with two sets of five', () => {
    const tests = done(['single-leg-hinge', 1], ['nordic-lowering', 1]);
    expect(at(programmeOf(person({ stage: 4, tests, running: RUNNER })), 'Strong curl')).toMatchObject({
      card: 'nordic-lowering',
      sets: 2,
      repetitions: 5,
    });
  });

  it('between sessions is the gentlest hold of its slot, whatever was tested', () => {
    const tests = [...person().tests, { test: 'long-lever-bridge-hold', pain: 1, seconds: 50 }];
    expect(at(programmeOf(person({ tests })), 'Hold on the days between').card).toBe('prone-curl-hold');
  });

  it('far below what was tested has its reason in the record', () => {
    const testedSets = [testedSet('hip-hinge', 12, 10, 4)];
    const kit = { ...NO_KIT, dumbbellsKg: [2] };
    expect(remarks(programmeOf(person({ testedSets, kit })))).toContain(
      'Gentler than tested: Short bow with straight back, 2 kg of 12 kg tested (17 %): the weights in the house.',
    );
  });
});

describe('the legs', () => {
  it('of a hold the other one does not count', () => {
    const held = (side: 'left' | 'right') => ({ test: 'prone-curl-hold', pain: 1, seconds: 50, side });
    const main = (tests: Consult['tests']) => at(programmeOf(person({ stage: 1, tests })), 'Main hold');
    // The prone hold works one leg at a time, and the right one is treated.
    expect(main([held('right')]).holdSeconds).toBe(30);
    expect(main([held('left')]).holdSeconds).toBe(15);
  });
});

describe('what was done in the stage before', () => {
  const first = programmeOf(person({ testedSets: [testedSet('hip-hinge', 12, 10, 4, { rangeDeg: 45 })] }));
  const second = person({
    id: 'vole-r2',
    revision: 2,
    seenOn: day('2026-12-15'),
    startOn: day('2026-12-16'),
    reviewOn: day('2027-01-06'),
    tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 2]),
  } as Partial<Consult>);

  it('is gone on with: the same card, its weight, no further', () => {
    const made = assembleProgramme(second, first, workshop);
    if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
    expect(made.programme.stage.chosen).toBe(3);
    expect(at(made.programme, 'Bow')).toMatchObject({ card: 'hip-hinge', loadKg: 12, rangeDeg: 45 });
  });

  it('without it the weight has to be felt for', () => {
    expect(at(programmeOf({ ...second, revision: 1 }), 'Bow').loadKg).toBeNull();
  });
});

describe('running after a programme of walk and run', () => {
  const first = person({
    irritability: 'high',
    tests: done(['single-leg-bridge-raised', 5]),
    running: RUNNER,
  });
  const second = person({
    id: 'vole-r2',
    revision: 2,
    seenOn: day('2026-12-15'),
    startOn: day('2026-12-16'),
    reviewOn: day('2027-01-06'),
    tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 2]),
    running: RUNNER,
  } as Partial<Consult>);
  const kinds = (before: Programme) => {
    const made = assembleProgramme(second, before, workshop);
    if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
    return new Set(made.programme.plan.flatMap(({ runs }) => runs.map(({ kind }) => kind)));
  };

  it('is easy and no more, whatever the stage opens', () => {
    expect(kinds(programmeOf(first))).toEqual(new Set(['easy']));
  });

  it('is as hard as the stage opens where runs went before', () => {
    expect(kinds(programmeOf(person({ running: RUNNER })))).toContain('steady');
  });
});

describe('sets that contradict each other', () => {
  const heavy = testedSet('hip-hinge', 12, 10, 4, { pain: 2 });
  const hurt = testedSet('hip-hinge', 8, 10, 4, { pain: 5 });

  it('the lighter one that hurt bounds the load, now and on every step', () => {
    const programme = programmeOf(person({ testedSets: [hurt, heavy] }));
    expect(at(programme, 'Bow').loadKg).toBeLessThan(8);
    expect(at(programmeOf(person({ testedSets: [heavy] })), 'Bow').loadKg).toBe(12);
    expect(remarks(programme)).toContain(
      'Tested sets contradict each other: Short bow with straight back, 8 kg hurt 5 and 12 kg hurt 2; the lighter one that hurt bounds the load. Test again.',
    );
  });

  it('that went further than the one that did not hurt contradicts nothing', () => {
    const further = { ...hurt, rangeDeg: 60 };
    const programme = programmeOf(person({ testedSets: [further, { ...heavy, rangeDeg: 45 }] }));
    expect(at(programme, 'Bow').loadKg).not.toBe(0);
    expect(remarks(programme)).not.toContain('contradict');
  });
});

describe('a sudden start that was cleared', () => {
  const clearances = [
    {
      flag: 'popBruise' as const,
      by: 'surgeon',
      on: day('2026-11-20'),
      decision: 'may load',
      imaging: { kind: 'MRI', on: day('2026-11-19'), result: 'tendon whole' },
    },
  ];
  const popped = {
    clearances,
    screen: { ...ALL_CLEAR, popBruise: 'yes' as const },
    tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 1]),
    testedSets: [testedSet('hip-hinge', 12, 10, 4, { rangeDeg: 45 })],
  };

  it('gives stage 2 at most in the first programme, with half the load', () => {
    const programme = programmeOf(person(popped));
    expect(programme.stage.chosen).toBe(2);
    expect(at(programme, 'Bow').loadKg).toBe(6);
    expect(programme.stage.because.join(' ')).toContain('MRI of 2026-11-19: tendon whole');
    expect(programmeOf(person({ ...popped, screen: ALL_CLEAR })).stage.chosen).toBe(3);
  });

  it('refuses a later stage, whatever the reason', () => {
    expect(refusalsOf(person({ ...popped, stage: 3 }))).toEqual(['does-not-fit stage']);
  });

  it('leaves no running in the first programme, and the record says so', () => {
    const { plan, record } = programmeOf(person({ ...popped, running: RUNNER }));
    expect(plan.flatMap(({ runs }) => runs)).toEqual([]);
    expect(record.remarks.join(' ')).toContain('Running: none in the first programme after');
  });

  it('is over with the next programme', () => {
    const made = assembleProgramme(
      person({ ...popped, id: 'vole-r2', revision: 2, seenOn: day('2026-12-14') } as Partial<Consult>),
      programmeOf(person(popped)),
      workshop,
    );
    expect('programme' in made && made.programme.stage.chosen).toBe(3);
  });
});

describe('a stage without a whole programme', () => {
  const bend = (painFreeHipFlexionDeg: number) =>
    person({
      tests: [
        { test: 'single-leg-bridge-raised', pain: 1 },
        { test: 'hip-hinge', pain: 2, painFreeHipFlexionDeg },
      ],
    });

  it.each([
    ['nothing hurts on the way: stage 3', 90, 3, ''],
    ['every exercise far below the bend of the stage: one back', 45, 2, '58 % of the bend'],
    ['no bow at all: back to the holds', 35, 1, 'nothing fills Bow'],
  ])('%s', (_, deg, stage, because) => {
    const { chosen, proposed, because: reasons } = programmeOf(bend(deg)).stage;
    expect([chosen, proposed]).toEqual([stage, stage]);
    expect(reasons.join(' ')).toContain(because);
  });

  it("is built as the clinician's own and told as hollow", () => {
    expect(remarks(programmeOf({ ...bend(45), stage: 3 }))).toContain('Stage 3 is hollow for this person');
  });
});

describe('the length of a session', () => {
  it.each([
    [15, 1, 15],
    [25, 3, 25],
    [30, 3, 25],
    [39, 3, 25],
    [60, 4, 60],
  ])('with %s minutes: at least %s exercises in at most %s minutes', (minutesPerDay, least, most) => {
    const programme = programmeOf(person({ minutesPerDay }));
    const onSession = programme.exercises.filter(({ between }) => between === null);
    expect(programme.nextSession.minutesValue).toBeLessThanOrEqual(most);
    expect(onSession.length).toBeGreaterThanOrEqual(least);
    if (minutesPerDay < 40) expect(onSession.length).toBeLessThanOrEqual(4);
  });

  it('names two exercises for 15 minutes', () => {
    const { nextSession } = programmeOf(person());
    expect(nextSession.shortCards).toEqual(['slow-prone-curl', 'single-leg-bridge-raised']);
    expect(nextSession.short).toBe(
      'If you only have 15 minutes, do these two: Slow face-down leg curl (2 sets) and One-leg bridge from pillows (2 sets).',
    );
  });
});
