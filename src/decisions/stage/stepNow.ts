/** Which step of the stage it is: the one written, or that of the revision before. */
import type { Consult } from '../../content/library.ts';
import type { Programme, StageChoice } from '../../programme/programme.ts';

/**
 * Left out, the step is that of the revision before where protocol and stage are the same, 1 where the stage is another
 * or the revision is the first, and null where the revision before cannot be made: then nobody knows.
 */
export function stepNow(
  { step, revision, protocol }: Consult,
  { chosen }: Pick<StageChoice, 'chosen'>,
  previous: Programme | null,
): number | null {
  if (step !== undefined) return step;
  if (previous === null) return revision === 1 ? 1 : null;
  const isSame = previous.stage.chosen === chosen && previous.record.versions.protocol === protocol;
  return isSame ? previous.step : 1;
}
