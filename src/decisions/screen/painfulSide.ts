/** The side that is treated first. */
import type { Consult } from '../../content/library.ts';

/** The painful one, of two the worse one. */
export function painfulSide({ side, worseSide }: Consult): 'left' | 'right' {
  if (side !== 'both') return side;
  if (worseSide === undefined) throw new Error('worseSide: content asks for it where both sides hurt');
  return worseSide;
}
