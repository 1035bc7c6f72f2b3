/** SVG path text with steps instead of places: a third shorter, and exact, since a drawing's numbers are whole. */

type Point = readonly [x: number, y: number];

/**
 * The path with relative commands. Takes absolute M, L, C and Z with whole numbers, a letter standing for a run of like
 * commands; throws at anything else.
 * @example relativePath('M10 20L15 18 15 30Z') // => 'm10 20l5-2 0 12z'
 */
export function relativePath(d: string): string {
  let at: Point = [0, 0];
  let start: Point = at;
  return commandsOf(d)
    .map(({ letter, points }) => {
      if (letter === 'Z') {
        at = start;
        return 'z';
      }
      // Of three points of a curve the last is where it ends; all are told from where it began.
      const size = letter === 'C' ? 3 : 1;
      const steps = Array.from({ length: points.length / size }, (_, run) => {
        const from = at;
        const told = points.slice(run * size, (run + 1) * size);
        at = told.at(-1) ?? at;
        if (letter === 'M' && run === 0) start = at;
        return told.flatMap(([x, y]) => [x - from[0], y - from[1]]);
      });
      return letter.toLowerCase() + tight(steps.flat());
    })
    .join('');
}

interface Command {
  readonly letter: string;
  readonly points: readonly Point[];
}

function commandsOf(d: string): Command[] {
  if (!/^(?:[MLC](?: ?-?\d+)+|Z)+$/.test(d))
    throw new TypeError(`not a path of this house: ${d.slice(0, 60)}`);
  return [...d.matchAll(/([MLCZ])([^MLCZ]*)/g)].map(([, letter = '', numbers = '']) => {
    const values = (numbers.match(/-?\d+/g) ?? []).map(Number);
    const pairs = Array.from({ length: values.length / 2 }, (_, index): Point => [
      values[index * 2] ?? 0,
      values[index * 2 + 1] ?? 0,
    ]);
    return { letter, points: pairs };
  });
}

/** A minus sign parts numbers as well as a blank does. */
function tight(numbers: readonly number[]): string {
  return numbers.map((value, index) => (index > 0 && value >= 0 ? ` ${value}` : `${value}`)).join('');
}
