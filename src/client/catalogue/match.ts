/** Which cards are asked for: words that begin so, and filters that all hold. Nothing here knows a page. */

/** Of each filter the words that hold of a card, or those that were chosen. */
export type Values = Readonly<Record<string, readonly string[]>>;

/** Words in their order, each with the numbers of the cards that hold it. */
export interface WordIndex {
  readonly words: readonly string[];
  readonly cards: readonly (readonly number[])[];
}

/** The rules of `FilterRule` in programme/library/view.ts; nothing chosen admits all. */
export function holds(rule: string, chosen: readonly string[], own: readonly string[]): boolean {
  if (chosen.length === 0) return true;
  switch (rule) {
    case 'atMost':
      return Number(own[0]) <= Math.max(...chosen.map(Number));
    case 'any':
      return own.some((value) => chosen.includes(value));
    case 'within':
      return own.every((value) => chosen.includes(value));
    case 'none':
      return !own.some((value) => chosen.includes(value));
    default:
      throw new Error(`no such rule: ${rule}`);
  }
}

/** Whether every filter holds. `rules`: rule by filter. */
export function isAdmitted(rules: Readonly<Record<string, string>>, chosen: Values, own: Values): boolean {
  return Object.entries(rules).every(([key, rule]) => holds(rule, chosen[key] ?? [], own[key] ?? []));
}

/** Numbers of the cards that hold, for every word asked, one that begins so; null when no word is asked. */
export function found(index: WordIndex, asked: readonly string[]): ReadonlySet<number> | null {
  let left: ReadonlySet<number> | null = null;
  for (const word of asked) {
    const cards: Set<number> = beginning(index, word);
    left = left === null ? cards : new Set([...cards].filter((card) => left?.has(card)));
  }
  return left;
}

/**
 * The index as `indexText` in page/public/wordIndex.ts writes it: a line for each word in the order of code units, then
 * the steps from one card's number to the next, in base 36.
 */
export function readIndex(text: string): WordIndex {
  const lines = text === '' ? [] : text.split('\n').map((line) => line.split(' '));
  return {
    words: lines.map(([word = '']) => word),
    cards: lines.map(([, ...steps]) => {
      let card = 0;
      return steps.map((step) => (card += parseInt(step, 36)));
    }),
  };
}

function beginning({ words, cards }: WordIndex, start: string): Set<number> {
  const holding = new Set<number>();
  for (let at = firstFrom(words, start); words[at]?.startsWith(start); at += 1)
    for (const card of cards[at] ?? []) holding.add(card);
  return holding;
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
