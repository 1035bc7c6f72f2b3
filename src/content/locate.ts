/** Where a path of the front matter stands in the file, and what is written there. */
import { isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import type { FrontMatter } from './frontMatter.ts';
import type { Path } from './path.ts';
import type { Place } from './problem.ts';
import { placeAt } from './sourceText.ts';

/** The value's place; of a key that is not there, the place of the nearest group or list around it. */
export function placeOfValue(around: FrontMatter, way: Path): Place {
  const { front, path } = standing(around, way);
  const entry = keyAndValueAt(front.contents, path);
  if (entry !== null) return placeAt(front.source, front.offset + startOf(entry));
  if (path.length > 0) return placeOfValue(front, path.slice(0, -1));
  return placeAt(front.source, front.offset);
}

/** The place of the character at `offset` in the text that is the value at the path: of the word it stands in. */
export function placeInValue(around: FrontMatter, way: Path, offset: number): Place {
  const { front, path } = standing(around, way);
  const value = keyAndValueAt(front.contents, path)?.value;
  if (!isScalar(value) || typeof value.value !== 'string' || !value.range) return placeOfValue(front, path);
  // Quotes, escapes and folded lines move letters about; the words stay, in their order.
  const word = /\S*/.exec(value.value.slice(offset))?.[0] ?? '';
  const before = value.value.slice(0, offset).split(word).length - 1;
  const written = front.source.text.slice(front.offset + value.range[0], front.offset + value.range[1]);
  const at = word === '' ? -1 : indexOfNth(written, word, before);
  return at < 0 ? placeOfValue(front, path) : placeAt(front.source, front.offset + value.range[0] + at);
}

/** The key's own place, for a key that should not be there; the value's for an entry of a list. */
export function placeOfKey(around: FrontMatter, way: Path): Place {
  const { front, path } = standing(around, way);
  const key = keyAndValueAt(front.contents, path)?.key;
  return key?.range ? placeAt(front.source, front.offset + key.range[0]) : placeOfValue(front, path);
}

/** Whether anything is written at the path, be it an empty value. */
export function isWritten(around: FrontMatter, way: Path): boolean {
  const { front, path } = standing(around, way);
  return keyAndValueAt(front.contents, path) !== null;
}

const LONGEST = 60;

/** The value as the author wrote it, shortened to a line; `empty` when the key has none. */
export function writtenAt(around: FrontMatter, way: Path): string {
  const { front, path } = standing(around, way);
  const value = keyAndValueAt(front.contents, path)?.value;
  if (!value?.range) return 'empty';
  const { text } = front.source;
  const written = text.slice(front.offset + value.range[0], front.offset + value.range[1]).trim();
  if (written === '') return 'empty';
  if (written.includes('\n'))
    return isSeq(value) ? 'a list' : isMap(value) ? 'a group of keys' : 'text of several lines';
  return written.length > LONGEST ? `${written.slice(0, LONGEST - 1)}…` : written;
}

/** Of a value that somebody else wrote, their file and their path. */
function standing(front: FrontMatter, path: Path): { readonly front: FrontMatter; readonly path: Path } {
  const other = front.elsewhere?.find((one) => one.path.every((step, at) => path[at] === step));
  if (other === undefined) return { front: { ...front, elsewhere: [] }, path };
  return standing(other.front, [...other.at, ...path.slice(other.path.length)]);
}

function indexOfNth(text: string, word: string, nth: number): number {
  let at = text.indexOf(word);
  for (let i = 0; i < nth && at >= 0; i++) at = text.indexOf(word, at + word.length);
  return at;
}

interface KeyAndValue {
  readonly key: Node | null;
  readonly value: Node | null;
}

function keyAndValueAt(contents: Node | null, path: Path): KeyAndValue | null {
  return path.reduce<KeyAndValue | null>(
    (entry, step) => (entry === null ? null : keyAndValueBelow(entry.value, step)),
    {
      key: null,
      value: contents,
    },
  );
}

function keyAndValueBelow(node: Node | null, step: PropertyKey): KeyAndValue | null {
  if (isSeq(node)) return entryOf(node.items, step);
  if (!isMap(node)) return null;
  // Of a key written twice the last one counts, here as in the values.
  const pair = (node.items as Pair[]).findLast(({ key }) => isScalar(key) && keyText(key) === String(step));
  return pair ? { key: pair.key as Node, value: pair.value as Node | null } : null;
}

function entryOf(items: readonly unknown[], step: PropertyKey): KeyAndValue | null {
  const value = items[Number(step)];
  return value === undefined ? null : { key: null, value: value as Node | null };
}

function keyText(key: { value: unknown; source?: string }): string {
  return typeof key.value === 'string' ? key.value : (key.source ?? String(key.value));
}

// An empty value has a place of its own, but nothing to see there; the key is what the author knows it by.
function startOf({ key, value }: KeyAndValue): number {
  const empty =
    !value?.range || (isScalar(value) && value.value === null && value.range[0] === value.range[1]);
  return (empty ? key?.range?.[0] : undefined) ?? value?.range?.[0] ?? 0;
}
