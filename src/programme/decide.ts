/** Everything that is decided for one person, before a word of the leaflet is written; or the refusals that stand against it. */
import type { Consult, ExerciseCard, Library, Stage } from '../content/library.ts';
import type { Body } from '../mechanics/body.ts';
import type { Refusal } from '../units/refusal.ts';
import { beginning } from './beginning.ts';
import { chooseCards, passed, type Choice } from './choose.ts';
import { courseOf, type Course } from './course.ts';
import { notYetDischarged, stillSore } from './discharged.ts';
import { fitDays, type FittedDays } from './fitDays.ts';
import { laterStages, type Later } from './later.ts';
import type { JointAngle } from '../mechanics/jointAngle.ts';
import { modelIn, type Models } from './model.ts';
import { flareHolds, type FlareHold } from './flareHolds.ts';
import { morningTask } from './morningTask.ts';
import { outlookOf, type Outlook } from './outlook.ts';
import { ownDoubtRefusals } from './ownDoubts.ts';
import { ownRefusals } from './ownRefusals.ts';
import { needsDecision, painDecision } from './painLimits.ts';
import { boundsOf, personOf, type Bounds, type Person } from './person.ts';
import { prescribe } from './prescribe.ts';
import { hollowOf, noWhole, type Hollow } from './wholeStage.ts';
import type { NoWholeStage } from './phrases/stage.ts';
import type { PassedOver, Programme, StageChoice } from './programme.ts';
import {
  noCardFor,
  noSession,
  noStepBefore,
  noSuchStep,
  notWithoutPain,
  noWeek,
  painNeedsDecision,
  tooFewMinutes,
} from './refusals.ts';
import { planOf, type PartFacts, type PlanOf } from './datedPlan.ts';
import { followingParts, type FollowingPart } from './followingParts.ts';
import { runsInWeek } from './runsInWeek.ts';
import { screenEffects } from './screen.ts';
import { isNoSession, sessionFor, shownRungs } from './session.ts';
import { sessionLength, type SessionLength } from './sessionLength.ts';
import { sittingPlan, type SittingPlan } from './sitting.ts';
import { chooseStage, fallenBack, stageOf } from './stageChoice.ts';
import { stageRefusals } from './stageRefusals.ts';
import { stepNow } from './stepNow.ts';
import type { Refused, Shown, Where, Work } from './work.ts';
import { workDays } from './workDays.ts';
import type { Rung } from '../dosing/rung.ts';

/** What a programme is made with besides the consult. */
export interface Workshop {
  readonly library: Library;
  /** Bodies already asked about; kept between programmes, so that a rebuild asks only what is new. */
  readonly models: Models;
  readonly loadleaf: string;
}

export interface Decided extends Where, Work {
  /** Every day until the review, decided once. */
  readonly dated: PlanOf;
  /** Later rungs of a protocol that goes by weeks, as far as the plan reaches. */
  readonly following: readonly FollowingPart[];
  readonly course: Course;
  readonly morningTask: ExerciseCard | null;
  /** What is still held in a flare; empty when nothing is. */
  readonly flareHolds: readonly FlareHold[];
  readonly sitting: SittingPlan;
  readonly outlook: Outlook;
  readonly later: Later;
  /** Every exercise sits far below the bend of the stage; null otherwise. */
  readonly hollow: Hollow | null;
}

/**
 * Who, where on the way, what, when, and what comes after; the first of them that cannot be decided says why. A proposal
 * without a whole programme goes back to the last stage that has one (house rules 11.1). `previous`: the revision before.
 */
export function decide(consult: Consult, previous: Programme | null, workshop: Workshop): Decided | Refused {
  const who = whoIsIt(consult, previous, workshop);
  if ('refusals' in who) return who;
  const found = wholeProgramme(who, previous);
  if ('refusals' in found) return found;
  const first = inDays(found, previous);
  const { waits } = first.dated;
  if (waits.length === 0) return first;
  // What begins only after the review makes room in the session and in the week.
  const rest = wholeAt(found.person, found.stage, previous, waits);
  return 'refusals' in rest ? first : inDays(rest, previous);
}

/** The days, and everything that stands beside them. */
function inDays({ work, hollow, ...where }: Whole, previous: Programme | null): Decided {
  const { person, stage, bounds } = where;
  const outlook = outlookOf(person, stage.chosen, work.week.plan);
  const sitting = sittingPlan(person, bounds);
  const following = followingParts(where, (ahead) => whatAndWhen(ahead, 1, []));
  const present: PartFacts = { from: person.consult.startOn, week: work.week, session: work.session };
  const dated = planOf(person, {
    bounds,
    parts: [present, ...following],
    step: work.step,
    running: work.running,
    sitting,
    outlook,
    previous,
  });
  return {
    ...where,
    ...work,
    hollow,
    running: dated.running,
    dated,
    following,
    shown: work.shown.map((one) => beginning(one, dated)) as [Shown, ...Shown[]],
    course: courseOf(person.protocol, stage.chosen),
    morningTask: morningTask(person),
    sitting,
    flareHolds: flareHolds(work.shown[0].prescriptions, person),
    outlook,
    later: laterStages(person, stage.chosen),
  };
}

interface Who {
  readonly person: Person;
  readonly stage: StageChoice;
}

function whoIsIt(consult: Consult, previous: Programme | null, workshop: Workshop): Who | Refused {
  const { library, models } = workshop;
  const protocol = library.protocols.get(consult.protocol);
  if (protocol === undefined)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const effects = screenEffects(consult, library.clinic);
  if ('refusals' in effects) return effects;
  const modelFor = (body: Body, guardedBy: JointAngle) => modelIn(models, library.version, body, guardedBy);
  const person = personOf(consult, library, protocol, effects, modelFor, previous);
  const stage = chooseStage(consult, protocol, library, effects, person.sudden);
  const barred = stageRefusals(consult, stage, protocol, library, person.sudden);
  if (barred.length > 0) return refused(barred);
  const pain = painBeside(consult, stageOf(protocol, stage.chosen));
  if (courseOf(protocol, stage.chosen) === 'prevention' && pain !== null)
    return refused([notWithoutPain(consult, pain)]);
  const sore = courseOf(protocol, stage.chosen) === 'discharge' ? stillSore(consult, protocol) : null;
  if (sore !== null) return refused([notYetDischarged(consult, sore)]);
  if (needsDecision(consult, protocol) && painDecision(consult) === null)
    return refused([painNeedsDecision(consult, protocol.painRule.decisionFrom.value)]);
  return { person, stage };
}

interface Whole extends Where {
  readonly work: Work;
  readonly hollow: Hollow | null;
}

/** The work of the stage, or of the last one before it that has a whole programme; what stands against the first when none has. */
function wholeProgramme({ person, stage: wished }: Who, previous: Programme | null): Whole | Refused {
  let first: Whole | Refused | null = null;
  let stage: StageChoice | null = wished;
  while (stage !== null) {
    const whole: Whole | Refused = wholeAt(person, stage, previous, []);
    const why: NoWholeStage | null = 'refusals' in whole ? noWhole(whole.refusals) : whole.hollow;
    if (why === null) return whole;
    first ??= whole;
    stage = fallenBack(stage, person.protocol, why);
  }
  return first as Whole | Refused;
}

function wholeAt(
  person: Person,
  stage: StageChoice,
  previous: Programme | null,
  waits: readonly string[],
): Whole | Refused {
  const bounds = boundsOf(person, stage.chosen, stageOf(person.protocol, stage.chosen), false);
  const where = { person, stage, bounds };
  const step = stepNow(person.consult, stage, previous);
  if (step === null) return refused([noStepBefore(person.consult)]);
  const work = whatAndWhen(where, step, waits);
  if ('refusals' in work) return work;
  return { ...where, work, hollow: hollowOf(work.session, person, bounds) };
}

/** The worst pain of a usual morning or a test above what the stage may be entered with; null when there is none. */
function painBeside({ usualMorningPain, tests }: Consult, { enter }: Stage): number | null {
  const worst = Math.max(usualMorningPain, ...tests.map(({ pain }) => pain));
  return worst > enter.painAtMost ? worst : null;
}

/** The cards, the minutes, the week, the ladder and the rung of today. */
function whatAndWhen(
  { person, stage, bounds }: Where,
  step: number,
  waits: readonly string[],
): Work | Refused {
  const { consult } = person;
  const { choices: all, passedOver: barred, empty } = chooseCards(person, bounds);
  if (empty.length > 0) return refused(empty.map((slot) => noCardFor(consult, stage.chosen, slot, barred)));
  const choices = all.filter(({ slot }) => !waits.includes(slot.name));
  const passedOver = [...barred, ...waiting(all, waits, person, bounds)];
  const length = sessionLength(person, bounds);
  const fitted = fitDays(choices, person, length);
  if (typeof fitted === 'number') return refused([tooFewMinutes(consult, fitted)]);
  const { wished, week } = runsInWeek(person, bounds, fitted.kept);
  if ('fits' in week) return refused([noWeek(consult, week)]);
  const kept = fitted.kept.filter(
    ({ slot }) =>
      workDays(slot.when, week.plan).length > 0 && !week.setAside.some((choice) => choice.slot === slot),
  );
  const session = sessionFor(kept, person, bounds, week.plan);
  if (isNoSession(session)) return refused([noSession(consult, session)]);
  const [present, ...next] = shownRungs(session, step);
  if (present === undefined)
    return refused([noSuchStep(consult, stage.chosen, step, session.ladder.rungs.length)]);
  const own = ownRefusals(session, present, week.plan, person);
  if (own.length > 0) return refused(own);
  const show = (rung: Rung): Shown => ({
    rung,
    prescriptions: prescribe(rung, { session, person, bounds, plan: week.plan, gaveUp: fitted.gaveUp }),
  });
  const now = show(present);
  const doubtful = ownDoubtRefusals(now.prescriptions, person);
  if (doubtful.length > 0) return refused(doubtful);
  return {
    passedOver: [...passedOver, ...leftOut(fitted, kept, week.setAside, length, person, bounds)],
    gaveUp: fitted.gaveUp,
    length,
    running: wished,
    week,
    session,
    step,
    shown: [now, ...next.map(show)],
  };
}

/** Chosen cards whose turn comes only after the review. */
function waiting(
  choices: readonly Choice[],
  waits: readonly string[],
  person: Person,
  bounds: Bounds,
): PassedOver[] {
  const because = 'begins after the review: one new stress a week';
  return choices
    .filter(({ slot }) => waits.includes(slot.name))
    .map(({ slot, fit }) =>
      passed(person, fit.card.id, slot, bounds, { limit: 'newStress', value: null, because }),
    );
}

function refused(refusals: readonly Refusal[]): Refused {
  return { refusals };
}

/** Chosen cards for which there are no minutes, or no day, or which make way for what else the week holds. */
function leftOut(
  fitted: FittedDays,
  kept: readonly Choice[],
  setAside: readonly Choice[],
  { minutes }: SessionLength,
  person: Person,
  bounds: Bounds,
): PassedOver[] {
  const noMinutes = `left out, to fit ${minutes} minutes`;
  const noDay = 'left out: no day between the sessions has time for it';
  const out = (choices: readonly Choice[], limit: string, value: number | null, because: string) =>
    choices.map(({ slot, fit }) => passed(person, fit.card.id, slot, bounds, { limit, value, because }));
  const dayless = fitted.kept.filter(({ slot }) => [...kept, ...setAside].every((one) => one.slot !== slot));
  return [
    ...out(fitted.leftOut, 'minutes', minutes, noMinutes),
    ...out(dayless, 'days', null, noDay),
    ...out(setAside, 'days', null, 'left out: it makes way for what else the week holds'),
  ];
}
