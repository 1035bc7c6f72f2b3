/** What was decided, put into the sections of the leaflet and the record. Each section is worded in its own file. */
import type { Messages } from '../messages/messages.ts';
import type { ExerciseCard } from '../content/library.ts';
import { languageOf } from '../content/language.ts';
import type { FirstSession } from '../messages/en/patient/firstSession.ts';
import { plainText } from '../content/prose/plainText.ts';
import { nextAfter } from '../scheduling/dates.ts';
import { flarePlan } from '../scheduling/flare.ts';
import { morningBands } from '../scheduling/morning.ts';
import { activitiesNow } from '../decisions/days/activities.ts';

import { adviceFor, drivesLong, stretchesNow } from '../decisions/person/advice.ts';
import { calendarOf } from './calendar.ts';
import { shownBody } from './cardWords.ts';
import type { Decided } from '../decisions/decide.ts';
import { easierOf, easedExercises } from '../decisions/session/easier.ts';
import { exercisesOf } from './exercises.ts';
import { namedExercises } from './namedExercises.ts';
import { followedReview } from '../decisions/days/running.ts';
import { lessKmThanUsual } from '../decisions/days/lessKm.ts';
import { pacedExercises, rulesInUse, sittingInUse, stepRateFrom, stepRateInUse } from './inUse.ts';
import { letterOf } from './letter.ts';
import { logDays } from './logDays.ts';
import { limitsOf } from '../decisions/screen/painLimits.ts';

import { precautionsOf } from '../decisions/person/precautions.ts';
import { needsFastWork } from '../decisions/screen/fastWork.ts';

import { dayWords } from './dayWords.ts';
import { paragraph, type Section } from '../messages/shapes.ts';
import { planEntries, planGrowth } from '../decisions/days/planEntries.ts';
import { datedSitting } from '../decisions/days/sitting.ts';
import { weekGroups } from '../scheduling/weekGroups.ts';
import { order, type RunKind } from '../scheduling/run.ts';
import type { NextSession, Programme } from './programme.ts';
import { changedSince } from './changedSince.ts';
import { courseOf } from './record/course.ts';
import { recordOf } from './record/record.ts';
import type { Review } from '../review/terms.ts';
import { shortSession } from '../decisions/session/shortSession.ts';
import { stageNumber, stageOf } from '../decisions/stage/stageChoice.ts';
import { sessionDaySeconds } from '../decisions/session/sessionTime.ts';

import { testNameIn } from '../content/testName.ts';
import { beganSuddenly } from '../decisions/screen/suddenStart.ts';
import { postOf } from './post.ts';
import { stepTables } from './steps.ts';

/** The whole programme. `previous`: the revision before, null for the first. `review`: of its log, null where none was kept. */
export function leafletOf(
  say: Messages,
  decided: Decided,
  previous: Programme | null,
  review: Review | null,
  loadleaf: string,
): Programme {
  const { person, course, stage, step, bounds, dated, week } = decided;
  const { consult, protocol, library } = person;
  const { clinic } = library;
  const { days } = dated.plan;
  const words = dayWords(decided);
  const walksInto = dated.plan.weeks.some(({ runs }) => runs.some(({ walkRun }) => walkRun !== null));
  const runsNow = decided.running.decision.decision === 'keep' && !walksInto;
  const races = dated.races.filter(({ inPlan }) => inPlan).length;
  const reasoned = stageText(say, decided);
  const next = nextSession(say, decided);
  const calendar = calendarOf(say, days, words);
  const sections = {
    running: runningSection(say, decided),
    sitting: sittingSection(say, decided),
  };
  return {
    format: 1,
    alias: consult.alias,
    revision: consult.revision,
    language: languageOf(consult, clinic),
    paper: clinic.paper,
    bodyTypePt: clinic.bodyTypePt,
    title: say.titleText(consult.alias),
    runningLine: say.runningLineText(consult),
    pageWord: 'Page',
    clinic: { name: clinic.name, contact: clinic.contact, logo: clinic.logo ?? null },
    clinician: consult.clinician,
    seenOn: consult.seenOn,
    startOn: consult.startOn,
    reviewOn: consult.reviewOn,
    dates: say.datesText(consult, course),
    stage: reasoned,
    step,
    opening: say.openingText(consult, protocol, course, {
      lightHolds: person.effects.lightHolds.length > 0,
      gentle: precautionsOf(person).gentle,
      bends: bounds.stage.caps.angleDeg === null,
      sudden: person.sudden !== null,
      beganSuddenly: beganSuddenly(consult),
      turnedDown: previous !== null && isFurtherOn(previous, decided),
      changed: review === null || previous === null ? [] : changedSince(previous, decided, review),
    }),
    emergency: say.emergencyText(clinic, consult.country),
    notice: say.NOTICE,
    nextSession: next,
    exercises: exercisesOf(say, decided),
    steps: stepTables(say, decided),
    precautions: precautionsSection(say, decided),
    ...painSections(say, decided),
    week: withShortDay(
      say.weekText({
        ...words,
        groups: weekGroups(days),
        gapDays: week.plan.liftGapDays,
        race: races > 0,
        sport: week.plan,
        firstSession: firstSessionOf(decided),
      }),
      next.short,
    ),
    ...sections,
    stretching: say.stretchingText({
      stageWords: bounds.stage.stretching,
      angle: protocol.angle,
      gentle: course === 'treatment',
      stretchesNow: stretchesNow(consult),
    }),
    activities: say.activitiesText(
      activitiesNow(
        week.activities,
        protocol,
        stage.chosen,
        week.plan.sport,
        needsFastWork(consult, protocol),
      ),
    ),
    named: namedExercises(say, decided),
    whatComesNext: nextSection(say, decided),
    advice: adviceFor(person, stage.chosen, course, runsNow).map(({ id, title, body }) => ({
      id,
      heading: title,
      body: shownBody(say, body),
    })),
    log: say.logSheet(logDays(say, days, words), course),
    calendar,
    plan: planEntries(decided),
    growth: planGrowth(decided),
    inUse: {
      emergencyNumber: clinic.emergency[consult.country]?.emergencyNumber ?? '',
      rules: rulesInUse(decided),
      sitting: sittingInUse(decided),
      exercises: pacedExercises(decided),
      stepRate: stepRateInUse(decided),
    },
    letter: letterOf(say, decided, courseOf(decided, previous)),
    eased: easedExercises(decided.shown[0].prescriptions, person),
    review,
    post: postOf(say, decided, next.minutesValue, calendar, previous?.post ?? null),
    record: recordOf(say, decided, sections, reasoned.because, previous, review, loadleaf),
  };
}

/** The week, with what to do on a day with little time. */
function withShortDay(week: Section, short: string): Section {
  return short === '' ? week : { ...week, parts: [...week.parts, paragraph(short, 'strong')] };
}

/** The stage with its reasons in sentences. */
function stageText(say: Messages, { person: { protocol, library }, stage }: Decided): Programme['stage'] {
  const nameOf = testNameIn(library, protocol.id);
  return {
    ...stage,
    because: say.stageTexts(stage.because, nameOf, (name) => stageOf(protocol, name).enter.words),
  };
}

/** Whether the revision before, of the same protocol, stood at a later stage or step. */
function isFurtherOn(previous: Programme, { person: { protocol }, stage, step }: Decided): boolean {
  if (previous.record.versions.protocol !== protocol.id) return false;
  const [before, now] = [previous.stage, stage].map(({ chosen }) => stageNumber(protocol, chosen));
  return before === now ? previous.step > step : Number(before) > Number(now);
}

/** The first session of the plan, and which day of it that is; null where a race leaves none. */
function firstSessionOf({ dated }: Decided): FirstSession | null {
  const index = dated.plan.days.findIndex(({ session }) => session !== null);
  const first = dated.plan.days[index];
  return first === undefined ? null : { on: first.on, day: index + 1 };
}

/** The first session of the plan, with the exercises that stand in it. */
function nextSession(say: Messages, { person, week, shown, dated }: Decided): NextSession {
  const first = dated.plan.days.find(({ session }) => session !== null);
  const has = ({ exercise: { slot } }: (typeof shown)[0]['prescriptions'][number]) =>
    slot.when !== 'session' || first === undefined || first.session?.exercises.includes(slot.name) === true;
  const there = shown[0].prescriptions.filter(has);
  const seconds = sessionDaySeconds(there, person);
  const short = shortSession(there, person);
  return {
    heading: say.NEXT_SESSION_HEADING,
    when:
      first === undefined
        ? say.noSessionText(person.consult.reviewOn)
        : say.nextSessionText(first.on, nextAfter(week.plan, first.on)?.clearDays ?? 0),
    minutes: say.minutesText(seconds),
    minutesValue: Math.ceil(seconds / 60),
    short: short === null ? '' : say.shortSessionText(short),
    shortCards: short?.exercises.map(({ card }) => card) ?? [],
  };
}

function painSections(
  say: Messages,
  decided: Decided,
): Pick<Programme, 'painRule' | 'morningCheck' | 'easier' | 'flare' | 'missedDays' | 'getHelp'> {
  const { person, shown, sitting } = decided;
  const { consult, protocol, clinic } = person;
  const { prescriptions } = shown[0];
  const { contactAfterDays, contactWhenRisingDays, repetitions } = protocol.morningCheck;
  const contact = { afterDays: contactAfterDays.value, risingDays: contactWhenRisingDays.value };
  const bands = morningBands(consult.usualMorningPain, protocol.morningCheck);
  const flare = flarePlan(sitting.now?.uprightMinutes ?? null, protocol.flare);
  return {
    painRule: say.painRuleText(limitsOf(consult, protocol)),
    morningCheck: say.morningCheckText(bands, taskOf(decided), repetitions.value),
    easier: say.easierText(easierOf(prescriptions, person)),
    flare: say.flareText(
      flare,
      decided.flareHolds.map(({ card: { title }, ...hold }) => ({ title, ...hold })),
      sitting.free,
      decided.running.decision.decision !== 'none',
      sitting.budget.overBlocks.length > 0,
    ),
    missedDays: say.missedDaysText(
      protocol.missedDays.sameStepUnder.value,
      protocol.missedDays.oneBackUpTo.value,
      decided.course !== 'treatment',
    ),
    getHelp: say.getHelpText(clinic.contact, contact, protocol.getHelp, bands, boneKnown(person)),
  };
}

function boneKnown(person: Decided['person']): boolean {
  return precautionsOf(person).bone.some(
    ({ item, known }) => known === 'yes' && item !== 'missedPeriods' && item !== 'lowEnergy',
  );
}

function precautionsSection(say: Messages, { person, running }: Decided) {
  return say.precautionsText(precautionsOf(person), {
    runs: running.decision.decision !== 'none',
    impactFromWeek: person.protocol.maternity.impactFromWeekAfterBirth.value,
  });
}

// What stands among today's exercises needs no second description.
function taskOf({ morningTask, person, shown }: Decided) {
  if (morningTask === null) return null;
  const { id, title, kind } = morningTask;
  const inPlan = shown[0].prescriptions.find(({ card }) => card.id === id);
  const { card, how } = person.protocol.morningCheck;
  const own = id === card ? how : undefined;
  return {
    title,
    holds: kind === 'isometric',
    how: inPlan === undefined ? (own ?? moveOf(morningTask)) : '',
    opens: kind !== 'isometric' && inPlan !== undefined && inPlan.at.rangeDeg !== null,
  };
}

/** How a card is done, in its own words. */
function moveOf({ body }: ExerciseCard): string {
  const [move] = body.filter(({ heading }) => heading === 'Move').flatMap(({ blocks }) => blocks);
  return move?.kind === 'paragraph' ? plainText(move.text) : '';
}

function runningSection(say: Messages, { person, running, bounds, dated, course, outlook }: Decided) {
  const { consult, protocol } = person;
  const { runningRules } = protocol;
  const { most, words } = bounds.stage.running;
  const { weeks, days } = dated.plan;
  const asYouLike = course !== 'treatment' && running.decision.heldBack.length === 0;
  return say.runningText({
    ...running,
    runs: consult.running.runs,
    weeks,
    races: dated.races,
    dateOpen: outlook.openEnd !== null,
    raceDays: {
      taperDays: runningRules.raceTaperDays.value,
      noHeavyDays: runningRules.raceNoHeavyDays.value,
    },
    reviewOn: consult.reviewOn,
    begins: weeks.flatMap(({ turn: { begins } }) => {
      const first = days.find((day) => day.runs.some(({ kind }) => kind === begins));
      return first === undefined || begins === null ? [] : [{ kind: begins as RunKind, on: first.on }];
    }),
    stridesBegun: weeks.some(({ turn: { begins } }) => begins === 'strides'),
    reviewed: followedReview(person),
    lessKm: lessKmThanUsual(person, weeks),
    longestIn30DaysKm: consult.running.longestIn30DaysKm ?? null,
    fastGrowth: runningRules.fastGrowth.value,
    raceEasyDays: runningRules.raceEasyDays,
    stepRateFrom: stepRateFrom(weeks),
    // They tell how hard the stage lets anybody run; who may less is told what waits.
    asYouLike,
    stageWords: runningWords(
      say,
      person,
      asYouLike || order(running.decision.most) >= order(most) ? words : null,
    ),
  });
}

// What pregnancy leaves stands over what the stage would open.
function runningWords(
  say: Messages,
  { maternity }: Decided['person'],
  stageWords: string | null,
): string | null {
  return maternity?.kind === 'pregnant' ? say.RUN_WHILE_PREGNANT : stageWords;
}

function sittingSection(say: Messages, { person, course, sitting, bounds, dated }: Decided) {
  const later = datedSitting(sitting, dated.plan.weeks);
  return say.sittingText({
    now: sitting.now,
    free: sitting.free,
    mayHurt: course !== 'prevention' && person.protocol.angle === 'hipFlexion',
    stepMinutes: person.protocol.sittingRules.stepMinutes.value,
    goalMinutes: person.consult.sitting.goalMinutes ?? null,
    later,
    moreToCome: sitting.budget.steps.length > later.length + 1,
    tooLongBlocks: sitting.free ? [] : sitting.budget.overBlocks.map(({ minutes }) => minutes),
    drives: drivesLong(person.consult),
    stageWords: bounds.stage.sitting,
  });
}

function nextSection(say: Messages, { person, course, session, step, outlook, following }: Decided) {
  const { consult, protocol } = person;
  return say.whatComesNextText({
    course,
    stepsAhead: session.ladder.rungs.length - step,
    dated: following.length > 0,
    months: outlook.usualMonths,
    openEnd: outlook.openEnd,
    reviewOn: consult.reviewOn,
    goals: consult.goals.map(({ what }) => what),
    sameStepUnder: protocol.missedDays.sameStepUnder.value,
    oneBackUpTo: protocol.missedDays.oneBackUpTo.value,
    runs: consult.running.runs,
    fastWork: needsFastWork(consult, protocol),
    angle: protocol.angle,
  });
}
