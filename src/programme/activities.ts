/** Keep, change how, leave: each activity the person does now, in words. */
import type { Protocol } from '../content/library.ts';
import { activityRule, type JudgedActivity } from '../week/activities.ts';
import { ASK_FIRST, activitiesText, LIGHTER, type ActivityWords } from './phrases/activities.ts';
import type { Section } from './programme.ts';
import type { StageName } from './stageChoice.ts';

/** Each activity judged for a stage, in words. */
export function activitiesSection(
  judged: readonly JudgedActivity[],
  protocol: Protocol,
  stage: StageName,
): Section {
  return activitiesText(
    judged.map(({ what, verdict, fromStage, everydayLoad }): ActivityWords => {
      const known = activityRule(what, protocol.activities);
      if (known === null || verdict === 'ask') return { what, verdict: 'ask', how: ASK_FIRST, until: null };
      const until = protocol.stages[known.fromStage - 1]?.name ?? null;
      // What goes on in a changed way is not left: one verdict an activity.
      if (verdict === 'leave') return { what, verdict: known.meanwhile, how: known.until, until };
      if (everydayLoad !== null)
        return { what, verdict: 'change', how: `${known.how} ${LIGHTER}`, until: null };
      // Welcome from the beginning or for good: nothing about it has to change.
      return {
        what,
        verdict: fromStage === 1 || stage === 'keep' ? 'keep' : 'change',
        how: known.how,
        until: null,
      };
    }),
  );
}
