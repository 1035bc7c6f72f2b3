/** What a programme is for: getting over pain, ending well, or keeping a runner without pain strong (house rules 10). */
import { numberedStages } from '../../content/keepStage.ts';
import type { Protocol } from '../../content/library.ts';
import type { StageName } from '../terms/stageName.ts';

export type Course = 'treatment' | 'discharge' | 'prevention';

/** A protocol without numbered stages is for prevention; the keep stage of any other follows discharge. */
export function courseOf({ stages }: Pick<Protocol, 'stages'>, chosen: StageName): Course {
  if (numberedStages(stages).length === 0) return 'prevention';
  return chosen === 'keepGoing' ? 'discharge' : 'treatment';
}
