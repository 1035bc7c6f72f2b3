import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { admits, breakIn } from '../../src/mechanics/range.ts';
import { samplesOf } from '../../src/mechanics/sweep.ts';
import { cards } from '../published/exercise-cards.ts';
import { STAGE_CAPS } from '../published/stage-caps.ts';

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
