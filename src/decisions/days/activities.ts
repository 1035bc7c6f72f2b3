/** Keep, change how, leave: what is said of each activity the person does now. */
import type { Protocol } from '../../content/library.ts';
import { activityRule, type JudgedActivity } from '../../scheduling/activities.ts';
import { isLeftOut, type SportDays } from '../../scheduling/sport.ts';
import type { StageName } from '../terms/stageName.ts';

/** `ownWords`: the protocol's own words on it. */
export type ActivityHow =
  | { readonly how: 'not-planned-for' | 'no-jumps' | 'no-room' | 'as-now' }
  | { readonly how: 'own' | 'lighter'; readonly ownWords: string }
  | { readonly how: 'kept-days'; readonly ownWords: string; readonly sport: SportDays };

export interface ActivityNow {
  readonly what: string;
  readonly verdict: 'keep' | 'change' | 'leave' | 'ask';
  readonly how: ActivityHow;
  /** The part of the way from which it is welcome again, by its name; null where it does not wait for one. */
  readonly until: string | null;
}

/** Each activity judged for a stage. `fastWork`: the way goes through the part for sport. */
export function activitiesNow(
  judged: readonly JudgedActivity[],
  protocol: Protocol,
  stage: StageName,
  sport: readonly SportDays[],
  fastWork: boolean,
): ActivityNow[] {
  return judged.map((activity) => {
    const { what } = activity;
    const rule = activityRule(what, protocol.activities);
    if (rule === null) return { what, verdict: 'ask', how: { how: 'not-planned-for' }, until: null };
    // What goes on in a changed way is not left: one verdict an activity.
    if (activity.verdict === 'leave')
      return {
        what,
        verdict: rule.meanwhile,
        how: { how: 'own', ownWords: rule.until },
        until: partFrom(rule.fromStage, protocol, fastWork),
      };
    return { what, ...welcomeNow(activity, rule.how, stage, sport), until: null };
  });
}

/** Of what does not wait for a later part. */
function welcomeNow(
  { what, verdict, fromStage, everydayLoad }: JudgedActivity,
  ownWords: string,
  stage: StageName,
  sports: readonly SportDays[],
): Pick<ActivityNow, 'verdict' | 'how'> {
  if (verdict === 'ask') return { verdict: 'ask', how: { how: 'no-jumps' } };
  if (everydayLoad !== null) return { verdict: 'change', how: { how: 'lighter', ownWords } };
  const sport = sports.find(({ id, leftTimes }) => id === what && leftTimes > 0);
  if (sport !== undefined)
    return isLeftOut(sport)
      ? { verdict: 'leave', how: { how: 'no-room' } }
      : { verdict: 'change', how: { how: 'kept-days', ownWords, sport } };
  // For good: nothing about it has to change, so nothing is said of a beginning.
  if (stage === 'keepGoing') return { verdict: 'keep', how: { how: 'as-now' } };
  return { verdict: fromStage === 1 ? 'keep' : 'change', how: { how: 'own', ownWords } };
}

/** The part from which something is welcome again; one that this person's way does not go through gives way to the last. */
function partFrom(fromStage: number, { stages }: Protocol, fastWork: boolean): string | null {
  const part = stages[fromStage - 1];
  return (part?.enter.sport === true && !fastWork ? stages.at(-1) : part)?.name ?? null;
}
