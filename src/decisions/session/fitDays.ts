/** Session days and the days between cut to the minutes there are; what is done daily counts on both. */
import type { Slot } from '../../content/library.ts';
import {
  fitToMinutes,
  GIVES_WAY,
  type FittedExercise,
  type GivenUp,
  type MinutesAnswer,
} from '../../dosing/minutes.ts';
import type { TimedDose } from '../../dosing/work.ts';
import type { Choice } from '../candidates/choose.ts';
import type { Person } from '../person/person.ts';
import type { SessionLength } from '../terms/sessionLength.ts';

/** A choice that the minutes leave in, with the dose they leave it. */
export interface Kept extends Choice {
  readonly dose: TimedDose;
}

export interface FittedDays {
  readonly kept: readonly Kept[];
  readonly gaveUp: readonly GivenUp[];
  readonly leftOut: readonly Choice[];
}

/** The choices that fit, what gave way and what was left out; the minutes it takes at least when not even that fits. */
export function fitDays(
  choices: readonly Choice[],
  { clinic, protocol }: Person,
  { minutes }: SessionLength,
): FittedDays | number {
  const asked = choices.map((choice) => askedOf(choice, clinic));
  const daily = asked.filter(({ when }) => when === 'daily');
  const days = (['session', 'between'] as const).map((when) =>
    fitToMinutes(
      [...asked.filter((one) => one.when === when), ...daily],
      minutes,
      GIVES_WAY,
      protocol.session.shortExercises.value,
    ),
  );
  const short = days.flatMap((day) => ('none' in day ? [Math.ceil(day.why.leastSeconds / 60)] : []));
  if (short.length > 0) return Math.max(...short);
  const [onSession, between] = days as [FittedDay, FittedDay];
  const fitted = [
    ...ofKind('session', onSession, asked),
    ...ofKind('between', between, asked),
    ...onBoth(onSession, between, asked),
  ];
  const doses = new Map(fitted.map(({ exercise, dose }) => [exercise, dose]));
  return {
    kept: choices.flatMap((choice) => {
      const dose = doses.get(choice.slot.name);
      return dose === undefined ? [] : [{ ...choice, dose }];
    }),
    gaveUp: eachOnce([...onSession.gaveUp, ...between.gaveUp]),
    leftOut: choices.filter(({ slot }) => !doses.has(slot.name)),
  };
}

type AskedExercise = FittedExercise & { readonly when: Slot['when'] };

function askedOf({ slot, fit }: Choice, { defaults }: Person['clinic']): AskedExercise {
  const { setUpSeconds, sideChangeSeconds } = defaults;
  return {
    exercise: slot.name,
    dose: fit.first.dose,
    legs: fit.card.legs,
    setUpSeconds,
    sideChangeSeconds,
    needed: slot.needed,
    when: slot.when,
  };
}

type FittedDay = Extract<MinutesAnswer, { seconds: number }>;

function ofKind(when: Slot['when'], { exercises }: FittedDay, asked: readonly AskedExercise[]) {
  const names = new Set(asked.filter((one) => one.when === when).map(({ exercise }) => exercise));
  return exercises.filter(({ exercise }) => names.has(exercise));
}

// Of the daily work the lesser of the two answers holds, so that it fits on both kinds of day.
function onBoth(onSession: FittedDay, between: FittedDay, asked: readonly AskedExercise[]): FittedExercise[] {
  return ofKind('daily', onSession, asked).flatMap((one) => {
    const other = between.exercises.find(({ exercise }) => exercise === one.exercise);
    if (other === undefined) return [];
    return [other.dose.sets < one.dose.sets ? other : one];
  });
}

function eachOnce(gaveUp: readonly GivenUp[]): GivenUp[] {
  return [...new Map(gaveUp.map((one) => [`${one.what} ${one.exercise}`, one])).values()];
}
