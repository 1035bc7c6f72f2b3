/** The form against the schema: a key that is added there cannot be forgotten here. */
import { describe, expect, it } from 'vitest';
import { fieldsOf } from '../../src/desk/catalogue.ts';
import { labelOf } from '../../src/desk/form/labelOf.ts';
import { isEntries, PARTS, placedKeys, SCREEN_GROUPS, type Row } from '../../src/desk/form/layout.ts';
import { ENTRY_WORDS, KEY_LABELS } from '../../src/messages/en/desk/form.ts';
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

/** Lists of entries, those within others too. */
function placedLists(rows: readonly Row[] = PARTS.flatMap((part) => part.rows), around = ''): string[] {
  return rows.filter(isEntries).flatMap(({ path, fields: inner }) => {
    const way = `${around}${path}`;
    return [way, ...placedLists(inner, `${way}.*.`)];
  });
}

describe('the form', () => {
  it('has a place for every key of a consult, and none for any other', () => {
    expect([...placedKeys()].sort()).toEqual([...leaves].sort());
  });

  it('has a sentence of help for every key', () => {
    expect(placedKeys().filter((path) => (fields[path]?.help ?? '') === '')).toEqual([]);
  });

  it('calls every key, list and entry something, and has no word for any other', () => {
    const lists = Object.keys(ENTRY_WORDS);
    const items = SCREEN_ITEMS.map((item) => `screen.${item}`);
    expect([...Object.keys(KEY_LABELS), ...items].sort()).toEqual([...leaves, ...lists].sort());
    expect(placedLists().sort()).toEqual(lists.sort());
    const said = [
      ...Object.values(KEY_LABELS),
      ...Object.values(ENTRY_WORDS).flatMap(({ add, one }) => [add, one]),
    ];
    expect(said.filter((words) => words === '')).toEqual([]);
  });

  it('asks every screen item once, in a group', () => {
    expect(SCREEN_GROUPS.flatMap(({ items }) => items.map(([item]) => item)).sort()).toEqual(
      [...SCREEN_ITEMS].sort(),
    );
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
