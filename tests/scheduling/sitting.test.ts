import { describe, expect, it } from 'vitest';
import { sittingBudget } from '../../src/scheduling/sitting.ts';
import { sitting } from './houseRules.ts';

const budget = (
  toleranceMinutes: number,
  goalMinutes: number | null = null,
  ...fixedBlocksMinutes: number[]
) => sittingBudget({ toleranceMinutes, goalMinutes, fixedBlocksMinutes }, sitting);

describe('the sitting budget', () => {
  it.each([
    // tolerated  upright  hard or leaning forward
    [5, 5, 2],
    [9, 5, 2],
    [15, 10, 5],
    [25, 15, 7],
    [40, 25, 12],
    [45, 30, 15],
    [120, 30, 15],
  ])('%d minutes tolerated: %d upright, %d on a hard seat', (tolerance, uprightMinutes, hardMinutes) => {
    expect(budget(tolerance).steps[0]).toEqual({ uprightMinutes, hardMinutes });
  });

  it('goes up by 5 minutes a settled step and ends at the goal itself', () => {
    expect(budget(25, 32).steps.map(({ uprightMinutes }) => uprightMinutes)).toEqual([15, 20, 25, 30, 32]);
    expect(budget(45, 60).steps.at(-1)).toEqual({ uprightMinutes: 60, hardMinutes: 30 });
  });

  it("ends at the house's most without a goal, and does not start above a small goal", () => {
    expect(budget(25).steps.at(-1)?.uprightMinutes).toBe(30);
    expect(budget(60, 20).steps).toEqual([{ uprightMinutes: 20, hardMinutes: 10 }]);
  });

  it('is none under 5 minutes: stand, lie on the side, cut-out cushion', () => {
    expect(budget(4, 60)).toMatchObject({
      steps: [],
      because: { code: 'tolerance-too-short', inputs: { toleranceMinutes: 4 } },
      instead: ['stand', 'lie-on-side', 'cut-out-cushion'],
    });
  });

  it('flags blocks that cannot be broken and are longer than the budget', () => {
    expect(budget(25, 60, 10, 15, 240).overBlocks).toEqual([
      {
        minutes: 240,
        overMinutes: 225,
        ease: ['cut-out-cushion', 'shift-weight', 'stand-before-and-after', 'ask-for-shorter-blocks'],
        shiftEveryMinutes: 15,
      },
    ]);
    expect(budget(2, null, 10).overBlocks).toMatchObject([
      { minutes: 10, overMinutes: 10, shiftEveryMinutes: null },
    ]);
  });
});
