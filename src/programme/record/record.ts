/** What the clinician keeps: findings, why this stage, what decided each exercise, what was passed over, what comes. */
import type { Rung } from '../../dose/rung.ts';
import type { WeekFacts } from '../weekPlan.ts';
import type { RunningFacts } from '../running.ts';
import type { Session } from '../session.ts';
import type { Outlook } from '../outlook.ts';
import type { Person } from '../person.ts';
import type { Prescription } from '../prescribe.ts';
import type { PassedOver, Programme, ProgrammeRecord, Section, StageChoice } from '../programme.ts';
import { REFERENCE_BODY } from '../../mechanics/body.ts';
import { effectText } from '../phrases/screen.ts';
import { dayEntries, gaveUpText, recoveryText, SESSION_WORDS } from '../phrases/week.ts';
import { changeText } from '../phrases/steps.ts';
import { listText, numberText, paragraph, section, table } from '../phrases/plain.ts';
import { certTable } from './cert.ts';
import { findingsTables, screenTable } from './findings.ts';
import { settingsTable } from './settings.ts';
import { compressionLadder, rulerOf } from './squeeze.ts';
import { stageWord } from '../stageChoice.ts';

export interface RecordFacts {
  readonly person: Person;
  readonly stage: StageChoice;
  readonly step: number;
  readonly session: Session;
  readonly prescriptions: readonly Prescription[];
  readonly ahead: readonly Rung[];
  readonly passedOver: readonly PassedOver[];
  /** Needed slots of later stages that nothing fills yet. */
  readonly laterNotes: readonly string[];
  readonly running: RunningFacts;
  readonly runningSection: Section;
  readonly sittingSection: Section;
  readonly week: WeekFacts;
  readonly outlook: Outlook;
  readonly previous: Programme | null;
  readonly note: readonly string[];
  readonly loadleaf: string;
}

export function recordOf(facts: RecordFacts): ProgrammeRecord {
  const { person, prescriptions, week, session } = facts;
  const { consult, protocol, library } = person;
  const runs = facts.running.plan.weeks[0]?.runs ?? [];
  return {
    heading: `Record for ${consult.alias}, revision ${consult.revision}`,
    findings: findingsTables(consult, (id) => nameOf(id, person)),
    screen: screenTable(consult),
    effects: effectTexts(person),
    notes: consult.notes,
    exercises: prescriptions.map((one) => exerciseRecord(one, facts)),
    ladder: compressionLadder(prescriptions, person),
    passedOver: facts.passedOver,
    remarks: remarksOf(facts),
    week: {
      days: week.plan.days.map((day) => ({
        weekday: day.weekday,
        entries: dayEntries(day, runs, SESSION_WORDS),
      })),
      gaveUp: [...week.plan.gaveUp, ...week.plan.tightFixed]
        .map(gaveUpText)
        .concat(session.gaveUp.map(gaveWayText)),
    },
    running: facts.runningSection,
    sitting: facts.sittingSection,
    stepsAhead: stepsAhead(facts),
    changes: changesSince(facts),
    cert: certTable(certFacts(facts)),
    settings: settingsTable(protocol),
    versions: { library: library.version, protocol: protocol.id, loadleaf: facts.loadleaf },
    note: facts.note,
  };
}

/** A test as the protocol names it, a card by its title. */
function nameOf(id: string, { protocol, library }: Person): string {
  return protocol.tests.find((test) => test.id === id)?.name ?? library.exercises.get(id)?.title ?? id;
}

/** A sentence for every effect of the screen that holds. */
export function effectTexts({ consult, effects }: Person): string[] {
  const named = (['noRunning', 'lightHolds', 'shortHolds'] as const).filter(
    (effect) => effects[effect].length > 0,
  );
  const texts = named.map((effect) => effectText(effect, effects[effect], consult.screen));
  return effects.under18
    ? [
        ...texts,
        'Under 18: lighter dose, no maximum worked out, no caps from the model; position and hip bend alone.',
      ]
    : texts;
}

function exerciseRecord(one: Prescription, { person }: RecordFacts): ProgrammeRecord['exercises'][number] {
  const { card, choice, cells, estimate } = one;
  const range = cells.find(({ cell }) => cell === 'hipFlexionDeg');
  const remarks = [
    ...(card.movement === null
      ? ['No pose: it takes no part in squeeze and pull, and is guarded by position and its stated hip bend.']
      : []),
    ...(card.kind === 'energy-storage' || card.kind === 'running-drill'
      ? ['Fast: the model is for slow movement and says nothing of it.']
      : []),
    ...(estimate !== null && estimate.compressionVerticalOnlyBw > estimate.compressionBw + 0.05
      ? [
          `If the heels are dragged in, the squeeze may be ${numberText(estimate.compressionVerticalOnlyBw)} body weights: push away, do not drag the heels in.`,
        ]
      : []),
    ...(person.consult.overrides.some(({ path }) => path.startsWith(`${card.id}.`))
      ? ["Holds the clinician's own entry, beside the rule."]
      : []),
  ];
  return {
    card: card.id,
    title: card.title,
    decidedBy: range?.decidedBy ?? 'dose',
    because: `Range: ${range?.rule ?? ''}. Weight: ${choice.fit.load.because}.`,
    estimate,
    ruler: rulerOf(one, person.protocol),
    remarks,
  };
}

function remarksOf({ person, laterNotes, running, outlook, session, week, stage }: RecordFacts): string[] {
  const { consult } = person;
  const noBody = consult.heightM === undefined || consult.massKg === undefined;
  return [
    ...(noBody
      ? [
          `Height or mass not recorded: the reference body (${REFERENCE_BODY.massKg} kg, ${REFERENCE_BODY.heightM} m) stands in.`,
        ]
      : []),
    ...(person.provokedDeg === null
      ? []
      : [`What hurt holds the hip bend to ${person.provokedDeg}° whatever the stage allows.`]),
    ...(stage.chosenBy === 'clinician' && stage.chosen !== stage.proposed
      ? [`The stage is the clinician's own; the tests speak for ${stageWord(stage.proposed)}.`]
      : []),
    `Recovery: ${recoveryText(week.plan.liftRecovery)}`,
    ...running.decision.because.map(
      ({ code, inputs }) => `Running: ${code.replaceAll('-', ' ')}${inputsText(inputs)}.`,
    ),
    ...(running.decision.overRules
      ? ["Running goes beyond the house rules by the clinician's own entry."]
      : []),
    ...session.ladder.ends
      .filter(({ reached }) => reached !== 'end')
      .map(
        ({ exercise, change, at, stoppedBy }) =>
          `Ladder: ${change} of ${exercise} ends at ${at ?? 'its start'} (${stoppedBy ?? ''}).`,
      ),
    ...outlook.tooSoon.map(
      ({ what, on, daysShort }) =>
        `Goal "${what}" on ${on} comes ${daysShort} days before the earliest end of the stages.`,
    ),
    ...laterNotes,
    'Estimates of the model order positions and limit early stages; they are not measured forces. Tasks led by the knee, sitting and stretching are under-estimated.',
  ];
}

function inputsText(inputs: Readonly<Record<string, number | string | null>>): string {
  const entries = Object.entries(inputs).filter(([, value]) => value !== null);
  return entries.length === 0 ? '' : ` (${entries.map(([name, value]) => `${name} ${value}`).join(', ')})`;
}

function gaveWayText({ what, exercise, from, to }: Session['gaveUp'][number]): string {
  if (what === 'exercise') return `${exercise} was left out, to fit the minutes.`;
  return `${exercise}: ${to} ${what === 'sets' ? 'sets' : 'times a day'} instead of ${from}, to fit the minutes.`;
}

function stepsAhead({ ahead, session, outlook }: RecordFacts): Section {
  const titleOf = (slot: string) => slot;
  const rows = ahead.map((rung) => [
    String(rung.step),
    changeText(rung, titleOf),
    rung.changed
      .map(
        ({ exercise, from, to, stoppedBy }) =>
          `${exercise}: ${from} to ${to}${stoppedBy === null ? '' : ` (more stopped by ${stoppedBy})`}`,
      )
      .join('; '),
  ]);
  const dates = outlook.dates.map(({ name, earliestOn, usuallyFrom, usuallyTo }) => [
    name,
    earliestOn,
    `${usuallyFrom} to ${usuallyTo}`,
  ]);
  return section('steps-ahead', 'Steps ahead', [
    paragraph(`The ladder of this stage has ${session.ladder.rungs.length} steps for this person.`),
    ...(rows.length === 0 ? [] : [table('Steps of the ladder', ['Step', 'Change', 'From and to'], rows)]),
    table('Earliest dates', ['Stage', 'Not before', 'Usually begins'], dates),
  ]);
}

function changesSince({ previous, stage, step, prescriptions }: RecordFacts): string[] {
  if (previous === null) return [];
  const before = new Set(previous.exercises.map(({ card }) => card));
  const now = new Set(prescriptions.map(({ card }) => card.id));
  const added = prescriptions.filter(({ card }) => !before.has(card.id)).map(({ card }) => card.title);
  const gone = previous.exercises.filter(({ card }) => !now.has(card)).map(({ title }) => title);
  const cells = prescriptions.flatMap(({ card, cells: mine }) =>
    mine.flatMap(({ cell, text }) => {
      const old = previous.exercises
        .find((one) => one.card === card.id)
        ?.cells.find((one) => one.cell === cell);
      return old === undefined || old.text === text
        ? []
        : [`${card.title}, ${cell}: ${old.text || '-'} to ${text || '-'}.`];
    }),
  );
  return [
    `From ${stageWord(previous.stage.chosen)} step ${previous.step} (revision ${previous.revision}) to ${stageWord(stage.chosen)} step ${step}.`,
    ...(added.length === 0 ? [] : [`New: ${listText(added)}.`]),
    ...(gone.length === 0 ? [] : [`No longer: ${listText(gone)}.`]),
    ...cells,
  ];
}

function certFacts({ person, prescriptions, stage }: RecordFacts) {
  const { consult, protocol } = person;
  const things = [...new Set(prescriptions.flatMap(({ card }) => card.equipment))];
  const { goingOn } = protocol;
  return {
    equipment: things.length === 0 ? 'none' : listText(things),
    clinician: consult.clinician,
    goals: `${consult.goals.length === 0 ? 'no goal recorded' : listText(consult.goals.map(({ what }) => what))}; review on ${consult.reviewOn}`,
    goOn: `whole dose in ${goingOn.doneSessions.value} sessions, morning check within usual + ${goingOn.checkOverUsual.value} for ${goingOn.checkDays.value} days, ${Math.round(goingOn.sessionsDoneShare.value * 100)} % of sessions, at least ${goingOn.leastSessions.value} sessions and ${goingOn.leastDays.value} days`,
    steps: 'one kind of change a step, see steps ahead',
    dose: 'sets, repetitions or seconds, weight, pace, rest, days: see the dosage table',
    tailoredBy: `tests (${consult.tests.map(({ test }) => test).join(', ')}), tested sets, pain, kit, days and minutes`,
    start: stage.because.join(' '),
    review: `review on ${consult.reviewOn}`,
  };
}
