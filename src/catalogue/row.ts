/** A few cards from the least squeeze to the most: the library at one glance. */
import type { Messages } from '../messages/messages.ts';

import type { Measured } from './measured.ts';
import type { RowFigure } from './view.ts';

const MOST_FIGURES = 6;
/** Less than this is no squeeze to speak of, body weights. */
const LEAST_BW = 0.05;

/** `measured`: sorted by squeeze. Evenly spread over those that have any; empty when there are too few for a row. */
export function rowOf(say: Messages, measured: readonly Measured[]): readonly RowFigure[] {
  const squeezed = measured.filter(({ squeezeBw }) => (squeezeBw ?? 0) >= LEAST_BW);
  if (squeezed.length < MOST_FIGURES) return [];
  return Array.from({ length: MOST_FIGURES }, (_, index) => {
    const at = Math.round((index * (squeezed.length - 1)) / (MOST_FIGURES - 1));
    const { card, squeezeBw } = squeezed[at] as Measured;
    return { card: { id: card.id, title: card.title }, squeeze: say.squeezeWithUnit(squeezeBw ?? 0) };
  });
}
