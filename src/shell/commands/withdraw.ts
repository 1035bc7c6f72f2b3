/** Whose leaflet must not be followed any longer, and the words that are left beside it. */
import { messageOf } from '../../content/problemText.ts';
import type { Problem } from '../../content/problem.ts';
import { isFolder } from '../io/disk.ts';
import { locked } from '../io/lock.ts';
import type { Reason } from '../io/personSet.ts';
import { orTakenAway } from '../io/lastResort.ts';
import { peopleWith } from '../io/people.ts';
import { openSite, type Manner, type Site } from '../io/site.ts';
import { Stop } from '../io/stop.ts';
import { unsettledIn } from '../io/swap.ts';
import type { Workspace } from '../io/workspace.ts';
import { withdrawnSealed } from './sealing.ts';

const HEADING =
  'Set aside: do not hand this out, and do not follow it, until its consult was mended and built again.';

/** Takes the sets of these people out of force; of `problems` each is told its own. One that fails keeps none of the others. */
export function withdrawAll(
  site: Site,
  aliases: readonly string[],
  problems: readonly Problem[],
  { aliases: whose }: Workspace,
): void {
  const faults = aliases.flatMap((alias) => {
    const own = problems.filter(({ file, severity }) => severity === 'error' && whose.get(file) === alias);
    return faultOf(() => site.withdraw(alias, reasonOf(own)));
  });
  if (faults.length > 0) throw faults[0];
}

/** Who has files here and no consult any more. */
export function peopleWithout(out: string, withConsult: readonly string[]): readonly string[] {
  const known = new Set(withConsult);
  return isFolder(out) ? peopleWith(out).filter((alias) => !known.has(alias)) : [];
}

/** Takes the sets of those out of force who have no consult any more. One that fails keeps none of the others. */
export function withdrawGone(site: Site, aliases: readonly string[]): void {
  const faults = aliases.flatMap((alias) =>
    faultOf(() =>
      site.withdraw(alias, {
        because: ['no-consult'],
        lines: [HEADING, `There is no consult of ${alias} any more.`],
      }),
    ),
  );
  if (faults.length > 0) throw faults[0];
}

/**
 * Where nothing can be built; but whose screen blocks now, or cannot be read, has no leaflet in force any longer, nor has
 * who has no consult any more, and what a stopped build has left is put back. `withConsult`: whoever has one, where all
 * consults were looked at; else null. Returns whose sets were put aside.
 */
export async function withdrawBlocked(
  out: string,
  workspace: Workspace,
  manner: Manner,
  withConsult: readonly string[] | null = null,
): Promise<readonly string[]> {
  const people = isFolder(out) ? peopleWith(out) : [];
  const blocked = blockedOf(workspace).filter((alias) => people.includes(alias));
  const gone = withConsult === null ? [] : peopleWithout(out, [...withConsult, ...blocked]);
  const sealed = await withdrawnSealed(out, workspace, manner.on, withConsult !== null);
  if (blocked.length + gone.length + sealed.length === 0 && (!isFolder(out) || unsettledIn(out).length === 0))
    return [];
  return orTakenAway(out, [...blocked, ...gone], () =>
    locked(out, async (hold) => {
      const site = openSite(out, { ...manner, hold });
      withdrawAll(site, blocked, [...workspace.consultProblems, ...workspace.screenProblems], workspace);
      withdrawGone(site, gone);
      sealed.forEach(site.write);
      return site.finish(() => true).setAside;
    }),
  );
}

/** Runs a check of what was asked for; where it stops the build, what must not be followed goes all the same, and that is said. */
export async function orWithdrawn(
  out: string,
  workspace: Workspace,
  manner: Manner,
  check: () => void,
): Promise<void> {
  try {
    check();
  } catch (error) {
    const gone = await withdrawBlocked(out, workspace, manner);
    if (!(error instanceof Stop) || gone.length === 0) throw error;
    throw new Stop(
      error.exit,
      `${error.message}; the leaflet of ${gone.join(', ')} is set aside`,
      error.nearest,
    );
  }
}

/** Aliases whose screen stops every programme, or cannot be read. */
function blockedOf({ blocked, unreadable }: Workspace): string[] {
  return [...new Set([...blocked, ...unreadable])];
}

function reasonOf(problems: readonly Problem[]): Reason {
  const sentences = problems.map(
    (one) => `${one.file}:${one.line}:${one.column}: ${one.code} ${messageOf(one)} Fix: ${one.fix}`,
  );
  return {
    because: [...new Set(problems.map(({ code }) => code))].sort(),
    // Where the library has an error a screen speaks twice.
    lines: [HEADING, ...new Set(sentences)],
  };
}

function faultOf(work: () => void): unknown[] {
  try {
    work();
    return [];
  } catch (error) {
    return [error];
  }
}
