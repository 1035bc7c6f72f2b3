/** Sitting and stretching in plain words. */
import type { Section } from '../programme.ts';
import { countText, list, paragraph, section } from './plain.ts';

/** Two numbers in minutes; null when sitting hurts too soon for any budget. */
export interface SittingWords {
  readonly budget: { readonly uprightMinutes: number; readonly hardMinutes: number } | null;
  readonly stepMinutes: number;
  readonly goalMinutes: number | null;
  /** Fixed blocks longer than the budget, minutes each. */
  readonly tooLongBlocks: readonly number[];
  readonly stageWords: string;
}

export function sittingText({
  budget,
  stepMinutes,
  goalMinutes,
  tooLongBlocks,
  stageWords,
}: SittingWords): Section {
  const parts =
    budget === null
      ? [
          paragraph(
            'Sitting hurts too soon just now to set a time. Stand, walk, or lie on your side instead.',
            'strong',
          ),
          list([
            'When you must sit, use a cushion with the part under the sore spot cut out.',
            'Lean back a little, and get up as soon as you can.',
          ]),
        ]
      : [
          paragraph(
            `Upright on a cushion: up to ${countText(budget.uprightMinutes, 'minute')}, then stand up and walk a little.`,
            'strong',
          ),
          paragraph(
            `On a hard seat, or leaning forward: up to ${countText(budget.hardMinutes, 'minute')}.`,
            'strong',
          ),
          list([
            `When that has been settled for a step, add ${countText(stepMinutes, 'minute')}${goalMinutes === null ? '' : `, up to your goal of ${countText(goalMinutes, 'minute')}`}.`,
            'Hard seats are not banned for ever. They come back like everything else.',
          ]),
        ];
  const blocks =
    tooLongBlocks.length === 0
      ? []
      : [
          paragraph(
            `You told us of ${tooLongBlocks.map((minutes) => countText(minutes, 'minute')).join(' and ')} of sitting that cannot be cut short. Use a cushion, sit tall, shift your weight often, and walk for two minutes before and after.`,
          ),
        ];
  return section('sitting', 'Sitting', [...parts, ...blocks, paragraph(stageWords)]);
}

export function stretchingText(stageWords: string, stretchesNow: boolean): Section {
  return section('stretching', 'Stretching', [
    paragraph(stageWords),
    list([
      'Leave out long, deep stretches of the back of the thigh. They press the sore spot.',
      'If you like to move, swing or stretch gently for less than 10 seconds, without force.',
      'Do not roll or massage the sit bone.',
    ]),
    ...(stretchesNow
      ? [
          paragraph(
            'Stretching often feels good at the time. It does not keep you from getting hurt.',
            'quiet',
          ),
        ]
      : []),
  ]);
}
