import { describe, expect, it } from 'vitest';
import { SCHEMAS, type Kind } from '../../src/content/kind.ts';
import { jsonSchemaOf } from '../../src/content/schema/jsonSchema.ts';
import { OVERRIDES } from '../../src/content/schema/override.ts';
import { protocolSchema } from '../../src/content/schema/protocol.ts';
import { sourceText } from '../../src/content/sourceText.ts';
import { readYaml } from '../../src/content/yaml.ts';
import { CELLS } from '../../src/decisions/terms/cell.ts';
import { SAMPLE } from './sample.ts';

const kinds = Object.keys(SCHEMAS) as Kind[];

describe('overrides', () => {
  it('know the cells of the dosage table, no more and no fewer', () => {
    expect(Object.keys(OVERRIDES)).toEqual([...CELLS]);
  });
});

describe('jsonSchemaOf', () => {
  it.each(kinds)('describes every key of %s and allows no other', (kind) => {
    const schema = jsonSchemaOf(kind) as {
      additionalProperties: boolean;
      properties: Record<string, { description?: string }>;
    };
    expect(schema.additionalProperties).toBe(false);
    expect(Object.keys(schema.properties)).toEqual(Object.keys(SCHEMAS[kind].shape));
    for (const [key, property] of Object.entries(schema.properties))
      expect(property.description, key).toMatch(/\S/);
  });

  it('asks of the author what the author must write, not what is filled in', () => {
    const { required } = jsonSchemaOf('consult');
    expect(required).toContain('screen');
    expect(required).not.toContain('clearances');
    expect(required).not.toContain('massKg');
  });
});

describe('rules of a protocol', () => {
  const head = SAMPLE['protocols/hamstring.md'].split('---\n')[1] ?? '';

  function issuesWith(passage: string, by: string): string[] {
    expect(head).toContain(passage);
    const text = head.replace(passage, by);
    const parsed = protocolSchema.safeParse(readYaml(sourceText('a.md', text), text, 0).value);
    return parsed.success
      ? []
      : parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
  }

  it('takes the sample', () => {
    expect(issuesWith('sets: 3', 'sets: 3')).toEqual([]);
  });

  it.each([
    [
      'weeks',
      'usualWeeks: { from: 1, to: 3 }',
      'usualWeeks: { from: 4, to: 3 }',
      ['stages.0.usualWeeks.to: at least usualWeeks.from (4)'],
    ],
    [
      'opens to less than its cap',
      'supportMargin: 1.25',
      'supportMargin: 1.25\n    opensToDeg: 45',
      ['stages.0.opensToDeg: at least caps.hipFlexionDeg (60)'],
    ],
    [
      'opens without a cap',
      'supportMargin: 1\n',
      'supportMargin: 1\n    opensToDeg: 45\n',
      ['stages.1.opensToDeg: left out where caps.hipFlexionDeg is none'],
    ],
    [
      'a cap lower than before',
      'demand: none',
      'demand: 0.5',
      ['stages.1.caps.demand: at least that of the stage before (0.6)'],
    ],
    ['no cap in either', 'demand: 0.6 }', 'demand: none }', []],
    [
      'keep before the end',
      'name: hold',
      'name: keep',
      [
        'stages.0.name: the last stage, if it is called keep',
        'stages.1.name: another than that of an entry before',
      ],
    ],
    [
      'pain during above never',
      'neverAbove: { value: 5',
      'neverAbove: { value: 2',
      ['painRule.neverAbove.value: at least painRule.duringAtMost.value (3)'],
    ],
    [
      'slow without repetitions',
      'repetitions: 8,',
      '',
      ['stages.0.slots.0.dose.repetitions: there for a dose of kind slow'],
    ],
    [
      'mobility without either',
      'slow, sets: 3, repetitions: 8, restSeconds: 120, timesPerDay: 1, reserve: 3',
      'mobility, sets: 3, restSeconds: 0, timesPerDay: 1',
      ['stages.0.slots.0.dose: given repetitions or holdSeconds, one of the two'],
    ],
    [
      'reserve in a hold',
      'timesPerDay: 1, source',
      'timesPerDay: 1, reserve: 2, source',
      ['stages.1.slots.0.dose.reserve: left out of a dose of kind hold'],
    ],
    [
      'two tests of one id',
      '- { id: bridge-hold, name: Bridge hold, lowFlexion: yes }',
      '- { id: a, name: A, lowFlexion: yes }\n  - { id: a, name: B, lowFlexion: yes }',
      ['tests.1.id: another than that of an entry before'],
    ],
    [
      'more needed slots than exercises',
      'maxExercises: 4\n    slots:',
      'maxExercises: 1\n    slots:\n      - { name: first, needed: yes, cards: [bridge], dose: { kind: hold, sets: 1, holdSeconds: 5, restSeconds: 0, timesPerDay: 1, source: { cite: house choice, mark: choice } }, progression: [] }',
      ['stages.0.maxExercises: at least 2, for so many slots of a session are needed'],
    ],
  ])('%s', (_, passage, by, issues) => {
    expect(issuesWith(passage, by)).toEqual(issues);
  });

  it('refuses a cap after a stage without one', () => {
    const lifted = head
      .replace('demand: 0.6 }', 'demand: none }')
      .replace(/demand: none \}(?=\n    supportMargin: 1\n)/, 'demand: 1 }');
    const parsed = protocolSchema.safeParse(readYaml(sourceText('a.md', lifted), lifted, 0).value);
    expect(parsed.error?.issues.map(({ message }) => message)).toEqual(['none, as in the stage before']);
  });
});
