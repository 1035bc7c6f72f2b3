/** Keep, change how, leave: each activity the person does now, held against the protocol's table. */
import type { Consult, Protocol } from '../content/library.ts';
import { ASK_FIRST, activitiesText, type Verdict } from './phrases/activities.ts';
import type { Section } from './programme.ts';
import type { StageName } from './stageChoice.ts';

export function activitiesSection(consult: Consult, protocol: Protocol, stage: StageName): Section {
  const present = stage === 'keep' ? protocol.stages.length : stage;
  return activitiesText(
    consult.doesNow.map(({ what }) => {
      const known = protocol.activities.find((activity) =>
        what.toLowerCase().includes(activity.what.toLowerCase()),
      );
      if (known === undefined) return { what, verdict: 'ask' as Verdict, how: ASK_FIRST };
      if (present < known.fromStage) return { what, verdict: 'leave' as Verdict, how: known.until };
      return {
        what,
        verdict: (known.fromStage === 1 || stage === 'keep' ? 'keep' : 'change') as Verdict,
        how: known.how,
      };
    }),
  );
}
