/** Everything that is decided for one person, before a word of the leaflet is written; or the refusals that stand against it. */
import type { Consult, ExerciseCard, Library, Stage } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { beginning } from './beginning.ts';
import { chooseCards, passed, type Choice } from './choose.ts';
import { courseOf, type Course } from './course.ts';
import { fitDays, type FittedDays } from './fitDays.ts';
import { laterStages, type Later } from './later.ts';
import { modelIn, type Models } from './model.ts';
import { flareHold, morningTask } from './morningTask.ts';
import { outlookOf, type Outlook } from './outlook.ts';
import { ownRefusals } from './ownRefusals.ts';
import { boundsOf, personOf, type Bounds, type Person } from './person.ts';
import { prescribe } from './prescribe.ts';
import type { PassedOver, Programme } from './programme.ts';
import { noCardFor, noSession, notWithoutPain, noSuchStep, noWeek, tooFewMinutes } from './refusals.ts';
import { planOf, type PartFacts, type PlanOf } from './datedPlan.ts';
import { followingParts, type FollowingPart } from './followingParts.ts';
import { runsInWeek } from './runsInWeek.ts';
import { screenEffects } from './screen.ts';
import { isNoSession, sessionFor, shownRungs } from './session.ts';
import { sittingPlan, type SittingPlan } from './sitting.ts';
import { chooseStage, stageOf } from './stageChoice.ts';
import type { Refused, Shown, Where, Work } from './work.ts';
import { workDays } from './workDays.ts';
import type { Rung } from '../dose/rung.ts';

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
  /** What is held in a flare when the programme itself has no hold. */
  readonly flareHold: ExerciseCard | null;
  readonly sitting: SittingPlan;
  readonly outlook: Outlook;
  readonly later: Later;
}

/**
 * Who, where on the way, what, when, and what comes after; the first of them that cannot be decided says why.
 * `previous`: the revision before, for what is not new any more; null for the first.
 */
export function decide(consult: Consult, previous: Programme | null, workshop: Workshop): Decided | Refused {
  const where = whoAndWhere(consult, workshop);
  if ('refusals' in where) return where;
  const work = whatAndWhen(where, consult.step ?? 1, []);
  if ('refusals' in work) return work;
  const first = inDays(where, work, previous);
  const { waits } = first.dated;
  if (waits.length === 0) return first;
  // What begins only after the review makes room in the session and in the week.
  const rest = whatAndWhen(where, consult.step ?? 1, waits);
  return 'refusals' in rest ? first : inDays(where, rest, previous);
}

/** The days, and everything that stands beside them. */
function inDays(where: Where, work: Work, previous: Programme | null): Decided {
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
    running: dated.running,
    dated,
    following,
    shown: work.shown.map((one) => beginning(one, dated)) as [Shown, ...Shown[]],
    course: courseOf(person.protocol, stage.chosen),
    morningTask: morningTask(person),
    sitting,
    flareHold: flareHold(person),
    outlook,
    later: laterStages(person, stage.chosen),
  };
}

function whoAndWhere(consult: Consult, { library, models }: Workshop): Where | Refused {
  const protocol = library.protocols.get(consult.protocol);
  if (protocol === undefined)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const effects = screenEffects(consult, library.clinic);
  if ('refusals' in effects) return effects;
  const stage = chooseStage(consult, protocol, library, effects);
  const pain = painBeside(consult, stageOf(protocol, stage.chosen));
  if (courseOf(protocol, stage.chosen) === 'prevention' && pain !== null)
    return refused([notWithoutPain(consult, pain)]);
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
  const fitted = fitDays(choices, person);
  if (typeof fitted === 'number') return refused([tooFewMinutes(consult, fitted)]);
  const { wished, week } = runsInWeek(person, bounds, fitted.kept);
  if ('fits' in week) return refused([noWeek(consult, week)]);
  const kept = fitted.kept.filter(({ slot }) => workDays(slot.when, week.plan).length > 0);
  const session = sessionFor(kept, person, bounds, week.plan);
  if (isNoSession(session)) return refused([noSession(consult, session)]);
  const [present, ...next] = shownRungs(session, step);
  if (present === undefined) return refused([noSuchStep(consult, stage.chosen, session.ladder.rungs.length)]);
  const own = ownRefusals(session, present, week.plan, person);
  if (own.length > 0) return refused(own);
  const show = (rung: Rung): Shown => ({
    rung,
    prescriptions: prescribe(rung, { session, person, bounds, plan: week.plan, gaveUp: fitted.gaveUp }),
  });
  return {
    passedOver: [...passedOver, ...leftOut(fitted, kept, person, bounds)],
    gaveUp: fitted.gaveUp,
    running: wished,
    week,
    session,
    step,
    shown: [show(present), ...next.map(show)],
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

/** Chosen cards for which there are no minutes, or no day. */
function leftOut(fitted: FittedDays, kept: readonly Choice[], person: Person, bounds: Bounds): PassedOver[] {
  const { minutesPerDay } = person.consult;
  const noMinutes = `left out, to fit ${minutesPerDay} minutes`;
  const noDay = 'left out: no day between the sessions has time for it';
  const out = (choices: readonly Choice[], limit: string, value: number | null, because: string) =>
    choices.map(({ slot, fit }) => passed(person, fit.card.id, slot, bounds, { limit, value, because }));
  const dayless = fitted.kept.filter(({ slot }) => !kept.some((one) => one.slot === slot));
  return [...out(fitted.leftOut, 'minutes', minutesPerDay, noMinutes), ...out(dayless, 'days', null, noDay)];
}
