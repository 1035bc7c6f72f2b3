/** Which stage the recorded tests speak for, and why. The clinician's own choice stands and is marked. */
import type { Consult, Library, Protocol, Stage } from '../content/library.ts';
import type { StageChoice } from './programme.ts';
import type { ScreenEffects } from './screen.ts';

export type StageName = StageChoice['chosen'];

/**
 * The stage for this person. The proposal climbs from the first stage as long as each next one may be entered by
 * its own rules (tests, settled next day, sport); `keep` is never proposed, only chosen.
 */
export function chooseStage(
  consult: Consult,
  protocol: Protocol,
  library: Library,
  effects: ScreenEffects,
): StageChoice {
  const { reached, because } =
    effects.lightHolds.length > 0 ? HOLDS_ONLY : propose(consult, protocol, library);
  // Light holds at most is the screen's word: no choice goes beyond the first stage then.
  const chosen = effects.lightHolds.length > 0 || consult.stage === 'auto' ? reached : consult.stage;
  return {
    chosen,
    name: stageOf(protocol, chosen).name,
    proposed: reached,
    chosenBy: consult.stage === 'auto' ? 'proposal' : 'clinician',
    because:
      consult.stage === 'auto' || consult.stage === reached
        ? because
        : [...because, `The clinician chose ${stageWord(chosen)}; the proposal was ${stageWord(reached)}.`],
  };
}

/** The protocol's stage by its name; `keep` is the one after the numbered ones. Content has checked that it is there. */
export function stageOf(protocol: Protocol, name: StageName): Stage {
  const stage = name === 'keep' ? protocol.stages.at(-1) : protocol.stages[name - 1];
  if (stage === undefined)
    throw new Error(
      `stage ${name} of protocol ${protocol.id}: expected one of ${protocol.stages.length} stages`,
    );
  return stage;
}

export function stageWord(name: StageName): string {
  return name === 'keep' ? 'the keep-going stage' : `stage ${name}`;
}

const HOLDS_ONLY = { reached: 1 as StageName, because: ['Stage 1: the screen allows light holds only.'] };

function propose(
  consult: Consult,
  protocol: Protocol,
  library: Library,
): { reached: StageName; because: string[] } {
  const because: string[] = [];
  let reached: StageName = 1;
  for (const name of [2, 3, 4] as const) {
    const stage = protocol.stages[name - 1];
    if (stage === undefined || stage === protocol.stages.at(-1)) break;
    const obstacle = whyNot(stage, consult);
    because.push(
      obstacle === null
        ? `Stage ${name} is open: ${entryText(stage, consult, library)}.`
        : `Not stage ${name}: ${obstacle}.`,
    );
    if (obstacle !== null) break;
    reached = name;
  }
  return { reached, because };
}

function whyNot(stage: Stage, consult: Consult): string | null {
  const { tests, painAtMost, settled, sport } = stage.enter;
  if (consult.response24h === 'up') return 'the tests had stirred it up by the next day';
  const tried = consult.tests.filter(({ test }) => tests.includes(test));
  if (tests.length > 0 && tried.length === 0) return `none of its tests was done (${tests.join(', ')})`;
  const least = Math.min(...tried.map(({ pain }) => pain));
  if (tests.length > 0 && least > painAtMost)
    return `pain ${least} in its test, ${painAtMost} at most is asked`;
  if (settled && consult.response24h !== 'settled') return 'it is not known that the next day was settled';
  if (sport && !consult.running.runs) return 'no sport that needs it is recorded';
  return null;
}

function entryText(stage: Stage, consult: Consult, library: Library): string {
  const done = consult.tests.filter(
    ({ test, pain }) => stage.enter.tests.includes(test) && pain <= stage.enter.painAtMost,
  );
  if (done.length === 0) return stage.enter.words.replace(/\.$/, '');
  return done
    .map(({ test, pain }) => `${library.exercises.get(test)?.title ?? test} with pain ${pain}`)
    .join(', ');
}
