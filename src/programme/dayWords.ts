/** How the days of a plan name what they hold. */
import { partsOf } from '../decisions/days/parts.ts';
import type { Decided } from '../decisions/decide.ts';
import type { DayWords } from '../messages/en/patient/day.ts';

/** Titles of the cards by part and slot, and the step where it is not the present one. */
export function dayWords(decided: Decided): DayWords {
  const parts = partsOf(decided);
  return {
    titleOf: (part, exercise) => parts[part]?.cards.get(exercise)?.title ?? exercise,
    stepOf: (part) => (part === 0 ? null : (parts[part]?.step ?? null)),
  };
}
