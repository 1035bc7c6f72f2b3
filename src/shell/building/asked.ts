/** Whom of all a build is for. */
import type { Problem } from '../../content/problem.ts';
import type { Workspace } from '../io/workspace.ts';

/** No aliases: everybody. */
export function askedIn(aliases: readonly string[]): (alias: string) => boolean {
  return (alias) => aliases.length === 0 || aliases.includes(alias);
}

export function problemsOfAsked(aliases: readonly string[], workspace: Workspace): Problem[] {
  const isAsked = askedIn(aliases);
  return workspace.consultProblems.filter(({ file }) => isAsked(workspace.aliases.get(file) ?? ''));
}

/** What a build of single persons leaves as it is; undefined for a build of the whole site. */
export function othersThan(aliases: readonly string[]): ((path: string) => boolean) | undefined {
  if (aliases.length === 0) return undefined;
  return (path) => !aliases.some((alias) => path.startsWith(`${folderOf(alias)}/`));
}

export function folderOf(alias: string): string {
  return `private/${alias}`;
}
