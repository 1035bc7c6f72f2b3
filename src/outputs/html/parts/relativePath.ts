/** SVG path text with steps instead of places: a third shorter, and exact, since a drawing's numbers are whole. */

/**
 * The path with relative commands. Takes absolute M, L, C and Z with whole numbers, a letter standing for a run of like
 * commands; throws at anything else.
 * @example relativePath('M10 20L15 18 15 30Z') // => 'm10 20l5-2 0 12z'
 */
export function relativePath(d: string): string {
  if (!PATH.test(d)) throw new TypeError(`not a path of this house: ${d.slice(0, 60)}`);
  let text = '';
  let [x, y] = [0, 0];
  let [startX, startY] = [0, 0];
  for (const command of d.match(COMMANDS) ?? []) {
    const numbers = command.match(NUMBERS) ?? [];
    // Of three points of a curve the last is where it ends; all are told from where it began.
    const size = command.startsWith('C') ? 6 : 2;
    text += command.charAt(0).toLowerCase();
    for (let i = 0; i < numbers.length; i += 2) {
      const [toX, toY] = [Number(numbers[i]), Number(numbers[i + 1])];
      text += told(toX - x, i === 0) + told(toY - y, false);
      if ((i + 2) % size === 0) [x, y] = [toX, toY];
      if (i === 0 && command.startsWith('M')) [startX, startY] = [toX, toY];
    }
    if (command === 'Z') [x, y] = [startX, startY];
  }
  return text;
}

const PATH = /^(?:[MLC](?: ?-?\d+)+|Z)+$/;
const COMMANDS = /[MLCZ][^MLCZ]*/g;
const NUMBERS = /-?\d+/g;

/** A letter or a minus sign parts numbers as well as a blank does. */
function told(step: number, afterLetter: boolean): string {
  return afterLetter || step < 0 ? `${step}` : ` ${step}`;
}
