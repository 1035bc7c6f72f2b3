/** Who must be seen before going on, by what the log of the revision in use leads to. */
import { groundText } from '../../messages/en/clinician/review.ts';
import type { Workshop } from '../../programme/assemble.ts';
import { reviewDay, reviewLogged } from '../../programme/reviewed.ts';
import { assembled } from '../../programme/revisions.ts';
import type { Flags } from '../flags.ts';
import type { ToBeSeen, Workspace } from '../io/workspace.ts';
import { onDay } from '../io/today.ts';
import { orderOf } from './oneSet.ts';

/** Of `aliases`; somebody without a log, or whose programme cannot be made, is not among them. */
export function toBeSeen(
  aliases: readonly string[],
  workspace: Workspace,
  workshop: Workshop,
  flags: Flags,
): ToBeSeen[] {
  return workspace.current.flatMap((inUse): ToBeSeen[] => {
    if (!workspace.logged.has(inUse.id) || !aliases.includes(inUse.alias)) return [];
    const order = orderOf(inUse, workspace);
    const { consult } = order;
    const log = order.logs.get(consult.id);
    if (log === undefined) return [];
    const made = assembled(consult, order, workshop);
    if ('refusals' in made) return [];
    const logged = { consult, programme: made.programme, log };
    const { decision, because } = reviewLogged(
      logged,
      reviewDay(logged, onDay(flags), flags.on !== null),
      workshop.library,
    );
    if (decision !== 'beSeen') return [];
    return [
      { alias: consult.alias, because: because.filter(({ move }) => move === 'beSeen').map(groundText) },
    ];
  });
}
