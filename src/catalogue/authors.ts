/** The authors' reference: every key of every kind of file, read out of the JSON Schema that editors use too. */
import type { z } from 'zod';
import type { Kind } from '../content/kind.ts';
import { HEADINGS } from '../content/prose/headings.ts';
import { jsonSchemaOf } from '../content/schema/jsonSchema.ts';
import {
  AUTHORS_LEAD,
  AUTHORS_TITLE,
  headingsSentence,
  CONSULTS,
  CONSULTS_HEADING,
  defaultText,
  FORM,
  KEY_COLUMNS,
  keysCaption,
  KIND_FILES,
  KIND_HEADINGS,
  listForm,
  mapForm,
  NEEDED,
  OVERLAY,
  OVERLAY_HEADING,
  sameAs,
  spanForm,
  settingForm,
} from '../messages/en/catalogue/authors.ts';
import { listText } from '../messages/en/plain.ts';
import { paragraph, section, table, type Section } from '../messages/shapes.ts';
import type { PlainPage } from './view.ts';

type Schema = z.core.JSONSchema.BaseSchema;

const KINDS: readonly Kind[] = ['exercise', 'protocol', 'advice', 'clinic', 'consult'];

export function authorsPage(): PlainPage {
  return {
    title: AUTHORS_TITLE,
    lead: AUTHORS_LEAD,
    sections: [
      ...KINDS.map(kindSection),
      section(
        'revisions',
        CONSULTS_HEADING,
        CONSULTS.map((one) => paragraph(one)),
      ),
      section(
        'own-folder',
        OVERLAY_HEADING,
        OVERLAY.map((one) => paragraph(one)),
      ),
    ],
  };
}

function kindSection(kind: Kind): Section {
  const { headings, required } = HEADINGS[kind];
  return section(kind, KIND_HEADINGS[kind], [
    paragraph(KIND_FILES[kind]),
    table(keysCaption(kind), KEY_COLUMNS, keyRows(jsonSchemaOf(kind))),
    paragraph(headingsSentence(headings, required)),
  ]);
}

/** A row for each key, those of a group after the group's own. A group that came before is named instead of told again. */
export function keyRows(schema: Schema): readonly (readonly string[])[] {
  return rowsBelow(schema, '', new Map());
}

function rowsBelow(schema: Schema, before: string, told: Map<string, string>): string[][] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, value]) => {
    if (typeof value === 'boolean') return [];
    const path = before === '' ? key : `${before}.${key}`;
    const needed = schema.required?.includes(key) ?? false;
    return rowsOf(value, path, needed, told);
  });
}

function rowsOf(schema: Schema, path: string, needed: boolean, told: Map<string, string>): string[][] {
  const inner = groupIn(schema);
  const setting = settingValueOf(schema);
  const form = setting === null ? formOf(schema) : settingForm(formOf(setting));
  const row = (may: string) => [path, schema.description ?? '', may, neededText(schema, needed)];
  if (inner === null || setting !== null) return [row(form)];
  const text = JSON.stringify({ ...inner.group, description: undefined });
  const same = told.get(text);
  if (same !== undefined) return [row(sameAs(same))];
  told.set(text, path);
  return [row(form), ...rowsBelow(inner.group, `${path}${inner.steps}`, told)];
}

/** The group of keys a value holds, itself or in its list or map, with what stands between in the path. */
function groupIn(schema: Schema): { readonly group: Schema; readonly steps: string } | null {
  if (schema.properties !== undefined) return { group: schema, steps: '' };
  const [below, step] = listed(schema) ?? mapped(schema) ?? [];
  const deeper = below === undefined ? null : groupIn(below);
  return deeper === null ? null : { group: deeper.group, steps: `${step ?? ''}${deeper.steps}` };
}

function listed({ items }: Schema): [Schema, string] | null {
  return typeof items === 'object' && !Array.isArray(items) ? [items, '[]'] : null;
}

function mapped({ additionalProperties: each }: Schema): [Schema, string] | null {
  return typeof each === 'object' ? [each, '.<name>'] : null;
}

/** A house number is a group of value, mark and source; one row says it. */
function settingValueOf({ properties }: Schema): Schema | null {
  const value = properties?.['value'];
  return typeof value === 'object' && properties?.['mark'] !== undefined ? value : null;
}

function formOf(schema: Schema): string {
  if (schema.enum !== undefined) return listText(schema.enum.map(String), 'or');
  if (schema.const !== undefined) return String(schema.const);
  const ways = schema.anyOf ?? schema.oneOf;
  if (ways !== undefined)
    return listText(
      [...new Set(ways.map((way) => (typeof way === 'boolean' ? FORM.any : formOf(way))))],
      'or',
    );
  const [list] = listed(schema) ?? [];
  if (list !== undefined) return listForm(formOf(list));
  if (Array.isArray(schema.prefixItems)) return listForm(FORM.number);
  const [each] = mapped(schema) ?? [];
  if (each !== undefined) return mapForm(formOf(each));
  return plainForm(schema);
}

function plainForm({ type, format, minimum, maximum, pattern, properties }: Schema): string {
  if (properties !== undefined) return FORM.group;
  switch (type) {
    case 'number':
      return spanForm(FORM.number, minimum, maximum);
    case 'integer':
      return spanForm(FORM.integer, minimum, maximum);
    case 'boolean':
      return FORM.boolean;
    case 'string':
      if (format === 'date') return FORM.date;
      return pattern?.includes('a-z0-9-') === true ? FORM.id : FORM.string;
    default:
      return FORM.any;
  }
}

function neededText({ default: preset }: Schema, needed: boolean): string {
  if (preset === undefined) return needed ? NEEDED.yes : NEEDED.no;
  return typeof preset === 'object' ? NEEDED.no : defaultText(String(preset));
}
