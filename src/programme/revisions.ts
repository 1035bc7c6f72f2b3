/** A consult after the revisions before it, each made again from its own file and with its log. */
import type { Consult } from '../content/library.ts';
import type { Log } from '../content/log/log.ts';
import { assembleProgramme, type Assembled, type Before, type Workshop } from './assemble.ts';

/** Every revision without a Problem, in their order, and what was written down of each, by its id `alias-r2`. */
export interface Revisions {
  readonly consults: readonly Consult[];
  readonly logs: ReadonlyMap<string, Log>;
}

/** Without a revision before where there is none that can be made. */
export function assembled(consult: Consult, revisions: Revisions, workshop: Workshop): Assembled {
  const { previous, logged } = beforeOf(consult, revisions, workshop);
  return assembleProgramme(consult, previous, workshop, logged);
}

/** The revision before and its log. */
export function beforeOf(
  { alias, revision }: Pick<Consult, 'alias' | 'revision'>,
  revisions: Revisions,
  workshop: Workshop,
): Before {
  const before = revisions.consults.filter((one) => one.alias === alias && one.revision < revision).at(-1);
  if (before === undefined) return { previous: null, logged: null };
  const made = assembled(before, revisions, workshop);
  const log = revisions.logs.get(before.id);
  return {
    previous: 'programme' in made ? made.programme : null,
    logged: log === undefined ? null : { consult: before, log },
  };
}
