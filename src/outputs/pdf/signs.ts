/** Signs the typeface lacks, drawn as strokes on a square of one em: x to the right, y down from the capital height. */

export interface Sign {
  /** Width in ems, white on both sides included. */
  readonly widthEm: number;
  /** Polylines to stroke, in ems from the left edge and the baseline upwards. */
  readonly strokes: readonly (readonly (readonly [xEm: number, yEm: number])[])[];
}

const SHAFT = { left: 0.1, right: 0.9, middle: 0.33, head: 0.2 };

const right: Sign['strokes'] = [
  [
    [SHAFT.left, SHAFT.middle],
    [SHAFT.right, SHAFT.middle],
  ],
  [
    [SHAFT.right - SHAFT.head, SHAFT.middle + SHAFT.head],
    [SHAFT.right, SHAFT.middle],
    [SHAFT.right - SHAFT.head, SHAFT.middle - SHAFT.head],
  ],
];

const box: Sign['strokes'] = [
  [
    [0.1, 0],
    [0.78, 0],
    [0.78, 0.68],
    [0.1, 0.68],
    [0.1, 0],
  ],
];

const tick: Sign['strokes'] = [
  [
    [0.16, 0.32],
    [0.36, 0.1],
    [0.74, 0.62],
  ],
];

/** By character. Every other character must be in the typeface. */
export const SIGNS: ReadonlyMap<string, Sign> = new Map([
  ['→', { widthEm: 1, strokes: right }],
  ['←', { widthEm: 1, strokes: mapped(right, ([x, y]) => [1 - x, y]) }],
  ['↑', { widthEm: 0.66, strokes: mapped(right, ([x, y]) => [y, x - 0.17]) }],
  ['↓', { widthEm: 0.66, strokes: mapped(right, ([x, y]) => [y, 0.83 - x]) }],
  ['☐', { widthEm: 0.88, strokes: box }],
  ['☑', { widthEm: 0.88, strokes: [...box, ...tick] }],
  ['✓', { widthEm: 0.88, strokes: tick }],
  ['✔', { widthEm: 0.88, strokes: tick }],
]);

function mapped(
  strokes: Sign['strokes'],
  change: (point: readonly [number, number]) => readonly [number, number],
): Sign['strokes'] {
  return strokes.map((stroke) => stroke.map(change));
}
