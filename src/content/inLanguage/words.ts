/** Which values of a card are words, and what must be the same in every language. */
import { pathText, type Path } from '../path.ts';
import type { WordedKind } from './languageFile.ts';

/** Ways to words; `#` stands for any place of a list. */
const WORDS: Readonly<Record<WordedKind, readonly string[]>> = {
  exercise: ['title', 'alsoCalled', 'landmark', 'cautions.#', 'withWeight.#', 'photos.#.alt'],
  advice: ['title', 'givesWay.#.entry', 'givesWay.#.instead'],
};

// What colleagues call it may be more in one language than in another.
const MAY_BE_ABSENT = ['alsoCalled'];

/** Keys at the top of a card that hold words: a file in a second language must give them where the card does. */
export function keysOfWords(kind: WordedKind): readonly string[] {
  const keys = WORDS[kind].map((way) => way.split('.')[0] ?? '');
  return [...new Set(keys)].filter((key) => !MAY_BE_ABSENT.includes(key));
}

export interface Difference {
  readonly path: Path;
  readonly base: unknown;
}

/** Every place where two cards differ in more than words: a value, or how many entries a list has. */
export function differences(kind: WordedKind, base: unknown, own: unknown, path: Path = []): Difference[] {
  const way = path.map((step) => (typeof step === 'number' ? '#' : String(step))).join('.');
  if (MAY_BE_ABSENT.includes(way)) return [];
  if (WORDS[kind].includes(way) && typeof base === typeof own) return [];
  if (!isGroup(base) || !isGroup(own) || Array.isArray(base) !== Array.isArray(own))
    return base === own ? [] : [{ path, base }];
  if (Array.isArray(base) && base.length !== (own as typeof base).length) return [{ path, base }];
  const keys = [...new Set([...Object.keys(base), ...Object.keys(own)])];
  return keys.flatMap((key) =>
    differences(kind, base[key], own[key], [...path, Array.isArray(base) ? Number(key) : key]),
  );
}

/** A difference as it is told: how many entries, or the value. */
export function baseText({ path, base }: Difference): string {
  if (Array.isArray(base)) return `as long as in the card: ${base.length}`;
  return base === undefined
    ? `left out: the card has no ${pathText(path)}`
    : `${String(base)}, as in the card`;
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
