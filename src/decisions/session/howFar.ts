/** How far one exercise goes: degrees for the clinician, things a patient can see alone for the leaflet. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Position } from '../../content/schema/words.ts';
import type { Prescribed } from '../../dosing/rung.ts';
import { landmarks, type Landmark } from '../../mechanics/landmark.ts';
import { distanceTo, isPosed, type PosedCard, type Model } from '../person/model.ts';
import type { Person } from '../person/person.ts';
import type { HowFar } from '../terms/howFar.ts';
import { rangeSettings } from '../person/rangeSettings.ts';
import { shownDeg } from '../candidates/scene.ts';
import { angleAtDeg } from '../../mechanics/jointAngle.ts';
import { intervalFrom } from '../../mechanics/sweep.ts';

/** Most useful first. */
export type HowFars = readonly [HowFar, ...HowFar[]];

const MOST_LANDMARKS = 3;

/** The author's own landmark comes before the model's: it was written for this card. */
export function howFar(card: ExerciseCard, at: Prescribed, person: Person): HowFars {
  const found = (isPosed(card) ? farLandmarks(card, at, person) : []).map(seenBy(card, at, person));
  const [first, ...more] = found;
  if (card.landmark !== null) return [{ far: 'card', text: card.landmark }, ...found];
  if (first !== undefined) return [first, ...more];
  const share = shareOfTheWay(card, at, person);
  return [share < 1 ? { far: 'part', share } : { far: 'whole', held: at.dose.holdSeconds !== null }];
}

/** For machines: the first landmark with its centimetres, `card` for the author's own, `full` for the whole way, `part` for less of it. @example 'handsAboveKnee 18' */
export function howFarValue([first]: HowFars): string {
  if (first.far === 'landmark') return `${first.landmark.kind} ${first.landmark.cm}`;
  return first.far === 'whole' ? 'full' : first.far;
}

/** Largest guarded angle of what is done, whole degrees: the prescribed range, or that of the whole card; null where nobody knows. */
export function largestAngleDeg(
  card: ExerciseCard,
  { rangeDeg, loadKg }: Prescribed,
  { body, guardedBy }: Model,
): number | null {
  if (rangeDeg !== null) return shownDeg(rangeDeg);
  if (isPosed(card)) {
    const [start, end] = [0, 1].map((t) => angleAtDeg(card.movement, body, loadKg, t, guardedBy)) as [
      number,
      number,
    ];
    return shownDeg(Math.max(0, start, end));
  }
  const stated = guardedBy === 'hipFlexion' ? card.statedHipFlexion : null;
  return stated === null ? null : shownDeg(stated.deg);
}

/** Largest hip bend of it, whatever joint guards the tendon: for words that speak of the hip. */
export function largestHipBendDeg(card: ExerciseCard, at: Prescribed, model: Model): number | null {
  if (model.guardedBy === 'hipFlexion') return largestAngleDeg(card, at, model);
  return largestAngleDeg(card, { ...at, rangeDeg: null }, { ...model, guardedBy: 'hipFlexion' });
}

/** A landmark as this person sees it. */
function seenBy(
  { legs }: ExerciseCard,
  { dose }: Prescribed,
  { cannotDo }: Person,
): (landmark: Landmark) => HowFar {
  const onBed = cannotDo.includes('get-to-the-floor');
  return (landmark) => ({ far: 'landmark', landmark, legs, held: dose.holdSeconds !== null, onBed });
}

/** How much of the movement is done, 0 to 1; 1 where it is not graded by hip bend. */
function shareOfTheWay(card: ExerciseCard, { rangeDeg }: Prescribed, person: Person): number {
  if (!isPosed(card) || rangeDeg === null) return 1;
  const farDeg = rangeSettings(card, person).at(-1)?.deg ?? rangeDeg;
  return rangeDeg >= farDeg ? 1 : distanceTo(card, rangeDeg, person.model);
}

/** Landmarks that say how far; of a card whose range is not graded by hip bend most say nothing. */
function farLandmarks(card: PosedCard, at: Prescribed, person: Person): Landmark[] {
  const { rangeDeg, loadKg, dose } = at;
  const gentleEnd = person.model.gentleEnd(card);
  const interval = intervalFrom(gentleEnd, distanceTo(card, rangeDeg, person.model));
  const held = dose.holdSeconds !== null;
  const says = (landmark: Landmark) =>
    !isNoMark(landmark) &&
    (rangeDeg !== null || !GRADED_ONLY.includes(landmark.kind)) &&
    (held || bends(card) || !LYING.includes(landmark.kind)) &&
    (OF_POSITIONS[landmark.kind] ?? card.positions).some((position) => card.positions.includes(position)) &&
    // The foot of a curl goes all the way up; only of a lift that is held does its height say anything.
    (landmark.kind !== 'footLift' || held);
  const found = landmarks(card.movement, person.body, loadKg, interval, gentleEnd)
    .map((landmark) => ofTheHouse(landmark, card, rangeDeg, person))
    .filter(says);
  return oneDepth(onePile(found), card, person).slice(0, MOST_LANDMARKS);
}

// Shoulders that stay behind the hips are nothing to go by.
function isNoMark({ kind, cm }: Landmark): boolean {
  return kind === 'shouldersPastHips' && cm <= 0;
}

// Pillows say the same as centimetres above the floor: two heights would be one too many.
function onePile(found: readonly Landmark[]): readonly Landmark[] {
  const piled = found.some(({ kind }) => kind === 'pillows');
  return piled ? found.filter(({ kind }) => kind !== 'buttockAboveFloor') : found;
}

// A squat that ends above every seat is measured by how far back the buttock goes; a seat says it all where there is one.
function oneDepth(
  found: readonly Landmark[],
  { positions }: PosedCard,
  { clinic }: Person,
): readonly Landmark[] {
  if (!positions.includes('squat')) return found;
  const isSeat = ({ kind, cm }: Landmark) =>
    kind === 'hipsAboveFloor' && cm <= clinic.landmarks.seatAtMostCm.value;
  const other = found.some(isSeat) ? 'buttockBack' : 'hipsAboveFloor';
  return found.filter(({ kind }) => kind !== other);
}

// The pose stands a hair above or below the step that there is; what is printed is the step itself.
function ofTheHouse(landmark: Landmark, card: PosedCard, rangeDeg: number | null, person: Person): Landmark {
  if (landmark.kind !== 'stepHeight') return landmark;
  const stepM = rangeSettings(card, person).find(({ deg }) => deg === rangeDeg)?.stepM ?? null;
  return stepM === null ? landmark : { ...landmark, cm: Math.round(stepM * 100) };
}

// Where one foot stands before the other by chance of the pose, such a landmark means nothing.
const OF_POSITIONS: Partial<Record<Landmark['kind'], readonly Position[]>> = {
  stanceLength: ['lunge'],
  rearKneeAboveFloor: ['lunge'],
  kneeOverToes: ['lunge', 'squat', 'step'],
  // In a split squat the hips stay higher than any seat; the rear knee says how far.
  hipsAboveFloor: ['squat'],
};

/** Less than this from end to end, and the hip only follows what the knees do, degrees [choice]. */
const FOLLOWS_DEG = 10;

function bends({ movement: { start, end } }: PosedCard): boolean {
  return end !== undefined && Math.abs(end.work.hip - start.work.hip) > FOLLOWS_DEG;
}

// Where the hips stay up while the feet move, neither their height nor the feet are a mark to go by.
const LYING: readonly Landmark['kind'][] = ['pillows', 'buttockAboveFloor', 'heelDistance'];

const GRADED_ONLY: readonly Landmark['kind'][] = [
  'handsAboveKnee',
  'handsBelowKnee',
  'buttockBack',
  'shouldersPastHips',
  'hipsAboveFloor',
];
