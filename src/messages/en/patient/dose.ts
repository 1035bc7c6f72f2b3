/** The dose in a patient's words: numbers, seconds and kilograms, never shorthand, shares or maxima. */
import type { DoseSign, SaidPart } from '../../shapes.ts';
import type { Dose, Tempo } from '../../../dosing/dose.ts';
import type { ExerciseCard } from '../../../content/library.ts';
import type { Made } from '../../../dosing/kit.ts';
import type { Pause, Direction } from '../../../mechanics/direction.ts';
import type { JointAngle } from '../../../mechanics/jointAngle.ts';
import { cellsFor } from '../../../decisions/session/cells/angleCell.ts';
import type { CellName } from '../../../decisions/terms/cell.ts';
import { isStrides, setKind, type Counted, type SetKind } from '../../../decisions/session/counted.ts';
import { aMadeText, madeText } from './kit.ts';
import { capital, countText, nounText, kgText, listText, secondsText, weekdayText } from '../plain.ts';
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
export function doseSign(dose: Dose, counted: Counted): DoseSign {
  if (isStrides(dose, counted)) return { figures: `${dose.sets}`, sign: ' ×', unit: '' };
  return dose.holdSeconds === null
    ? { figures: `${dose.sets} × ${dose.repetitions ?? 0}`, sign: '', unit: '' }
    : { figures: `${dose.sets} × ${dose.holdSeconds}`, sign: ' ', unit: 's' };
}

/** The same for those who do not read signs, by its parts. @example '5 holds', ' of ', '30 seconds' */
export function doseParts(dose: Dose, counted: Counted): SaidPart[] {
  const kind = setKind(dose, counted);
  const between = (text: string): SaidPart => ({ text, cell: null });
  const sets: SaidPart = { text: setsText(dose, counted), cell: 'sets' };
  if (dose.holdSeconds !== null)
    return [sets, between(' of '), { text: holdText(dose.holdSeconds), cell: 'holdSeconds' }];
  if (kind === 'stride') return [sets];
  const repetitions = repetitionsText(dose, counted);
  const parts: SaidPart[] = [
    sets,
    between(` ${nounText(dose.sets, SET_WORDS[kind])} of `),
    { text: repetitions, cell: 'repetitions' },
    between(counted === 'repetition' ? ` ${nounText(dose.repetitions ?? 0, COUNTED_WORDS[counted])}` : ''),
  ];
  return parts.filter(({ text }) => text !== '');
}

/** @example '5 holds of 30 seconds' */
export function doseWords(dose: Dose, counted: Counted): string {
  return doseParts(dose, counted)
    .map(({ text }) => text)
    .join('');
}

const SET_WORDS: Readonly<Record<SetKind, string>> = { set: 'set', hold: 'hold', stride: 'stride' };

const COUNTED_WORDS: Readonly<Record<Counted, string>> = {
  repetition: 'repetition',
  landing: 'landing',
  step: 'step',
};

/** @example setCountText(5, 'hold') // => '5 holds' */
export function setCountText(sets: number, kind: SetKind): string {
  return countText(sets, SET_WORDS[kind]);
}

/** Under `Sets`. @example '3', '5 holds' or '4 strides' */
export function setsText(dose: Dose, counted: Counted): string {
  const kind = setKind(dose, counted);
  return kind === 'set' ? `${dose.sets}` : setCountText(dose.sets, kind);
}

/** Under `Repetitions`; empty for a hold and for strides. @example '8' or '20 landings' */
export function repetitionsText(dose: Dose, counted: Counted): string {
  if (dose.repetitions === null || isStrides(dose, counted)) return '';
  return counted === 'repetition'
    ? `${dose.repetitions}`
    : countText(dose.repetitions, COUNTED_WORDS[counted]);
}

/** Empty for what is not held. */
export function holdText(holdSeconds: number | null): string {
  return holdSeconds === null ? '' : secondsText(holdSeconds);
}

const WAY_WORDS: Readonly<Record<Direction, readonly [string, string]>> = {
  up: ['up', 'down'],
  down: ['down', 'up'],
  out: ['out', 'back'],
};

/** @example tempoText({goSeconds: 3, holdSeconds: 0, backSeconds: 3}, 'up', 'turn') // => '3 seconds up, 3 seconds down' */
export function tempoText(tempo: Tempo, way: Direction, pause: Pause): string {
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
