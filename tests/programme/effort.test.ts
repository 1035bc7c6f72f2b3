/** Who must not strain keeps repetitions in hand and holds short, on the leaflet and in the record (house rules 2 and 11.14). */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { ALL_CLEAR, FULL_KIT, person, testedSet } from './person.ts';
import { ownLines } from './leafletText.ts';
import { programmeOf } from './shipped.ts';

const MILD: Partial<Consult> = {
  tests: ['single-leg-bridge-raised', 'hip-hinge'].map((test) => ({ test, pain: 1 })),
  testedSets: [testedSet('hip-hinge', 12, 10, 2, { rangeDeg: 45 })],
  kit: FULL_KIT,
  stage: 3,
};
const least = (different: Partial<Consult>) => {
  const programme = programmeOf(person({ ...MILD, ...different }));
  const cells = programme.exercises.flatMap((one) => one.cells);
  const of = (name: string) =>
    cells.flatMap(({ cell, value }) => (cell === name && typeof value === 'number' ? [value] : []));
  return { programme, reserve: Math.min(...of('reserve')), hold: Math.max(0, ...of('holdSeconds')) };
};

describe('repetitions in hand', () => {
  it('are those of the dose for everybody else', () => {
    expect(least({}).reserve).toBe(2);
  });

  it.each<[string, Partial<Consult>]>([
    ['uncontrolled blood pressure', { screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes' } }],
    ['blood pressure not asked', { screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'notAsked' } }],
    ['a hernia', { screen: { ...ALL_CLEAR, hernia: 'yes' } }],
    ['nine weeks after birth', { afterBirth: { weeks: 9 } }],
  ])('with %s: four at least, holds of 15 seconds at most, and it is said', (_, different) => {
    const { programme, reserve, hold } = least(different);
    expect(reserve).toBeGreaterThanOrEqual(4);
    expect(hold).toBeLessThanOrEqual(15);
    const heed = ownLines(programme).join('\n');
    expect(heed).toContain('End each set while you could still do 4 more.');
    expect(JSON.stringify(programme.exercises)).toContain('no straining');
  });

  it('in pregnancy are four at least, with holds as long as anybody else', () => {
    const { programme, reserve, hold } = least({ pregnancy: { weeks: 12 } });
    expect(reserve).toBeGreaterThanOrEqual(4);
    expect(hold).toBe(least({}).hold);
    const heed = ownLines(programme).join('\n');
    expect(heed).toContain('Never hold your breath. End each set while you could still do 4 more.');
    expect(JSON.stringify(programme.exercises)).toContain('no straining: pregnancy');
  });

  it('are the dose again half a year after birth', () => {
    expect(least({ afterBirth: { weeks: 26 } }).reserve).toBe(2);
  });
});
