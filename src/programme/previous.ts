/** What was decided for a person before. */
import type { Consult } from '../content/library.ts';
import { assembleProgramme, type Workshop } from './assemble.ts';
import type { Programme } from './programme.ts';

/**
 * The revision before, made again from its own file after those before it; null when there is none that can be made.
 * `consults`: every revision without a Problem, in the order of revisions.
 */
export function previousOf(
  consult: Pick<Consult, 'alias' | 'revision'>,
  consults: readonly Consult[],
  workshop: Workshop,
): Programme | null {
  const before = consults
    .filter(({ alias, revision }) => alias === consult.alias && revision < consult.revision)
    .at(-1);
  if (before === undefined) return null;
  const made = assembleProgramme(before, previousOf(before, consults, workshop), workshop);
  return 'programme' in made ? made.programme : null;
}
