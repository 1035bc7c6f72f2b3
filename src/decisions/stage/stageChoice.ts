/** The stage of this person: the proposal, or the clinician's own choice, which stands and is marked. */
import { keepStageOf, numberedStages } from '../../content/keepStage.ts';
import type { Consult, Protocol, Stage } from '../../content/library.ts';
import type { NoWholeStage } from '../terms/noWholeStage.ts';
import type { StageChoice, StageReason } from '../terms/stageChoice.ts';
import type { ScreenEffects } from '../screen/screen.ts';
import { firstStage, proposeStage } from './stageProposal.ts';
import type { StageName } from '../terms/stageName.ts';
import type { LastDone } from '../terms/lastDone.ts';
import type { SuddenStart } from '../terms/suddenStart.ts';

/** Light holds at most is the screen's word: no choice goes beyond the first stage then. */
export function chooseStage(
  consult: Consult,
  protocol: Protocol,
  effects: ScreenEffects,
  sudden: SuddenStart | null,
  lastDone: readonly LastDone[],
): StageChoice {
  const own = consult.stage === 'auto' ? null : consult.stage;
  if (effects.lightHolds.length > 0) return holdsOnly(own, protocol);
  if (own === 'keepGoing') return ended(protocol, firstStage(protocol) === own);
  const { reached, looked } = proposeStage(consult, protocol, sudden, lastDone);
  const chosen = own ?? reached;
  const ownChoice: StageReason[] =
    own === null || own === reached
      ? []
      : [{ code: 'own', stage: own, proposed: reached, reason: consult.stageBecause ?? null }];
  return {
    chosen,
    name: stageOf(protocol, chosen).name,
    proposed: reached,
    chosenBy: own === null ? 'proposal' : 'clinician',
    because: [...looked.map((one) => ({ code: 'looked', ...one }) as const), ...ownChoice],
  };
}

// The end of treatment is decided by what is asked before it, not by the tests into a stage; keeping strong is all there is `alone`.
function ended(protocol: Protocol, alone: boolean): StageChoice {
  const own = 'keepGoing';
  return {
    chosen: own,
    name: stageOf(protocol, own).name,
    proposed: own,
    chosenBy: 'clinician',
    because: alone ? [] : [{ code: 'end-of-treatment' }],
  };
}

/** The proposal one stage back, because there is no whole programme where it stood; null when there is no earlier one. */
export function fallenBack(choice: StageChoice, protocol: Protocol, why: NoWholeStage): StageChoice | null {
  const { chosen, chosenBy, because } = choice;
  if (chosenBy !== 'proposal' || chosen === 'keepGoing' || chosen === 1) return null;
  const earlier = (chosen - 1) as StageName;
  return {
    ...choice,
    chosen: earlier,
    proposed: earlier,
    name: stageOf(protocol, earlier).name,
    because: [...because, { code: 'fell-back', from: chosen, to: earlier, why }],
  };
}

/** The protocol's stage by its name. Content has checked that it is there. */
export function stageOf({ id, stages }: Protocol, name: StageName): Stage {
  const stage = name === 'keepGoing' ? keepStageOf(stages) : numberedStages(stages)[name - 1];
  if (stage === undefined || stage === null)
    throw new Error(`stage ${name} of protocol ${id}: content lets through only stages that are there`);
  return stage;
}

/** The stages still to come, with their names; none after the keep stage. */
export function stagesAfter({ stages }: Protocol, name: StageName): readonly (readonly [StageName, Stage])[] {
  if (name === 'keepGoing') return [];
  const numbered = numberedStages(stages).map((stage, index) => [(index + 1) as StageName, stage] as const);
  const keep = keepStageOf(stages);
  return [...numbered.slice(name), ...(keep === null ? [] : [['keepGoing', keep] as const])];
}

/** Counted from 1, the keep stage after all others: as tables of the protocol name stages. */
export function stageNumber({ stages }: Protocol, name: StageName): number {
  return name === 'keepGoing' ? stages.length : name;
}

function holdsOnly(own: StageName | null, protocol: Protocol): StageChoice {
  const first = firstStage(protocol);
  return {
    chosen: first,
    name: stageOf(protocol, first).name,
    proposed: first,
    chosenBy: 'proposal',
    because: [{ code: 'light-holds-only', first, written: own === first ? null : own }],
  };
}
