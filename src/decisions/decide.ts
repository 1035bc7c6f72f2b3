/** Everything that is decided for one person, before a word of the leaflet is written; or the refusals that stand against it. */
import { libraryIn } from '../content/inLanguage/libraryIn.ts';
import { languageOf } from '../content/language.ts';
import type { Consult, ExerciseCard, Library, Stage } from '../content/library.ts';
import type { Body } from '../mechanics/body.ts';
import type { Refusal, Refused } from './terms/refusal.ts';
import { beginning } from './days/beginning.ts';
import { chooseCards, passed, type Choice } from './candidates/choose.ts';
import { courseOf, type Course } from './stage/course.ts';
import { notYetDischarged, stillSore } from './screen/discharged.ts';
import { fitDays, type FittedDays } from './session/fitDays.ts';
import { laterStages, type Later } from './candidates/later.ts';
import { modelIn, type Models } from './person/model.ts';
import { flareHolds, type FlareHold } from './session/flareHolds.ts';
import { morningTask } from './candidates/morningTask.ts';
import { outlookOf, type Outlook } from './days/outlook.ts';
import { ownChoiceRefusals, slotRefusals } from './candidates/ownChoices.ts';
import { ownDoubtRefusals } from './session/ownDoubts.ts';
import { ownRefusals } from './session/ownRefusals.ts';
import { needsDecision, painDecision } from './screen/painLimits.ts';
import { boundsOf, personOf, type Bounds, type Person } from './person/person.ts';
import { ownStage } from './person/ownStage.ts';
import { prescribe } from './session/prescribe.ts';
import { hollowOf, noWhole } from './session/wholeStage.ts';
import type { Hollow, NoWholeStage } from './terms/noWholeStage.ts';
import type { CardLimit } from './terms/cardLimit.ts';
import type { PassedOver } from './terms/passedOver.ts';
import type { StageChoice } from './terms/stageChoice.ts';
import type { Earlier } from './terms/earlier.ts';
import type { JointAngle } from '../mechanics/jointAngle.ts';
import {
  noCardFor,
  noSession,
  noStepBefore,
  noSuchStep,
  notWithoutPain,
  noWeek,
  painNeedsDecision,
  tooFewMinutes,
} from './session/refusals.ts';
import { planOf, type PartFacts, type PlanOf } from './days/datedPlan.ts';
import { followingParts, type FollowingPart, type StoppedAt } from './days/followingParts.ts';
import { runsInWeek } from './days/runsInWeek.ts';
import { screenEffects } from './screen/screen.ts';
import { isNoSession, sessionFor, shownRungs } from './session/session.ts';
import { heldToLog } from './session/heldToLog.ts';
import { sessionLength } from './person/sessionLength.ts';
import { type SessionLength } from './terms/sessionLength.ts';
import { sittingPlan, type SittingPlan } from './days/sitting.ts';
import { chooseStage, fallenBack, stageOf } from './stage/stageChoice.ts';
import { stageRefusals } from './stage/stageRefusals.ts';
import { stepNow } from './stage/stepNow.ts';
import type { Shown, Where, Work } from './days/work.ts';
import { workDays } from './session/workDays.ts';
import { strayEntries } from './days/strayEntries.ts';
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
  /** The rung of such a protocol at which the plan ends before the review; null where it goes on. */
  readonly stopped: StoppedAt | null;
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
 * without a whole programme goes back to the last stage that has one (house rules 11.1). `earlier`: the revision before.
 */
export function decide(consult: Consult, earlier: Earlier | null, workshop: Workshop): Decided | Refused {
  const decided = planned(consult, earlier, workshop);
  if ('refusals' in decided) return decided;
  const stray = strayEntries(consult, decided);
  return stray.length > 0 ? refused(stray) : decided;
}

function planned(consult: Consult, earlier: Earlier | null, workshop: Workshop): Decided | Refused {
  const who = whoIsIt(consult, earlier, workshop);
  if ('refusals' in who) return who;
  const found = wholeProgramme(who, earlier);
  if ('refusals' in found) return found;
  const first = inDays(found, earlier);
  const { waits } = first.dated;
  if (waits.length === 0) return first;
  // What begins only after the review makes room in the session and in the week.
  const rest = wholeAt(found.person, found.stage, earlier, waits);
  return 'refusals' in rest ? first : inDays(rest, earlier);
}

/** The days, and everything that stands beside them. */
function inDays({ work, hollow, ...where }: Whole, earlier: Earlier | null): Decided {
  const { person, stage, bounds } = where;
  const outlook = outlookOf(person, stage.chosen, work.week.plan);
  const sitting = sittingPlan(person, bounds);
  const { parts: following, stopped } = followingParts(where, work, (ahead, rung) =>
    whatAndWhen(ahead, rung, []),
  );
  const present: PartFacts = { from: person.consult.startOn, week: work.week, session: work.session };
  const dated = planOf(person, {
    bounds,
    parts: [present, ...following],
    step: work.step,
    running: work.running,
    sitting,
    outlook,
    earlier,
  });
  return {
    ...where,
    ...work,
    hollow,
    running: dated.running,
    dated,
    following,
    stopped,
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

function whoIsIt(consult: Consult, earlier: Earlier | null, workshop: Workshop): Who | Refused {
  const { models } = workshop;
  const library = libraryIn(workshop.library, languageOf(consult, workshop.library.clinic));
  const protocol = library.protocols.get(consult.protocol);
  if (protocol === undefined)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const effects = screenEffects(consult, library.clinic);
  if ('refusals' in effects) return effects;
  const modelFor = (body: Body, guardedBy: JointAngle) => modelIn(models, library.version, body, guardedBy);
  const person = personOf(consult, library, protocol, effects, modelFor, earlier);
  const stage = chooseStage(consult, protocol, effects, person.sudden, person.lastDone);
  const barred = stageRefusals(consult, stage, protocol, person.sudden);
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
function wholeProgramme({ person, stage: wished }: Who, earlier: Earlier | null): Whole | Refused {
  let first: Whole | Refused | null = null;
  let stage: StageChoice | null = wished;
  while (stage !== null) {
    const whole: Whole | Refused = wholeAt(person, stage, earlier, []);
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
  earlier: Earlier | null,
  waits: readonly string[],
): Whole | Refused {
  const own = ownStage(stageOf(person.protocol, stage.chosen), person);
  const bounds = boundsOf(person, stage.chosen, own, false);
  const slotless = slotRefusals(person, bounds);
  if (slotless.length > 0) return refused(slotless);
  const where = { person, stage, bounds };
  const step = stepNow(person.consult, stage, earlier);
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
  const chosen = chooseCards(person, bounds);
  const { choices: all, passedOver: barred, empty } = chosen;
  const ownWrong = bounds.ahead ? [] : ownChoiceRefusals(person, bounds, chosen);
  if (ownWrong.length > 0) return refused(ownWrong);
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
  const held = heldToLog(session, step, person);
  const [present, ...next] = shownRungs(session, held);
  if (present === undefined)
    return refused([noSuchStep(consult, stage.chosen, step, session.ladder.rungs.length)]);
  const own = ownRefusals(session, present, week.plan, person);
  if (own.length > 0) return refused(own);
  const show = (rung: Rung): Shown => ({
    rung,
    prescriptions: prescribe(rung, {
      session,
      person,
      bounds,
      plan: week.plan,
      gaveUp: fitted.gaveUp,
      length,
    }),
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
    step: held,
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
  return choices
    .filter(({ slot }) => waits.includes(slot.name))
    .map(({ slot, fit }) =>
      passed(person, fit.card.id, slot, bounds, {
        limit: 'newStress',
        value: null,
        why: { reason: 'waits-for-review' },
      }),
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
  const out = (choices: readonly Choice[], limit: string, value: number | null, why: CardLimit['why']) =>
    choices.map(({ slot, fit }) => passed(person, fit.card.id, slot, bounds, { limit, value, why }));
  const dayless = fitted.kept.filter(({ slot }) => [...kept, ...setAside].every((one) => one.slot !== slot));
  return [
    ...out(fitted.leftOut, 'minutes', minutes, { reason: 'no-minutes', minutes }),
    ...out(dayless, 'days', null, { reason: 'no-day' }),
    ...out(setAside, 'days', null, { reason: 'makes-way' }),
  ];
}
