/** A consult's text under the hands of the form: what is not touched stays as it is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bodyOf, isEditable, valueOf, withBody, withValue } from '../../src/desk/consult/consultText.ts';
import { fieldsOf } from '../../src/desk/catalogue.ts';
import { pathOf, patternOf, valueIn } from '../../src/desk/consult/path.ts';

const order = Object.keys(fieldsOf());
const demo = ['otter', 'heron', 'marten'].map((alias) =>
  readFileSync(`content/consults/${alias}-r1.md`, 'utf8'),
);
const set = (text: string, name: string, value: unknown) => withValue(text, name, value, order);

const NAMES = [
  'ageYears',
  'painArea',
  'screen.fever',
  'tests.0.pain',
  'kit.rucksack',
  'running.weeklyKm',
  'massKg',
];

describe.each(demo.map((text) => [valueOf(text)['alias'], text] as const))('the consult of %s', (_, text) => {
  it.each(NAMES)('is the same text again once %s was changed and changed back', (name) => {
    const there = valueIn(valueOf(text), pathOf(name));
    const changed = set(text, name, 'something else');
    expect(valueIn(valueOf(changed), pathOf(name))).toBe('something else');
    expect(set(changed, name, there)).toBe(text);
  });

  it.each(['ageYears', 'massKg', 'screen.fever'])(
    'is the same text again once %s was taken out and put back',
    (name) => {
      const there = valueIn(valueOf(text), pathOf(name));
      expect(set(set(text, name, undefined), name, there)).toBe(text);
    },
  );

  it('keeps the notes beneath', () => {
    expect(withBody(text, bodyOf(text))).toBe(text);
    expect(bodyOf(withBody(text, 'New.\n'))).toBe('New.\n');
  });
});

describe('what an author wrote beside the keys', () => {
  const written =
    '---\r\n# seen late\r\nalias: otter # not her name\r\nageYears: 38\r\ndays: [mon, wed]\r\n---\r\nNotes.\r\n';

  it('stays: comments, lists in a line, line ends, the text beneath', () => {
    expect(set(written, 'ageYears', 39)).toBe(written.replace('38', '39'));
  });

  it('stays with a byte order mark before it', () => {
    expect(set(`\uFEFF${written}`, 'ageYears', 39)).toBe(`\uFEFF${written.replace('38', '39')}`);
  });
});

describe('a new consult', () => {
  it('has its keys in the order of the schema, in whatever order they were answered', () => {
    const answers: [string, unknown][] = [
      ['screen.fever', 'no'],
      ['tests.0.test', 'hop'],
      ['alias', 'heron'],
      ['tests.0.pain', 3],
      ['screen.saddleNumbness', 'no'],
      ['kit.dumbbellsKg', []],
      ['kit.dumbbellsKg.0', 4],
    ];
    expect(answers.reduce((text, [name, value]) => set(text, name, value), '---\n---\n')).toBe(
      '---\nalias: heron\nscreen:\n  saddleNumbness: no\n  fever: no\ntests:\n  - test: hop\n    pain: 3\nkit:\n  dumbbellsKg:\n    - 4\n---\n',
    );
  });
});

describe('a text that is no consult', () => {
  it.each([
    ['no head', 'Hello'],
    ['a head without an end', '---\nalias: x\n'],
    ['a list', '---\n- 1\n---\n'],
    ['broken YAML', '---\na: [1\nb: 2\n---\n'],
  ])('cannot be changed: %s', (_, text) => {
    expect(isEditable(text)).toBe(false);
    expect(valueOf(text)).toEqual({});
  });

  it('gives nothing of what every object has', () => {
    const value = valueOf('---\n__proto__: {polluted: yes}\nconstructor: x\n---\n');
    expect(valueIn(value, ['toString'])).toBeUndefined();
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

it.each([
  ['tests.0.pain', 'tests.*.pain'],
  ['kit.dumbbellsKg.1', 'kit.dumbbellsKg.*'],
  ['alias', 'alias'],
])('%s is %s in the schema', (name, pattern) => {
  expect(patternOf(name)).toBe(pattern);
});
