/** The words of all cards turned round: for each word the cards that hold it, small enough to be fetched at once. */
import { plainText } from '../../../content/prose/plainText.ts';
import type { Block } from '../../../content/prose/block.ts';
import type { CardView, LibraryView, ProtocolView } from '../../../catalogue/view.ts';
import { FIELDS, searchWords, type Field } from '../../../units/words.ts';

type Shown = Pick<LibraryView, 'cards' | 'protocols'>;

/**
 * A line for each word, by code units; then the steps from one place to the next, in base 36, a place being the card's
 * number times the count of fields, and the field. After an empty line a line for each card: `=` and its names, parted by
 * bars, so that no line is empty.
 * After another a line for each protocol: its names, and after a tab the steps from one of its cards to the next.
 */
export function indexText({ cards, protocols }: Shown): string {
  const holding = new Map<string, number[]>();
  cards.forEach((card, at) => {
    for (const [word, field] of bestFields(card, protocols)) {
      const places = holding.get(word) ?? [];
      places.push(at * FIELDS.length + FIELDS.indexOf(field));
      holding.set(word, places);
    }
  });
  const words = [...holding].sort(([a], [b]) => (a < b ? -1 : 1));
  return [
    ...words.map(([word, places]) => [word, ...steps(places)].join(' ')),
    '',
    ...cards.map(({ names }) => `=${barred(names)}`),
    '',
    ...protocols.map(
      (protocol) => `${barred(tendonNames(protocol))}\t${steps(using(protocol, cards)).join(' ')}`,
    ),
  ].join('\n');
}

function steps(numbers: readonly number[]): string[] {
  return numbers.map((at, n) => (at - (numbers[n - 1] ?? 0)).toString(36));
}

function barred(names: readonly string[]): string {
  return names.map((name) => searchWords(name).join(' ')).join('|');
}

function tendonNames({ tendon, alsoCalled }: ProtocolView): string[] {
  return [tendon, ...alsoCalled];
}

function using({ id }: ProtocolView, cards: readonly CardView[]): number[] {
  return cards.flatMap(({ uses }, at) => (uses.some(({ protocol }) => protocol.id === id) ? [at] : []));
}

/** Each word of a card with the best field it stands in. */
function bestFields(card: CardView, protocols: readonly ProtocolView[]): ReadonlyMap<string, Field> {
  const texts = textsOf(card, protocols);
  const words = new Map<string, Field>();
  for (const field of FIELDS)
    for (const word of texts[field].flatMap(searchWords)) if (!words.has(word)) words.set(word, field);
  return words;
}

/** What a reader of a card's page would look for it by; sources, numbers and the slots of protocols are left out. */
function textsOf(
  { id, names, terms, uses, summary, facts, body, cautions }: CardView,
  protocols: readonly ProtocolView[],
): Record<Field, string[]> {
  const used = protocols.filter((one) => uses.some(({ protocol }) => protocol.id === one.id));
  return {
    name: [...names, id],
    term: [...terms],
    tendon: used.flatMap(tendonNames),
    text: [
      summary,
      ...facts.map(({ text }) => text),
      ...body.flatMap(({ blocks }) => blocks.flatMap(blockTexts)),
      ...cautions,
    ],
  };
}

function blockTexts(block: Block): string[] {
  if (block.kind === 'paragraph') return [plainText(block.text)];
  return block.entries.flatMap(({ text, entries }) =>
    [text, ...entries.map((entry) => entry.text)].map(plainText),
  );
}
