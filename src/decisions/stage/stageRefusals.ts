/** A stage of the clinician's own that is not carried out as it stands. */
import type { Consult, Protocol } from '../../content/library.ts';
import type { Refusal, StageRefusal } from '../terms/refusal.ts';
import type { StageChoice } from '../terms/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';
import type { SuddenStart } from '../terms/suddenStart.ts';
import { stageOf } from './stageChoice.ts';
import { sportLimit } from './stageProposal.ts';

/** What stands against the stage; nothing does against keeping strong, nor against what the tests speak for. */
export function stageRefusals(
  consult: Consult,
  { chosen, proposed, because }: StageChoice,
  protocol: Protocol,
  sudden: SuddenStart | null,
): readonly Refusal[] {
  if (chosen === 'keepGoing') return [];
  const refusal = (why: StageRefusal): Refusal[] => [
    { code: 'does-not-fit', id: consult.id, path: ['stage'], why },
  ];
  const limit =
    sudden !== null && chosen > sudden.stageAtMost
      ? ({ code: 'sudden-start', sudden } as const)
      : sportLimit(stageOf(protocol, chosen), consult);
  if (limit !== null) return refusal({ reason: 'stage-barred', chosen, limit });
  if (!isAbove(chosen, proposed) || consult.stageBecause !== undefined) return [];
  const [shut] = because.filter((one) => one.code === 'looked' && one.limit !== null);
  return refusal({
    reason: 'stage-above-proposal',
    chosen,
    proposed,
    shut: shut?.code === 'looked' ? shut : null,
  });
}

function isAbove(own: number, proposed: StageName): boolean {
  return proposed !== 'keepGoing' && own > proposed;
}
