/** What a card is looked for by besides its names and its text. */
import type { ExerciseCard } from '../content/library.ts';
import { KIT_WORDS } from '../content/schema/words.ts';
import { kitWord, POSITION_WORDS } from '../messages/en/catalogue/library.ts';
import {
  KIND_TERMS,
  LEGS_TERMS,
  MUSCLE_TERMS,
  NO_KIT_TERMS,
  WEIGHT_TERMS,
} from '../messages/en/catalogue/searchTerms.ts';

/** Kind, legs, positions, muscles, kit; each once, in that order. */
export function searchTerms(card: ExerciseCard): readonly string[] {
  const kit = KIT_WORDS.filter((word) => card.equipment.includes(word));
  const loadAt = card.movement?.loadAt;
  return [
    ...new Set([
      KIND_TERMS[card.kind],
      LEGS_TERMS[card.legs],
      ...card.positions.map((position) => POSITION_WORDS[position]),
      ...card.muscles.map((muscle) => MUSCLE_TERMS[muscle]),
      ...(kit.length === 0 ? [NO_KIT_TERMS] : kit.map(kitWord)),
      ...(loadAt === undefined ? [] : [WEIGHT_TERMS[loadAt]]),
    ]),
  ];
}
