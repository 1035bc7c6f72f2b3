import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawScene } from '../../../src/drawing/scene.ts';
import { relativePath } from '../../../src/outputs/html/parts/relativePath.ts';
import { programmes } from './programmes.ts';

/** The absolute points a path passes, by the rules of SVG 1.1, 8.3: small letters step from the current point. */
function points(d: string): string[] {
  const found: string[] = [];
  let [at, start] = [
    [0, 0],
    [0, 0],
  ];
  for (const [, letter = '', numbers = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const values = (numbers.match(/-?\d+/g) ?? []).map(Number);
    const size = { m: 2, l: 2, c: 6, z: 0 }[letter.toLowerCase()]!;
    if (size === 0) {
      at = start;
      found.push('close');
      continue;
    }
    for (let run = 0; run < values.length; run += size) {
      const [x0, y0] = letter === letter.toLowerCase() ? at : [0, 0];
      const told = values.slice(run, run + size).map((value, index) => value + (index % 2 === 0 ? x0! : y0!));
      at = told.slice(-2);
      if (letter.toLowerCase() === 'm' && run === 0) start = at;
      found.push(`${run === 0 ? letter.toLowerCase() : '+'} ${told.join(' ')}`);
    }
  }
  return found;
}

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

describe('relativePath', () => {
  it('passes the same points as the path it was given', () => {
    fc.assert(
      fc.property(path, (d) => {
        expect(points(relativePath(d))).toEqual(points(d));
      }),
      { seed: 5 },
    );
  });

  it.each(['m1 2', 'M1.5 2', 'M1 2A3 4', 'M1 2 ', ''])(
    'throws at %j, which no drawing of ours holds',
    (d) => {
      expect(() => relativePath(d)).toThrow(/not a path of this house/);
    },
  );

  it.each(programmes)('makes the drawings of %s a quarter shorter or more', (_, { exercises }) => {
    const drawn = exercises.flatMap(({ figures }) => (figures === null ? [] : drawScene(figures.scene)));
    const paths = drawn.flatMap(({ shapes }) => shapes.map(({ d }) => d));
    const length = (texts: readonly string[]) => texts.reduce((sum, text) => sum + text.length, 0);
    expect(length(paths.map(relativePath))).toBeLessThan(length(paths) * 0.75);
    expect(paths.map(relativePath).map(points)).toEqual(paths.map(points));
  });
});
