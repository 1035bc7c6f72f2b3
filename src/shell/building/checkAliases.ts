/** Whom nobody has written a consult of. */
import { EXIT } from '../exit.ts';
import type { Reuse } from '../io/reuse.ts';
import { Stop } from '../io/stop.ts';
import type { Workspace } from '../io/workspace.ts';
import { nearestOf } from '../nearest.ts';

/** Stops with 66 for an alias that no consult has, or only a draft. */
export function checkAliases(
  aliases: readonly string[],
  { current, stopped, drafts }: Workspace,
  { finished, reads, leftOut }: Reuse,
): void {
  const aside = [...leftOut].flatMap((file) => reads.get(file)?.alias ?? []);
  const known = [...finished.keys(), ...current.map(({ alias }) => alias), ...stopped, ...aside];
  const wrong = aliases.find((alias) => !known.includes(alias));
  if (wrong === undefined) return;
  const draft = drafts.find(({ alias }) => alias === wrong);
  if (draft !== undefined)
    throw new Stop(
      EXIT.noSuchFile,
      `${draft.file} is a draft, which is never built; finish it, and take draft: yes out`,
    );
  throw new Stop(EXIT.noSuchFile, `there is no consult of ${wrong}`, nearestOf(wrong, known));
}
