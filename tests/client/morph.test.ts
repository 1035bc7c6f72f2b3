/** What changes its shape on the way is drawn where it is at each step of it. */
import { describe, expect, it } from 'vitest';
import { pathAt } from '../../src/client/inUse/morph.ts';
import { followed } from '../../src/drawing/moving/followed.ts';
import { noJoints } from '../../src/drawing/moving/joints.ts';
import { hullPoints, smooth, type Outline } from '../../src/drawing/outline.ts';
import { filled } from '../../src/drawing/strokes.ts';

// A limb of a metre that swells and leans over, at nine even steps.
const STEPS = Array.from({ length: 9 }, (_, at) => limb(at / 8));

function limb(share: number): Outline {
  const width = 0.08 + 0.05 * share ** 2;
  return smooth(
    [
      [0, 1],
      [width, 0.6],
      [0.06, 0],
      [-0.06, 0],
      [-width, 0.5],
    ].map(([x = 0, y = 0]) => ({ x: x + 0.3 * share * y, y })),
  );
}

const numbersOf = (d: string) => (d.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);

describe('the path of a shape that changes', () => {
  const [layer] =
    followed(
      STEPS.map((outline) => [filled(outline, 'workLeg')]),
      noJoints(),
    ) ?? [];
  const morph = layer !== undefined && 'letters' in layer.parts ? layer.parts : null;

  it('is told as one', () => {
    expect(morph?.letters).toBe('MCCCCCZ');
  });

  // Each end within 3 mm, each handle within 3 mm of its own place about that end.
  it.each([0, 1, 2, 3, 4, 5, 6, 7, 8])('goes where the shape of step %i goes', (step) => {
    const drawn = numbersOf(pathAt(morph!.letters, morph!.numbers, step / 8));
    const wanted = hullPoints(STEPS[step]!).flatMap(({ x, y }) => [x * 1000, y * 1000]);
    expect(drawn).toHaveLength(wanted.length);
    drawn.forEach((mm, at) => expect(Math.abs(mm - wanted[at]!)).toBeLessThanOrEqual(6.1));
  });

  it('tells ends before handles, and handles from their ends', () => {
    expect(pathAt('MCLZ', [1, 2, 11, [2, 4], 3, 0, -3, 1, 20, 20], 0.5)).toBe(
      'M1.0 2.0C4.0 2.0 8.0 4.0 11.0 3.0L20.0 20.0Z',
    );
  });
});
