/** From one consult and the library to one finished programme, or to the refusals that stand against it. */
import type { Consult, Library, Protocol, Stage } from '../content/library.ts';
import { sessionSeconds } from '../dose/session.ts';
import { sittingBudget } from '../week/sitting.ts';
import { morningBands } from '../week/morning.ts';
import { nextAfter } from '../week/dates.ts';
import { flarePlan } from '../week/flare.ts';
import type { Refusal } from '../units/refusal.ts';
import { activitiesSection } from './activities.ts';
import { adviceFor } from './advice.ts';
import { chooseCards } from './choose.ts';
import { easierRows } from './easier.ts';
import { exercisesOf } from './exercises.ts';
import { logDays } from './logDays.ts';
import { type Models, modelIn } from './model.ts';
import { outlookOf } from './outlook.ts';
import { painLimits } from './painLimits.ts';
import { boundsOf, personOf, type Person } from './person.ts';
import {
  emergencyText,
  datesText,
  NOTICE,
  openingText,
  runningLineText,
  titleText,
} from './phrases/opening.ts';
import { easierText, flareText, getHelpText, missedDaysText, morningCheckText, painRuleText } from './phrases/pain.ts';
import { logSheet } from './phrases/log.ts';
import { runningText } from './phrases/running.ts';
import { sittingText, stretchingText } from './phrases/sitting.ts';
import { whatComesNextText } from './phrases/steps.ts';
import { entryText, minutesText, nextSessionText, weekText } from './phrases/week.ts';
import { prescribe, type Prescription } from './prescribe.ts';
import type { DatedSession, PassedOver, Programme } from './programme.ts';
import { noteLines } from './record/note.ts';
import { effectTexts, recordOf } from './record/record.ts';
import { noCardFor, noSession, noSuchStage, noSuchStep, noWeek } from './refusals.ts';
import { runningFacts } from './running.ts';
import { screenEffects } from './screen.ts';
import { isNoSession, sessionFor, shownRungs } from './session.ts';
import { chooseStage, stageOf, stageWord, type StageName } from './stageChoice.ts';
import { stepTables } from './steps.ts';
import { weekFacts } from './weekPlan.ts';

export type Assembled = { readonly programme: Programme } | { readonly refusals: readonly Refusal[] };

/** What a programme is made with besides the consult. */
export interface Workshop {
  readonly library: Library;
  /** Bodies already asked about; kept between programmes, so that a rebuild asks only what is new. */
  readonly models: Models;
  readonly loadleaf: string;
}

/** `previous`: the programme of the revision before, for what has changed; null for the first. */
export function assembleProgramme(
  consult: Consult,
  previous: Programme | null,
  workshop: Workshop,
): Assembled {
  const { library } = workshop;
  const protocol = library.protocols.get(consult.protocol);
  if (protocol === undefined)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const effects = screenEffects(consult, library.clinic);
  if ('refusals' in effects) return effects;
  if (typeof consult.stage === 'number' && consult.stage >= protocol.stages.length)
    return { refusals: [noSuchStage(consult, protocol)] };
  const stage = chooseStage(consult, protocol, library, effects);
  const ofStage = stageOf(protocol, stage.chosen);
  const person = personOf(consult, library, protocol, effects, (body) =>
    modelIn(workshop.models, library.version, body),
  );
  const bounds = boundsOf(person, stage.chosen, ofStage, false);
  const running = runningFacts(consult, protocol, ofStage, effects);
  const week = weekFacts(consult, protocol, stage.chosen, ofStage, running);
  if ('fits' in week) return { refusals: [noWeek(consult, week)] };
  const chosen = chooseCards(person, bounds);
  if (chosen.empty.length > 0)
    return {
      refusals: chosen.empty.map((slot) => noCardFor(consult, stage.chosen, slot, chosen.passedOver)),
    };
  const session = sessionFor(chosen.choices, person, bounds, week.plan);
  if (isNoSession(session)) return { refusals: [noSession(consult, session)] };
  const step = consult.step ?? 1;
  if (step > session.ladder.rungs.length)
    return { refusals: [noSuchStep(consult, stage.chosen, session.ladder.rungs.length)] };

  const shown = shownRungs(session, step).map((rung) => ({
    rung,
    prescriptions: prescribe(session, rung, person, bounds, week.plan),
  }));
  const present = shown[0] as { prescriptions: Prescription[] };
  const { prescriptions } = present;
  const exercises = exercisesOf(prescriptions, person);
  const later = laterStages(person, protocol, stage.chosen);
  const stepsLeft = session.ladder.rungs.length - step;
  const outlook = outlookOf(person, stage.chosen, stepsLeft + 1);
  const budget = sittingBudget(
    {
      toleranceMinutes: consult.sitting.toleranceMinutes,
      goalMinutes: consult.sitting.goalMinutes ?? null,
      fixedBlocksMinutes: consult.sitting.fixedBlocksMinutes ?? [],
    },
    protocol.sittingRules,
  );
  const nowSitting = budget.steps[0] ?? null;
  const runs = running.plan.weeks[0]?.runs ?? [];
  const limits = painLimits(consult, protocol);
  const runningSection = runningText({
    runs: consult.running.runs,
    ...running,
    longestIn30DaysKm: consult.running.longestIn30DaysKm ?? null,
    stageWords: ofStage.running.words,
  });
  const sittingSection = sittingText({
    budget: nowSitting,
    stepMinutes: protocol.sittingRules.stepMinutes.value,
    goalMinutes: consult.sitting.goalMinutes ?? null,
    tooLongBlocks: budget.overBlocks.map(({ minutes }) => minutes),
    stageWords: ofStage.sitting,
  });
  const first = week.entries.find(({ kind }) => kind === 'session')?.on ?? consult.startOn;
  const onSession = prescriptions.flatMap(({ choice, card, at }, index) => {
    const exercise = session.exercises[index];
    return choice.slot.when === 'between' || exercise === undefined
      ? []
      : [{ ...exercise, exercise: choice.slot.name, legs: card.legs, dose: at.dose }];
  });
  const seconds = sessionSeconds(onSession);
  const flare = flarePlan(nowSitting?.uprightMinutes ?? null, protocol.flare);
  const calendar: DatedSession[] = week.entries.map((entry) => ({
    on: entry.on,
    weekday: entry.weekday,
    kind: entry.kind === 'daily' ? 'between' : entry.kind,
    text: entryText(entry, runs),
  }));
  const gaveUp = session.gaveUp.map(({ exercise }) => `${exercise}.`);

  const programme: Programme = {
    format: 1,
    alias: consult.alias,
    revision: consult.revision,
    language: 'en',
    paper: library.clinic.paper,
    title: titleText(consult.alias),
    runningLine: runningLineText(consult),
    pageWord: 'Page',
    clinic: { name: library.clinic.name, contact: library.clinic.contact, logo: library.clinic.logo ?? null },
    clinician: consult.clinician,
    seenOn: consult.seenOn,
    startOn: consult.startOn,
    reviewOn: consult.reviewOn,
    dates: datesText(consult),
    stage,
    step,
    opening: openingText(consult, protocol),
    emergency: emergencyText(library.clinic, consult.country),
    notice: NOTICE,
    nextSession: {
      heading: 'Your next session',
      when: nextSessionText(first, nextAfter(week.plan, first)?.clearDays ?? 0),
      minutes: minutesText(seconds),
      minutesValue: Math.ceil(seconds / 60),
    },
    exercises,
    steps: stepTables(shown, person),
    painRule: painRuleText(limits),
    morningCheck: morningCheckText(
      morningBands(consult.usualMorningPain, protocol.morningCheck),
      library.exercises.get(protocol.morningCheck.card)?.title ?? protocol.morningCheck.card,
      protocol.morningCheck.repetitions.value,
      protocol.morningCheck.contactAfterDays.value,
      protocol.morningCheck.contactWhenRisingDays.value,
    ),
    easier: easierText(easierRows(session, prescriptions, person)),
    flare: flareText(
      flare.holdsOnlyDays,
      prescriptions.filter(({ at }) => at.dose.holdSeconds !== null).map(({ card }) => card.title),
      flare.sittingMinutes,
      consult.running.runs,
    ),
    missedDays: missedDaysText(
      protocol.missedDays.sameStepUnder.value,
      protocol.missedDays.oneBackUpTo.value,
    ),
    getHelp: getHelpText(
      library.clinic.contact,
      protocol.morningCheck.contactWhenRisingDays.value,
      protocol.morningCheck.contactAfterDays.value,
    ),
    week: weekText(week.plan, runs),
    running: runningSection,
    sitting: sittingSection,
    stretching: stretchingText(
      ofStage.stretching,
      consult.doesNow.some(({ what }) => /stretch|yoga|pilates/i.test(what)),
    ),
    activities: activitiesSection(week.activities, protocol, stage.chosen),
    whatComesNext: whatComesNextText({
      stepsAhead: stepsLeft,
      months: outlook.usually,
      reviewOn: consult.reviewOn,
      goals: consult.goals.map(({ what }) => ({ what, reachable: null })),
    }),
    advice: adviceFor(consult, stage.chosen, library),
    log: logSheet(logDays(consult, calendar)),
    calendar,
    record: recordOf({
      person,
      stage,
      step,
      session,
      prescriptions,
      ahead: session.ladder.rungs.slice(step),
      passedOver: [...chosen.passedOver, ...later.passedOver],
      laterNotes: later.notes,
      running,
      runningSection,
      sittingSection,
      week,
      outlook,
      previous,
      loadleaf: workshop.loadleaf,
      note: noteLines({
        consult,
        stage,
        step,
        prescriptions,
        effects: effectTexts(person),
        running: `${running.decision.decision}, at most ${running.decision.most}.`,
        sitting:
          nowSitting === null
            ? 'no budget, tolerance too short.'
            : `${nowSitting.uprightMinutes} min upright, ${nowSitting.hardMinutes} min hard or leaning.`,
        painRule: `Pain up to ${limits.atMost}/10 during exercise, never above ${limits.neverAbove}; morning check explained.`,
        gaveUp,
      }),
    }),
  };
  return { programme: frozen(programme) };
}

/** Stages still to come: what would be passed over there, and needed slots that nothing fills. */
function laterStages(
  person: Person,
  protocol: Protocol,
  present: StageName,
): { passedOver: PassedOver[]; notes: string[] } {
  if (present === 'keep') return { passedOver: [], notes: [] };
  const later = protocol.stages
    .slice(present)
    .map((stage, index): [StageName, Stage] => [nameOf(protocol, present + index), stage]);
  const chosen = later.map(([name, stage]) => ({
    name,
    ...chooseCards(person, boundsOf(person, name, stage, false)),
  }));
  return {
    passedOver: chosen.flatMap(({ passedOver }) => passedOver),
    notes: chosen.flatMap(({ name, empty }) =>
      empty.map(
        (slot) => `Nothing in the library fills ${slot.name} of ${stageWord(name)} for this person yet.`,
      ),
    ),
  };
}

function nameOf(protocol: Protocol, index: number): StageName {
  return index === protocol.stages.length - 1 ? 'keep' : ((index + 1) as StageName);
}

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
