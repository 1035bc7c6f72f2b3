/** Why no programme can be written, each with its place in the consult. */
import type { Consult, Slot } from '../../content/library.ts';
import type { NoWeek } from '../../scheduling/plan.ts';
import type { PassedOver } from '../terms/passedOver.ts';
import type { NoRoom } from '../terms/noWholeStage.ts';
import type { Refusal, RefusalReason } from '../terms/refusal.ts';
import type { StageName } from '../terms/stageName.ts';

function refusal({ id }: Consult, code: string, key: string, why: RefusalReason): Refusal {
  return { code, id, path: [key], why };
}

/** A protocol for people without pain, and someone with pain. */
export function notWithoutPain(consult: Consult, pain: number): Refusal {
  return refusal(consult, 'does-not-fit', 'protocol', { reason: 'hurts', protocol: consult.protocol, pain });
}

/** Usual pain so high that only the clinician's own decision lets a programme be written. */
export function painNeedsDecision(consult: Consult, decisionFrom: number): Refusal {
  const usualPain = consult.usualMorningPain;
  return refusal(consult, 'does-not-fit', 'usualMorningPain', {
    reason: 'pain-undecided',
    usualPain,
    decisionFrom,
  });
}

/** The ladder of this person's stage has fewer steps. */
export function noSuchStep(consult: Consult, stage: StageName, step: number, steps: number): Refusal {
  const isWritten = consult.step !== undefined;
  return refusal(consult, 'does-not-fit', 'step', { reason: 'no-such-step', stage, step, isWritten, steps });
}

/** No step is written, and the revision before, whose step it would be, cannot be made. */
export function noStepBefore(consult: Consult): Refusal {
  return refusal(consult, 'missing-key', 'step', { reason: 'no-step-before' });
}

/** A needed slot of the present stage that no card fills: every card with what stood against it. */
export function noCardFor(
  consult: Consult,
  stage: StageName,
  slot: Slot,
  passedOver: readonly PassedOver[],
): Refusal {
  const barred = passedOver.filter((one) => one.slot === slot.name).map(({ card, why }) => ({ card, why }));
  return refusal(consult, 'no-card-for-slot', 'stage', {
    reason: 'empty-slot',
    stage,
    slot: slot.name,
    barred,
  });
}

/** Not even one session finds a day. */
export function noWeek(consult: Consult, { because }: NoWeek): Refusal {
  return refusal(consult, 'no-free-day', 'days', { reason: 'no-week', days: consult.days, because });
}

/** What cannot give way takes longer than there is time. */
export function tooFewMinutes(consult: Consult, leastMinutes: number): Refusal {
  const minutes = consult.minutesPerDay;
  return refusal(consult, 'nothing-fits', 'minutesPerDay', {
    reason: 'too-few-minutes',
    minutes,
    leastMinutes,
  });
}

/** The first step itself breaks a limit. */
export function noSession(consult: Consult, room: NoRoom): Refusal {
  return refusal(consult, 'nothing-fits', 'stage', room);
}
