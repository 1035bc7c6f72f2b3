/** Whether the treatment of this person may be ended now, whatever the clinician wrote (house rules 11.10). */
import type { Consult, Protocol } from '../../content/library.ts';
import type { Refusal, StillSore } from '../terms/refusal.ts';

/** Why not; null when nothing stands against it. Irritable: high irritability, or a usual pain at which nobody runs. */
export function stillSore(
  { irritability, usualMorningPain, tests }: Consult,
  { limits, runningRules }: Protocol,
): StillSore | null {
  const worst = Math.max(...tests.map(({ pain }) => pain));
  if (irritability === 'high') return { because: 'irritable' };
  if (usualMorningPain >= runningRules.usualPainNoRun.value)
    return { because: 'usualPain', pain: usualMorningPain, under: runningRules.usualPainNoRun.value };
  if (worst > limits.testPainAtMost.value)
    return { because: 'testPain', pain: worst, atMost: limits.testPainAtMost.value };
  return null;
}

export function notYetDischarged(consult: Consult, sore: StillSore): Refusal {
  return {
    code: 'does-not-fit',
    id: consult.id,
    path: ['stage'],
    why: { reason: 'still-sore', written: String(consult.stage), sore },
  };
}
