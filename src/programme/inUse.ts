/** The rules and doses that the page goes on with by itself once it is in use, and the block it carries them in. */
import type { Decided } from '../decisions/decide.ts';
import { painfulSide } from '../decisions/person/person.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';
import type { IsoDate } from '../units/date.ts';
import type { Setting } from '../units/reason.ts';
import type { Programme } from './programme.ts';
import { alarmItems } from '../decisions/screen/alarmItems.ts';
import { datedSitting } from '../decisions/days/sitting.ts';
import type {
  DayInUse,
  ExerciseInUse,
  PacedExercise,
  RulesInUse,
  SheetInUse,
  SittingInUse,
  StepRateInUse,
} from './sheetInUse.ts';

/** Rules of this person's protocol and week. */
export function rulesInUse({ person, week }: Decided): RulesInUse {
  const { consult, protocol } = person;
  const { painRule, morningCheck, runningRules } = protocol;
  return {
    pain: {
      duringAtMost: numbered(painRule.duringAtMost),
      overUsualAtMost: numbered(painRule.overUsualAtMost),
      neverAbove: numbered(painRule.neverAbove),
      usualOnlyFrom: numbered(painRule.usualOnlyFrom),
    },
    person: { usualPain: consult.usualMorningPain, irritability: consult.irritability },
    morning: {
      carryOnOver: numbered(morningCheck.carryOnOver),
      sameAgainOver: numbered(morningCheck.sameAgainOver),
      easeBackAt: numbered(morningCheck.easeBackAt),
      contactAfterDays: numbered(morningCheck.contactAfterDays),
      contactWhenRisingDays: numbered(morningCheck.contactWhenRisingDays),
    },
    spacing: {
      gapDays: week.plan.liftGapDays,
      openDays: week.plan.openDays,
      noHeavyDays: runningRules.raceNoHeavyDays.value,
    },
  };
}

// Where a number comes from is the record's to say.
function numbered({ value, mark }: Setting): Setting {
  return { value, mark };
}

/** Doses of all exercises of the leaflet, each card once. */
export function pacedExercises({ person, shown, following }: Decided): PacedExercise[] {
  const all = [...shown[0].prescriptions, ...following.flatMap((part) => part.shown.prescriptions)];
  const firstSide = painfulSide(person.consult);
  return all
    .filter(({ card }, at) => all.findIndex((one) => one.card.id === card.id) === at)
    .map((one) => paced(one, firstSide));
}

function paced({ card, at: { dose, loadKg } }: Prescription, firstSide: 'left' | 'right'): PacedExercise {
  const { sets, repetitions, holdSeconds, tempo, restSeconds, timesPerDay } = dose;
  return {
    card: card.id,
    sets,
    repetitions,
    holdSeconds,
    tempo,
    restSeconds,
    timesPerDay,
    loadKg: loadKg > 0 ? loadKg : null,
    legs: card.alternating ? 'turns' : card.legs,
    firstSide,
  };
}

/** What the dated plan lets sitting grow to, the present budget first; empty where nothing is counted. */
export function sittingInUse({ sitting, dated, person }: Decided): SittingInUse[] {
  const { now } = sitting;
  if (now === null) return [];
  const steps = [{ ...now, from: person.consult.startOn }, ...datedSitting(sitting, dated.plan.weeks)];
  return steps.map(({ from, uprightMinutes, hardMinutes }) => ({ from, uprightMinutes, hardMinutes }));
}

/** The day from which quicker steps are what grows; null where that is after the review. */
export function stepRateFrom(weeks: Decided['dated']['plan']['weeks']): IsoDate | null {
  return weeks.find(({ turn }) => turn.grows === 'stepRate')?.from ?? null;
}

/** The advised step rate from the week in which it is what grows; null where none is, or only after the review. */
export function stepRateInUse({ running, dated }: Decided): StepRateInUse | null {
  const fromOn = stepRateFrom(dated.plan.weeks);
  return running.stepRate === null || fromOn === null
    ? null
    : { stepsPerMin: running.stepRate.toStepsPerMin, fromOn };
}

/** The block of the page: picked from the finished programme, nothing decided. */
export function sheetInUse(programme: Programme): SheetInUse {
  const { alias, revision, mark = '', seenOn, startOn, reviewOn, inUse, exercises } = programme;
  return {
    alias,
    revision,
    mark,
    startOn,
    reviewOn,
    seenOn,
    emergencyNumber: inUse.emergencyNumber,
    alarms: alarmItems(),
    rules: inUse.rules,
    sitting: inUse.sitting,
    exercises: exercises.flatMap(({ card }) =>
      inUse.exercises.filter((one) => one.card === card).map((one) => withEasier(one, programme)),
    ),
    stepRate: inUse.stepRate,
    days: programme.plan.map((entry) => dayInUse(entry, programme)),
    runHeading: programme.running.heading,
  };
}

function withEasier(paced: PacedExercise, { eased }: Programme): ExerciseInUse {
  const cells = eased.find(({ card }) => card === paced.card)?.cells ?? {};
  const loadKg = cells.loadKg ?? paced.loadKg ?? 0;
  return { ...paced, easierSets: cells.sets ?? paced.sets, easierLoadKg: loadKg > 0 ? loadKg : null };
}

// A run by minutes or a ladder of walks and runs has no distance to keep to.
function kmOf(runs: readonly { readonly km: number | null }[]): number | null {
  if (runs.length === 0 || runs.some(({ km }) => km === null)) return null;
  return runs.reduce((sum, { km }) => sum + (km ?? 0), 0);
}

function dayInUse(entry: Programme['plan'][number], { calendar }: Programme): DayInUse {
  const { on, sessions, between, daily, runs, races, other, easyAfterRace } = entry;
  const entries = calendar.filter((one) => one.on === on);
  const textOf = (all: typeof entries) => all.map(({ text }) => text).join('; ');
  return {
    on,
    session: sessions.length > 0,
    between: between.length + daily.length > 0,
    run: runs.length > 0,
    race: races.length > 0,
    easyAfterRace,
    sessionCards: sessions.flatMap(({ exercises }) => exercises.map(({ card }) => card)),
    betweenCards: [...between, ...daily].map(({ card }) => card),
    other: other.length > 0,
    text: textOf(entries),
    runKm: kmOf([...runs, ...races]),
    runText: textOf(entries.filter(({ kind }) => kind === 'run' || kind === 'race')),
  };
}
