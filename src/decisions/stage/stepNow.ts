/** Which step of the stage it is: the one written, or that of the revision before. */
import type { Consult } from '../../content/library.ts';
import type { Earlier } from '../terms/earlier.ts';
import type { StageName } from '../terms/stageName.ts';

/**
 * Left out, the step is that of the revision before where protocol and stage are the same, 1 where the stage is another
 * or the revision is the first, and null where the revision before cannot be made: then nobody knows.
 */
export function stepNow(
  { step, revision, protocol }: Consult,
  { chosen }: { readonly chosen: StageName },
  earlier: Earlier | null,
): number | null {
  if (step !== undefined) return step;
  if (earlier === null) return revision === 1 ? 1 : null;
  const isSame = earlier.stage === chosen && earlier.protocol === protocol;
  return isSame ? earlier.step : 1;
}
