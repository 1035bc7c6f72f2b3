/** The authors' reference: every key of every kind of file, read out of the JSON Schema that editors use too. */
import type { Messages } from '../messages/messages.ts';
import type { z } from 'zod';
import type { Kind } from '../content/kind.ts';
import { HEADINGS } from '../content/prose/headings.ts';
import { jsonSchemaOf } from '../content/schema/jsonSchema.ts';

import { paragraph, section, table, type Section } from '../messages/shapes.ts';
import type { PlainPage } from './view.ts';

type Schema = z.core.JSONSchema.BaseSchema;

const KINDS: readonly Kind[] = ['exercise', 'protocol', 'advice', 'clinic', 'page', 'consult'];

export function authorsPage(say: Messages): PlainPage {
  return {
    title: say.AUTHORS_TITLE,
    lead: say.AUTHORS_LEAD,
    sections: [
      ...KINDS.map((kind) => kindSection(say, kind)),
      section(
        'revisions',
        say.CONSULTS_HEADING,
        say.CONSULTS.map((one) => paragraph(one)),
      ),
      section(
        'own-folder',
        say.OVERLAY_HEADING,
        say.OVERLAY.map((one) => paragraph(one)),
      ),
    ],
  };
}

function kindSection(say: Messages, kind: Kind): Section {
  const { headings, required } = HEADINGS[kind];
  return section(kind, say.KIND_HEADINGS[kind], [
    paragraph(say.KIND_FILES[kind]),
    table(say.keysCaption(kind), say.KEY_COLUMNS, keyRows(say, jsonSchemaOf(kind))),
    paragraph(say.headingsSentence(headings, required)),
  ]);
}

/** A row for each key, those of a group after the group's own. A group that came before is named instead of told again. */
function keyRows(say: Messages, schema: Schema): readonly (readonly string[])[] {
  return rowsBelow(say, schema, '', new Map());
}

function rowsBelow(say: Messages, schema: Schema, before: string, told: Map<string, string>): string[][] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, value]) => {
    if (typeof value === 'boolean') return [];
    const path = before === '' ? key : `${before}.${key}`;
    const needed = schema.required?.includes(key) ?? false;
    return rowsOf(say, value, path, needed, told);
  });
}

function rowsOf(
  say: Messages,
  schema: Schema,
  path: string,
  needed: boolean,
  told: Map<string, string>,
): string[][] {
  const inner = groupIn(schema);
  const setting = settingValueOf(schema);
  const form = setting === null ? formOf(say, schema) : say.settingForm(formOf(say, setting));
  const row = (may: string) => [path, schema.description ?? '', may, neededText(say, schema, needed)];
  if (inner === null || setting !== null) return [row(form)];
  const text = JSON.stringify({ ...inner.group, description: undefined });
  const same = told.get(text);
  if (same !== undefined) return [row(say.sameAs(same))];
  told.set(text, path);
  return [row(form), ...rowsBelow(say, inner.group, `${path}${inner.steps}`, told)];
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

function formOf(say: Messages, schema: Schema): string {
  if (schema.enum !== undefined) return say.listText(schema.enum.map(String), 'or');
  if (schema.const !== undefined) return String(schema.const);
  const ways = schema.anyOf ?? schema.oneOf;
  if (ways !== undefined)
    return say.listText(
      [...new Set(ways.map((way) => (typeof way === 'boolean' ? say.FORM.any : formOf(say, way))))],
      'or',
    );
  const [list] = listed(schema) ?? [];
  if (list !== undefined) return say.listForm(formOf(say, list));
  if (Array.isArray(schema.prefixItems)) return say.listForm(say.FORM.number);
  const [each] = mapped(schema) ?? [];
  if (each !== undefined) return say.mapForm(formOf(say, each));
  return plainForm(say, schema);
}

function plainForm(say: Messages, { type, format, minimum, maximum, pattern, properties }: Schema): string {
  if (properties !== undefined) return say.FORM.group;
  switch (type) {
    case 'number':
      return say.spanForm(say.FORM.number, minimum, maximum);
    case 'integer':
      return say.spanForm(say.FORM.integer, minimum, maximum);
    case 'boolean':
      return say.FORM.boolean;
    case 'string':
      if (format === 'date') return say.FORM.date;
      return pattern?.includes('a-z0-9-') === true ? say.FORM.id : say.FORM.string;
    default:
      return say.FORM.any;
  }
}

function neededText(say: Messages, { default: preset }: Schema, needed: boolean): string {
  if (preset === undefined) return needed ? say.NEEDED.yes : say.NEEDED.no;
  return typeof preset === 'object' ? say.NEEDED.no : say.defaultText(String(preset));
}
