/** Why no programme was made: what stands there, what must, and the cure. */
import { PAIN_DECISION } from '../../../content/schema/override.ts';
import { doubtWords, idleWords } from '../../../content/plausible/doubtWords.ts';
import type {
  OwnEntryFault,
  PlanRefusal,
  RefusalReason,
  ScreenStop,
  SlipRefusal,
  StageRefusal,
} from '../../../decisions/terms/refusal.ts';
import { ANGLE_WORDS } from '../angle.ts';
import { listText, numberText } from '../plain.ts';
import { gaveUpText } from '../patient/week.ts';
import { notDischarged } from './discharged.ts';
import { OWN_CHOICE } from './ownChoices.ts';
import { blockText, lightHoldsText, noPictureText, under18Text } from './screen.ts';
import { lookedText, noRoomText, stageLimitText, slotText, stageWord } from './stage.ts';

/** `found` reads after "is", `expected` after "must be". */
export interface RefusalWords {
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

type Of<Union extends { readonly reason: string }> = {
  readonly [Member in Union as Member['reason']]: (
    why: Member,
    testNameOf: (test: string) => string,
  ) => RefusalWords;
};

/** `testNameOf`: a test as the protocol or its card names it. */
export function refusalWords(why: RefusalReason, testNameOf: (test: string) => string): RefusalWords {
  return WORDS[why.reason](why as never, testNameOf);
}

const SCREEN: Of<ScreenStop> = {
  'screen-stop': ({ item, answer, effect, emergency }) => ({
    found: answer,
    ...blockText(item, answer, effect, emergency),
  }),
  'light-holds-undecided': ({ item, answer }) => ({ found: answer, ...lightHoldsText(item, answer) }),
  'no-picture': ({ item, answer }) => ({ found: answer, ...noPictureText(item) }),
  'under-18': ({ answer }) => ({ found: answer, ...under18Text(answer) }),
};

const STAGE: Of<StageRefusal> = {
  'stage-barred': ({ chosen, limit }, testNameOf) => ({
    found: `${chosen}`,
    expected: `an earlier stage: ${stageLimitText(limit, testNameOf)}`,
    fix: 'Write stage: auto, or an earlier stage; no reason lifts this.',
  }),
  'stage-above-proposal': ({ chosen, proposed, shut }, testNameOf) => {
    const why = shut === null ? '' : ` (${lookedText(shut, testNameOf, '').replace(/\.$/, '')})`;
    return {
      found: `${chosen}`,
      expected: `${stageWord(proposed)} or earlier, as the tests propose${why}, or with the reason under stageBecause`,
      fix: 'Write stage: auto, or add stageBecause: with why a later stage is right for this person.',
    };
  },
  hurts: ({ protocol, pain }) => ({
    found: protocol,
    expected: `the staged protocol of what hurts: pain ${pain} of 10 is recorded, and this one is for someone without`,
    fix: 'Write the protocol of the tendon that hurts.',
  }),
  'still-sore': ({ written, sore }) => ({ found: written, ...notDischarged(sore) }),
  'pain-undecided': ({ usualPain, decisionFrom }) => ({
    found: String(usualPain),
    expected: `below ${decisionFrom}, or with a recorded decision: with usual pain of ${decisionFrom} or more no programme is written without one`,
    fix: `Look for what else may cause so much pain. If a programme is right all the same, record the decision under overrides: path ${PAIN_DECISION}, value goOn, and the reason.`,
  }),
};

const PLAN: Of<PlanRefusal> = {
  'no-such-step': ({ stage, step, isWritten, steps }) => ({
    found: isWritten ? String(step) : `left out, so that of the revision before: ${step}`,
    expected: `a step of ${stageWord(stage)} for this person: 1 to ${steps}`,
    fix: `Write step: ${steps} or less, or go on to the next stage when its tests allow it.`,
  }),
  'no-step-before': () => ({
    found: 'left out, and there is no revision before that can be made',
    expected: 'there: the step this person is on',
    fix: 'Write step, 1 to begin the stage; or mend the revision before.',
  }),
  'empty-slot': ({ stage, slot, barred }) => ({
    found: `${stageWord(stage)}, in which no card can fill the slot ${slotText({ slot, barred })}`,
    expected: 'a stage in which every needed slot has a card for this person',
    fix: `Write an earlier stage, add what is missing to kit or minutesPerDay, or add a card to ${slot} in the protocol.`,
  }),
  'no-room': (why) => ({
    found: noRoomText(why),
    expected: 'a first step inside every limit of the stage',
    fix: 'Choose an earlier stage.',
  }),
  'no-week': ({ days, because }) => ({
    found: days.join(', '),
    expected: `days on which at least one session fits: ${because.map(gaveUpText).map(asClause).join('; ')}`,
    fix: 'Write a day with time under days; where the protocol spaces its sessions over a week, mend the protocol.',
  }),
  'too-few-minutes': ({ minutes, leastMinutes }) => ({
    found: `${minutes} minutes`,
    expected: `at least ${leastMinutes} minutes for what the stage needs`,
    fix: `Write minutesPerDay: ${leastMinutes} or more.`,
  }),
};

const TAKE_OUT = 'Take the entry out.';

const OWN: Of<OwnEntryFault> = {
  'own-of-a-hold': ({ value: found }) => ({
    found,
    expected: 'left out: this exercise is held',
    fix: 'Set holdSeconds instead.',
  }),
  'own-of-repetitions': ({ value: found }) => ({
    found,
    expected: 'left out: this exercise goes by repetitions',
    fix: 'Set repetitions instead.',
  }),
  'own-hold-too-long': ({ value: found, mostSeconds }) => ({
    found,
    expected: `at most ${mostSeconds}: the screen allows short holds only`,
    fix: `Write ${mostSeconds} or less.`,
  }),
  'own-of-another-joint': ({ value: found, angle }) => ({
    found,
    expected: `left out: this protocol is set by ${ANGLE_WORDS[angle].bend}`,
    fix: `Write ${angle}Deg, or take it out.`,
  }),
  'own-without-range': ({ value: found, angle }) => ({
    found,
    expected: `left out: this exercise is not set by ${ANGLE_WORDS[angle].bend}`,
    fix: TAKE_OUT,
  }),
  'own-range-outside': ({ value: found, angle, leastDeg, mostDeg }) => ({
    found,
    expected: `a ${ANGLE_WORDS[angle].bend} of this exercise: ${leastDeg}° to ${mostDeg}°`,
    fix: `Write ${leastDeg} to ${mostDeg}.`,
  }),
  'own-weight-in-light-holds': ({ value: found }) => ({
    found,
    expected: '0: the screen allows light holds only',
    fix: TAKE_OUT,
  }),
  'own-without-weight': ({ value: found }) => ({
    found,
    expected: 'left out: this exercise carries no weight',
    fix: TAKE_OUT,
  }),
  'own-load-after-sudden-start': ({ value: found, mostKg }) => ({
    found,
    expected: `at most ${mostKg}: loads are light in the first programme after a cleared sudden start`,
    fix: `Write ${numberText(mostKg)} or less, or take the entry out.`,
  }),
  // The nearest either way is enough to see what the kit can do.
  'own-load-not-in-kit': ({ value: found, kg, lighterKg, heavierKg }) => {
    const near = [lighterKg, ...(heavierKg === null ? [] : [heavierKg])].map(
      (one) => `${numberText(one)} kg`,
    );
    return {
      found,
      expected: `a load that the kit makes for this exercise; the nearest ${near.length === 1 ? 'is' : 'are'} ${listText(near)}`,
      fix: `Write ${numberText(lighterKg)}, or add to the kit what makes ${numberText(kg)} kg.`,
    };
  },
  'own-of-no-card': ({ value: path, cards }) => {
    const [card = '', cell = ''] = path.split('.');
    const now = cards.filter(({ fromStep }) => fromStep === null).map(({ id }) => id);
    const later = cards.flatMap(({ id, fromStep }) =>
      fromStep === null ? [] : [`${id} (step ${fromStep})`],
    );
    return {
      found: path,
      expected: `a cell of a card in this person's plan; ${card} is not in it, so the number would change nothing`,
      fix: `Write ${cell} of one of ${now.join(', ')}${later.length === 0 ? '' : `, or later ${later.join(', ')}`}; or take the entry out.`,
    };
  },
  'own-days': ({ value: found, possible }) => ({
    found,
    expected: `days on which this work is planned, of ${possible.join(', ')}`,
    fix: `Write some of ${possible.join(', ')}.`,
  }),
};

const SLIP: Of<SlipRefusal> = {
  doubt: ({ doubt }) => doubtWords(doubt),
  idle: ({ idle }) => idleWords(idle),
};

const WORDS: Of<RefusalReason> = { ...SCREEN, ...STAGE, ...PLAN, ...OWN, ...OWN_CHOICE, ...SLIP };

// A sentence of the record as a part of another one.
function asClause(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1).replace(/\.$/, '');
}
