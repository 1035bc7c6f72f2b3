/** Whether this person's way goes through the part for fast work and sport. */
import type { Consult, Protocol } from '../../content/library.ts';
import { activityRule } from '../../scheduling/activities.ts';

/** A runner, or somebody who does a sport that sprints or jumps, whether it waits just now or not. */
export function needsFastWork(
  { running, doesNow }: Pick<Consult, 'running' | 'doesNow'>,
  { activities }: Pick<Protocol, 'activities'>,
): boolean {
  return running.runs || doesNow.some(({ what }) => activityRule(what, activities)?.sport === true);
}
