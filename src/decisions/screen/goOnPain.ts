/** Pain with which a person may go on to the next rung or stage (house rules 11.5): one that this person can meet. */
import type { Consult, Protocol } from '../../content/library.ts';
import { limitsOf } from './painLimits.ts';

export interface GoOnPain {
  /** Pain 0-10 in the exercises of the rung before, at most. */
  readonly atMost: number;
  /** It is the person's usual pain, and has settled by the evening: the exercise rule of whom pain is high or flares. */
  readonly usualOnly: boolean;
}

/** `painAtMost`: what the protocol asks; never less than this person's usual. */
export function goOnPain(
  consult: Consult,
  protocol: Pick<Protocol, 'painRule'>,
  painAtMost: number,
): GoOnPain {
  const { atMost, usualOnly } = limitsOf(consult, protocol);
  return usualOnly
    ? { atMost, usualOnly }
    : { atMost: Math.max(painAtMost, consult.usualMorningPain), usualOnly };
}

/** What a test may hurt to enter a stage of a protocol by weeks, whose leaflet lets people go on by `goOnPain`; never above the ceiling. */
export function entryPainAtMost(consult: Consult, protocol: Protocol, painAtMost: number): number {
  if (!protocol.byWeeks) return painAtMost;
  const usual = goOnPain(consult, protocol, painAtMost).atMost;
  return Math.max(painAtMost, Math.min(usual, protocol.painRule.neverAbove.value));
}
