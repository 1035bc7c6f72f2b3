/** Paths in fewer letters: read back by the rules of SVG 1.1, 8.3, they go where the others went. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawScene } from '../../../src/drawing/scene.ts';
import { shortPath } from '../../../src/outputs/html/parts/shortPath.ts';
import { programmes } from './programmes.ts';

type Xy = readonly [number, number];
/** Curves and lines as cubics, absolute, small letters stepping from the current point; `null` where a figure closes. */
type Cubic = readonly [Xy, Xy, Xy, Xy] | null;

function cubics(d: string): Cubic[] {
  const found: Cubic[] = [];
  let [at, start]: [Xy, Xy] = [[0, 0], [0, 0]]; // prettier-ignore
  for (const [, letter = '', numbers = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const values = (numbers.match(/-?\d+/g) ?? []).map(Number);
    const isStep = letter === letter.toLowerCase();
    const to = (x: number, y: number): Xy => (isStep ? [at[0] + x, at[1] + y] : [x, y]);
    const line = (end: Xy) => {
      const share = (part: number): Xy => [at[0] + (end[0] - at[0]) * part, at[1] + (end[1] - at[1]) * part];
      found.push([at, share(1 / 3), share(2 / 3), end]);
      at = end;
    };
    const kind = letter.toLowerCase();
    if (kind === 'z') {
      found.push(null);
      at = start;
    } else if (kind === 'm') start = at = to(values[0]!, values[1]!);
    else if (kind === 'h') for (const x of values) line([at[0] + x, at[1]]);
    else if (kind === 'v') for (const y of values) line([at[0], at[1] + y]);
    else if (kind === 'l') for (let n = 0; n < values.length; n += 2) line(to(values[n]!, values[n + 1]!));
    else
      for (let n = 0; n < values.length; n += kind === 's' ? 4 : 6) {
        const from = kind === 's' ? n - 2 : n;
        const [a, b, end] = [0, 2, 4].map((i) => to(values[from + i]!, values[from + i + 1]!)) as [
          Xy,
          Xy,
          Xy,
        ];
        found.push([at, kind === 's' ? mirrored(found.at(-1), at) : a, b, end]);
        at = end;
      }
  }
  return found;
}

// SVG 1.1, 8.3.6: the first handle of a shorthand is the second one of the curve before, mirrored at the current point.
function mirrored(before: Cubic | undefined, [x, y]: Xy): Xy {
  if (!before) throw new Error('a shorthand after no curve');
  const [hx, hy] = before[2];
  return [2 * x - hx, 2 * y - hy];
}

/** The farthest that one path is from the other where both have gone the same share of the same segment. */
function farthest(short: string, d: string, unit: number): number {
  const [ours, theirs] = [cubics(short), cubics(d)];
  expect(ours.map((one) => one === null)).toEqual(theirs.map((one) => one === null));
  return Math.max(
    0,
    ...ours.flatMap((one, index) => {
      const other = theirs[index];
      if (one === null || other === null || other === undefined) return [];
      return [0, 3].map((n) =>
        Math.hypot(one[n]![0] * unit - other[n]![0], one[n]![1] * unit - other[n]![1]),
      );
    }),
  );
}

const NEAREST = Math.SQRT1_2 + 1e-9;
const whole = fc.integer({ min: -3000, max: 3000 });
const numbers = (count: number) =>
  fc.array(whole, { minLength: count, maxLength: count }).map((n) => n.join(' '));
const piece = fc.oneof(
  numbers(2).map((n) => `L${n}`),
  numbers(4).map((n) => `L${n}`),
  numbers(6).map((n) => `C${n}`),
  numbers(12).map((n) => `C${n}`),
);
const path = fc
  .array(
    fc
      .tuple(numbers(2), fc.array(piece, { minLength: 1, maxLength: 4 }), fc.boolean())
      .map(([move, pieces, closed]) => `M${move}${pieces.join('')}${closed ? 'Z' : ''}`),
    { minLength: 1, maxLength: 3 },
  )
  .map((parts) => parts.join(''));

describe('shortPath', () => {
  it.each([1, 2, 5])('ends every line and curve at the nearest place of a grid of %i', (unit) => {
    fc.assert(
      fc.property(path, (d) => {
        expect(farthest(shortPath(d, unit), d, unit)).toBeLessThanOrEqual(NEAREST * unit);
      }),
      { seed: 5 },
    );
  });

  it('keeps the handles of what is no straight line', () => {
    fc.assert(
      fc.property(path, (d) => {
        const [ours, theirs] = [cubics(shortPath(d)), cubics(d)];
        ours.forEach((one, index) => {
          const other = theirs[index]!;
          if (one === null || other === null) return;
          [1, 2].forEach((n) => {
            const [a, b] = [one[n]!, other[n]!];
            const chord = Math.hypot(other[3][0] - other[0][0], other[3][1] - other[0][1]);
            const isLine = Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-6;
            if (isLine) expect(offChord(b, other)).toBeLessThanOrEqual(0.5 + 1e-9 * chord);
          });
        });
      }),
      { seed: 6 },
    );
  });

  it('puts the handles of curves within a step and a half of their places', () => {
    fc.assert(
      fc.property(path, (d) => {
        const [ours, theirs] = [cubics(shortPath(d)), cubics(d)];
        ours.forEach((one, index) => {
          const other = theirs[index]!;
          if (one === null || other === null || isLine(one)) return;
          for (const n of [1, 2])
            expect(Math.hypot(one[n]![0] - other[n]![0], one[n]![1] - other[n]![1])).toBeLessThanOrEqual(1.5);
        });
      }),
      { seed: 7 },
    );
  });

  it.each([
    // Mirrored by half a step more is the same curve on; by more it is not.
    ['M0 0C10 0 20 10 20 20C20 31 30 40 40 40', 1, 'm0 0c10 0 20 10 20 20s10 20 20 20'],
    ['M0 0C10 0 20 10 20 20C20 32 30 40 40 40', 1, 'm0 0c10 0 20 10 20 20 0 12 10 20 20 20'],
    // A straight line between two curves ends the way on.
    ['M0 0C10 0 20 10 20 20L20 30C20 40 30 50 40 50', 1, 'm0 0c10 0 20 10 20 20v10c0 10 10 20 20 20'],
  ])('goes on from curve to curve: %s on a grid of %i is %s', (d, unit, short) => {
    expect(shortPath(d, unit)).toBe(short);
  });

  it.each([
    ['M10 20L15 18 15 30Z', 1, 'm10 20l5-2v12z'],
    ['M10 20L16 20 16 30C16 32 16 34 16 36Z', 2, 'm5 10h3v5 3z'],
    ['M0 0C10 0 20 0 30 0C30 10 40 10 40 0', 1, 'm0 0h30c0 10 10 10 10 0'],
    // Its handles lie on the line, and beyond its end: it runs out and comes back.
    ['M0 0C40 0 20 0 30 0', 1, 'm0 0c40 0 20 0 30 0'],
  ])('%s on a grid of %i is %s', (d, unit, short) => {
    expect(shortPath(d, unit)).toBe(short);
  });

  it.each(['m1 2', 'M1.5 2', 'M1 2A3 4', 'M1 2 ', ''])(
    'throws at %j, which no drawing of ours holds',
    (d) => {
      expect(() => shortPath(d)).toThrow(/not a path of this house/);
    },
  );

  it.each(programmes)('makes the drawings of %s three eighths shorter or more', (_, { exercises }) => {
    const drawn = exercises.flatMap(({ figures }) => (figures === null ? [] : drawScene(figures.scene)));
    const paths = drawn.flatMap(({ shapes }) => shapes.map(({ d }) => d));
    const length = (texts: readonly string[]) => texts.reduce((sum, text) => sum + text.length, 0);
    expect(length(paths.map((d) => shortPath(d, 2)))).toBeLessThan(length(paths) * 0.625);
    for (const d of paths) expect(farthest(shortPath(d, 2), d, 2)).toBeLessThanOrEqual(NEAREST * 2);
  });
});

// A line as `cubics` reads it has its handles at its thirds.
function isLine([from, a, , to]: readonly [Xy, Xy, Xy, Xy]): boolean {
  return (
    Math.hypot(3 * (a[0] - from[0]) - (to[0] - from[0]), 3 * (a[1] - from[1]) - (to[1] - from[1])) < 1e-6
  );
}

function offChord([x, y]: Xy, [from, , , to]: readonly [Xy, Xy, Xy, Xy]): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  return length === 0
    ? Math.hypot(x - from[0], y - from[1])
    : Math.abs((x - from[0]) * dy - (y - from[1]) * dx) / length;
}
