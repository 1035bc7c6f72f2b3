/** What the form knows before a consult is written: keys with their sentences, cards, tests, countries. Made by the build. */
import { jsonSchemaOf } from '../content/schema/jsonSchema.ts';
import { testNameIn } from '../content/testName.ts';
import { SCREEN_ITEMS } from '../content/schema/consult.ts';
import { effectOf } from '../decisions/screen/screen.ts';
import { EFFECT_WORDS } from '../messages/en/desk/screen.ts';
import type { ExerciseCard, Library, Protocol } from '../content/library.ts';

/** A key of the consult, its list entries as `*`: `tests.*.pain`. */
export interface FieldAbout {
  readonly help: string;
  readonly kind: 'text' | 'number' | 'yesNo' | 'words' | 'date' | 'list' | 'group';
  readonly words: readonly (string | number)[];
  readonly least: number | null;
  readonly most: number | null;
  readonly isNeeded: boolean;
}

export type Fields = Readonly<Record<string, FieldAbout>>;

export interface CardName {
  readonly id: string;
  readonly title: string;
  readonly positions: readonly string[];
  readonly hasPicture: boolean;
  readonly hasPose: boolean;
  readonly hasWeight: boolean;
}

export interface ProtocolName {
  readonly id: string;
  readonly title: string;
  readonly angle: string;
  readonly stages: readonly string[];
  readonly tests: readonly { readonly id: string; readonly name: string; readonly card: string | null }[];
}

export interface DeskCatalogue {
  readonly fields: Fields;
  readonly keys: readonly string[];
  readonly cards: readonly CardName[];
  readonly protocols: readonly ProtocolName[];
  readonly countries: readonly { readonly code: string; readonly name: string }[];
  readonly bands: readonly string[];
  readonly clinic: string;
  /** What each screen item does where it is yes or was not asked. */
  readonly effects: Readonly<Record<string, string>>;
  readonly starts: Starts;
}

/** What a new consult may begin with. */
export interface Starts {
  readonly country: string | null;
  readonly clinician: string | null;
  readonly reviewAfterWeeks: number | null;
  readonly minutesPerDay: number | null;
  /** Where the clinic publishes; null where it does not say. */
  readonly site: string | null;
}

export function catalogueOf(library: Library): DeskCatalogue {
  const { exercises, protocols, clinic } = library;
  const countries = Object.entries(clinic.emergency).map(([code, { country }]) => ({ code, name: country }));
  return {
    fields: fieldsOf(),
    keys: Object.keys(properties(jsonSchemaOf('consult'))),
    cards: [...exercises.values()].map(cardName),
    protocols: [...protocols.values()].map((protocol) => protocolName(protocol, library)),
    countries,
    bands: Object.keys(clinic.defaults.bandNewtons),
    clinic: clinic.name,
    effects: Object.fromEntries(SCREEN_ITEMS.map((item) => [item, EFFECT_WORDS[effectOf(item)]])),
    starts: {
      country: clinic.defaults.country ?? (countries.length === 1 ? (countries[0]?.code ?? null) : null),
      clinician: clinic.defaults.clinician ?? null,
      reviewAfterWeeks: clinic.defaults.reviewAfterWeeks ?? null,
      minutesPerDay: clinic.defaults.minutesPerDay ?? null,
      site: clinic.site === undefined ? null : `${clinic.site.url}${clinic.site.pathPrefix}`,
    },
  };
}

function cardName({ id, title, positions, movement, picture }: ExerciseCard): CardName {
  return {
    id,
    title,
    positions,
    hasPicture: movement !== null || picture !== null,
    hasPose: movement !== null,
    hasWeight: movement === null || movement.loadAt !== undefined,
  };
}

function protocolName({ id, title, angle, stages, tests }: Protocol, library: Library): ProtocolName {
  const nameOf = testNameIn(library, id);
  return {
    id,
    title,
    angle,
    stages: stages.map(({ name }) => name),
    tests: tests.map((test) => ({
      id: test.id,
      name: nameOf(test.id),
      card: library.exercises.has(test.id) ? test.id : null,
    })),
  };
}

interface Node {
  readonly description?: string;
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly items?: Node;
  readonly enum?: readonly (string | number)[];
  readonly const?: string | number;
  readonly anyOf?: readonly Node[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly format?: string;
}

function properties(node: unknown): Readonly<Record<string, Node>> {
  return (node as Node).properties ?? {};
}

/** Every key of the consult's schema, groups and lists too, in its order. */
export function fieldsOf(): Fields {
  const fields: Record<string, FieldAbout> = {};
  const walk = (node: Node, path: string): void => {
    const needed = new Set(node.required ?? []);
    for (const [key, inner] of Object.entries(properties(node))) {
      const at = path === '' ? key : `${path}.${key}`;
      fields[at] = fieldOf(inner, needed.has(key));
      walk(inner, at);
    }
    if (node.items !== undefined) walkItem(node.items, `${path}.*`);
  };
  const walkItem = (item: Node, at: string): void => {
    fields[at] = fieldOf(item, true);
    walk(item, at);
  };
  walk(jsonSchemaOf('consult') as Node, '');
  return fields;
}

function fieldOf(node: Node, isNeeded: boolean): FieldAbout {
  const words = wordsOf(node);
  return {
    help: node.description ?? '',
    kind: kindOf(node, words),
    words,
    least: node.minimum ?? null,
    most: node.maximum ?? null,
    isNeeded,
  };
}

function kindOf(node: Node, words: FieldAbout['words']): FieldAbout['kind'] {
  if (node.properties !== undefined) return 'group';
  if (node.type === 'array') return 'list';
  if (node.format === 'date') return 'date';
  if (node.anyOf?.some(({ type }) => type === 'boolean')) return 'yesNo';
  if (words.length > 0) return 'words';
  return node.type === 'number' || node.type === 'integer' ? 'number' : 'text';
}

function wordsOf(node: Node): (string | number)[] {
  if (node.enum !== undefined) return [...node.enum];
  if (node.const !== undefined) return [node.const];
  return (node.anyOf ?? []).flatMap(wordsOf);
}
