/** The clinician's own entries. What cannot be carried out is refused: tests/problems. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { ownDays, ownTempo, type Own } from '../../src/decisions/session/overrides.ts';
import { person, testedSet } from './person.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { decide } from '../../src/decisions/decide.ts';
import { cardsInPlan } from '../../src/decisions/days/strayEntries.ts';
import { programmeOf, workshop } from './shipped.ts';

const own = (cell: 'tempo' | 'days', value: string): Own => new Map([[cell, { value, reason: 'so' }]]);

describe('a tempo', () => {
  it.each([
    ['4-0-4', { goSeconds: 4, holdSeconds: 0, backSeconds: 4 }],
    ['slow as honey', null],
    ['3-0', null],
  ])('%s', (value, expected) => expect(ownTempo(own('tempo', value))).toEqual(expected));
});

describe('days', () => {
  it.each([
    ['fri, mon', ['mon', 'fri']],
    ['Mon Fri', ['mon', 'fri']],
    ['monday', null],
    ['', null],
  ])('%s', (value, expected) => expect(ownDays(own('days', value))).toEqual(expected));
});

const outcome = (consult: Consult) => assembleProgramme(consult, null, workshop);

function decided(consult: Consult) {
  const made = decide(consult, null, workshop);
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  return made;
}

describe('an entry', () => {
  const entries = (...overrides: Consult['overrides']) =>
    programmeOf(person({ testedSets: [testedSet('hip-hinge', 12, 10, 4)], overrides }));
  const cell = (programme: ReturnType<typeof entries>, card: string, name: string) =>
    programme.exercises.find((one) => one.card === card)?.cells.find((one) => one.cell === name);

  it('stands in the cell, with the rule beside it', () => {
    const programme = entries({ path: 'hip-hinge.sets', value: 2, reason: 'tired' });
    expect(cell(programme, 'hip-hinge', 'sets')).toMatchObject({
      value: 2,
      text: '2',
      decidedBy: 'clinician',
      rule: 'clinician: tired',
      inputs: { byRule: 3 },
    });
    expect(programme.exercises.find(({ card }) => card === 'hip-hinge')?.dose).toBe('2 × 8');
  });

  it('of the hip bend moves the landmark and the picture with it', () => {
    const programme = entries({ path: 'hip-hinge.hipFlexionDeg', value: 30, reason: 'wary' });
    const bow = programme.exercises.find(({ card }) => card === 'hip-hinge');
    expect(cell(programme, 'hip-hinge', 'howFar')).toMatchObject({ decidedBy: 'clinician' });
    expect(bow?.figures?.scene.frames.map((one) => ('posture' in one ? one.hipFlexionDeg : null))).toContain(
      30,
    );
  });

  it('of a weight that would be felt for is a number again', () => {
    const programme = programmeOf(
      person({
        stage: 3,
        tests: [...person().tests, { test: 'single-leg-hinge', pain: 1 }],
        overrides: [{ path: 'romanian-deadlift.loadKg', value: 8, reason: 'known' }],
        confirmed: [{ path: 'overrides.0.value', value: 8, reason: 'carries it at work' }],
      }),
    );
    expect(cell(programme, 'romanian-deadlift', 'loadKg')).toMatchObject({
      value: 8,
      text: 'one dumbbell of 8 kg',
      decidedBy: 'clinician',
    });
  });

  it('beyond a cap is told in the record', () => {
    const { record } = entries({ path: 'hip-hinge.hipFlexionDeg', value: 60, reason: 'did it on video' });
    const remarks = record.exercises.find(({ card }) => card === 'hip-hinge')?.remarks.join(' ');
    expect(remarks).toContain("above the stage's cap on hip bend");
  });

  it.each([
    ['of no step', 'kettlebell-swing.sets'],
    ['of another stage', 'single-leg-hinge.sets'],
  ])('for a card %s of the plan is refused, and the cards that are in it are named', (_, path) => {
    const made = outcome(person({ overrides: [{ path, value: 2, reason: 'later' }] }));
    if (!('refusals' in made)) throw new Error('built');
    expect(made.refusals.map(({ code, path: at, found }) => [code, at.join('.'), found])).toEqual([
      ['does-not-fit', 'overrides.0.path', path],
    ]);
    const cards = programmeOf(person()).exercises.map(({ card }) => card);
    for (const id of cards) expect(made.refusals[0]?.fix).toContain(id);
  });

  it('for a card that only a later step brings is kept for it', () => {
    const plain = decided(person());
    const later = cardsInPlan(plain).find(({ fromStep }) => fromStep !== null);
    if (later === undefined) throw new Error('the ladder must bring another card');
    const made = decided(
      person({ overrides: [{ path: `${later.id}.restSeconds`, value: 90, reason: 'breath' }] }),
    );
    expect(cardsInPlan(made)).toContainEqual(later);
  });

  it('that is a decision stands beside no card', () => {
    const made = outcome(
      person({ overrides: [{ path: 'running.decision', value: 'none', reason: 'so agreed' }] }),
    );
    expect('programme' in made).toBe(true);
  });
});
