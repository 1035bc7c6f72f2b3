/** A protocol that goes by weeks: its next rungs with their dates, as far as the plan reaches. */
import { numberedStages } from '../../content/keepStage.ts';
import { addDays } from '../../units/date.ts';
import type { Shown, Where, Work } from './work.ts';
import type { Refused } from '../terms/refusal.ts';
import type { PartFacts } from './datedPlan.ts';
import { boundsOf } from '../person/person.ts';
import type { StageName } from '../terms/stageName.ts';

export interface FollowingPart extends PartFacts {
  /** The step under which it is printed: counted on from the present ladder. */
  readonly step: number;
  /** The stage, as the protocol names it. */
  readonly name: string;
  readonly painAtMost: number;
  readonly settled: boolean;
  /** Sessions of the rung before that must be done. */
  readonly sessions: number;
  readonly shown: Shown;
}

/**
 * The stages after the present one, each from the day its weeks begin, up to the review; none of a protocol whose stages
 * go by tests. It ends where a stage cannot be made for this person: the review then comes first. Running stays as the
 * present stage has it: more of it is a decision of its own.
 */
export function followingParts(where: Where, make: (ahead: Where) => Work | Refused): FollowingPart[] {
  const { person, stage, bounds } = where;
  const { consult, protocol } = person;
  if (!protocol.byWeeks || stage.chosen === 'keepGoing') return [];
  const stages = numberedStages(protocol.stages);
  const parts: FollowingPart[] = [];
  let from = consult.startOn;
  for (let index = stage.chosen; index < stages.length; index += 1) {
    const [before, next] = [stages[index - 1], stages[index]];
    if (before === undefined || next === undefined) break;
    from = addDays(from, 7 * before.usualWeeks.from);
    if (from >= consult.reviewOn) break;
    const chosen = (index + 1) as StageName;
    const ahead = boundsOf(person, chosen, { ...next, running: bounds.stage.running }, false);
    const work = make({ person, stage: { ...stage, chosen, name: next.name }, bounds: ahead });
    if ('refusals' in work) break;
    const step = stepsOf(parts, consult.step ?? 1) + 1;
    parts.push({
      from,
      step,
      name: next.name,
      painAtMost: next.enter.painAtMost,
      settled: next.enter.settled,
      sessions: before.exit.sessions,
      week: work.week,
      session: work.session,
      shown: numbered(work.shown[0], step),
    });
  }
  return parts;
}

function stepsOf(parts: readonly FollowingPart[], present: number): number {
  return parts.at(-1)?.step ?? present;
}

/** A rung of a later stage under its number in this plan. */
function numbered({ rung, prescriptions }: Shown, step: number): Shown {
  return {
    rung: { ...rung, step },
    prescriptions: prescriptions.map((one) => ({
      ...one,
      cells: one.cells.map((cell) => ({ ...cell, step })),
    })),
  };
}
