/** Why a stage was proposed or is refused, in sentences for the clinician; the codes stay in the room that found them. */
import type { BarredCard, Hollow, NoRoom, NoWholeStage } from '../../../decisions/terms/noWholeStage.ts';
import type { StageReason } from '../../../decisions/terms/stageChoice.ts';
import type { StageName } from '../../../decisions/terms/stageName.ts';
import type { StageLooked, StageLimit } from '../../../decisions/terms/stageLimit.ts';
import type { SuddenStart } from '../../../decisions/terms/suddenStart.ts';
import { numberText } from '../plain.ts';
import { RUN_WORDS } from '../patient/running.ts';
import { cardLimitWords } from './cardLimits.ts';
import { ANGLE_WORDS } from '../angle.ts';
import { SCREEN_WORDS } from './screen.ts';

/** @example stageWord(2) // => 'stage 2' */
export function stageWord(name: StageName): string {
  return name === 'keepGoing' ? 'the keep-going stage' : `stage ${name}`;
}

/** That a stage is open, or what keeps it shut. `enterWords`: the protocol's own, for a stage that asks for no test. */
export function lookedText(
  { stage, by, limit }: StageLooked,
  nameOf: (test: string) => string,
  enterWords: string,
): string {
  if (limit !== null) return `Not ${stageWord(stage)}: ${stageLimitText(limit, nameOf)}.`;
  const tests = by.map(({ test, pain }) => `${nameOf(test)} with pain ${pain}`);
  const why = tests.length === 0 ? enterWords.replace(/\.$/, '') : tests.join(', ');
  return `Stage ${stage} is open: ${why}.`;
}

/** @example stageLimitText({ code: 'not-settled' }, String) // => 'it is not known that the next day was settled' */
export function stageLimitText(limit: StageLimit, nameOf: (test: string) => string): string {
  switch (limit.code) {
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
    case 'no-weight-shown':
      return `no set with a weight was tested at ${limit.painAtMost} or less, and the stage before was not done; fast work comes after heavy work`;
    case 'not-tested':
      return `none of its tests was done (${limit.tests.join(', ')})`;
    case 'straight-hip-pain':
      return `pain ${limit.pain} in ${nameOf(limit.test)}, the worst test with the hip nearly straight; ${limit.painAtMost} at most is asked`;
    case 'entry-pain':
      return `pain ${limit.pain} in ${nameOf(limit.test)}, the worst of its tests; ${limit.painAtMost} at most is asked`;
    case 'sport-pain':
      return `pain ${limit.pain} in ${nameOf(limit.test)}; fast work asks for ${limit.painAtMost} at most in every test`;
    case 'sudden-start':
      return `the first programme after a cleared sudden start (${suddenText(limit.sudden)}) is of stage ${limit.sudden.stageAtMost} at most`;
  }
}

/** @example 'sudden pop with a bruise, or not able to walk: cleared by the surgeon on 2026-11-10; MRI of 2026-11-08: no tear' */
export function suddenText({ flag, by, on, imaging }: SuddenStart): string {
  const picture = imaging === null ? '' : `; ${imaging.kind} of ${imaging.on}: ${imaging.result}`;
  return `${SCREEN_WORDS[flag]}: cleared by ${by} on ${on}${picture}`;
}

/** For the record: the first programme after a cleared sudden start. */
export function suddenRemark(sudden: SuddenStart): string {
  return `First programme after a cleared sudden start (${suddenText(sudden)}): stage ${sudden.stageAtMost} at most, and at most ${numberText(Math.round(sudden.loadShare * 100))} % of the load the tests would allow; running: ${sudden.runAtMost === 'none' ? 'none' : `${RUN_WORDS[sudden.runAtMost]} at most`}.`;
}

/** In place of a proposal. */
export const END_OF_TREATMENT = 'The clinician ends the treatment: the keep-going stage.';

/** The clinician's own stage beside the proposal. `reason`: stageBecause, null where none is needed. */
export function ownStageText(own: StageName, proposed: StageName, reason: string | null): string {
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

/** @example 'Stage 3 has no whole programme for this person (nothing fills Bow ...); stage 2 is proposed instead.' */
export function fellBackText(from: StageName, to: StageName, why: NoWholeStage): string {
  return `${capitalWord(from)} has no whole programme for this person (${noWholeText(why)}); ${stageWord(to)} is proposed instead.`;
}

/** For the record, where a hollow stage is the clinician's own choice or nothing earlier is better. */
export function hollowRemark(stage: StageName, why: Hollow): string {
  return `${capitalWord(stage)} is hollow for this person: ${noWholeText(why)}.`;
}

function noWholeText(why: NoWholeStage): string {
  switch (why.reason) {
    case 'empty-slots':
      return why.slots.map((one) => `nothing fills ${slotText(one)}`).join('; ');
    case 'no-room':
      return noRoomText(why);
    case 'hollow':
      return `every exercise that is measured by its ${ANGLE_WORDS[why.angle].bend} stays at or under ${percent(why.share)} of the bend the stage works in, and ${percent(why.below)} is asked; what hurt keeps it there`;
  }
}

/** The slot, and each reason once with the cards it stands against. */
export function slotText({
  slot,
  barred,
}: {
  readonly slot: string;
  readonly barred: readonly BarredCard[];
}): string {
  const said = barred.map(({ card, why }) => ({ card, because: cardLimitWords(why) }));
  const reasons = [...new Set(said.map(({ because }) => because))];
  const each = reasons.map((reason) => {
    const cards = said.filter(({ because }) => because === reason).map(({ card }) => card);
    return `${cards.join(', ')}: ${reason}`;
  });
  return `${slot} (${each.join('; ')})`;
}

/** @example 'a session whose whole breaks squeezeTimePerDay' */
export function noRoomText({ slot, limit }: NoRoom): string {
  return `a session whose ${slot ?? 'whole'} breaks ${limit}`;
}

/** Every reason of a choice, a sentence or two each. `enterWordsOf`: the protocol's own, for a stage that asks for no test. */
export function stageTexts(
  because: readonly StageReason[],
  nameOf: (test: string) => string,
  enterWordsOf: (stage: StageName) => string,
): readonly string[] {
  return because.flatMap((one) => {
    switch (one.code) {
      case 'looked':
        return [lookedText(one, nameOf, enterWordsOf(one.stage))];
      case 'own':
        return [ownStageText(one.stage, one.proposed, one.reason)];
      case 'end-of-treatment':
        return [END_OF_TREATMENT];
      case 'fell-back':
        return [fellBackText(one.from, one.to, one.why)];
      case 'light-holds-only':
        return holdsOnlyTexts(one.first, one.written);
    }
  });
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function capitalWord(name: StageName): string {
  const word = stageWord(name);
  return word.charAt(0).toUpperCase() + word.slice(1);
}
