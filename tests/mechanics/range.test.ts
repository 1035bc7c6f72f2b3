import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import type { Caps } from '../../src/mechanics/cap.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import {
  admits,
  breakIn,
  largestRange,
  roundedRange,
  type AdmittedRange,
} from '../../src/mechanics/range.ts';
import { samplesOf } from '../../src/mechanics/sweep.ts';
import { cardNamed, cards } from '../published/exercise-cards.ts';
import { STAGE_CAPS } from '../published/stage-caps.ts';

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};

function rangeOf(movement: Movement, loadKg: number, caps: Partial<Caps>): AdmittedRange {
  const range = largestRange(movement, REFERENCE_BODY, loadKg, { ...NO_CAPS, ...caps });
  if (!range.admitted) throw new Error(`barred by ${range.barredBy}`);
  return range;
}

describe('rounding the far end to 5 degrees', () => {
  const { movement: deadlift } = cardNamed('RDL 20 kg to 90 deg hip');
  const { movement: bridge } = cardNamed('Single-leg bridge, from the floor');
  const { movement: extension } = cardNamed('Prone hip extension (straight leg)');

  it.each([
    ['54.18 from a start at 5 becomes 50', deadlift, 20, { compressionBw: 1 }, 50],
    ['28.3 from a raised end at 0 becomes 25', bridge, 0, { compressionBw: 0.5 }, 25],
    ['45 stays 45', deadlift, 20, { angleDeg: 45 }, 45],
    ['7.4 does not round past the start at 5', deadlift, 20, { angleDeg: 7.4 }, 5],
  ])('%s', (_title, movement, loadKg, caps, expected) => {
    const exact = rangeOf(movement, loadKg, caps);
    const rounded = roundedRange(movement, REFERENCE_BODY, exact, 'hipFlexion', 5);
    expect(rounded.angleDeg).toBeCloseTo(expected, 9);
    expect(rounded.fraction).toBeLessThanOrEqual(exact.fraction + 1e-10);
    expect(rounded.decidedBy).toBe(exact.decidedBy);
    expect(rounded.gentleEnd).toBe(exact.gentleEnd);
  });

  it('a hip that extends rounds back towards straight', () => {
    const part: AdmittedRange = {
      ...rangeOf(extension, 0, {}),
      gentleEnd: 'start',
      fraction: 0.74,
      interval: { from: 0, to: 0.74 },
      angleDeg: -7.4,
    };
    expect(roundedRange(extension, REFERENCE_BODY, part, 'hipFlexion', 5)).toMatchObject({
      angleDeg: -5,
      fraction: 0.5,
    });
  });

  it('a hold keeps its one pose', () => {
    const { movement } = cardNamed('Long-lever bridge hold (hip 5)');
    const range = rangeOf(movement, 0, {});
    expect(roundedRange(movement, REFERENCE_BODY, range, 'hipFlexion', 5)).toEqual(range);
  });
});

describe('the whole movement or nothing', () => {
  const stages = Object.entries(STAGE_CAPS);
  const answers = cards.flatMap(({ name, movement, loadKg }) =>
    stages.map(([stage, caps]) => ({
      of: `${name}, stage ${stage}`,
      holds: samplesOf(movement).every((t) => breakIn(movement, REFERENCE_BODY, loadKg, caps, t) === null),
      admitted: admits(movement, REFERENCE_BODY, loadKg, caps).admitted,
    })),
  );

  it('is admitted just where no cap breaks at any sample', () => {
    expect(answers.filter(({ holds, admitted }) => holds !== admitted)).toEqual([]);
  });

  it('is asked where it is yes and where it is no', () => {
    expect(new Set(answers.map(({ holds }) => holds))).toEqual(new Set([true, false]));
  });
});
