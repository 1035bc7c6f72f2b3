/** Whether the programme before walked and ran in turn, and no more: then running comes back by its next kind (house rules 7). */
import { order } from '../../scheduling/run.ts';
import type { Earlier } from '../terms/earlier.ts';

export function walkedBefore(earlier: Pick<Earlier, 'plan'> | null): boolean {
  const kinds = (earlier?.plan ?? []).flatMap(({ runs }) => runs.map(({ kind }) => order(kind)));
  return kinds.length > 0 && Math.max(...kinds) === order('walk-run');
}
