/** Lines, boxes and words of a chart, in tenths of a millimetre of paper, y down. */
import type { Drawing, Label, Paint, Shape } from '../drawing.ts';

/** Font sizes in tenths of a millimetre: 8 and 7 point, the smallest that print well. */
export const TEXT = 28.2;
export const SMALL = 24.7;
export const LINE_HEIGHT = 34;

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A stroke along points given as x, y pairs. */
export function stroke(
  points: readonly (readonly [number, number])[],
  paint: Paint,
  width: number,
  dash: Shape['dash'] = null,
): Shape {
  return {
    d: pathOf(points, false),
    fill: null,
    stroke: paint,
    width,
    dash,
    cap: dash === null ? 'round' : 'butt',
  };
}

/** A filled box, with a line round it when `edge` is given. */
export function box({ left, top, right, bottom }: Box, fill: Paint, edge: Paint | null = null): Shape {
  const corners = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ] as const;
  return {
    d: pathOf(corners, true),
    fill,
    stroke: edge,
    width: edge === null ? 0 : 3,
    dash: null,
    cap: 'butt',
  };
}

/** A filled triangle that points right, its middle at x, y. */
export function pointer(x: number, y: number, size: number, fill: Paint): Shape {
  const corners = [
    [x - size / 2, y - size / 2],
    [x + size / 2, y],
    [x - size / 2, y + size / 2],
  ] as const;
  return { d: pathOf(corners, true), fill, stroke: null, width: 0, dash: null, cap: 'butt' };
}

/** A filled dot, eight-sided: at 2 mm the eye sees a circle. */
export function dot(x: number, y: number, radius: number, fill: Paint): Shape {
  const corners = Array.from({ length: 8 }, (_, index) => {
    const rad = ((index + 0.5) * Math.PI) / 4;
    return [x + radius * Math.cos(rad), y + radius * Math.sin(rad)] as const;
  });
  return { d: pathOf(corners, true), fill, stroke: null, width: 0, dash: null, cap: 'butt' };
}

/** Words on a baseline. */
export function words(
  text: string,
  at: { readonly x: number; readonly y: number; readonly anchor: Label['anchor'] },
  paint: Paint = 'ink',
  weight: Label['weight'] = 'regular',
  size: number = TEXT,
): Label {
  return { text, x: Math.round(at.x), y: Math.round(at.y), anchor: at.anchor, size, paint, weight };
}

/** The drawing of a chart that fills `width` × `height`. */
export function chart(
  width: number,
  height: number,
  shapes: readonly Shape[],
  labels: readonly Label[],
): Drawing {
  return { viewBox: { x: 0, y: 0, width: Math.ceil(width), height: Math.ceil(height) }, shapes, labels };
}

// Classes of advance widths in the bold face, rounded up: measured in the house's own font, and near to others.
const NARROW = new Set(" .,:;'’!|()[]ijlftrI1°-/");
const WIDE = new Set('mwMW%@…—&');

/** Width of a text at most, in units of `size`'s own; never less than our fonts need for plain English. */
export function widthOf(text: string, size: number): number {
  return [...text].reduce((sum, letter) => sum + advance(letter), 0) * size;
}

/** The text in lines none wider than `width`, broken between words; a longer word gets a line and is broken within. */
export function wrapped(text: string, width: number, size: number): readonly string[] {
  const fits = (line: string) => widthOf(line, size) <= width;
  return text
    .split(' ')
    .flatMap((word) => broken(word, fits))
    .reduce<readonly string[]>((lines, word) => {
      const last = lines[lines.length - 1];
      const longer = `${last} ${word}`;
      return last !== undefined && fits(longer) ? [...lines.slice(0, -1), longer] : [...lines, word];
    }, []);
}

function broken(word: string, fits: (line: string) => boolean): readonly string[] {
  return [...word].reduce<readonly string[]>((parts, letter) => {
    const last = parts[parts.length - 1] ?? '';
    return last === '' || !fits(last + letter) ? [...parts, letter] : [...parts.slice(0, -1), last + letter];
  }, []);
}

function advance(letter: string): number {
  if (NARROW.has(letter)) return letter === ' ' ? 0.32 : 0.45;
  if (WIDE.has(letter)) return 0.98;
  return /[A-Z0-9]/.test(letter) ? 0.76 : letter < '\u0080' ? 0.61 : 0.9;
}

/** A line that stands up from a chart with words at its top, like a flag on its pole. */
export interface Pole {
  readonly x: number;
  readonly text: string;
}

export interface Flag {
  readonly x: number;
  readonly text: string;
  /** Rows above the chart, 0 the lowest. */
  readonly row: number;
  /** Where the words begin (`start`) or end (`end`); to the right of the pole where there is room. */
  readonly wordsX: number;
  readonly anchor: 'start' | 'end';
  readonly length: number;
}

const POLE_GAP = 8;

/**
 * Flags of the poles, in their order, so that no pole runs through another's words: words fly to the right, the pole
 * furthest left flies highest; those that would leave the chart fly to the left above all others.
 */
export function flagsOf(poles: readonly Pole[], width: number, size: number): readonly Flag[] {
  const sized = poles.map((pole, index) => ({ ...pole, index, length: widthOf(pole.text, size) + POLE_GAP }));
  const fits = ({ x, length }: (typeof sized)[number]) => x + length <= width;
  const rightward = sized.filter(fits).toSorted((a, b) => b.x - a.x);
  const leftward = sized.filter((pole) => !fits(pole)).toSorted((a, b) => a.x - b.x);
  const placed: (Flag & { readonly index: number })[] = [];
  for (const pole of rightward) {
    const under = placed.filter(({ x }) => x < pole.x + pole.length + POLE_GAP);
    placed.push({ ...pole, wordsX: pole.x + POLE_GAP, anchor: 'start', row: rowsOf(under) });
  }
  for (const pole of leftward) {
    // Words too long for either side of their pole stand across its top.
    const across = pole.length > pole.x;
    const place = across
      ? { wordsX: Math.max(2, width - pole.length), anchor: 'start' as const }
      : { wordsX: pole.x - POLE_GAP, anchor: 'end' as const };
    placed.push({ ...pole, ...place, row: rowsOf(placed) });
  }
  return placed
    .toSorted((a, b) => a.index - b.index)
    .map(({ x, text, row, wordsX, anchor, length }) => ({ x, text, row, wordsX, anchor, length }));
}

/** How many rows the flags take. */
export function rowsOf(flags: readonly Flag[]): number {
  return flags.reduce((rows, { row }) => Math.max(rows, row + 1), 0);
}

/** A flag's words and the white they stand on, with their baseline at `y`. */
export function flagWords(
  { wordsX, text, anchor, length }: Flag,
  y: number,
  paint: Paint,
  weight: Label['weight'],
  size: number,
): { readonly ground: Shape; readonly label: Label } {
  const [left, right] = anchor === 'start' ? [wordsX - 4, wordsX + length] : [wordsX - length, wordsX + 4];
  return {
    ground: box({ left, right, top: y - size * 0.85, bottom: y + size * 0.2 }, 'paperWhite'),
    label: words(text, { x: wordsX, y, anchor }, paint, weight, size),
  };
}

function pathOf(points: readonly (readonly [number, number])[], closed: boolean): string {
  const text = points
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${Math.round(x)} ${Math.round(y)}`)
    .join('');
  return closed ? `${text}Z` : text;
}

/** How a flag names a stage: by its number, or by the name of one without a number. */
export function stageWords(stage: string): string {
  return /^\d+$/.test(stage) ? `stage ${stage}` : stage;
}
