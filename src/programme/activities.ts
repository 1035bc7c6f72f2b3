/** Keep, change how, leave: each activity the person does now, in words. */
import type { Protocol } from '../content/library.ts';
import { activityRule, type JudgedActivity } from '../week/activities.ts';
import { ASK_FIRST, activitiesText, type Verdict } from './phrases/activities.ts';
import type { Section } from './programme.ts';
import type { StageName } from './stageChoice.ts';

export function activitiesSection(
  judged: readonly JudgedActivity[],
  protocol: Protocol,
  stage: StageName,
): Section {
  return activitiesText(
    judged.map(({ what, verdict, fromStage }) => {
      const known = activityRule(what, protocol.activities);
      if (known === null || verdict === 'ask') return { what, verdict: 'ask' as Verdict, how: ASK_FIRST };
      if (verdict === 'leave') return { what, verdict: 'leave' as Verdict, how: known.until };
      // Welcome from the beginning or for good: nothing about it has to change.
      return {
        what,
        verdict: (fromStage === 1 || stage === 'keep' ? 'keep' : 'change') as Verdict,
        how: known.how,
      };
    }),
  );
}
