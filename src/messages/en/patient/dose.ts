/** The dose in a patient's words: numbers, seconds and kilograms, never shorthand, shares or maxima. */
import type { Dose, Tempo } from '../../../dosing/dose.ts';
import type { ExerciseCard } from '../../../content/library.ts';
import type { Made } from '../../../dosing/kit.ts';
import type { Pause, Way } from '../../../mechanics/way.ts';
import type { JointAngle } from '../../../mechanics/jointAngle.ts';
import { cellsFor } from '../../../decisions/session/cells/angleCell.ts';
import type { CellName } from '../../../decisions/terms/cell.ts';
import { aMadeText, madeText } from './kit.ts';
import { capital, countText, kgText, listText, secondsText, weekdayText } from '../plain.ts';
import { WEEKDAYS, type Weekday } from '../../../units/weekday.ts';

export const COLUMN_WORDS: Readonly<Record<CellName, string>> = {
  sets: 'Sets',
  repetitions: 'Repetitions',
  holdSeconds: 'Hold',
  tempo: 'Pace',
  restSeconds: 'Rest between sets',
  loadKg: 'Weight',
  reserve: 'Stop when',
  hipFlexionDeg: 'Hip bend',
  kneeFlexionDeg: 'Knee bend',
  ankleDorsiflexionDeg: 'Ankle bend',
  howFar: 'How far',
  timesPerDay: 'Times a day',
  days: 'Days',
};

/** Headings of the cells of a protocol's angle; the others' are never asked for, since a table names what its cells hold. */
export function columnsFor(angle: JointAngle): Readonly<Record<CellName, string>> {
  const headings = cellsFor(angle).map((cell) => [cell, COLUMN_WORDS[cell]]);
  return Object.fromEntries(headings) as Record<CellName, string>;
}

/** The dose in big type. @example '4 × 8', '5 × 30 s' or '4 ×' of strides */
export function doseSign(dose: Dose, counted: Counted): string {
  if (isStrides(dose, counted)) return `${dose.sets} ×`;
  return dose.holdSeconds === null
    ? `${dose.sets} × ${dose.repetitions ?? 0}`
    : `${dose.sets} × ${dose.holdSeconds} s`;
}

/** The same for those who do not read signs. @example '5 holds of 30 seconds' */
export function doseWords(dose: Dose, counted: Counted): string {
  if (dose.holdSeconds !== null) return `${countText(dose.sets, 'hold')} of ${secondsText(dose.holdSeconds)}`;
  if (isStrides(dose, counted)) return countText(dose.sets, 'stride');
  return `${countText(dose.sets, 'set')} of ${countText(dose.repetitions ?? 0, counted)}`;
}

/** What is counted in a set: jumps by their landings, drills by their steps, all else by repetitions. */
export type Counted = 'repetition' | 'landing' | 'step';

/** @example countedAs({ kind: 'energy-storage', positions: ['ballistic'] }) // => 'landing' */
export function countedAs({ kind, positions }: Pick<ExerciseCard, 'kind' | 'positions'>): Counted {
  if (kind === 'running-drill') return 'step';
  const jumps = kind === 'energy-storage' && positions.every((position) => position === 'ballistic');
  return jumps ? 'landing' : 'repetition';
}

/** A running drill of one repetition is one run, with a walk back: its sets are the strides. */
function isStrides({ repetitions }: Dose, counted: Counted): boolean {
  return counted === 'step' && repetitions === 1;
}

/** What a set of it is called. @example setWord({ ...dose, holdSeconds: 30 }, 'repetition') // => 'hold' */
export function setWord(dose: Dose, counted: Counted): 'set' | 'hold' | 'stride' {
  if (dose.holdSeconds !== null) return 'hold';
  return isStrides(dose, counted) ? 'stride' : 'set';
}

/** Under `Sets`. @example '3', '5 holds' or '4 strides' */
export function setsText(dose: Dose, counted: Counted): string {
  const word = setWord(dose, counted);
  return word === 'set' ? `${dose.sets}` : countText(dose.sets, word);
}

/** Under `Repetitions`; empty for a hold and for strides. @example '8' or '20 landings' */
export function repetitionsText(dose: Dose, counted: Counted): string {
  if (dose.repetitions === null || isStrides(dose, counted)) return '';
  return counted === 'repetition' ? `${dose.repetitions}` : countText(dose.repetitions, counted);
}

/** Empty for what is not held. */
export function holdText(holdSeconds: number | null): string {
  return holdSeconds === null ? '' : secondsText(holdSeconds);
}

const WAY_WORDS: Readonly<Record<Way, readonly [string, string]>> = {
  up: ['up', 'down'],
  down: ['down', 'up'],
  out: ['out', 'back'],
};

/** @example tempoText({goSeconds: 3, holdSeconds: 0, backSeconds: 3}, 'up', 'turn') // => '3 seconds up, 3 seconds down' */
export function tempoText(tempo: Tempo, way: Way, pause: Pause): string {
  const [there, back] = WAY_WORDS[way];
  const stay = tempo.holdSeconds === 0 ? [] : [`stay ${secondsText(tempo.holdSeconds)}`];
  const go = `${secondsText(tempo.goSeconds)} ${there}`;
  const comeBack = `${secondsText(tempo.backSeconds)} ${back}`;
  return (pause === 'turn' ? [go, ...stay, comeBack] : [go, comeBack, ...stay]).join(', ');
}

/** Empty where there is nothing to rest between. */
export function restText(restSeconds: number, sets: number): string {
  return sets < 2 || restSeconds === 0 ? '' : secondsText(restSeconds);
}

/** How to get into a hold and out of it. */
export function easeText(tempo: Tempo): string {
  return `ease in over ${secondsText(tempo.goSeconds)}, ease out over ${secondsText(tempo.backSeconds)}`;
}

/** A weight as the thing it is; in kilograms where the kit does not make it. */
export function loadText(loadKg: number, made: Made | null): string {
  if (loadKg === 0) return 'no weight';
  return made === null ? kgText(loadKg) : madeText(made);
}

/** Nothing was tested, so the patient finds the weight, from nothing up. `atMost`: never more than that in this step; null where the kit does not make it. */
export function feelText(reserve: number | null, atMost: Made | null): string {
  const until = reserve === null ? 'it feels like work' : `you could do just ${reserve} more`;
  const most = atMost === null ? '' : `; at most ${aMadeText(atMost)}`;
  return `none at first, a little more each session until ${until}${most}`;
}

/** When to stop a set; empty for moving. @example 'you could do 3 more' */
export function reserveText(dose: Dose): string {
  if (dose.holdSeconds !== null) return 'you could hold 10 to 20 seconds longer';
  if (dose.reserve === null) return '';
  return dose.reserve === 0 ? 'you can do no more with good form' : `you could do ${dose.reserve} more`;
}

/** @example daysPerWeekText(3) // => '3 days a week' */
export function daysPerWeekText(daysPerWeek: number): string {
  return `${countText(daysPerWeek, 'day')} a week`;
}

/** @example daysText(['mon', 'fri']) // => 'Monday and Friday' */
export function daysText(days: readonly Weekday[]): string {
  return days.length === WEEKDAYS.length ? 'every day' : listText(days.map(weekdayText));
}

/** Before the days of what is no part of a session. */
export const BETWEEN_SESSIONS = 'Between sessions';

/** Which leg, and which first. @example 'Right leg, then the other' */
export function sideText(
  { legs, alternating }: Pick<ExerciseCard, 'legs' | 'alternating'>,
  side: 'left' | 'right' | 'both',
): string {
  if (alternating) return 'Both legs in turn';
  if (legs === 'together') return 'Both legs together';
  return side === 'both' ? 'Each leg in turn' : `${capital(side)} leg, then the other`;
}
