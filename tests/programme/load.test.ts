/** The weight a card starts with: from tested sets, by feel, or none; and how far it is used. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { Exercise } from '../../src/programme/programme.ts';
import { FULL_KIT, NO_KIT, person, testedSet } from './person.ts';
import { programmeOf } from './shipped.ts';

function cellsOf(consult: Consult, card: string) {
  const programme = programmeOf(consult);
  const exercise = programme.exercises.find((one) => one.card === card) as Exercise | undefined;
  if (exercise === undefined)
    throw new Error(`${card} must be in ${programme.exercises.map((one) => one.card).join(', ')}`);
  const cell = (name: string) => exercise.cells.find((one) => one.cell === name);
  return { load: cell('loadKg'), range: cell('hipFlexionDeg'), exercise };
}

const passedOver = (consult: Consult, card: string) =>
  programmeOf(consult).record.passedOver.filter((one) => one.card === card && one.stage === 2);

describe('in stage 2', () => {
  it('the tested load is never passed, however easy it was', () => {
    const { load } = cellsOf(person({ testedSets: [testedSet('hip-hinge', 8, 15, 0)] }), 'hip-hinge');
    expect(load).toMatchObject({ value: 8, decidedBy: 'testedSet', text: 'one dumbbell of 8 kg' });
    expect(load?.rule).toContain('not above the tested load in this stage');
  });

  it('a set close to failure gives less, rounded down to the kit', () => {
    const { load } = cellsOf(person({ testedSets: [testedSet('hip-hinge', 12, 5, 0)] }), 'hip-hinge');
    expect(load?.decidedBy).toBe('kit');
    expect(load?.value).toBeLessThan(12);
    expect(load?.value).toBeLessThanOrEqual(Number(load?.inputs['byRuleKg']));
  });

  it('of several sets the lowest load holds', () => {
    const both = [testedSet('hip-hinge', 12, 10, 4), testedSet('hip-hinge', 6, 10, 4)];
    expect(cellsOf(person({ testedSets: both }), 'hip-hinge').load?.value).toBe(6);
  });

  it('a set that says nothing does not take away what another one says', () => {
    const sets = [testedSet('hip-hinge', 12, 10, 4), testedSet('hip-hinge', 16, 10, 4, { pain: 5 })];
    expect(cellsOf(person({ testedSets: sets }), 'hip-hinge').load?.value).toBe(12);
  });

  it.each([
    ['hurt', { pain: 4 }, 'hurt 4, 3 at most is asked'],
    ['was quick', { tempo: { go: 1, hold: 0, back: 1 } }, 'took 2 s a repetition'],
    ['went nowhere', { rangeDeg: 15 }, 'went to 15° only'],
  ])('a set that %s gives no weight', (_, how, because) => {
    const { load } = cellsOf(person({ testedSets: [testedSet('hip-hinge', 12, 10, 4, how)] }), 'hip-hinge');
    expect(load).toMatchObject({ value: 0, decidedBy: 'testedSet' });
    expect(load?.rule).toContain(because);
  });

  it('nothing tested: no weight', () => {
    expect(cellsOf(person(), 'hip-hinge').load).toMatchObject({ value: 0, text: 'no weight' });
  });

  it('nothing at home: no weight, decided by the kit', () => {
    const { load } = cellsOf(
      person({ kit: NO_KIT, testedSets: [testedSet('hip-hinge', 8, 10, 4)] }),
      'hip-hinge',
    );
    expect(load).toMatchObject({ value: 0, decidedBy: 'kit' });
  });

  it('the range is held to that of the test, and opens later', () => {
    const { range } = cellsOf(
      person({ testedSets: [testedSet('hip-hinge', 8, 10, 4, { rangeDeg: 40 })] }),
      'hip-hinge',
    );
    expect(range).toMatchObject({ value: 40, decidedBy: 'testedSet' });
  });

  it('a test that went further than the stage leaves the stage its cap', () => {
    const { range } = cellsOf(
      person({ testedSets: [testedSet('hip-hinge', 8, 10, 4, { rangeDeg: 70 })] }),
      'hip-hinge',
    );
    expect(range).toMatchObject({ value: 45, decidedBy: 'hipFlexion' });
  });

  it('of one leg the painful one counts', () => {
    const other = testedSet('slow-prone-curl', 2, 10, 4, { side: 'left' });
    expect(cellsOf(person({ testedSets: [other] }), 'slow-prone-curl').load?.value).toBe(0);
    expect(cellsOf(person({ side: 'left', testedSets: [other] }), 'slow-prone-curl').load?.value).toBe(2);
  });
});

describe('the body alone too much', () => {
  const weak = person({ testedSets: [testedSet('single-leg-bridge-raised', 0, 5, 0)] });

  it('passes the card over, and what is harder than it', () => {
    for (const card of ['single-leg-bridge-raised', 'single-leg-long-lever-bridge'])
      expect(passedOver(weak, card), card).toEqual([expect.objectContaining({ limit: 'testedSet' })]);
  });

  it('leaves an easier one', () => {
    expect(programmeOf(weak).exercises.map(({ card }) => card)).toContain('bridge-from-floor');
  });

  it('is not too much when it was done often enough', () => {
    const strong = person({ testedSets: [testedSet('single-leg-bridge-raised', 0, 9, 3)] });
    expect(programmeOf(strong).exercises.map(({ card }) => card)).toContain('single-leg-bridge-raised');
  });
});

// A one-leg bow that hurt nobody: bows on both legs may begin in full, and with a weight that is felt for.
const ONE_LEG_BOW: Consult['tests'] = [...person().tests, { test: 'single-leg-hinge', pain: 1 }];

describe('in stage 3 with no set tested', () => {
  const stage3 = { stage: 3, tests: ONE_LEG_BOW } as const;

  it('the repetitions in hand decide, under a ceiling only where a cap is one', () => {
    const { load } = cellsOf(
      person({ ...stage3, kit: { ...FULL_KIT, kettlebellsKg: [12, 40] } }),
      'romanian-deadlift',
    );
    expect(load).toMatchObject({ value: null, decidedBy: 'compression' });
    expect(load?.text).toMatch(
      /^none at first, a little more each session until you could do just 2 more; at most /,
    );
    expect(Number(load?.inputs['atMostKg'])).toBeLessThan(40);
  });

  it('no ceiling is printed where nothing in the house is too heavy', () => {
    const { load } = cellsOf(
      person({ ...stage3, kit: { ...NO_KIT, dumbbellsKg: [2] } }),
      'romanian-deadlift',
    );
    expect(load).toMatchObject({ value: null, decidedBy: 'dose' });
    expect(load?.text).not.toContain('At most');
  });

  it('a set that hurt is no reason to feel for more: no weight', () => {
    const hurt = person({ ...stage3, testedSets: [testedSet('romanian-deadlift', 8, 10, 4, { pain: 5 })] });
    expect(cellsOf(hurt, 'romanian-deadlift').load?.value).toBe(0);
  });

  it('does not go on to a harder card, which nobody can compare', () => {
    const { record } = programmeOf(person(stage3));
    const steps = JSON.stringify(record.stepsAhead);
    expect(steps).not.toContain('a harder version for Bow');
  });
});

describe('of the cards of a slot in stage 3', () => {
  const taken = (different: Partial<Consult>) => {
    const { exercises, record } = programmeOf(person({ stage: 3, tests: ONE_LEG_BOW, ...different }));
    const card = (slot: string) => exercises.find((one) => one.slot === slot)?.card;
    return {
      bow: card('Bow'),
      curl: card('Strong curl'),
      over: record.passedOver.filter(({ stage, slot }) => stage === 3 && slot === 'Bow'),
    };
  };
  const bow = (kg: number, more: Partial<Consult['testedSets'][number]> = {}) =>
    testedSet('hip-hinge', kg, 10, 4, more);

  it.each([
    ['nothing was tested', [], 'romanian-deadlift'],
    ['a later one was tested with a weight', [bow(16)], 'hip-hinge'],
    ['both were', [bow(16), testedSet('romanian-deadlift', 12, 10, 4)], 'romanian-deadlift'],
    ['its set hurt', [bow(16, { pain: 5 })], 'romanian-deadlift'],
    ['its set was quick', [bow(16, { tempo: { go: 1, hold: 0, back: 1 } })], 'romanian-deadlift'],
    [
      'its set was of the other leg',
      [testedSet('single-leg-hinge', 8, 10, 4, { side: 'left' })],
      'romanian-deadlift',
    ],
    ['its set was without a weight', [bow(0, { repetitions: 14 })], 'romanian-deadlift'],
  ])('%s: %j gives %s', (_, testedSets, card) => {
    expect(taken({ testedSets }).bow).toBe(card);
  });

  it('those passed over for a tested one say so', () => {
    const because = 'another card of this slot was tested with a weight or for its seconds, or done before';
    expect(taken({ testedSets: [bow(16)] }).over).toEqual([
      expect.objectContaining({ card: 'romanian-deadlift', limit: 'testedSet', because }),
      expect.objectContaining({ card: 'single-leg-hinge', limit: 'testedSet', because }),
    ]);
    expect(taken({ testedSets: [bow(16, { pain: 5 })] }).over).toEqual([]);
  });

  it('a tested one that cannot be done takes no place', () => {
    const kit = { ...FULL_KIT, rucksack: false };
    expect(taken({ kit, testedSets: [testedSet('rucksack-hinge', 6, 10, 4)] }).bow).toBe('romanian-deadlift');
  });

  it('what was tested with a weight goes before one that carries none', () => {
    expect(taken({ testedSets: [testedSet('slow-prone-curl', 4, 10, 4)] }).curl).toBe('slow-prone-curl');
  });

  it('under 18 as well; without a weight at home the order of the protocol holds', () => {
    const clearances = [
      {
        flag: 'suddenOnsetUnder18' as const,
        by: 'doctor',
        on: person().seenOn,
        decision: 'growth plate considered',
      },
    ];
    const young = { ageYears: 16, clearances, testedSets: [bow(16)] };
    expect(taken(young).bow).toBe('hip-hinge');
    expect(taken({ kit: NO_KIT, testedSets: [bow(16)] }).bow).not.toBe('hip-hinge');
  });
});
