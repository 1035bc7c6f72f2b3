/** What was decided, put into the sections of the leaflet and the record. Each section is worded in its own file. */
import type { ExerciseCard } from '../content/library.ts';
import { plainText } from '../content/prose/plainText.ts';
import { nextAfter } from '../scheduling/dates.ts';
import { flarePlan } from '../scheduling/flare.ts';
import { morningBands } from '../scheduling/morning.ts';
import { activitiesSection } from '../decisions/days/activities.ts';
import { adviceFor, drivesLong, stretchesNow } from '../decisions/person/advice.ts';
import { calendarOf } from './calendar.ts';
import type { Decided } from '../decisions/decide.ts';
import { easierRows } from '../decisions/session/easier.ts';
import { exercisesOf } from './exercises.ts';
import { namedExercises } from './namedExercises.ts';
import { lessKmThanUsual } from '../decisions/days/lessKm.ts';
import { letterOf } from './letter.ts';
import { logDays } from './logDays.ts';
import { limitsOf } from '../decisions/screen/painLimits.ts';
import { logSheet } from '../messages/en/patient/log.ts';
import {
  datesText,
  emergencyText,
  NOTICE,
  openingText,
  runningLineText,
  titleText,
} from '../messages/en/patient/opening.ts';
import {
  easierText,
  flareText,
  getHelpText,
  missedDaysText,
  morningCheckText,
  painRuleText,
} from '../messages/en/patient/pain.ts';
import { precautionsOf } from '../decisions/person/precautions.ts';
import { precautionsText } from '../messages/en/patient/precautions.ts';
import { RUN_WHILE_PREGNANT, runningText } from '../messages/en/patient/running.ts';
import { sittingText, stretchingText } from '../messages/en/patient/sitting.ts';
import { whatComesNextText } from '../messages/en/patient/next.ts';
import {
  fromDayText,
  minutesText,
  nextSessionText,
  noSessionText,
  shortSessionText,
  weekText,
} from '../messages/en/patient/week.ts';
import { beginsOn } from '../decisions/days/beginning.ts';
import { dayWords } from './dayWords.ts';
import { paragraph, type Section } from '../messages/shapes.ts';
import { planEntries, planGrowth } from '../decisions/days/planEntries.ts';
import { datedSitting } from '../decisions/days/sitting.ts';
import { weekGroups } from '../scheduling/weekGroups.ts';
import { order, type RunKind } from '../scheduling/run.ts';
import type { NextSession, Programme } from './programme.ts';
import { recordOf } from './record/record.ts';
import { shortSession } from '../decisions/session/shortSession.ts';
import { stageNumber, stageOf } from '../decisions/stage/stageChoice.ts';
import { sessionDaySeconds } from '../decisions/session/sessionTime.ts';
import { stageTexts } from '../messages/en/clinician/stage.ts';
import { testNameIn } from '../content/testName.ts';
import { beganSuddenly } from '../decisions/screen/suddenStart.ts';
import { postOf } from './post.ts';
import { stepTables } from './steps.ts';

/** The whole programme. `previous`: the revision before, null for the first. */
export function leafletOf(decided: Decided, previous: Programme | null, loadleaf: string): Programme {
  const { person, course, stage, step, bounds, dated, week } = decided;
  const { consult, protocol, library } = person;
  const { clinic } = library;
  const { days } = dated.plan;
  const words = dayWords(decided);
  const runsNow = decided.running.decision.decision === 'keep';
  const races = dated.races.filter(({ inPlan }) => inPlan).length;
  const next = nextSession(decided);
  const calendar = calendarOf(days, words);
  const sections = {
    running: runningSection(decided),
    sitting: sittingSection(decided),
  };
  return {
    format: 1,
    alias: consult.alias,
    revision: consult.revision,
    language: 'en',
    paper: clinic.paper,
    title: titleText(consult.alias),
    runningLine: runningLineText(consult),
    pageWord: 'Page',
    clinic: { name: clinic.name, contact: clinic.contact, logo: clinic.logo ?? null },
    clinician: consult.clinician,
    seenOn: consult.seenOn,
    startOn: consult.startOn,
    reviewOn: consult.reviewOn,
    dates: datesText(consult, course),
    stage: stageText(decided),
    step,
    opening: openingText(consult, protocol, course, {
      lightHolds: person.effects.lightHolds.length > 0,
      gentle: precautionsOf(person).gentle,
      bends: bounds.stage.caps.angleDeg === null,
      sudden: person.sudden !== null,
      beganSuddenly: beganSuddenly(consult),
      turnedDown: previous !== null && isFurtherOn(previous, decided),
    }),
    emergency: emergencyText(clinic, consult.country),
    notice: NOTICE,
    nextSession: next,
    exercises: exercisesOf(decided),
    steps: stepTables(decided),
    precautions: precautionsSection(decided),
    ...painSections(decided),
    week: withShortDay(
      weekText({
        ...words,
        groups: weekGroups(days),
        gapDays: week.plan.liftGapDays,
        race: races > 0,
        sport: week.plan,
      }),
      next.short,
    ),
    ...sections,
    stretching: stretchingText({
      stageWords: bounds.stage.stretching,
      angle: protocol.angle,
      gentle: course === 'treatment',
      stretchesNow: stretchesNow(consult),
    }),
    activities: activitiesSection(
      week.activities,
      protocol,
      stage.chosen,
      week.plan.sport,
      consult.running.runs,
    ),
    named: namedExercises(decided),
    whatComesNext: nextSection(decided),
    advice: adviceFor(person, stage.chosen, course, runsNow),
    log: logSheet(logDays(days, words), course),
    calendar,
    plan: planEntries(decided),
    growth: planGrowth(decided),
    letter: letterOf(decided),
    post: postOf(decided, next.minutesValue, calendar, previous?.post ?? null),
    record: recordOf(decided, sections, previous, loadleaf),
  };
}

/** The week, with what to do on a day with little time. */
function withShortDay(week: Section, short: string): Section {
  return short === '' ? week : { ...week, parts: [...week.parts, paragraph(short, 'strong')] };
}

/** The stage with its reasons in sentences. */
function stageText({ person: { protocol, library }, stage }: Decided): Programme['stage'] {
  const nameOf = testNameIn(library, protocol.id);
  return {
    ...stage,
    because: stageTexts(stage.because, nameOf, (name) => stageOf(protocol, name).enter.words),
  };
}

/** Whether the revision before, of the same protocol, stood at a later stage or step. */
function isFurtherOn(previous: Programme, { person: { protocol }, stage, step }: Decided): boolean {
  if (previous.record.versions.protocol !== protocol.id) return false;
  const [before, now] = [previous.stage, stage].map(({ chosen }) => stageNumber(protocol, chosen));
  return before === now ? previous.step > step : Number(before) > Number(now);
}

/** The first session of the plan, with the exercises that stand in it. */
function nextSession({ person, week, shown, dated }: Decided): NextSession {
  const first = dated.plan.days.find(({ session }) => session !== null);
  const has = ({ exercise: { slot } }: (typeof shown)[0]['prescriptions'][number]) =>
    slot.when !== 'session' || first === undefined || first.session?.exercises.includes(slot.name) === true;
  const there = shown[0].prescriptions.filter(has);
  const seconds = sessionDaySeconds(there, person);
  const short = shortSession(there, person);
  return {
    heading: 'Your next session',
    when:
      first === undefined
        ? noSessionText(person.consult.reviewOn)
        : nextSessionText(first.on, nextAfter(week.plan, first.on)?.clearDays ?? 0),
    minutes: minutesText(seconds),
    minutesValue: Math.ceil(seconds / 60),
    short: short === null ? '' : shortSessionText(short),
    shortCards: short?.exercises.map(({ card }) => card) ?? [],
  };
}

function painSections(
  decided: Decided,
): Pick<Programme, 'painRule' | 'morningCheck' | 'easier' | 'flare' | 'missedDays' | 'getHelp'> {
  const { person, shown, sitting } = decided;
  const { consult, protocol, clinic } = person;
  const { prescriptions } = shown[0];
  const { contactAfterDays, contactWhenRisingDays, repetitions } = protocol.morningCheck;
  const contact = { afterDays: contactAfterDays.value, risingDays: contactWhenRisingDays.value };
  const bands = morningBands(consult.usualMorningPain, protocol.morningCheck);
  const flare = flarePlan(sitting.now?.uprightMinutes ?? null, protocol.flare);
  // What begins later is not done before that day with easier numbers either.
  const dated = ([title = '', ...row]: readonly string[], index: number) => {
    const slot = prescriptions[index]?.exercise.slot;
    const on = slot === undefined || slot.when !== 'session' ? null : beginsOn(decided.dated, slot.name);
    return [on === null ? title : fromDayText(title, on), ...row];
  };
  return {
    painRule: painRuleText(limitsOf(consult, protocol)),
    morningCheck: morningCheckText(bands, taskOf(decided), repetitions.value),
    easier: easierText(easierRows(prescriptions, person).map((row, index) => dated(row, index))),
    flare: flareText(
      flare,
      decided.flareHolds.map(({ card: { title }, ...hold }) => ({ title, ...hold })),
      sitting.free,
      decided.running.decision.decision !== 'none',
      sitting.budget.overBlocks.length > 0,
    ),
    missedDays: missedDaysText(
      protocol.missedDays.sameStepUnder.value,
      protocol.missedDays.oneBackUpTo.value,
      decided.course !== 'treatment',
    ),
    getHelp: getHelpText(clinic.contact, contact, protocol.getHelp, bands, boneKnown(person)),
  };
}

function boneKnown(person: Decided['person']): boolean {
  return precautionsOf(person).bone.some(
    ({ item, known }) => known === 'yes' && item !== 'missedPeriods' && item !== 'lowEnergy',
  );
}

function precautionsSection({ person, running }: Decided) {
  return precautionsText(precautionsOf(person), {
    runs: running.decision.decision !== 'none',
    impactFromWeek: person.protocol.maternity.impactFromWeekAfterBirth.value,
  });
}

// What stands among today's exercises needs no second description.
function taskOf({ morningTask, person, shown }: Decided) {
  if (morningTask === null) return null;
  const { id, title, kind } = morningTask;
  const inPlan = shown[0].prescriptions.some(({ card }) => card.id === id);
  const { card, how } = person.protocol.morningCheck;
  const own = id === card ? how : undefined;
  return { title, holds: kind === 'isometric', how: inPlan ? '' : (own ?? moveOf(morningTask)) };
}

/** How a card is done, in its own words. */
function moveOf({ body }: ExerciseCard): string {
  const [move] = body.filter(({ heading }) => heading === 'Move').flatMap(({ blocks }) => blocks);
  return move?.kind === 'paragraph' ? plainText(move.text) : '';
}

function runningSection({ person, running, bounds, dated, course, outlook }: Decided) {
  const { consult, protocol } = person;
  const { runningRules } = protocol;
  const { most, words } = bounds.stage.running;
  const { weeks, days } = dated.plan;
  const asYouLike = course !== 'treatment' && running.decision.heldBack.length === 0;
  return runningText({
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
    lessKm: lessKmThanUsual(person, weeks),
    longestIn30DaysKm: consult.running.longestIn30DaysKm ?? null,
    fastGrowth: runningRules.fastGrowth.value,
    raceEasyDays: runningRules.raceEasyDays,
    stepRateFrom: weeks.find(({ turn }) => turn.grows === 'stepRate')?.from ?? null,
    // They tell how hard the stage lets anybody run; who may less is told what waits.
    asYouLike,
    stageWords: runningWords(person, asYouLike || order(running.decision.most) >= order(most) ? words : null),
  });
}

// What pregnancy leaves stands over what the stage would open.
function runningWords({ maternity }: Decided['person'], stageWords: string | null): string | null {
  return maternity?.kind === 'pregnant' ? RUN_WHILE_PREGNANT : stageWords;
}

function sittingSection({ person, course, sitting, bounds, dated }: Decided) {
  const later = datedSitting(sitting, dated.plan.weeks);
  return sittingText({
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

function nextSection({ person, course, session, step, outlook, following }: Decided) {
  const { consult, protocol } = person;
  return whatComesNextText({
    course,
    stepsAhead: following.length > 0 ? following.length : session.ladder.rungs.length - step,
    months: outlook.usually,
    openEnd: outlook.openEnd,
    reviewOn: consult.reviewOn,
    goals: consult.goals.map(({ what }) => what),
    sameStepUnder: protocol.missedDays.sameStepUnder.value,
    oneBackUpTo: protocol.missedDays.oneBackUpTo.value,
    runs: consult.running.runs,
    angle: protocol.angle,
  });
}
