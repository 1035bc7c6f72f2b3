/** The path of what changes its shape on the way. */
import { type Track, trackAt } from '../../units/track.ts';

type Xy = readonly [x: number, y: number];
const ZERO: Xy = [0, 0];

/** SVG path text at a share (0 to 1) of the way; how its numbers are told: `Morph` in `drawing/moving/movingFigure.ts`. */
export function pathAt(letters: string, numbers: readonly Track[], share: number): string {
  let at = 0;
  const next = () => trackAt(numbers[at++] ?? 0, share);
  const pointFrom = ([x, y]: Xy): Xy => [x + next(), y + next()];
  let last = ZERO;
  return [...letters]
    .map((letter) => {
      if (letter === 'Z') return letter;
      const to = pointFrom(ZERO);
      const handles = letter === 'C' ? [pointFrom(last), pointFrom(to)] : [];
      last = to;
      return letter + [...handles, to].map((point) => point.map((one) => one.toFixed(1)).join(' ')).join(' ');
    })
    .join('');
}
