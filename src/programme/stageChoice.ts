/** Which stage the recorded tests speak for, and why. The clinician's own choice stands and is marked. */
import { keepStageOf, numberedStages } from '../content/keepStage.ts';
import type { Consult, Library, Protocol, Stage } from '../content/library.ts';
import type { StageChoice } from './programme.ts';
import type { ScreenEffects } from './screen.ts';

export type StageName = StageChoice['chosen'];

/**
 * The stage for this person. The proposal climbs from the first stage as long as each next one may be entered by
 * its own rules (tests, settled next day, sport); `keep` is proposed only where there is nothing else. Light holds at
 * most is the screen's word: no choice goes beyond the first stage then.
 */
export function chooseStage(
  consult: Consult,
  protocol: Protocol,
  library: Library,
  effects: ScreenEffects,
): StageChoice {
  if (effects.lightHolds.length > 0) return holdsOnly(consult, protocol);
  const { reached, because } = propose(consult, protocol, library);
  const own = consult.stage === 'auto' ? null : consult.stage;
  const chosen = own ?? reached;
  return {
    chosen,
    name: stageOf(protocol, chosen).name,
    proposed: reached,
    chosenBy: own === null ? 'proposal' : 'clinician',
    because: own === null || own === reached ? because : [...because, ownText(own, reached)],
  };
}

function ownText(own: StageName, reached: StageName): string {
  return own === 'keepGoing'
    ? 'The clinician ends the treatment: the keep-going stage.'
    : `The clinician chose ${stageWord(own)}; the proposal was ${stageWord(reached)}.`;
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

/** @example stageWord(2) // => 'stage 2' */
export function stageWord(name: StageName): string {
  return name === 'keepGoing' ? 'the keep-going stage' : `stage ${name}`;
}

function holdsOnly(consult: Consult, protocol: Protocol): StageChoice {
  const first = firstStage(protocol);
  const passedBy =
    consult.stage === 'auto' || consult.stage === first
      ? []
      : [
          `The clinician wrote ${stageWord(consult.stage)}; it waits until more than light holds are allowed.`,
        ];
  return {
    chosen: first,
    name: stageOf(protocol, first).name,
    proposed: first,
    chosenBy: 'proposal',
    because: [`The screen allows light holds only: ${stageWord(first)}.`, ...passedBy],
  };
}

function firstStage({ stages }: Protocol): StageName {
  return numberedStages(stages).length === 0 ? 'keepGoing' : 1;
}

function propose(
  consult: Consult,
  protocol: Protocol,
  library: Library,
): { reached: StageName; because: string[] } {
  const because: string[] = [];
  let reached = firstStage(protocol);
  for (const [index, stage] of numberedStages(protocol.stages).entries()) {
    if (index === 0) continue;
    const name = (index + 1) as StageName;
    const obstacle = whyNot(stage, consult);
    because.push(
      obstacle === null
        ? `Stage ${name} is open: ${entryText(stage, consult, library)}.`
        : `Not stage ${name}: ${obstacle}.`,
    );
    if (obstacle !== null) break;
    reached = name;
  }
  if (consult.irritability === 'high' && reached !== 1 && reached !== 'keepGoing')
    because.push('Irritability is high: stage 1 may be the kinder start.');
  return { reached, because };
}

function whyNot(stage: Stage, consult: Consult): string | null {
  const { tests, painAtMost, settled, sport } = stage.enter;
  if (consult.response24h === 'up') return 'the tests had stirred it up by the next day';
  const tried = worstOfEach(consult).filter(({ test }) => tests.includes(test));
  if (tests.length > 0 && tried.length === 0) return `none of its tests was done (${tests.join(', ')})`;
  const least = Math.min(...tried.map(({ pain }) => pain));
  if (tests.length > 0 && least > painAtMost)
    return `pain ${least} in its test, ${painAtMost} at most is asked`;
  if (settled && consult.response24h !== 'settled') return 'it is not known that the next day was settled';
  if (sport && !consult.running.runs) return 'no sport that needs it is recorded';
  return null;
}

// A test that was done twice, on either side perhaps, counts by what hurt more.
function worstOfEach({ tests }: Consult): Consult['tests'] {
  return tests.filter(({ test, pain }, index) =>
    tests.every(
      (other, at) => other.test !== test || other.pain < pain || (other.pain === pain && at >= index),
    ),
  );
}

function entryText(stage: Stage, consult: Consult, library: Library): string {
  const done = worstOfEach(consult).filter(
    ({ test, pain }) => stage.enter.tests.includes(test) && pain <= stage.enter.painAtMost,
  );
  if (done.length === 0) return stage.enter.words.replace(/\.$/, '');
  return done
    .map(({ test, pain }) => `${library.exercises.get(test)?.title ?? test} with pain ${pain}`)
    .join(', ');
}
