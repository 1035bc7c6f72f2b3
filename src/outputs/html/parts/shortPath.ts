/** SVG path text in half the letters: steps instead of places, straight lines told as such, on a grid as fine as the eye. */
import type { Point } from '../../../mechanics/pose.ts';

/**
 * The path with relative commands, its numbers in multiples of `unit`, each point at the nearest one. Takes absolute M, L,
 * C and Z with whole numbers, a letter standing for a run of like commands; throws at anything else.
 * @example shortPath('M10 20L16 20 16 30C16 32 16 34 16 36Z', 2) // => 'm5 10h3v5v3z'
 */
export function shortPath(d: string, unit = 1): string {
  if (!PATH.test(d)) throw new TypeError(`not a path of this house: ${d.slice(0, 60)}`);
  let text = '';
  let last = '';
  let at: Point = { x: 0, y: 0 };
  let start = at;
  const tell = (letter: string, steps: readonly number[]) => {
    const again = letter === last && letter !== 'm';
    last = letter;
    text += again ? '' : letter;
    steps.forEach((step, index) => (text += told(step, !again && index === 0)));
  };
  for (const { letter, points } of segmentsOf(d, unit)) {
    const [end = start] = points.slice(-1);
    if (letter === 'Z') tell('z', []);
    else if (letter === 'M') tell('m', [end.x - at.x, end.y - at.y]);
    else if (letter === 'L' || isStraight(at, points)) tell(...lineTo(at, end));
    else
      tell(
        'c',
        points.flatMap(({ x, y }) => [x - at.x, y - at.y]),
      );
    if (letter === 'M') start = end;
    at = end;
  }
  return text;
}

const PATH = /^(?:[MLC](?: ?-?\d+)+|Z)+$/;
const COMMANDS = /[MLCZ][^MLCZ]*/g;
const NUMBERS = /-?\d+/g;

interface Segment {
  readonly letter: string;
  readonly points: readonly Point[];
}

function segmentsOf(d: string, unit: number): readonly Segment[] {
  return (d.match(COMMANDS) ?? []).flatMap((command): readonly Segment[] => {
    const letter = command.charAt(0);
    const numbers = (command.match(NUMBERS) ?? []).map((one) => Math.round(Number(one) / unit) + 0);
    if (letter === 'Z') return [{ letter, points: [] }];
    const points = numbers.flatMap((x, index) =>
      index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : [],
    );
    const size = letter === 'C' ? 3 : 1;
    return points.flatMap((_, index) =>
      index % size === 0 ? [{ letter, points: points.slice(index, index + size) }] : [],
    );
  });
}

// A curve whose handles lie on its chord within half a step, on the way and not beyond it.
function isStraight(from: Point, [a, b, to]: readonly Point[]): boolean {
  if (a === undefined || b === undefined || to === undefined) return false;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  return [a, b].every(({ x, y }) => {
    const [px, py] = [x - from.x, y - from.y];
    const along = px * dx + py * dy;
    return Math.abs(px * dy - py * dx) <= length / 2 && along >= 0 && along <= length * length;
  });
}

function lineTo(from: Point, to: Point): [string, readonly number[]] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (dy === 0) return ['h', [dx]];
  return dx === 0 ? ['v', [dy]] : ['l', [dx, dy]];
}

/** A letter or a minus sign parts numbers as well as a blank does. */
function told(step: number, afterLetter: boolean): string {
  return afterLetter || step < 0 ? `${step}` : ` ${step}`;
}
