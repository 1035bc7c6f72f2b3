/** Whether a figure shows what its words say moves. */
import type { MovedWords } from '../messages/en/author/pictured.ts';
import type { SeenFrame } from '../mechanics/seen.ts';

/** An arrow elsewhere than at what moves shows another movement. `leastM`: metres from which on it is seen. */
export function isShown(
  moves: MovedWords['moves'],
  first: SeenFrame,
  last: SeenFrame,
  leastM: number,
): boolean {
  if (moves === 'ball')
    return first.ball !== null && last.ball !== null && apart(first.ball, last.ball) >= leastM;
  const goes = apart(first.heel, last.heel) >= leastM;
  return goes && (moves === 'foot' || last.arrowAt === null || last.arrowAt === 'foot');
}

function apart(a: SeenFrame['heel'], b: SeenFrame['heel']): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
