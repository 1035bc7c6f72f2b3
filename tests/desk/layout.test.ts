/** The form against the schema: a key that is added there cannot be forgotten here. */
import { describe, expect, it } from 'vitest';
import { fieldsOf } from '../../src/desk/catalogue.ts';
import { labelOf } from '../../src/desk/form/labelOf.ts';
import { placedKeys, SCREEN_GROUPS } from '../../src/desk/form/layout.ts';
import { usualOf } from '../../src/desk/form/fourWeeks.ts';
import { SCREEN_ITEMS } from '../../src/content/schema/consult.ts';

const fields = fieldsOf();

/** Keys that hold a value themselves: no group, and no list of groups. */
const leaves = Object.entries(fields)
  .filter(
    ([path, { kind }]) => kind !== 'group' && !(kind === 'list' && fields[`${path}.*`]?.kind === 'group'),
  )
  .map(([path]) => path)
  .filter((path) => !path.endsWith('.*'));

describe('the form', () => {
  it('has a place for every key of a consult, and none for any other', () => {
    expect([...placedKeys()].sort()).toEqual([...leaves].sort());
  });

  it('has a sentence of help for every key', () => {
    expect(placedKeys().filter((path) => (fields[path]?.help ?? '') === '')).toEqual([]);
  });

  it('asks every screen item once, in a group', () => {
    expect(SCREEN_GROUPS.flatMap(({ items }) => Object.keys(items)).sort()).toEqual([...SCREEN_ITEMS].sort());
  });

  it.each([
    ['tests.0.pain', 'Test 1: Pain during it'],
    ['screen.fever', 'Fever, or feeling ill with it'],
    ['kit', 'Kit at home'],
    ['tests', 'Tests done today'],
    ['chosen.1.card', 'Choice 2: Exercise'],
  ])('calls %s "%s"', (path, label) => {
    expect(labelOf(path)).toBe(label);
  });
});

describe('the last four weeks of running', () => {
  const weeks = (km: readonly (number | null)[]) =>
    km.map((one) => ({ km: one, longestKm: one === null ? null : one / 2 }));

  it.each([
    [[20, 24, 22, 25], { weeklyKm: 22.5, longestKm: 12.5 }],
    [[0, 0, 10, 11], { weeklyKm: 5, longestKm: 5.5 }],
    [[20, 24, null, 25], null],
  ])('of %j follow %j', (km, expected) => {
    expect(usualOf(weeks(km))).toEqual(expected);
  });
});
