/**
 * How far to go in things a patient can see or measure alone: numbers only, the sentences are the programme's.
 *
 * Read off the posture at the far end of the prescribed part, whole centimetres, each rounded towards the gentler end.
 * Centimetres are good to two or three: segment lengths come from height alone, and flesh is not in the model.
 */
import { BACK } from './anthropometry.ts';
import type { Body } from './body.ts';
import { closePose } from './closure.ts';
import { fractionFrom, gentleEndOf, type MovementEnd, type Interval } from './gentle.ts';
import { postureOf } from './kinematics.ts';
import type { Movement } from './movement.ts';
import type { Posture } from './pose.ts';
import { stepHeightM } from './step.ts';
import { poseAt } from './trajectory.ts';

export type Landmark =
  /** Hands above (or below) the knee of the working leg when the arms hang. */
  | { readonly kind: 'handsAboveKnee' | 'handsBelowKnee'; readonly cm: number }
  /** The buttock moves back so far from standing; heels so far from a wall, it touches there and no further. */
  | { readonly kind: 'buttockBack'; readonly cm: number; readonly heelsFromWallCm: number }
  /** Sit bones above the floor, standing: the seat or stack of books to touch. */
  | { readonly kind: 'hipsAboveFloor'; readonly cm: number }
  /** Clear space between buttock and floor, lying on the back. */
  | { readonly kind: 'buttockAboveFloor'; readonly cm: number }
  /** Just as many pillows under the buttock are so high, and leave a way up. */
  | { readonly kind: 'pillows'; readonly count: number; readonly cm: number }
  /** From the buttock to the heels, lying with the feet up close or far. */
  | { readonly kind: 'heelDistance'; readonly cm: number }
  | { readonly kind: 'stepHeight'; readonly cm: number }
  /** The front heel in front of the ball of the rear foot. */
  | { readonly kind: 'stanceLength'; readonly cm: number }
  /** The rear knee above the floor. */
  | { readonly kind: 'rearKneeAboveFloor'; readonly cm: number }
  /** The knee in front of the toes; negative: behind them. */
  | { readonly kind: 'kneeOverToes'; readonly cm: number }
  /** Shoulders in front of the hips, for who leans on nothing or sits; negative: behind them. */
  | { readonly kind: 'shouldersPastHips'; readonly cm: number }
  /** Shoulders in front of the knees, kneeling. */
  | { readonly kind: 'shouldersForward'; readonly cm: number }
  /** The ankle above the surface that is lain on. */
  | { readonly kind: 'footLift'; readonly cm: number };

/** Height of one ordinary pillow under the weight of the pelvis, centimetres [choice]. */
export const PILLOW_CM = 8;

/** Toes reach so far past the ball of the foot, fraction of height: foot length 0.152 less heel and ball [memory]. */
const TOES_PAST_BALL = 0.152 - 0.035 - 0.075;

/** A knee bent further than this at the far end makes a squat of a bend, degrees [choice]. */
const SQUAT_KNEE_DEG = 40;

/** A way shorter than this is none to the one who moves, centimetres [choice]. */
const LEAST_WAY_CM = 3;

/**
 * Landmarks of the part of a movement that is prescribed, most useful first, at least one whenever the pose closes;
 * none when it does not.
 */
export function landmarks(
  movement: Movement,
  body: Body,
  loadKg: number,
  interval: Interval,
  gentleEnd: MovementEnd = gentleEndOf(movement, body, loadKg),
): readonly Landmark[] {
  const at = (t: number) => closePose(movement, poseAt(movement, t), body, loadKg);
  const far = at(gentleEnd === 'start' ? interval.to : interval.from);
  const near = at(fractionFrom(gentleEnd, 0));
  if (!far || !near) return [];
  const rests = (part: RegExp) => movement.supports.some((support) => part.test(support));
  if (rests(/upperBack|shoulder/)) return lying(far, near, body);
  if (rests(/knee/)) return kneeling(far);
  if (rests(/seat/)) return [lean(far)];
  if (movement.supports.length === 0) return [far.pose.trunk > HALF_LYING_DEG ? footLift(far) : lean(far)];
  if (rests(/other\./)) return split(far, body);
  if (movement.range === 'steps') return [step(far), kneeOverToes(far, body)];
  return standing(far, body);
}

// A body that rests on nothing named and leans further than this lies on its front.
const HALF_LYING_DEG = 60;

function lying(far: Posture, near: Posture, body: Body): readonly Landmark[] {
  const clearM = clearanceM(far, body);
  const cm = Math.max(0, upward(clearM));
  const count = cm / PILLOW_CM;
  // Rounded up to whole pillows, a step of 5 degrees would not move the mark. And a pile that leaves next to no way up would make a hold of it.
  const fits =
    cm >= LEAST_WAY_CM && Number.isInteger(count) && cm + LEAST_WAY_CM <= clearanceM(near, body) * 100;
  const heelM = far.work.heel.x - BACK.behind * body.heightM;
  return [
    ...(fits ? [{ kind: 'pillows', count, cm } as const] : []),
    { kind: 'buttockAboveFloor', cm },
    { kind: 'heelDistance', cm: downward(heelM) },
  ];
}

/** The buttock as a round of the back's depth about the hip, above the floor the feet stand on. */
function clearanceM({ work }: Posture, body: Body): number {
  return -Math.min(work.heel.y, work.fore.y) - BACK.behind * body.heightM;
}

function kneeling({ shoulder, work }: Posture): readonly Landmark[] {
  return [{ kind: 'shouldersForward', cm: downward(shoulder.x - work.knee.x) }];
}

function footLift({ work }: Posture): Landmark {
  return { kind: 'footLift', cm: Math.max(0, downward(work.ankle.y)) };
}

function split(far: Posture, body: Body): readonly Landmark[] {
  const floorY = far.work.mid.y;
  return [
    { kind: 'rearKneeAboveFloor', cm: upward(far.other.knee.y - floorY) },
    { kind: 'stanceLength', cm: downward(far.work.heel.x - far.other.fore.x) },
    hips(far),
    kneeOverToes(far, body),
  ];
}

// The step is the one there is; its height is not ours to round to a side.
function step(far: Posture): Landmark {
  return { kind: 'stepHeight', cm: Math.round(stepHeightM(far) * 100) };
}

function standing(far: Posture, body: Body): readonly Landmark[] {
  const squats = far.pose.work.knee >= SQUAT_KNEE_DEG;
  const hang = far.pose.arms === 'hang';
  return [
    ...(hang ? [hands(far)] : []),
    ...(squats ? [hips(far)] : []),
    ...buttock(far, body),
    ...(squats ? [kneeOverToes(far, body)] : []),
  ];
}

function hands({ hands, work }: Posture): Landmark {
  const aboveM = hands.y - work.knee.y;
  return aboveM > 0
    ? { kind: 'handsAboveKnee', cm: upward(aboveM) }
    : { kind: 'handsBelowKnee', cm: downward(-aboveM) };
}

function buttock(far: Posture, body: Body): readonly Landmark[] {
  const upright = postureOf({ trunk: 0, work: { hip: 0, knee: 0, pitch: 0 } }, body);
  const backM = far.work.heel.x - upright.work.heel.x;
  const cm = downward(backM);
  if (cm < LEAST_WAY_CM) return [];
  // Standing, the buttock already reaches behind the heels by so much.
  const behindHeelsM = BACK.behind * body.heightM + upright.work.heel.x;
  return [{ kind: 'buttockBack', cm, heelsFromWallCm: downward(backM + behindHeelsM) }];
}

function hips({ seat, work }: Posture): Landmark {
  return { kind: 'hipsAboveFloor', cm: upward(seat.y - work.mid.y) };
}

function kneeOverToes({ work }: Posture, body: Body): Landmark {
  const toesX = work.fore.x + TOES_PAST_BALL * body.heightM;
  return { kind: 'kneeOverToes', cm: downward(work.knee.x - toesX) };
}

// The hip is the origin of a posture.
function lean({ shoulder }: Posture): Landmark {
  return { kind: 'shouldersPastHips', cm: downward(shoulder.x) };
}

function upward(metres: number): number {
  return Math.ceil(metres * 100 - DUST) + 0;
}

function downward(metres: number): number {
  return Math.floor(metres * 100 + DUST) + 0;
}

// What lies within a billionth of a whole number counts as that number.
const DUST = 1e-9;
