/**
 * The JSON Schemas that editors read, against the shipped files, by a plain reading of the keywords of JSON Schema
 * 2020-12 (json-schema.org/draft/2020-12, applicator and validation vocabularies): what the checks take the editor takes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { FOLDERS, type Kind } from '../../src/content/kind.ts';
import { jsonSchemaOf } from '../../src/content/schema/jsonSchema.ts';

interface Schema {
  readonly [keyword: string]: unknown;
}

/** Every keyword that occurs; one that is not here fails. Null: it asks nothing of a value. */
const KEYWORDS: Readonly<
  Record<string, ((asked: never, value: unknown, at: string, schema: Schema) => string[]) | null>
> = {
  $schema: null,
  description: null,
  default: null,
  format: null,
  type: (asked: string | string[], value, at) =>
    typesOf(value).some((type) => [asked].flat().includes(type)) ? [] : [`${at}: no ${String(asked)}`],
  enum: (asked: unknown[], value, at) =>
    asked.includes(value) ? [] : [`${at}: none of ${asked.join(', ')}`],
  const: (asked: unknown, value, at) => (asked === value ? [] : [`${at}: not ${String(asked)}`]),
  minimum: (asked: number, value, at) =>
    typeof value !== 'number' || value >= asked ? [] : [`${at}: too small`],
  maximum: (asked: number, value, at) =>
    typeof value !== 'number' || value <= asked ? [] : [`${at}: too large`],
  exclusiveMinimum: (asked: number, value, at) =>
    typeof value !== 'number' || value > asked ? [] : [`${at}: too small`],
  minLength: (asked: number, value, at) => (lengthOf(value) >= asked ? [] : [`${at}: too short`]),
  maxLength: (asked: number, value, at) =>
    typeof value !== 'string' || value.length <= asked ? [] : [`${at}: too long`],
  pattern: (asked: string, value, at) =>
    typeof value !== 'string' || new RegExp(asked, 'u').test(value) ? [] : [`${at}: not like ${asked}`],
  minItems: (asked: number, value, at) =>
    !Array.isArray(value) || value.length >= asked ? [] : [`${at}: too few`],
  maxItems: (asked: number, value, at) =>
    !Array.isArray(value) || value.length <= asked ? [] : [`${at}: too many`],
  required: (asked: string[], value, at) =>
    isGroup(value) ? asked.filter((key) => !(key in value)).map((key) => `${at}: no ${key}`) : [],
  properties: (asked: Record<string, Schema>, value, at) =>
    isGroup(value)
      ? Object.entries(asked).flatMap(([key, one]) =>
          key in value ? faults(one, value[key], `${at}.${key}`) : [],
        )
      : [],
  additionalProperties: (asked: Schema | false, value, at, { properties = {} }) =>
    isGroup(value)
      ? Object.keys(value)
          .filter((key) => !(key in (properties as object)))
          .flatMap((key) =>
            asked === false ? [`${at}: unknown ${key}`] : faults(asked, value[key], `${at}.${key}`),
          )
      : [],
  propertyNames: (asked: Schema, value, at) =>
    isGroup(value) ? Object.keys(value).flatMap((key) => faults(asked, key, `${at}.${key}`)) : [],
  items: (asked: Schema, value, at) =>
    Array.isArray(value) ? value.flatMap((one, index) => faults(asked, one, `${at}[${index}]`)) : [],
  prefixItems: (asked: Schema[], value, at) =>
    Array.isArray(value) ? asked.flatMap((one, index) => faults(one, value[index], `${at}[${index}]`)) : [],
  anyOf: (asked: Schema[], value, at) =>
    asked.some((one) => faults(one, value, at).length === 0) ? [] : [`${at}: fits none`],
  oneOf: (asked: Schema[], value, at) =>
    asked.filter((one) => faults(one, value, at).length === 0).length === 1
      ? []
      : [`${at}: fits none or several`],
  allOf: (asked: Schema[], value, at) => asked.flatMap((one) => faults(one, value, at)),
};

function faults(schema: Schema, value: unknown, at: string): string[] {
  return Object.entries(schema).flatMap(([keyword, asked]) => {
    const read = KEYWORDS[keyword];
    if (read === undefined) throw new Error(`no reading of ${keyword} at ${at}`);
    return read === null ? [] : read(asked as never, value, at, schema);
  });
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function typesOf(value: unknown): string[] {
  if (Array.isArray(value)) return ['array'];
  if (typeof value === 'number') return Number.isInteger(value) ? ['number', 'integer'] : ['number'];
  return [isGroup(value) ? 'object' : value === null ? 'null' : typeof value];
}

function lengthOf(value: unknown): number {
  return typeof value === 'string' ? value.length : Infinity;
}

const headOf = (text: string): unknown =>
  parseDocument(text.slice(4, text.indexOf('\n---\n', 4)), { schema: 'core' }).toJS();
const SCHEMAS = Object.fromEntries(
  ([...Object.keys(FOLDERS), 'clinic'] as Kind[]).map((kind) => [kind, jsonSchemaOf(kind) as Schema]),
) as Record<Kind, Schema>;
const faultsIn = (kind: Kind, text: string) => faults(SCHEMAS[kind], headOf(text), kind);

describe('the schema an editor reads', () => {
  const files = (Object.entries(FOLDERS) as [keyof typeof FOLDERS, string][]).flatMap(([kind, folder]) =>
    readdirSync(join('content', folder)).map((file) => ({
      kind: kind as Kind,
      file: `content/${folder}/${file}`,
    })),
  );

  it.each([...files, { kind: 'clinic' as Kind, file: 'content/clinic.md' }])(
    'takes $file',
    ({ kind, file }) => {
      expect(faultsIn(kind, readFileSync(file, 'utf8'))).toEqual([]);
    },
  );

  it.each((['exercise', 'advice', 'protocol'] as const).map((kind) => ({ kind })))(
    'takes the starter of the kind $kind',
    ({ kind }) => {
      expect(faultsIn(kind, readFileSync(`shared/starters/${kind}.md`, 'utf8'))).toEqual([]);
    },
  );

  it('shows every empty answer of a consult’s starter', () => {
    const faults = faultsIn('consult', readFileSync('shared/starters/consult.md', 'utf8'));
    expect(faults.length).toBeGreaterThan(30);
    expect(faults.filter((fault) => fault.includes('screen'))).toEqual([]);
  });

  const card = readFileSync('content/exercises/hip-hinge.md', 'utf8');
  it.each([
    // what is wrong            from                to                      what the editor shows
    ['an unknown key', 'tempo:', 'temps: 1\ntempo:', 'exercise: unknown temps'],
    ['a missing key', /^title: .*\n/m, '', 'exercise: no title'],
    ['a wrong word', 'kind: isotonic', 'kind: isotonik', 'exercise.kind: none of'],
    ['a number out of range', 'hip: 60', 'hip: 160', 'exercise.end.work.hip: too large'],
    ['a text for a number', 'hip: 60', 'hip: deep', 'exercise.end.work.hip: no number'],
    ['a wrong form of id', 'needs: []', 'needs: []\neasier: No Such', 'exercise.easier: not like'],
    ['an unknown key deep down', 'loadAt: hands', 'photos: [{ file: a.jpg, alt: A, by: me }]', 'unknown by'],
    ['a photo without its words', 'loadAt: hands', 'photos: [{ file: a.jpg }]', 'exercise.photos[0]: no alt'],
  ])('shows %s', (_, from, to, shown) => {
    const text = card.replace(from, to);
    expect(text).not.toBe(card);
    expect(faultsIn('exercise', text).join('\n')).toContain(shown);
  });

  it.each(Object.entries(SCHEMAS).map(([kind, schema]) => ({ kind, schema })))(
    'explains every key of the kind $kind',
    ({ schema }) => {
      const unsaid: string[] = [];
      const look = (one: Schema, at: string): void => {
        for (const [key, value] of Object.entries((one['properties'] ?? {}) as Record<string, Schema>)) {
          if (typeof value['description'] !== 'string' && !/\.(value|mark|cite)$/.test(`${at}.${key}`))
            unsaid.push(`${at}.${key}`);
          look(value, `${at}.${key}`);
        }
        for (const inner of ['items', 'additionalProperties'] as const)
          if (isGroup(one[inner])) look(one[inner] as Schema, `${at}[]`);
      };
      look(schema, '');
      expect(unsaid).toEqual([]);
    },
  );
});
