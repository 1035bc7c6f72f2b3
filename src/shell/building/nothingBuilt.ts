/** What is done, and told, where the library has an error. */
import { sortProblems, type Problem } from '../../content/problem.ts';
import type { Manner } from '../io/site.ts';
import type { Workspace } from '../io/workspace.ts';
import { askedIn, problemsOfAsked } from './asked.ts';
import type { Built } from './built.ts';
import { withdrawBlocked } from './withdraw.ts';

interface Unbuilt {
  /** Asked for; all where there are none. */
  readonly aliases: readonly string[];
  /** What the library stands in the way with. */
  readonly problems: readonly Problem[];
  /** Whoever has a consult; null where not all of them were looked at. */
  readonly withConsult: readonly string[] | null;
}

/**
 * The library has an error. A red flag takes its leaflet away all the same, and so does a consult that is gone; nothing
 * else is touched.
 */
export async function nothingBuilt(
  out: string,
  workspace: Workspace,
  { aliases, problems: faults, withConsult: people }: Unbuilt,
  manner: Manner,
): Promise<Built> {
  const isAsked = askedIn(aliases);
  // Programmes, which are not made, would say so of their screens.
  const screens = workspace.library === null ? [] : workspace.screenProblems;
  const problems = sortProblems([
    ...faults,
    ...problemsOfAsked(aliases, workspace),
    ...screens.filter(({ file }) => isAsked(workspace.aliases.get(file) ?? '')),
  ]);
  const setAside = await withdrawBlocked(out, workspace, manner, people);
  return {
    workspace,
    programmes: [],
    failed: [],
    problems,
    outcome: null,
    setAside,
    isClosed: true,
    sealed: [],
  };
}
