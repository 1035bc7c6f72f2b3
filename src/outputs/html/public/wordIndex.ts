/** The words of all cards turned round: for each word the cards that hold it, small enough to be fetched at once. */
import { plainText } from '../../../content/prose/plainText.ts';
import type { Block } from '../../../content/prose/block.ts';
import type { CardView } from '../../../catalogue/view.ts';
import { wordsOf } from '../../../units/words.ts';

/** A line for each word, by code units; then the steps from one card's number to the next, in base 36. */
export function indexText(cards: readonly CardView[]): string {
  const holding = new Map<string, number[]>();
  cards.forEach((card, at) => {
    for (const word of new Set(textsOf(card).flatMap(wordsOf))) {
      const numbers = holding.get(word);
      if (numbers === undefined) holding.set(word, [at]);
      else numbers.push(at);
    }
  });
  return [...holding]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([word, numbers]) => [
      word,
      ...numbers.map((at, index) => (at - (numbers[index - 1] ?? 0)).toString(36)),
    ])
    .map((parts) => parts.join(' '))
    .join('\n');
}

/** What a reader of a card's page would look for it by; sources, numbers and the slots of protocols are left out. */
function textsOf({ id, title, summary, facts, body, cautions }: CardView): string[] {
  return [
    id,
    title,
    summary,
    ...facts.map(({ text }) => text),
    ...body.flatMap(({ blocks }) => blocks.flatMap(blockTexts)),
    ...cautions,
  ];
}

function blockTexts(block: Block): string[] {
  if (block.kind === 'paragraph') return [plainText(block.text)];
  return block.entries.flatMap(({ text, entries }) =>
    [text, ...entries.map((entry) => entry.text)].map(plainText),
  );
}
