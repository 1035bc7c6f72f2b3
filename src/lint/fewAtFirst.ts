/** Cards that ask for few repetitions at first, against the dose a protocol begins them with. */
import { manyAtFirst as manyMending } from '../messages/en/author/words.ts';
import type { ExerciseCard, Library, Protocol } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { plainText } from '../content/prose/plainText.ts';
import { refuse } from './fieldPlace.ts';

const FEW =
  /\b(?:few|only a couple)\b[^.;]*\bat first\b|\bat first\b[^.;]*\b(?:few|only a couple)\b|\b(?:start|begin) with (?:a )?few\b/i;

/** An error for every card whose words ask for few and whose first dose, by some protocol, is many. */
export function manyAtFirst({ exercises, protocols }: Library, placeOf: PlaceOf): Problem[] {
  return [...exercises.values()].flatMap((card) => {
    const words = fewWords(card);
    if (words === null || card.fewAtFirst) return [];
    const worst = [...protocols.values()].flatMap((protocol) => dosesOf(card.id, protocol)).at(0);
    if (worst === undefined) return [];
    return [
      refuse(
        placeOf,
        { kind: 'exercise', id: card.id, path: ['cautions'] },
        'words-against-dose',
        manyMending(words, worst),
      ),
    ];
  });
}

/** The sentence that asks for few; null when none does. */
function fewWords({ cautions, body }: ExerciseCard): string | null {
  const prose = body.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'paragraph' ? [plainText(block.text)] : [])),
  );
  const sentences = [...cautions, ...prose].flatMap((text) => text.split(/(?<=[.!?])\s+/));
  return sentences.find((sentence) => FEW.test(sentence)) ?? null;
}

/** First doses of the card that are more than the protocol's few. */
function dosesOf(card: string, { id, stages, limits }: Protocol) {
  const few = limits.fewRepetitions.value;
  return stages.flatMap(({ slots }) =>
    slots.flatMap(({ name, cards, dose }) => {
      const repetitions = dose.sets * (dose.repetitions ?? 0);
      return cards.includes(card) && repetitions > few
        ? [{ protocol: id, slot: name, repetitions, few }]
        : [];
    }),
  );
}
