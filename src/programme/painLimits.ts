/** The pain rule and the morning check with one person's numbers put in, so that nobody has to add up. */
import type { Consult, Protocol } from '../content/library.ts';
import type { MorningBands, PainLimits } from './phrases/pain.ts';

/** House rules 5: the larger of the fixed limit and usual + 1, never above the ceiling. @example usual 4, limits 3, +1, 5 => 5 */
export function painLimits(consult: Consult, { painRule }: Protocol): PainLimits {
  const neverAbove = painRule.neverAbove.value;
  const byUsual = consult.usualMorningPain + painRule.overUsualAtMost.value;
  return { atMost: Math.min(neverAbove, Math.max(painRule.duringAtMost.value, byUsual)), neverAbove };
}

/** House rules 5: usual to + 1 carry on; + 2 once the same again; from the fixed score on, ease back whatever is usual. */
export function morningBands(consult: Consult, { morningCheck }: Protocol): MorningBands {
  const usual = consult.usualMorningPain;
  const easeBackFrom = morningCheck.easeBackAt.value;
  const carryOnTo = Math.min(usual + morningCheck.carryOnOver.value, easeBackFrom - 1);
  return {
    usual,
    carryOnTo,
    sameAgain: carryOnTo + 1 < easeBackFrom ? [carryOnTo + 1, easeBackFrom - 1] : null,
    easeBackFrom,
  };
}
