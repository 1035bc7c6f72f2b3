/** Why no programme can be written, each with the place in the consult and the cure. */
import type { Consult, Slot } from '../../content/library.ts';
import { PAIN_DECISION } from '../../content/schema/override.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { NoWeek } from '../../scheduling/plan.ts';
import { gaveUpText } from '../../messages/en/patient/week.ts';
import type { PassedOver } from '../../programme/programme.ts';
import type { NoSession } from './session.ts';
import { stageWord } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

function refusal(
  consult: Consult,
  code: string,
  path: Refusal['path'],
  words: Pick<Refusal, 'found' | 'expected' | 'fix'>,
): Refusal {
  return { code, kind: 'consult', id: consult.id, path, ...words };
}

/** A protocol for people without pain, and someone with pain. */
export function notWithoutPain(consult: Consult, pain: number): Refusal {
  return refusal(consult, 'does-not-fit', ['protocol'], {
    found: consult.protocol,
    expected: `the staged protocol of what hurts: pain ${pain} of 10 is recorded, and this one is for someone without`,
    fix: 'Write the protocol of the tendon that hurts.',
  });
}

/** Usual pain so high that only the clinician's own decision lets a programme be written. */
export function painNeedsDecision(consult: Consult, decisionFrom: number): Refusal {
  return refusal(consult, 'does-not-fit', ['usualMorningPain'], {
    found: String(consult.usualMorningPain),
    expected: `below ${decisionFrom}, or with a recorded decision: with usual pain of ${decisionFrom} or more no programme is written without one`,
    fix: `Look for what else may cause so much pain. If a programme is right all the same, record the decision under overrides: path ${PAIN_DECISION}, value goOn, and the reason.`,
  });
}

/** The ladder of this person's stage has fewer steps. */
export function noSuchStep(consult: Consult, name: StageName, step: number, steps: number): Refusal {
  return refusal(consult, 'does-not-fit', ['step'], {
    found: consult.step === undefined ? `left out, so that of the revision before: ${step}` : String(step),
    expected: `a step of ${stageWord(name)} for this person: 1 to ${steps}`,
    fix: `Write step: ${steps} or less, or go on to the next stage when its tests allow it.`,
  });
}

/** No step is written, and the revision before, whose step it would be, cannot be made. */
export function noStepBefore(consult: Consult): Refusal {
  return refusal(consult, 'missing-key', ['step'], {
    found: 'left out, and there is no revision before that can be made',
    expected: 'there: the step this person is on',
    fix: 'Write step, 1 to begin the stage; or mend the revision before.',
  });
}

/** A needed slot of the present stage that no card fills: every card with what stood against it. */
export function noCardFor(
  consult: Consult,
  name: StageName,
  slot: Slot,
  passedOver: readonly PassedOver[],
): Refusal {
  const own = passedOver.filter((one) => one.slot === slot.name);
  return refusal(consult, 'no-card-for-slot', ['stage'], {
    found: `${stageWord(name)}, in which no card can fill the slot ${slot.name} (${reasonsOf(own).join('; ')})`,
    expected: 'a stage in which every needed slot has a card for this person',
    fix: `Write an earlier stage, add what is missing to kit or minutesPerDay, or add a card to ${slot.name} in the protocol.`,
  });
}

/** Each reason once, with the cards it stands against. */
function reasonsOf(passedOver: readonly PassedOver[]): readonly string[] {
  const reasons = [...new Set(passedOver.map(({ because }) => because))];
  return reasons.map((reason) => {
    const cards = passedOver.filter(({ because }) => because === reason).map(({ card }) => card);
    return `${cards.join(', ')}: ${reason}`;
  });
}

/** Not even one session finds a day. */
export function noWeek(consult: Consult, { because }: NoWeek): Refusal {
  return refusal(consult, 'no-free-day', ['days'], {
    found: consult.days.join(', '),
    expected: `days on which at least one session fits: ${because.map(gaveUpText).map(asClause).join('; ')}`,
    fix: 'Write a day with time under days; where the protocol spaces its sessions over a week, mend the protocol.',
  });
}

// A sentence of the record as a part of another one.
function asClause(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1).replace(/\.$/, '');
}

/** What cannot give way takes longer than there is time. */
export function tooFewMinutes(consult: Consult, leastMinutes: number): Refusal {
  return refusal(consult, 'nothing-fits', ['minutesPerDay'], {
    found: `${consult.minutesPerDay} minutes`,
    expected: `at least ${leastMinutes} minutes for what the stage needs`,
    fix: `Write minutesPerDay: ${leastMinutes} or more.`,
  });
}

/** The first step itself breaks a limit. */
export function noSession(consult: Consult, { limit, slot }: NoSession): Refusal {
  return refusal(consult, 'nothing-fits', ['stage'], {
    found: `a session whose ${slot ?? 'whole'} breaks ${limit}`,
    expected: 'a first step inside every limit of the stage',
    fix: 'Choose an earlier stage.',
  });
}
