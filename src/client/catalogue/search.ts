/** Which cards hold the words that were typed, the best first. Nothing here knows a page. */
import { FIELDS, searchWords, type Field } from '../../units/words.ts';
import { isSlipOf } from './slip.ts';

/** Words in their order, each with the places that hold it: the card's number times the count of fields, and the field. */
export interface WordIndex {
  readonly words: readonly string[];
  readonly places: readonly (readonly number[])[];
  /** Of each card its names, the title first. */
  readonly names: readonly (readonly Name[])[];
  readonly tendons: readonly { readonly names: readonly Name[]; readonly cards: ReadonlySet<number> }[];
}

/** Word by word. */
type Name = readonly string[];

/** A card that holds what was asked. */
export interface Hit {
  readonly card: number;
  readonly score: number;
}

const FIELD_POINTS: Readonly<Record<Field, number>> = { name: 8, term: 4, tendon: 2, text: 1 };
const MATCH_SHARE = { whole: 1, beginning: 0.75, slip: 0.5 } as const;
type MatchKind = keyof typeof MATCH_SHARE;
/** For a name that is just what was asked. */
const NAME_POINTS = 12;

// They part no card from another.
const SMALL_WORDS: readonly string[] = 'a an and at by exercise for from in of on or the to with'.split(' ');

/** What is looked for in what was typed; small words count only where there is nothing else. */
export function askedWords(typed: string): readonly string[] {
  const all = searchWords(typed);
  const words = [...new Set(all.filter((word) => !SMALL_WORDS.includes(word)))];
  return words.length > 0 ? words : [...new Set(all)];
}

/** The index as `indexText` in outputs/html/public/wordIndex.ts writes it. */
export function readIndex(text: string): WordIndex {
  const [words = [], names = [], tendons = []] = paragraphs(text);
  const lines = words.map((line) => line.split(' '));
  return {
    words: lines.map(([word = '']) => word),
    places: lines.map(([, ...steps]) => placesAfter(steps)),
    names: names.map((line) => namesIn(line.slice(1))),
    tendons: tendons.map((line) => {
      const [own = '', steps = ''] = line.split('\t');
      return { names: namesIn(own), cards: new Set(placesAfter(steps === '' ? [] : steps.split(' '))) };
    }),
  };
}

function paragraphs(text: string): string[][] {
  const all: string[][] = [[]];
  for (const line of text.split('\n'))
    if (line === '') all.push([]);
    else all[all.length - 1]?.push(line);
  return all;
}

function placesAfter(steps: readonly string[]): number[] {
  let place = 0;
  return steps.map((step) => (place += parseInt(step, 36)));
}

function namesIn(line: string): Name[] {
  return line.split('|').map((name) => name.split(' '));
}

/**
 * The cards that hold every word, the most points first, then in the order of the index; null when no word is asked. A
 * word is held by what is it, or begins so; only where no card has such a word, by what one slip of the keys made it of.
 */
export function ranked(index: WordIndex, asked: readonly string[]): readonly Hit[] | null {
  if (asked.length === 0) return null;
  const points = asked.map((word) => pointsOf(index, word));
  const [first, ...others] = points as [Points, ...Points[]];
  return [...first.keys()]
    .filter((card) => others.every((other) => other.has(card)))
    .map((card) => ({
      card,
      score:
        points.reduce((sum, one) => sum + (one.get(card) ?? 0), 0) + nameScore(namesOf(index, card), asked),
    }))
    .sort((a, b) => b.score - a.score || a.card - b.card);
}

/** Points by card. */
type Points = ReadonlyMap<number, number>;

function pointsOf(index: WordIndex, asked: string): Points {
  const points = new Map<number, number>();
  for (const { at, way } of held(index, asked))
    for (const place of index.places[at] ?? []) {
      const card = Math.floor(place / FIELDS.length);
      const field = FIELDS[place % FIELDS.length] as Field;
      points.set(card, Math.max(points.get(card) ?? 0, FIELD_POINTS[field] * MATCH_SHARE[way]));
    }
  return points;
}

interface Held {
  /** Number of the word in the index. */
  readonly at: number;
  readonly way: MatchKind;
}

function held(index: WordIndex, asked: string): readonly Held[] {
  const begin = beginning(index, asked);
  if (begin.length > 0) return begin;
  // A plural of three letters keeps its s in the index.
  const single = asked.endsWith('s') ? index.words.indexOf(asked.slice(0, -1)) : -1;
  if (single >= 0) return [{ at: single, way: 'whole' }];
  return index.words.flatMap((word, at) => (isSlipOf(asked, word) ? [{ at, way: 'slip' }] : []));
}

function beginning({ words }: WordIndex, asked: string): Held[] {
  const found: Held[] = [];
  for (let at = firstFrom(words, asked); words[at]?.startsWith(asked); at += 1)
    found.push({ at, way: words[at] === asked ? 'whole' : 'beginning' });
  return found;
}

function namesOf({ names, tendons }: WordIndex, card: number): readonly Name[] {
  return [...(names[card] ?? []), ...tendons.flatMap((one) => (one.cards.has(card) ? one.names : []))];
}

/** The best of the names: the share of its words that were asked, times the share of those asked that it has. */
function nameScore(names: readonly Name[], asked: readonly string[]): number {
  const shares = names.map((name) => {
    const named = name.filter((word) => asked.some((one) => word.startsWith(one))).length;
    const used = asked.filter((one) => name.some((word) => word.startsWith(one))).length;
    return (named / name.length) * (used / asked.length);
  });
  return NAME_POINTS * Math.max(0, ...shares);
}

/** Where the first word that is not before `start` stands. */
function firstFrom(words: readonly string[], start: string): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] as string) < start) low = middle + 1;
    else high = middle;
  }
  return low;
}
