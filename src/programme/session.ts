/** The session of one person in one stage: its exercises, the ladder they climb, and the step that is present. */
import type { Slot } from '../content/library.ts';
import { holdFor } from '../dose/hold.ts';
import { ladderOfSteps, type Ladder } from '../dose/ladder.ts';
import { fitToMinutes, type FittedExercise, type GivenUp, type MinutesAnswer } from '../dose/minutes.ts';
import type { Prescribed, Rung } from '../dose/rung.ts';
import type { LadderCard, LadderExercise } from '../dose/step.ts';
import type { TimedDose } from '../dose/work.ts';
import type { WeekPlan } from '../week/plan.ts';
import { cardOf, type Choice } from './choose.ts';
import { fitCard, isObstacle } from './fit.ts';
import { measureFor } from './measure.ts';
import { boundsOf, type Bounds, type Person } from './person.ts';

export interface Session {
  readonly choices: readonly Choice[];
  readonly ladder: Extract<Ladder, { rungs: readonly unknown[] }>;
  readonly exercises: readonly LadderExercise[];
  readonly gaveUp: readonly GivenUp[];
  /** What decided each hold of the first step, by slot; slots without a hold are not there. */
  readonly holds: ReadonlyMap<string, string>;
}

/** Why no session can be put together. */
export interface NoSession {
  readonly reason: 'minutes' | 'hold' | 'start';
  readonly value: number | string;
  readonly slot: string | null;
}

export function sessionFor(
  choices: readonly Choice[],
  person: Person,
  bounds: Bounds,
  plan: WeekPlan,
): Session | NoSession {
  const opened = boundsOf(person, bounds.name, bounds.stage, true);
  const doses = choices.map(({ slot, fit }) => firstDose(slot, fit.card.id, person));
  const missing = doses.findIndex((dose) => 'tooShort' in dose);
  if (missing >= 0)
    return {
      reason: 'hold',
      value: (doses[missing] as { tooShort: number }).tooShort,
      slot: choices[missing]?.slot.name ?? null,
    };
  const asked = choices.map((choice, index) => timed(choice, (doses[index] as FirstDose).dose, person));
  const fitted = fitDays(asked, person.consult.minutesPerDay);
  if (typeof fitted === 'number') return { reason: 'minutes', value: fitted, slot: null };
  const kept = choices.filter(({ slot }) => fitted.exercises.some(({ exercise }) => exercise === slot.name));
  const exercises = kept.map((choice) => {
    const dose = fitted.exercises.find(({ exercise }) => exercise === choice.slot.name)?.dose as TimedDose;
    return ladderExercise(choice, dose, person, opened, plan);
  });
  const ladder = ladderOfSteps(exercises, ladderLimits(person, bounds), measureFor(person, opened));
  if ('none' in ladder)
    return {
      reason: 'start',
      value: ladder.why[0]?.limit ?? 'unknown',
      slot: ladder.why[0]?.exercise ?? null,
    };
  const holds = new Map(
    choices.flatMap(({ slot }, index) =>
      (doses[index] as FirstDose).hold === null
        ? []
        : [[slot.name, (doses[index] as FirstDose).hold as string]],
    ),
  );
  return { choices: kept, ladder, exercises, gaveUp: fitted.gaveUp, holds };
}

/** Session days and the days between each have their minutes; what is done daily counts on both. Minutes needed when not even that fits. */
function fitDays(
  asked: readonly (FittedExercise & { readonly when: Slot['when'] })[],
  minutes: number,
): { exercises: FittedExercise[]; gaveUp: GivenUp[] } | number {
  const daily = asked.filter(({ when }) => when === 'daily');
  const days = (['session', 'between'] as const).map((when) =>
    fitToMinutes([...asked.filter((one) => one.when === when), ...daily], minutes),
  );
  const short = days.flatMap((day) => ('none' in day ? [Math.ceil(day.why.leastSeconds / 60)] : []));
  if (short.length > 0) return Math.max(...short);
  const [onSession, between] = days as [FittedDay, FittedDay];
  const own = (day: FittedDay, when: Slot['when']) =>
    day.exercises.filter(({ exercise }) =>
      asked.some((one) => one.exercise === exercise && one.when === when),
    );
  // Of the daily work the lesser of the two answers holds, so that it fits on both.
  const both = own(onSession, 'daily').filter(({ exercise }) =>
    between.exercises.some((other) => other.exercise === exercise),
  );
  const lesser = both.map((one) =>
    [one, ...between.exercises.filter(({ exercise }) => exercise === one.exercise)].reduce((a, b) =>
      b.dose.sets < a.dose.sets ? b : a,
    ),
  );
  return {
    exercises: [...own(onSession, 'session'), ...own(between, 'between'), ...lesser],
    gaveUp: [
      ...new Map(
        [...onSession.gaveUp, ...between.gaveUp].map((one) => [`${one.what} ${one.exercise}`, one]),
      ).values(),
    ],
  };
}

type FittedDay = Extract<MinutesAnswer, { seconds: number }>;

export function isNoSession(session: Session | NoSession): session is NoSession {
  return 'reason' in session;
}

/** The rungs that are printed: the present one and the next two. */
export function shownRungs({ ladder }: Session, step: number): readonly Rung[] {
  return ladder.rungs.slice(step - 1, step + 2);
}

interface FirstDose {
  readonly dose: TimedDose;
  readonly hold: string | null;
}

/** The protocol's dose with this person's hold; lighter under 18: a set less, one more repetition in hand. */
function firstDose(slot: Slot, cardId: string, person: Person): FirstDose | { readonly tooShort: number } {
  const card = cardOf(person, cardId);
  const { consult, protocol, effects } = person;
  const lighter = effects.under18 ? 1 : 0;
  const dose: TimedDose = {
    ...slot.dose,
    tempo: slot.dose.tempo ?? card.tempo,
    sets: Math.max(1, slot.dose.sets - lighter),
    reserve: slot.dose.reserve === null ? null : slot.dose.reserve + lighter,
  };
  if (dose.holdSeconds === null) return { dose, hold: null };
  const tested = consult.tests
    .filter(({ test, seconds }) => test === cardId && seconds !== undefined)
    .map(({ seconds }) => seconds as number);
  const { holdShareTo, holdAtMostSeconds, screenedHoldSeconds } = protocol.limits;
  const answer = holdFor(dose.holdSeconds, tested.length === 0 ? null : Math.min(...tested), {
    shareTo: holdShareTo.value,
    longestSeconds: holdAtMostSeconds.value,
    screenedSeconds: effects.shortHolds.length > 0 ? screenedHoldSeconds.value : null,
  });
  return 'none' in answer
    ? { tooShort: answer.why.testedSeconds }
    : { dose: { ...dose, holdSeconds: answer.holdSeconds }, hold: answer.why.decidedBy };
}

function timed({ slot, fit }: Choice, dose: TimedDose, { clinic }: Person) {
  const { setUpSeconds, sideChangeSeconds } = clinic.defaults;
  return {
    exercise: slot.name,
    dose,
    legs: fit.card.legs,
    setUpSeconds,
    sideChangeSeconds,
    needed: slot.needed,
    when: slot.when,
  };
}

function ladderExercise(
  choice: Choice,
  dose: TimedDose,
  person: Person,
  opened: Bounds,
  plan: WeekPlan,
): LadderExercise {
  const { slot, fit } = choice;
  const { setUpSeconds, sideChangeSeconds } = person.clinic.defaults;
  const start: Prescribed = {
    exercise: slot.name,
    card: fit.card.id,
    dose,
    rangeDeg: fit.rangeDeg,
    loadKg: fit.load.load.loadKg,
    daysPerWeek: daysPerWeek(slot, plan),
  };
  return {
    when: slot.when,
    cards: [ladderCard(choice), ...harderCards(choice, person, opened)],
    start,
    progression: slot.progression,
    atMostKg: opened.stage.loadLimit === 'none' ? null : start.loadKg,
    setUpSeconds,
    sideChangeSeconds,
  };
}

function ladderCard({ fit }: Choice): LadderCard {
  return {
    card: fit.card.id,
    rangesDeg: fit.settingsDeg,
    loadsKg: fit.loads.map(({ loadKg }) => loadKg),
    legs: fit.card.legs,
  };
}

/** The harder cards it may go on to, as far as this person can do them in this stage. */
function harderCards({ slot, fit }: Choice, person: Person, opened: Bounds): LadderCard[] {
  const cards: LadderCard[] = [];
  for (let id = fit.card.harder; id !== null; id = cardOf(person, id).harder) {
    const answer = fitCard(cardOf(person, id), slot, person, opened);
    if (isObstacle(answer)) break;
    cards.push(ladderCard({ slot, fit: answer }));
  }
  return cards;
}

function daysPerWeek({ when }: Slot, { days }: WeekPlan): number {
  return days.filter((day) => (when === 'daily' ? day.daily : when === 'between' ? day.between : day.session))
    .length;
}

function ladderLimits({ protocol, consult }: Person, { caps }: Bounds) {
  return {
    stepGrowth: protocol.limits.stepGrowth.value,
    weekGrowth: protocol.limits.weekGrowth.value,
    compressionCapBw: caps.compressionBw,
    cardsAboveHalfCap: protocol.limits.cardsAboveHalfCap.value,
    minutes: consult.minutesPerDay,
  };
}
