/** Sitting: hours written for minutes, and two numbers for one day. */
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { outside, type Doubt } from './doubt.ts';

export function sittingDoubts({ sitting, outcomes, seenOn }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  const { toleranceMinutes, fixedBlocksMinutes = [], goalMinutes } = sitting;
  const least = limits.sittingFromMinutes.value;
  const short = (value: number | undefined, path: Doubt['path']): Doubt[] =>
    value === 0 ? [] : outside(value, [least, Infinity], { rule: 'sittingShort', path, inputs: {} });
  return [
    ...short(toleranceMinutes, ['sitting', 'toleranceMinutes']),
    ...fixedBlocksMinutes.flatMap((block, index) => short(block, ['sitting', 'fixedBlocksMinutes', index])),
    ...short(goalMinutes, ['sitting', 'goalMinutes']),
    ...outcomes.flatMap(({ on, sittingMinutes = 0 }, index): Doubt[] =>
      on === seenOn && sittingMinutes > 0 && toleranceMinutes > 0
        ? outside(
            sittingMinutes,
            [toleranceMinutes / limits.sittingApart.value, toleranceMinutes * limits.sittingApart.value],
            {
              rule: 'sittingTwice',
              path: ['outcomes', index, 'sittingMinutes'],
              inputs: { toleranceMinutes },
            },
          )
        : [],
    ),
  ];
}
