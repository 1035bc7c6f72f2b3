/** When hills and fast running may share a week (house rules 7). */
import { type Reason, reason, type Setting } from '../units/reason.ts';
import type { HillsAndFast } from './wish.ts';

export interface HillsAndFastFacts {
  readonly usedToHills: boolean;
  readonly usedToFast: boolean;
  /** Weeks since both came back; null while one is held back or when nobody knows. */
  readonly weeksBack: number | null;
}

export interface HillsAndFastDecision {
  readonly rule: HillsAndFast;
  readonly because: Reason<'not-used-to-both' | 'not-back-long-enough' | 'used-to-both'>;
}

/** Never in one week for someone not used to both, or within so many weeks of having them back; later never on neighbouring days. */
export function hillsAndFast(
  { usedToHills, usedToFast, weeksBack }: HillsAndFastFacts,
  { hillOrFastApartWeeks: apart }: { readonly hillOrFastApartWeeks: Setting },
): HillsAndFastDecision {
  const inputs = { weeksBack, apartWeeks: apart.value };
  if (!usedToHills || !usedToFast)
    return { rule: 'never-one-week', because: reason('not-used-to-both', inputs, apart.mark) };
  if (weeksBack === null || weeksBack < apart.value)
    return { rule: 'never-one-week', because: reason('not-back-long-enough', inputs, apart.mark) };
  return { rule: 'never-neighbours', because: reason('used-to-both', inputs, apart.mark) };
}
