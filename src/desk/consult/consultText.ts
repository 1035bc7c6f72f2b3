/** A consult's text as something to change: its head by paths, its body as text; all else stays as the author wrote it. */
import { isCollection, isMap, isScalar, parseDocument, type Document, type Pair, type YAMLMap } from 'yaml';
import { patternOf, pathOf, type Step } from './path.ts';

/** Where a text's head stands. `isWindows`: lines end with two characters, as they then do in what is written. */
interface Parts {
  readonly mark: string;
  readonly isWindows: boolean;
  readonly head: string;
  /** From the closing line of the head on. */
  readonly rest: string;
}

/** Null for a text without a head. */
function partsOf(text: string): Parts | null {
  const mark = text.startsWith('\uFEFF') ? '\uFEFF' : '';
  const plain = text.slice(mark.length).replaceAll('\r\n', '\n');
  if (!/^---[ \t]*\n/.test(plain)) return null;
  const opening = plain.indexOf('\n') + 1;
  const closing = /^---[ \t]*(?:\n|$)/m.exec(plain.slice(opening));
  if (closing === null) return null;
  const at = opening + closing.index;
  return {
    mark,
    isWindows: text.includes('\r\n'),
    head: plain.slice(opening, at),
    rest: plain.slice(at),
  };
}

function textOf({ mark, isWindows, head, rest }: Parts): string {
  const text = `---\n${head}${rest}`;
  return mark + (isWindows ? text.replaceAll('\n', '\r\n') : text);
}

/** As the reader of `content` parses it, so that nothing turns into something else. */
function documentOf(head: string): Document {
  return parseDocument(head, {
    schema: 'core',
    version: '1.2',
    merge: false,
    uniqueKeys: false,
    logLevel: 'error',
  });
}

/** Whether the form can change it: the head is YAML without a slip, and a group of keys. */
export function isEditable(text: string): boolean {
  const parts = partsOf(text);
  if (parts === null) return false;
  const document = documentOf(parts.head);
  const { contents } = document;
  return (
    document.errors.length === 0 &&
    (contents === null || isMap(contents) || (isScalar(contents) && contents.value === null))
  );
}

/** The keys as plain values; an empty object where they cannot be read. */
export function valueOf(text: string): Readonly<Record<string, unknown>> {
  const parts = partsOf(text);
  if (parts === null) return {};
  const document = documentOf(parts.head);
  if (document.errors.length > 0) return {};
  try {
    const value: unknown = document.toJS({ maxAliasCount: 0 });
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : {};
  } catch {
    return {};
  }
}

export function bodyOf(text: string): string {
  const rest = partsOf(text)?.rest ?? '';
  return rest.slice(rest.indexOf('\n') + 1).replace(/^---[ \t]*$/, '');
}

export function withBody(text: string, body: string): string {
  const parts = partsOf(text);
  if (parts === null) return text;
  return textOf({ ...parts, rest: body === '' ? '---\n' : `---\n${body}` });
}

/** Keys in the order of the schema, lists as `*`; a new key goes to its place among those that are there. */
export type Order = readonly string[];

/**
 * The text with one value at a path, or without it where the value is undefined; groups around it are made and, once
 * empty, taken away. Comments stay. The same text where nothing changes.
 */
export function withValue(text: string, name: string, value: unknown, order: Order): string {
  const parts = partsOf(text);
  if (parts === null) return text;
  const document = documentOf(parts.head);
  if (!isMap(document.contents)) document.contents = document.createNode({}) as never;
  const path = pathOf(name);
  if (value === undefined) remove(document, path);
  else if (isSame(document.getIn(path), value)) return text;
  else put(document, path, value, order);
  return textOf({ ...parts, head: headText(document, parts.head) });
}

function put(document: Document, path: readonly Step[], value: unknown, order: Order): void {
  const before = path
    .map((_, length) => path.slice(0, length))
    .filter((way) => !document.hasIn(way) && way.length > 0);
  const there = document.getIn(path, true);
  if (isScalar(there) && !isObject(value)) there.value = value;
  else {
    // A null that stands for an empty group gives way to one.
    for (let length = 1; length < path.length; length += 1) {
      const way = path.slice(0, length);
      const at = document.getIn(way, true);
      if (!isCollection(at))
        document.setIn(way, document.createNode(typeof path[length] === 'number' ? [] : {}));
    }
    document.setIn(path, isObject(value) ? document.createNode(value) : value);
  }
  for (const way of [...before, path]) settle(document, way, order);
  openUp(document, path);
}

/** A key that was put at the end of its group goes where the schema has it. */
function settle(document: Document, path: readonly Step[], order: Order): void {
  const around = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  if (!isMap(around)) return;
  const { items } = around as YAMLMap;
  const last = items.at(-1);
  if (last === undefined || keyOf(last) !== path.at(-1)) return;
  const parent = patternOf(path.slice(0, -1).join('.'));
  const rank = (key: unknown) => order.indexOf(parent === '' ? String(key) : `${parent}.${String(key)}`);
  const own = rank(path.at(-1));
  const at = items.findIndex((item) => item !== last && rank(keyOf(item)) > own);
  if (own === -1 || at === -1) return;
  items.pop();
  items.splice(at, 0, last);
}

function keyOf({ key }: Pair): unknown {
  return isScalar(key) ? key.value : key;
}

/** `[]` and `{}` are written in one line; what holds something stands in lines of its own. */
function openUp(document: Document, path: readonly Step[]): void {
  for (let length = 1; length <= path.length; length += 1) {
    const at = document.getIn(path.slice(0, length), true);
    if (isCollection(at) && at.items.length === 1) at.flow = false;
  }
}

function remove(document: Document, path: readonly Step[]): void {
  if (!document.hasIn(path)) return;
  document.deleteIn(path);
  for (let length = path.length - 1; length > 0; length -= 1) {
    const way = path.slice(0, length);
    const at = document.getIn(way, true);
    const isEntry = typeof way.at(-1) === 'number';
    if (!isMap(at) || at.items.length > 0 || isEntry) return;
    document.deleteIn(way);
  }
}

/** Lists that stand in the column of their key go on standing there. */
function headText(document: Document, before: string): string {
  if (isMap(document.contents) && document.contents.items.length === 0) return '';
  const isFlush = /^(\w+):[ \t]*\n- /m.test(before);
  return document.toString({ lineWidth: 0, indentSeq: !isFlush, flowCollectionPadding: false });
}

function isObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}

function isSame(there: unknown, value: unknown): boolean {
  return there === value && !isObject(value);
}
