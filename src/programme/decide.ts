/** Everything that is decided for one person, before a word of the leaflet is written; or the refusals that stand against it. */
import type { Consult, ExerciseCard, Library, Stage } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { heldBack, newlyImaged } from './afterImaging.ts';
import { chooseCards, passed, type Choice } from './choose.ts';
import { courseOf, type Course } from './course.ts';
import { notYetDischarged, stillSore } from './discharged.ts';
import { fitDays, type FittedDays } from './fitDays.ts';
import { laterStages, type Later } from './later.ts';
import { modelIn, type Models } from './model.ts';
import { flareHolds, type FlareHold } from './flareHolds.ts';
import { morningTask } from './morningTask.ts';
import { outlookOf, type Outlook } from './outlook.ts';
import { ownDoubtRefusals } from './ownDoubts.ts';
import { ownRefusals } from './ownRefusals.ts';
import { needsDecision, painDecision } from './painLimits.ts';
import { boundsOf, personOf, type Bounds, type Person } from './person.ts';
import { prescribe, type Prescription } from './prescribe.ts';
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
import { placedRuns, type RunningFacts } from './running.ts';
import { runsInWeek } from './runsInWeek.ts';
import { screenEffects } from './screen.ts';
import { isNoSession, sessionFor, shownRungs, type Session } from './session.ts';
import { sittingPlan, type SittingPlan } from './sitting.ts';
import { chooseStage, stageOf } from './stageChoice.ts';
import { stepNow } from './stepNow.ts';
import type { WeekFacts } from './weekPlan.ts';
import { workDays } from './workDays.ts';
import type { Rung } from '../dose/rung.ts';

/** What a programme is made with besides the consult. */
export interface Workshop {
  readonly library: Library;
  /** Bodies already asked about; kept between programmes, so that a rebuild asks only what is new. */
  readonly models: Models;
  readonly loadleaf: string;
}

/** A rung that is printed, put in numbers. */
export interface Shown {
  readonly rung: Rung;
  readonly prescriptions: readonly Prescription[];
}

export interface Decided extends Where {
  readonly course: Course;
  readonly passedOver: readonly PassedOver[];
  readonly gaveUp: FittedDays['gaveUp'];
  readonly running: RunningFacts;
  readonly week: WeekFacts;
  readonly session: Session;
  readonly step: number;
  /** The present rung first, then up to two more. */
  readonly shown: readonly [Shown, ...Shown[]];
  readonly morningTask: ExerciseCard | null;
  /** What is still held in a flare; empty when nothing is. */
  readonly flareHolds: readonly FlareHold[];
  readonly sitting: SittingPlan;
  readonly outlook: Outlook;
  readonly later: Later;
}

export interface Refused {
  readonly refusals: readonly Refusal[];
}

/**
 * Who, where on the way, what, when, and what comes after; the first of them that cannot be decided says why.
 * `previous`: the revision before; null for the first, and where it cannot be made.
 */
export function decide(
  consult: Consult,
  workshop: Workshop,
  previous: Programme | null = null,
): Decided | Refused {
  const where = whoAndWhere(consult, workshop, previous);
  if ('refusals' in where) return where;
  const work = whatAndWhen(where, previous);
  if ('refusals' in work) return work;
  const { person, stage } = where;
  return {
    ...where,
    ...work,
    course: courseOf(person.protocol, stage.chosen),
    morningTask: morningTask(person),
    sitting: sittingPlan(person, where.bounds),
    flareHolds: flareHolds(work.shown[0].prescriptions, person),
    outlook: outlookOf(person, stage.chosen, work.week.plan),
    later: laterStages(person, stage.chosen),
  };
}

/** The person, and the point of the protocol. */
interface Where {
  readonly person: Person;
  readonly stage: StageChoice;
  readonly bounds: Bounds;
}

function whoAndWhere(
  consult: Consult,
  { library, models }: Workshop,
  previous: Programme | null,
): Where | Refused {
  const protocol = library.protocols.get(consult.protocol);
  if (protocol === undefined)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const screened = screenEffects(consult, library.clinic);
  if ('refusals' in screened) return screened;
  const effects = { ...screened, lightLoads: newlyImaged(consult, previous) };
  const stage = heldBack(
    chooseStage(consult, protocol, library, effects),
    consult,
    protocol,
    effects.lightLoads,
  );
  if ('code' in stage) return refused([stage]);
  const pain = painBeside(consult, stageOf(protocol, stage.chosen));
  if (courseOf(protocol, stage.chosen) === 'prevention' && pain !== null)
    return refused([notWithoutPain(consult, pain)]);
  const sore = courseOf(protocol, stage.chosen) === 'discharge' ? stillSore(consult, protocol) : null;
  if (sore !== null) return refused([notYetDischarged(consult, sore)]);
  if (needsDecision(consult, protocol) && painDecision(consult) === null)
    return refused([painNeedsDecision(consult, protocol.painRule.decisionFrom.value)]);
  const person = personOf(consult, library, protocol, effects, (body) =>
    modelIn(models, library.version, body),
  );
  return { person, stage, bounds: boundsOf(person, stage.chosen, stageOf(protocol, stage.chosen), false) };
}

/** The worst pain of a usual morning or a test above what the stage may be entered with; null when there is none. */
function painBeside({ usualMorningPain, tests }: Consult, { enter }: Stage): number | null {
  const worst = Math.max(usualMorningPain, ...tests.map(({ pain }) => pain));
  return worst > enter.painAtMost ? worst : null;
}

type Work = Pick<Decided, 'passedOver' | 'gaveUp' | 'running' | 'week' | 'session' | 'step' | 'shown'>;

/** The cards, the minutes, the week, the ladder and the rung of today. */
function whatAndWhen({ person, stage, bounds }: Where, previous: Programme | null): Work | Refused {
  const { consult } = person;
  const { choices, passedOver, empty } = chooseCards(person, bounds);
  if (empty.length > 0)
    return refused(empty.map((slot) => noCardFor(consult, stage.chosen, slot, passedOver)));
  const fitted = fitDays(choices, person);
  if (typeof fitted === 'number') return refused([tooFewMinutes(consult, fitted)]);
  const { wished, week } = runsInWeek(person, bounds, fitted.kept);
  if ('fits' in week) return refused([noWeek(consult, week)]);
  const kept = fitted.kept.filter(
    ({ slot }) =>
      workDays(slot.when, week.plan).length > 0 && !week.setAside.some((choice) => choice.slot === slot),
  );
  const session = sessionFor(kept, person, bounds, week.plan);
  if (isNoSession(session)) return refused([noSession(consult, session)]);
  const step = stepNow(consult, stage, previous);
  if (step === null) return refused([noStepBefore(consult)]);
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
    passedOver: [...passedOver, ...leftOut(fitted, kept, week.setAside, person, bounds)],
    gaveUp: fitted.gaveUp,
    running: placedRuns(wished, week.plan),
    week,
    session,
    step,
    shown: [now, ...next.map(show)],
  };
}

function refused(refusals: readonly Refusal[]): Refused {
  return { refusals };
}

/** Chosen cards for which there are no minutes, or no day, or which make way for what else the week holds. */
function leftOut(
  fitted: FittedDays,
  kept: readonly Choice[],
  setAside: readonly Choice[],
  person: Person,
  bounds: Bounds,
): PassedOver[] {
  const { minutesPerDay } = person.consult;
  const noMinutes = `left out, to fit ${minutesPerDay} minutes`;
  const noDay = 'left out: no day between the sessions has time for it';
  const out = (choices: readonly Choice[], limit: string, value: number | null, because: string) =>
    choices.map(({ slot, fit }) => passed(person, fit.card.id, slot, bounds, { limit, value, because }));
  const dayless = fitted.kept.filter(({ slot }) => [...kept, ...setAside].every((one) => one.slot !== slot));
  return [
    ...out(fitted.leftOut, 'minutes', minutesPerDay, noMinutes),
    ...out(dayless, 'days', null, noDay),
    ...out(setAside, 'days', null, 'left out: it makes way for what else the week holds'),
  ];
}
