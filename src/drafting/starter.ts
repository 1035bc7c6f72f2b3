/** A starter file: keys with the sentence of the schema before each, filled in for the library it is written into. */
import { Document, isMap, isScalar, isSeq, parseDocument, type YAMLMap } from 'yaml';
import { SCHEMAS, type FOLDERS } from '../content/kind.ts';
import type { Path } from '../content/path.ts';
import { keysOf, schemaAt, sentenceAt, wordsOf } from '../content/schema/schemaAt.ts';

export type StarterKind = keyof typeof FOLDERS;

/** The file a starter becomes; of a consult also whose it is. */
export interface StarterName {
  readonly file: string;
  readonly alias: string;
  readonly revision: number;
}

/** What the starter says in place of what the shipped one says. */
export interface Filling {
  readonly path: readonly (string | number)[];
  readonly value: string | number | readonly string[];
}

export interface StarterWish {
  /** The way from the file to its JSON Schema. */
  readonly schema: string;
  readonly values: readonly Filling[];
  /** Said before a key, after the sentence of the schema. */
  readonly hints?: ReadonlyMap<string, string>;
}

/** A file that is not made from a shipped starter: its keys in their order, and what is said before them. */
export interface StarterContent {
  readonly values: Readonly<Record<string, unknown>>;
  readonly hints: ReadonlyMap<string, string>;
}

/** `shipped`: front matter and body without comments. The text begins with the line by which an editor finds the schema. */
export function starterOf(
  kind: StarterKind,
  shipped: string,
  { schema, values, hints = new Map() }: StarterWish,
): string {
  const [, front = '', body = ''] = /^---\n([\s\S]*?\n)---\n([\s\S]*)$/.exec(shipped) ?? [];
  const document = parseDocument(front, { schema: 'core' });
  for (const { path, value } of values) document.setIn(path, document.createNode(value));
  return fileText(document, kind, schema, hints, body);
}

/** The file of those keys, each explained like a starter's. */
export function fileOf(kind: StarterKind, { values, hints }: StarterContent, schema: string): string {
  return fileText(new Document(values, { schema: 'core' }), kind, schema, hints, '');
}

function fileText(
  document: Document,
  kind: StarterKind,
  schema: string,
  hints: ReadonlyMap<string, string>,
  body: string,
): string {
  hint(document.contents, hints);
  explain(document.contents, kind, [], new Set());
  const keys = document.toString({ lineWidth: 0, singleQuote: true, nullStr: '' }).replaceAll(/: +$/gm, ':');
  return [
    '---',
    `# yaml-language-server: $schema=${schema}`,
    `${keys}${possibleKeys(document, kind)}---`,
    body,
  ].join('\n');
}

function hint(contents: unknown, hints: ReadonlyMap<string, string>): void {
  if (!isMap(contents)) return;
  for (const { key } of contents.items) {
    const said = isScalar(key) ? hints.get(String(key.value)) : undefined;
    if (isScalar(key) && said !== undefined)
      key.commentBefore = [...(key.commentBefore?.split('\n') ?? []), ` ${said}`].join('\n');
  }
}

// After it what the shipped starter says itself. Each sentence once: of many stages, slots and settings the first says what the others are.
function explain(node: unknown, kind: StarterKind, path: Path, said: Set<string>): void {
  if (isSeq(node)) node.items.forEach((entry, index) => explain(entry, kind, [...path, index], said));
  if (!isMap(node)) return;
  for (const { key, value } of node.items) {
    if (!isScalar(key)) continue;
    const own = [...path, String(key.value)];
    const sentence = meaning(kind, own);
    if (sentence !== '' && !said.has(sentence))
      key.commentBefore = [` ${sentence}`, ...(key.commentBefore ?? '').split('\n')]
        .filter(Boolean)
        .join('\n');
    said.add(sentence);
    explain(value, kind, own, said);
  }
  if (path.length > 0) node.comment = absentKeys(node, kind, path, said);
}

/** What may stand in a group besides, as comments at its end. */
function absentKeys(node: YAMLMap, kind: StarterKind, path: Path, said: Set<string>): string | null {
  const absent = keysOf(schemaAt(SCHEMAS[kind], path)).filter((key) => !node.has(key));
  const lines = absent.map((key) => ` ${key}: ${meaning(kind, [...path, key])}`);
  const fresh = lines.filter((line) => !said.has(line));
  for (const line of fresh) said.add(line);
  return fresh.length === 0 ? null : fresh.join('\n');
}

/** What may be written besides, as comments: an author need not open the schema to know that it is there. */
function possibleKeys(document: Document, kind: StarterKind): string {
  const rest = keysOf(SCHEMAS[kind]).filter((key) => !document.has(key));
  if (rest.length === 0) return '';
  const lines = rest.flatMap((key) => [`# ${key}: ${meaning(kind, [key])}`, ...entryLines(kind, key)]);
  return ['#', '# May be written besides:', ...lines, ''].join('\n');
}

/** One entry of a list of groups, key by key. */
function entryLines(kind: StarterKind, list: string): string[] {
  return keysOf(schemaAt(SCHEMAS[kind], [list, 0])).map(
    (key, at) => `#   ${at === 0 ? '- ' : '  '}${key}: ${meaning(kind, [list, 0, key])}`,
  );
}

/** The sentence of the schema, and the words there are to choose from. */
function meaning(kind: StarterKind, path: Path): string {
  const sentence = sentenceAt(SCHEMAS[kind], path) ?? '';
  const [own, entries] = [path, [...path, 0]].map((at) => wordsOf(schemaAt(SCHEMAS[kind], at)));
  const words = own?.length ? own : (entries ?? []);
  const isPlain = words.every((word) => ['yes', 'no', 'notAsked'].includes(String(word)));
  return words.length < 2 || isPlain ? sentence : `${sentence} Words: ${words.join(', ')}.`;
}
