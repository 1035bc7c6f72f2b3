/** Cards that say too little to be followed alone, or too much to be read. */
import { cardTooShortOrLong } from '../messages/en/author/words.ts';
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import { proseTexts } from '../content/prose/plainText.ts';
import type { Problem } from '../content/problem.ts';
import { wordsIn } from '../wording/sentences.ts';
import { warn } from './fieldPlace.ts';

/** Words of a card's body, headings not counted [choice]. */
const FEWEST_WORDS = 60;
const MOST_WORDS = 140;

export function cardLength({ exercises }: LibraryFiles, placeOf: PlaceOf): Problem[] {
  return [...exercises.values()].flatMap(({ id, body }) => {
    const words = proseTexts(body).reduce((sum, { text }) => sum + wordsIn(text).length, 0);
    if (words >= FEWEST_WORDS && words <= MOST_WORDS) return [];
    const field = { kind: 'exercise', id, path: ['body', 0, 'blocks', 0] } as const;
    return [warn(placeOf, field, 'card-length', cardTooShortOrLong(words, FEWEST_WORDS, MOST_WORDS))];
  });
}
