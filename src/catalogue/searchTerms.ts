/** What a card is looked for by besides its names and its text. */
import type { ExerciseCard } from '../content/library.ts';
import { KIT_WORDS } from '../content/schema/words.ts';
import type { Messages } from '../messages/messages.ts';

/** Kind, legs, positions, muscles, kit; each once, in that order. */
export function searchTerms(say: Messages, card: ExerciseCard): readonly string[] {
  const kit = KIT_WORDS.filter((word) => card.equipment.includes(word));
  const loadAt = card.movement?.loadAt;
  return [
    ...new Set([
      say.KIND_TERMS[card.kind],
      say.LEGS_TERMS[card.legs],
      ...card.positions.map((position) => say.POSITION_WORDS[position]),
      ...card.muscles.map((muscle) => say.MUSCLE_TERMS[muscle]),
      ...(kit.length === 0 ? [say.NO_KIT_TERMS] : kit.map(say.kitWord)),
      ...(loadAt === undefined ? [] : [say.WEIGHT_TERMS[loadAt]]),
    ]),
  ];
}
