/** The field of a file's front matter that a printed letter came from. */
import { splitFile } from './frontMatter.ts';
import type { Path } from './path.ts';
import { decode, type SourceFile } from './source.ts';

export interface Field {
  readonly path: Path;
  /** Of the letter in the text at the path. */
  readonly offset: number;
}

/**
 * Of the texts with the letter the longest that `printed` holds, else the first; null when it stands in none: then it
 * came from elsewhere.
 */
export function fieldOfLetter(file: SourceFile, letter: string, printed: string): Field | null {
  const { source } = decode(file);
  const front = source === null ? null : splitFile(source).front;
  const fields = textsIn(front?.value, []).filter(({ text }) => text.normalize('NFC').includes(letter));
  const held = fields.filter(({ text }) => printed.includes(text.trim()));
  const [own = fields[0]] = held.toSorted((a, b) => b.text.length - a.text.length);
  // A letter that is put together from two stands somewhere in its text.
  return own === undefined ? null : { path: own.path, offset: Math.max(0, own.text.indexOf(letter)) };
}

function textsIn(value: unknown, path: Path): { readonly path: Path; readonly text: string }[] {
  if (typeof value === 'string') return [{ path, text: value }];
  if (Array.isArray(value)) return value.flatMap((entry, index) => textsIn(entry, [...path, index]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => textsIn(entry, [...path, key]));
}
