/** SVG path text in half the letters: steps instead of places, straight lines told as such, on a grid as fine as the eye. */
/**
 * The path with relative commands, its numbers in multiples of `unit`, each point at the nearest one; a curve that goes on
 * as the one before came in says so (`s`) instead of its first handle. Takes absolute M, L, C and Z with whole numbers, a
 * letter standing for a run of like commands; throws at anything else.
 * @example shortPath('M10 20L16 20 16 30C16 32 16 34 16 36Z', 2) // => 'm5 10h3v5v3z'
 */
export function shortPath(d: string, unit = 1): string {
  if (!PATH.test(d)) throw new TypeError(`not a path of this house: ${d.slice(0, 60)}`);
  let text = '';
  let last = '';
  let [x, y, startX, startY] = [0, 0, 0, 0];
  // The handle with which the last curve came in, seen from its end.
  let handle: readonly [number, number] | null = null;
  const tell = (letter: string, steps: readonly number[]) => {
    const again = letter === last && letter !== 'm';
    last = letter;
    text += again ? '' : letter;
    steps.forEach((step, index) => (text += told(step, !again && index === 0)));
  };
  for (const command of d.match(COMMANDS) ?? []) {
    const letter = command.charAt(0);
    if (letter === 'Z') {
      tell('z', []);
      [x, y] = [startX, startY];
      handle = null;
      continue;
    }
    const numbers = command
      .slice(1)
      .split(' ')
      .map((one) => Math.round(Number(one) / unit));
    const size = letter === 'C' ? 6 : 2;
    for (let from = 0; from < numbers.length; from += size) {
      const steps = numbers.slice(from, from + size).map((to, index) => to - (index % 2 === 0 ? x : y));
      const [dx = 0, dy = 0] = steps.slice(-2);
      const isCurve = letter === 'C' && !isStraight(steps);
      if (letter === 'M') tell('m', steps);
      else if (!isCurve) tell(...lineTo(dx, dy));
      else if (handle !== null && goesOn(handle, steps)) tell('s', steps.slice(2));
      else tell('c', steps);
      handle = isCurve ? handleOf(steps) : null;
      [x, y] = [x + dx, y + dy];
      if (letter === 'M') [startX, startY] = [x, y];
    }
  }
  return text;
}

const PATH = /^(?:[MLC]-?\d+(?: -?\d+)+|Z)+$/;
const COMMANDS = /[MLCZ][^MLCZ]*/g;

// A curve whose handles lie on its chord within half a step, on the way and not beyond it.
function isStraight([ax = 0, ay = 0, bx = 0, by = 0, dx = 0, dy = 0]: readonly number[]): boolean {
  const squared = dx * dx + dy * dy;
  const isOnTheWay = (px: number, py: number) => {
    const along = px * dx + py * dy;
    const off = px * dy - py * dx;
    return 4 * off * off <= squared && along >= 0 && along <= squared;
  };
  return isOnTheWay(ax, ay) && isOnTheWay(bx, by);
}

/** How far a first handle may be from where the last one, mirrored, puts it: it draws the curve off by under half of that. */
const GOES_ON_WITHIN = 1.5;

function goesOn([hx, hy]: readonly [number, number], [ax = 0, ay = 0]: readonly number[]): boolean {
  return (ax - hx) ** 2 + (ay - hy) ** 2 <= GOES_ON_WITHIN ** 2;
}

function handleOf([, , bx = 0, by = 0, dx = 0, dy = 0]: readonly number[]): readonly [number, number] {
  return [dx - bx, dy - by];
}

function lineTo(dx: number, dy: number): [string, readonly number[]] {
  if (dy === 0) return ['h', [dx]];
  return dx === 0 ? ['v', [dy]] : ['l', [dx, dy]];
}

/** A letter or a minus sign parts numbers as well as a blank does. */
function told(step: number, afterLetter: boolean): string {
  return afterLetter || step < 0 ? `${step}` : ` ${step}`;
}
