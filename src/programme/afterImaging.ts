/** The first programme after a sudden start that was looked into by a picture: stage 2 at most, light loads (house rules 11.6). */
import { numberedStages } from '../content/keepStage.ts';
import type { Consult, Protocol } from '../content/library.ts';
import type { ScreenItem } from '../content/schema/consult.ts';
import type { Refusal } from '../units/refusal.ts';
import { afterImagingText, notSoFarYet } from './phrases/afterImaging.ts';
import type { Programme, StageChoice } from './programme.ts';
import { needsImaging } from './screen.ts';
import { stageOf } from './stageChoice.ts';

/** The items whose picture is newer than the programme before, `previous`; none once a programme was made after it. */
export function newlyImaged(
  consult: Consult,
  previous: Pick<Programme, 'seenOn'> | null,
): readonly ScreenItem[] {
  return consult.clearances
    .filter(
      ({ flag, imaging, on }) =>
        imaging !== undefined && needsImaging(flag, consult) && (previous === null || previous.seenOn < on),
    )
    .map(({ flag }) => flag);
}

/** The choice, held to the latest stage there may be; refused where the clinician wrote a later one. */
export function heldBack(
  choice: StageChoice,
  consult: Consult,
  protocol: Protocol,
  items: readonly ScreenItem[],
): StageChoice | Refusal {
  const numbered = numberedStages(protocol.stages).length;
  // A protocol of nothing but the keep-going stage is for people whom nothing hurts.
  if (items.length === 0 || numbered === 0) return choice;
  const most = Math.min(protocol.limits.afterImagingStage.value, numbered) as 1 | 2 | 3 | 4;
  if (choice.chosen !== 'keepGoing' && choice.chosen <= most) return choice;
  if (choice.chosenBy === 'clinician')
    return {
      code: 'does-not-fit',
      kind: 'consult',
      id: consult.id,
      path: ['stage'],
      found: String(consult.stage),
      ...notSoFarYet(items, most),
    };
  return {
    ...choice,
    chosen: most,
    name: stageOf(protocol, most).name,
    because: [...choice.because, afterImagingText(items, most)],
  };
}
