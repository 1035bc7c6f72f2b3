/** The pain rule with one person's numbers put in, so that nobody has to add up. */
import type { Consult, Protocol } from '../../content/library.ts';
import { PAIN_DECISION } from '../../content/schema/override.ts';
import { painLimits, type PainLimits } from '../../scheduling/painLimits.ts';

/** Pain during exercise for this person. */
export function limitsOf(
  { usualMorningPain, irritability }: Consult,
  { painRule }: Pick<Protocol, 'painRule'>,
): PainLimits {
  return painLimits({ usualPain: usualMorningPain, irritability }, painRule);
}

/**
 * Pain up to which a card that was tried may be used: the fixed limit, or what this person may feel if that is more, and
 * never above the house's ceiling, however high usual is.
 */
export function triedAtMost(consult: Consult, protocol: Pick<Protocol, 'painRule'>): number {
  const { duringAtMost, neverAbove } = protocol.painRule;
  const { atMost } = limitsOf(consult, protocol);
  return Math.min(neverAbove.value, Math.max(duringAtMost.value, atMost));
}

/** Whether usual pain is so high that only the clinician's own decision lets a programme be written. */
export function needsDecision(
  { usualMorningPain }: Consult,
  { painRule }: Pick<Protocol, 'painRule'>,
): boolean {
  return usualMorningPain >= painRule.decisionFrom.value;
}

/** The clinician's reason for going on with high usual pain; null when no decision is recorded. */
export function painDecision({ overrides }: Consult): string | null {
  return overrides.find(({ path }) => path === PAIN_DECISION)?.reason ?? null;
}
