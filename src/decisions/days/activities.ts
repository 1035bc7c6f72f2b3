/** Keep, change how, leave: each activity the person does now, in words. */
import type { Protocol } from '../../content/library.ts';
import { activityRule, type JudgedActivity } from '../../scheduling/activities.ts';
import type { SportDays } from '../../scheduling/sport.ts';
import {
  AS_NOW,
  ASK_FIRST,
  activitiesText,
  LIGHTER,
  NO_JUMPS,
  type ActivityWords,
} from '../../messages/en/patient/activities.ts';
import { capital } from '../../messages/en/plain.ts';
import { isLeftOut, keptText, NO_ROOM } from '../../messages/en/patient/sport.ts';
import type { Section } from '../../messages/shapes.ts';
import type { StageName } from '../terms/stageName.ts';

/** Each activity judged for a stage, in words. `runs`: the way goes through the part for sport. */
export function activitiesSection(
  judged: readonly JudgedActivity[],
  protocol: Protocol,
  stage: StageName,
  sport: readonly SportDays[],
  runs: boolean,
): Section {
  return activitiesText(
    judged.map(({ what, verdict, fromStage, everydayLoad }): ActivityWords => {
      const known = activityRule(what, protocol.activities);
      if (known === null) return { what, verdict: 'ask', how: ASK_FIRST, until: null };
      if (verdict === 'ask') return { what, verdict, how: NO_JUMPS, until: null };
      const until = partFrom(known.fromStage, protocol, runs);
      // What goes on in a changed way is not left: one verdict an activity.
      if (verdict === 'leave') return { what, verdict: known.meanwhile, how: known.until, until };
      if (everydayLoad !== null)
        return { what, verdict: 'change', how: `${known.how} ${LIGHTER}`, until: null };
      const inWeek = sport.find(({ id, leftTimes }) => id === what && leftTimes > 0);
      if (inWeek !== undefined)
        return isLeftOut(inWeek)
          ? { what, verdict: 'leave', how: NO_ROOM, until: null }
          : { what, verdict: 'change', how: `${known.how} ${capital(keptText(inWeek))}.`, until: null };
      // For good: nothing about it has to change, so nothing is said of a beginning.
      if (stage === 'keepGoing') return { what, verdict: 'keep', how: AS_NOW, until: null };
      return { what, verdict: fromStage === 1 ? 'keep' : 'change', how: known.how, until: null };
    }),
  );
}

/** The part from which something is welcome again; one that this person's way does not go through gives way to the last. */
function partFrom(fromStage: number, { stages }: Protocol, runs: boolean): string | null {
  const part = stages[fromStage - 1];
  return (part?.enter.sport === true && !runs ? stages.at(-1) : part)?.name ?? null;
}
