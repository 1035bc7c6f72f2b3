/** Which confirmed values of a consult speak of what lasts: the body, the kit, and what is done besides. */
import type { Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import { bodyDoubts } from './body.ts';
import { wayText } from './confirmed.ts';
import { habitDoubts } from './habits.ts';
import { kitDoubts } from './kit.ts';

// What is another number at the next visit.
const PASSING: ReadonlySet<string> = new Set(['symptomWeeks', 'running.weeksOff']);

/** Their paths, as an entry writes them; those of a jump since the revision before, of tests and of dates are none. */
export function lastingPaths(consult: ConsultFrontMatter, known: Nameable): ReadonlySet<string> {
  const limits = known.clinic?.plausible;
  if (limits === undefined) return new Set();
  const doubts = [
    ...bodyDoubts(consult, limits),
    ...kitDoubts(consult, limits),
    ...habitDoubts(consult, limits, known),
  ];
  return new Set(doubts.map(({ path }) => wayText(path)).filter((path) => !PASSING.has(path)));
}
