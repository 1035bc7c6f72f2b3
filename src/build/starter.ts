/** A starter file: keys with the sentence of the schema before each, filled in for the library it is written into. */
import { isMap, isScalar, isSeq, parseDocument, type Document, type YAMLMap } from 'yaml';
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
}

/** `shipped`: front matter and body without comments. The text begins with the line by which an editor finds the schema. */
export function starterOf(kind: StarterKind, shipped: string, { schema, values }: StarterWish): string {
  const [, front = '', body = ''] = /^---\n([\s\S]*?\n)---\n([\s\S]*)$/.exec(shipped) ?? [];
  const document = parseDocument(front, { schema: 'core' });
  for (const { path, value } of values) document.setIn(path, document.createNode(value));
  explain(document.contents, kind, [], new Set());
  const keys = document.toString({ lineWidth: 0, singleQuote: true });
  return [
    '---',
    `# yaml-language-server: $schema=${schema}`,
    `${keys}${possibleKeys(document, kind)}---`,
    body,
  ].join('\n');
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
