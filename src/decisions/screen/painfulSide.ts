/** The side that is treated first. */
import type { Consult } from '../../content/library.ts';

/** The painful one, of two the worse one. */
export function painfulSide({ side, worseSide }: Consult): 'left' | 'right' {
  return side === 'both' ? (worseSide ?? 'right') : side;
}
