/** The pain rule with one person's numbers put in, so that nobody has to add up. */
import type { Consult, Protocol } from '../content/library.ts';
import type { PainLimits } from './phrases/pain.ts';

/** House rules 5: the larger of the fixed limit and usual + 1, never above the ceiling. @example usual 4, limits 3, +1, 5 => 5 */
export function painLimits(consult: Consult, { painRule }: Protocol): PainLimits {
  const neverAbove = painRule.neverAbove.value;
  const byUsual = consult.usualMorningPain + painRule.overUsualAtMost.value;
  return { atMost: Math.min(neverAbove, Math.max(painRule.duringAtMost.value, byUsual)), neverAbove };
}
