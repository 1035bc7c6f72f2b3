/** Why a stage was proposed or is refused, in sentences for the clinician; the codes stay in the room that found them. */
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import { ANGLE_WORDS } from './angle.ts';
import type { StageChoice } from '../programme.ts';
import type { StageLooked, StageObstacle } from '../stageProposal.ts';
import type { SuddenStart } from '../suddenStart.ts';
import { numberText } from './plain.ts';
import { RUN_WORDS } from './running.ts';
import { SCREEN_WORDS } from './screen.ts';

type StageName = StageChoice['chosen'];

/** @example stageWord(2) // => 'stage 2' */
export function stageWord(name: StageName): string {
  return name === 'keepGoing' ? 'the keep-going stage' : `stage ${name}`;
}

/** That a stage is open, or what keeps it shut. `enterWords`: the protocol's own, for a stage that asks for no test. */
export function lookedText(
  { stage, by, obstacle }: StageLooked,
  nameOf: (test: string) => string,
  enterWords: string,
): string {
  if (obstacle !== null) return `Not ${stageWord(stage)}: ${obstacleText(obstacle, nameOf)}.`;
  const tests = by.map(({ test, pain }) => `${nameOf(test)} with pain ${pain}`);
  const why = tests.length === 0 ? enterWords.replace(/\.$/, '') : tests.join(', ');
  return `Stage ${stage} is open: ${why}.`;
}

/** @example obstacleText({ code: 'not-settled' }, String) // => 'it is not known that the next day was settled' */
export function obstacleText(obstacle: StageObstacle, nameOf: (test: string) => string): string {
  switch (obstacle.code) {
    case 'stirred-up':
      return 'the tests had stirred it up by the next day';
    case 'irritable':
      return 'irritability is high, and not every test with the hip nearly straight is done, mild and settled by the next day';
    case 'irritable-for-sport':
      return 'irritability is high, and fast work waits for less';
    case 'not-settled':
      return 'it is not known that the next day was settled';
    case 'no-sport':
      return 'no sport that needs it is recorded';
    case 'not-tested':
      return `none of its tests was done (${obstacle.tests.join(', ')})`;
    case 'straight-hip-pain':
      return `pain ${obstacle.pain} in ${nameOf(obstacle.test)}, the worst test with the hip nearly straight; ${obstacle.painAtMost} at most is asked`;
    case 'entry-pain':
      return `pain ${obstacle.pain} in ${nameOf(obstacle.test)}, the worst of its tests; ${obstacle.painAtMost} at most is asked`;
    case 'sport-pain':
      return `pain ${obstacle.pain} in ${nameOf(obstacle.test)}; fast work asks for ${obstacle.painAtMost} at most in every test`;
    case 'sudden-start':
      return `the first programme after a cleared sudden start (${suddenText(obstacle.sudden)}) is of stage ${obstacle.sudden.stageAtMost} at most`;
  }
}

/** @example 'sudden pop with a bruise, or not able to walk: cleared by the surgeon on 2026-11-10; MRI of 2026-11-08: no tear' */
export function suddenText({ flag, by, on, imaging }: SuddenStart): string {
  const picture = imaging === null ? '' : `; ${imaging.kind} of ${imaging.on}: ${imaging.result}`;
  return `${SCREEN_WORDS[flag]}: cleared by ${by} on ${on}${picture}`;
}

/** For the record: the first programme after a cleared sudden start. */
export function suddenRemark(sudden: SuddenStart): string {
  return `First programme after a cleared sudden start (${suddenText(sudden)}): stage ${sudden.stageAtMost} at most, and at most ${numberText(Math.round(sudden.loadShare * 100))} % of the load the tests would allow; running: ${RUN_WORDS[sudden.runAtMost]} at most.`;
}

/** The clinician's own stage beside the proposal. `reason`: stageBecause, null where none is needed. */
export function ownStageText(own: StageName, proposed: StageName, reason: string | null): string {
  if (own === 'keepGoing') return 'The clinician ends the treatment: the keep-going stage.';
  return `The clinician chose ${stageWord(own)}; the proposal was ${stageWord(proposed)}${reason === null ? '' : `. Reason: ${reason.replace(/\.$/, '')}`}.`;
}

/** That the screen goes no further than holds. */
export function holdsOnlyTexts(first: StageName, written: StageName | null): readonly string[] {
  return [
    `The screen allows light holds only: ${stageWord(first)}.`,
    ...(written === null
      ? []
      : [`The clinician wrote ${stageWord(written)}; it waits until more than light holds are allowed.`]),
  ];
}

/** Why the proposal went back from a stage that its tests had opened. */
export type NoWholeStage =
  | { readonly code: 'empty-slot'; readonly because: readonly string[] }
  | { readonly code: 'no-room'; readonly found: string }
  | { readonly code: 'hollow'; readonly angle: JointAngle; readonly share: number; readonly below: number };

/** @example 'Stage 3 has no whole programme for this person (nothing fills Bow ...); stage 2 is proposed instead.' */
export function fellBackText(from: StageName, to: StageName, why: NoWholeStage): string {
  return `${capitalWord(from)} has no whole programme for this person (${noWholeText(why)}); ${stageWord(to)} is proposed instead.`;
}

/** For the record, where a hollow stage is the clinician's own choice or nothing earlier is better. */
export function hollowRemark(stage: StageName, why: Extract<NoWholeStage, { code: 'hollow' }>): string {
  return `${capitalWord(stage)} is hollow for this person: ${noWholeText(why)}.`;
}

function noWholeText(why: NoWholeStage): string {
  switch (why.code) {
    case 'empty-slot':
      return why.because.map((slot) => `nothing fills ${slot}`).join('; ');
    case 'no-room':
      return why.found;
    case 'hollow':
      return `every exercise that is measured by its ${ANGLE_WORDS[why.angle].bend} stays at or under ${percent(why.share)} of the bend the stage works in, and ${percent(why.below)} is asked; what hurt keeps it there`;
  }
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function capitalWord(name: StageName): string {
  const word = stageWord(name);
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** For a load of the clinician's own in that programme. */
export function suddenLoadLimit(mostKg: number): string {
  return `at most ${mostKg}: loads are light in the first programme after a cleared sudden start`;
}
