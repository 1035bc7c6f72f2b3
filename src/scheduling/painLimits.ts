/** How much pain during exercise is all right for one person (house rules 5 and 11.5). */
import type { Setting } from '../units/reason.ts';

export interface PainRules {
  readonly duringAtMost: Setting;
  readonly overUsualAtMost: Setting;
  readonly neverAbove: Setting;
  /** From this usual pain on, and with high irritability, no more than usual. */
  readonly usualOnlyFrom: Setting;
}

export interface PainPerson {
  /** 0-10. */
  readonly usualPain: number;
  readonly irritability: 'low' | 'moderate' | 'high';
}

/** Pain 0-10 during exercise. */
export interface PainLimits {
  /** All right up to here. */
  readonly atMost: number;
  /** Above this the exercise stops; from `atMost` up to here nothing grows. */
  readonly neverAbove: number;
  /** No more than usual, and settled by the evening: for whom pain is high or flares easily. */
  readonly usualOnly: boolean;
}

/**
 * The larger of the fixed limit and usual + 1, never above the ceiling; no more than usual where usual is high or
 * irritability is.
 * @example painLimits({ usualPain: 2, irritability: 'low' }, rules) // => { atMost: 3, neverAbove: 5, usualOnly: false }
 */
export function painLimits({ usualPain, irritability }: PainPerson, rules: PainRules): PainLimits {
  const neverAbove = rules.neverAbove.value;
  if (irritability === 'high' || usualPain >= rules.usualOnlyFrom.value)
    return { atMost: usualPain, neverAbove: usualPain, usualOnly: true };
  const nearUsual = usualPain + rules.overUsualAtMost.value;
  return {
    atMost: Math.min(neverAbove, Math.max(rules.duringAtMost.value, nearUsual)),
    neverAbove,
    usualOnly: false,
  };
}
