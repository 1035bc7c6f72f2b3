/** Back one step after a flare or two bad mornings: fewer sets, less load, less range. */
import { roundDown } from '../units/round.ts';
import type { Prescribed } from './rung.ts';
import type { LadderCard } from './step.ts';

/** What easing back takes off, from the protocol. */
export interface EaseBackRules {
  /** For example 0.5. */
  readonly setsFactor: number;
  /** For example 0.8. */
  readonly loadFactor: number;
  readonly rangeLessDeg: number;
}

/**
 * An exercise eased back: sets and load by their factors, rounded down (at least one set; a load the kit makes for
 * this card), range by its degrees, down to the nearest setting the card has, never under its gentlest (rules 5, choice).
 */
export function easeBack(at: Prescribed, card: LadderCard, rules: EaseBackRules): Prescribed {
  const sets = Math.max(1, roundDown(at.dose.sets * rules.setsFactor, 1));
  return {
    ...at,
    dose: { ...at.dose, sets },
    loadKg: setting(card.loadsKg, at.loadKg * rules.loadFactor, at.loadKg),
    rangeDeg:
      at.rangeDeg === null ? null : setting(card.rangesDeg, at.rangeDeg - rules.rangeLessDeg, at.rangeDeg),
  };
}

// The largest setting not above the wish; the least there is when all are above; the present one of a card without settings.
function setting(settings: readonly number[], wished: number, now: number): number {
  const gentler = settings.findLast((value) => value <= wished + 1e-9) ?? settings[0] ?? now;
  return Math.min(now, gentler);
}
