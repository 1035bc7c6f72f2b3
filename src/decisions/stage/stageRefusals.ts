/** A stage of the clinician's own that is not carried out as it stands, with its place and the cure. */
import type { Consult, Library, Protocol } from '../../content/library.ts';
import type { Refusal } from '../../units/refusal.ts';
import { obstacleText, stageWord } from '../../messages/en/clinician/stage.ts';
import type { StageChoice } from '../../programme/programme.ts';
import { stageOf, testNameIn } from './stageChoice.ts';
import { sportObstacle } from './stageProposal.ts';
import type { StageName } from '../terms/stageName.ts';
import type { SuddenStart } from '../screen/suddenStart.ts';

/** What stands against the written stage, none for the proposal; `because`: the sentences of the proposal. */
export function stageRefusals(
  consult: Consult,
  { chosen, chosenBy, proposed, because }: StageChoice,
  protocol: Protocol,
  library: Library,
  sudden: SuddenStart | null,
): readonly Refusal[] {
  if (chosenBy === 'proposal' || chosen === 'keepGoing') return [];
  const refusal = (expected: string, fix: string): Refusal[] => [
    {
      code: 'does-not-fit',
      kind: 'consult',
      id: consult.id,
      path: ['stage'],
      found: `${chosen}`,
      expected,
      fix,
    },
  ];
  const barred =
    sudden !== null && chosen > sudden.stageAtMost
      ? ({ code: 'sudden-start', sudden } as const)
      : sportObstacle(stageOf(protocol, chosen), consult);
  if (barred !== null)
    return refusal(
      `an earlier stage: ${obstacleText(barred, testNameIn(protocol, library))}`,
      'Write stage: auto, or an earlier stage; no reason lifts this.',
    );
  if (!isAbove(chosen, proposed) || consult.stageBecause !== undefined) return [];
  const [why] = because.filter((sentence) => sentence.startsWith('Not '));
  return refusal(
    `${stageWord(proposed)} or earlier, as the tests propose${why === undefined ? '' : ` (${why.replace(/\.$/, '')})`}, or with the reason under stageBecause`,
    'Write stage: auto, or add stageBecause: with why a later stage is right for this person.',
  );
}

function isAbove(own: StageName, proposed: StageName): boolean {
  return own !== 'keepGoing' && proposed !== 'keepGoing' && own > proposed;
}
