/** Every doubt about a consult, but for the clinician's own numbers, which only a programme can judge. */
import type { Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import { bodyDoubts } from './body.ts';
import { dateDoubts } from './dates.ts';
import type { Doubt } from './doubt.ts';
import { habitDoubts } from './habits.ts';
import { kitDoubts } from './kit.ts';
import { loadDoubts } from './loads.ts';
import { painDoubts } from './pain.ts';
import { poundDoubts } from './pounds.ts';
import { revisionDoubts } from './revisions.ts';
import { scoreDoubts } from './scores.ts';
import { sideDoubts } from './sides.ts';
import { sittingDoubts } from './sitting.ts';

/** `last`: the revision before, null for the first. None where the clinic file, which holds the limits, is broken. */
export function doubtsAbout(
  consult: ConsultFrontMatter,
  last: ConsultFrontMatter | null,
  known: Nameable,
): Doubt[] {
  const limits = known.clinic?.plausible;
  if (limits === undefined) return [];
  return [
    ...bodyDoubts(consult, limits),
    ...loadDoubts(consult, limits, known),
    ...kitDoubts(consult, limits),
    ...poundDoubts(consult, limits, known),
    ...habitDoubts(consult, limits, known),
    ...scoreDoubts(consult, limits, known),
    ...painDoubts(consult, limits, known),
    ...sideDoubts(consult, limits, known),
    ...sittingDoubts(consult, limits),
    ...dateDoubts(consult, limits),
    ...(last === null ? [] : revisionDoubts(consult, last, limits)),
  ];
}
