/** A protocol that goes by weeks: its next rungs and stages with their dates, as far as the plan reaches. */
import { numberedStages } from '../../content/keepStage.ts';
import type { Stage } from '../../content/library.ts';
import { leastDaysOfStep } from '../../dosing/goingOn.ts';
import { addDays, type IsoDate } from '../../units/date.ts';
import type { Refusal, Refused } from '../terms/refusal.ts';
import type { Shown, Where, Work } from './work.ts';
import type { PartFacts } from './datedPlan.ts';
import { boundsOf } from '../person/person.ts';
import type { StageName } from '../terms/stageName.ts';

export interface FollowingPart extends PartFacts {
  /** The step under which it is printed: counted on from the present ladder. */
  readonly step: number;
  /** The stage, as the protocol names it. */
  readonly name: string;
  /** What the stage asks of who enters it; null where this is a further rung of the stage before. */
  readonly enters: Entering | null;
  readonly shown: Shown;
}

export interface Entering {
  readonly painAtMost: number;
  readonly settled: boolean;
  /** Sessions of the stage before that must be done. */
  readonly sessions: number;
}

/** The rung that the plan would reach next and that cannot be made for this person. */
export interface StoppedAt {
  readonly from: IsoDate;
  readonly name: string;
  /** The last step there is. */
  readonly step: number;
  readonly refusals: readonly Refusal[];
}

export interface Following {
  readonly parts: readonly FollowingPart[];
  /** Null where the plan goes on to the review. */
  readonly stopped: StoppedAt | null;
}

type Make = (ahead: Where, rung: number) => Work | Refused;

/**
 * What comes after the present rung up to the review: the further rungs of the stage, one as soon as a step may be
 * over, in whole weeks; then the stages after it, each from the day its weeks begin. None of a protocol whose stages
 * go by tests. It ends where something cannot be made for this person: the review then comes first. Running stays as
 * the present stage has it: more of it is a decision of its own.
 */
export function followingParts(where: Where, present: Work, make: Make): Following {
  const { person, stage } = where;
  const { consult, protocol } = person;
  if (!protocol.byWeeks || stage.chosen === 'keepGoing') return { parts: [], stopped: null };
  const stages = numberedStages(protocol.stages).slice(stage.chosen - 1);
  const parts: FollowingPart[] = [];
  let step = present.step;
  let from = addDays(consult.startOn, -(present.step - 1) * daysOfRung(present, where));
  for (const [index, own] of stages.entries()) {
    const ahead = index === 0 ? where : aheadOf(where, own, stage.chosen + index);
    const until = addDays(from, 7 * own.usualWeeks.from);
    let rung = index === 0 ? present.step + 1 : 1;
    let last: Work = present;
    for (;;) {
      const on = addDays(from, (rung - 1) * daysOfRung(last, ahead));
      const isEnd = rung > 1 && (rung > last.session.ladder.rungs.length || on >= until);
      if (isEnd || on >= consult.reviewOn) break;
      const work = make(ahead, rung);
      if ('refusals' in work)
        return { parts, stopped: { from: on, name: own.name, step, refusals: work.refusals } };
      step += 1;
      const enters = rung === 1 ? enteringOf(own, stages[index - 1]) : null;
      parts.push({
        from: on,
        step,
        name: own.name,
        enters,
        week: work.week,
        session: work.session,
        shown: numbered(work.shown[0], step),
      });
      last = work;
      rung += 1;
    }
    from = until;
  }
  return { parts, stopped: null };
}

/** Whole weeks, so that a rung and the turns of what grows begin on one day. */
function daysOfRung({ week }: Work, { person }: Where): number {
  const { leastDays, leastSessions } = person.protocol.goingOn;
  const sessions = Math.max(1, week.plan.days.filter(({ session }) => session).length);
  const rules = { leastDays: leastDays.value, leastSessions: leastSessions.value };
  return 7 * Math.ceil(leastDaysOfStep(sessions, rules) / 7);
}

function aheadOf({ person, stage, bounds }: Where, own: Stage, number: number): Where {
  const chosen = number as StageName;
  return {
    person,
    stage: { ...stage, chosen, name: own.name },
    bounds: boundsOf(person, chosen, { ...own, running: bounds.stage.running }, false),
  };
}

function enteringOf({ enter }: Stage, before: Stage | undefined): Entering {
  return { painAtMost: enter.painAtMost, settled: enter.settled, sessions: before?.exit.sessions ?? 0 };
}

/** A rung under its number in this plan. */
function numbered({ rung, prescriptions }: Shown, step: number): Shown {
  return {
    rung: { ...rung, step },
    prescriptions: prescriptions.map((one) => ({
      ...one,
      cells: one.cells.map((cell) => ({ ...cell, step })),
    })),
  };
}
