/** The parts of a body seen from the side as rigid outlines, each about its own joint, upright and facing right. */
import { corner, smooth, type Knot, type Outline } from '../outline.ts';
import {
  ELBOW,
  FACE_KNOTS,
  FOOT_KNOTS,
  FOREARM,
  HAIR_KNOTS,
  HIP_CAP,
  KNEE,
  SHANK,
  SHOULDER_CAP,
  THIGH,
  UPPER_ARM,
  type Girth,
} from '../proportions.ts';
import { torsoOutline } from '../torso.ts';

interface Segment {
  readonly girths: readonly Girth[];
  /** How far the flesh reaches beyond the joint above and the joint below. */
  readonly over: number;
  readonly under: number;
  /** Which way the joint folds: an elbow forward, a knee back. */
  readonly folds: 1 | -1;
}

const WRIST = 0.014;
const ANKLE = 0.018;
const THIGH_PART: Segment = {
  girths: [...THIGH, { share: 1, ...KNEE }],
  over: HIP_CAP,
  under: KNEE.stretch,
  folds: -1,
};
const SHANK_PART: Segment = {
  girths: [{ share: 0, fold: KNEE.fold * 1.1, stretch: KNEE.stretch * 0.95 }, ...SHANK],
  over: KNEE.stretch * 0.95,
  under: ANKLE,
  folds: -1,
};
const UPPER_ARM_PART: Segment = {
  girths: [...UPPER_ARM, { share: 1, ...ELBOW }],
  over: SHOULDER_CAP,
  under: ELBOW.stretch,
  folds: 1,
};
const FOREARM_PART: Segment = {
  girths: [{ share: 0, ...ELBOW }, ...FOREARM],
  over: ELBOW.stretch,
  under: WRIST,
  folds: 1,
};

export const thighShape = (lengthM: number, heightM: number) => segment(THIGH_PART, lengthM, heightM);
export const shankShape = (lengthM: number, heightM: number) => segment(SHANK_PART, lengthM, heightM);
export const upperArmShape = (lengthM: number, heightM: number) => segment(UPPER_ARM_PART, lengthM, heightM);

/** Forearm and hand: `wristM` and `handM` from the elbow; a fist, or straight fingers. */
export function forearmShape(wristM: number, handM: number, grips: boolean, heightM: number): Outline {
  const palm = (grips ? 0.021 : 0.017) * heightM;
  const fingers = (grips ? 0.021 : 0.05) * heightM;
  const { front, back } = sides(FOREARM_PART, wristM, heightM);
  return smooth([
    { x: 0, y: FOREARM_PART.over * heightM },
    ...front,
    { x: palm, y: -handM },
    { x: 0, y: -handM - fingers },
    { x: -palm, y: -handM },
    ...[...back].reverse(),
  ]);
}

/** The trunk about the hip, with a back bent by so many degrees between pelvis and trunk. */
export function trunkShape(lumbarDeg: number, heightM: number): Outline {
  return torsoOutline({ trunk: 0, lumbar: lumbarDeg, work: { hip: 0, knee: 0 } }, ORIGIN, heightM, -Infinity);
}

/** Face and hair about the middle of the head. */
export const faceShape = (heightM: number) => headShape(FACE_KNOTS, heightM);
export const hairShape = (heightM: number) => headShape(HAIR_KNOTS, heightM);

/** The foot from the ankle to the ball, its sole level. */
export function footShape(heightM: number): Outline {
  const { instep, ball, heel, heelBack } = FOOT_KNOTS;
  const at = ({ forward, down }: { forward: number; down: number }): Knot => ({
    x: forward * heightM,
    y: -down * heightM,
  });
  return smooth([
    at({ forward: -0.02, down: -0.012 }),
    at({ forward: 0.022, down: -0.014 }),
    at(instep),
    at({ forward: ball.forward + 0.006, down: 0.017 }),
    corner(at(ball)),
    corner(at(heel)),
    at(heelBack),
  ]);
}

/** The toes about the ball of the foot. */
export function toesShape(heightM: number): Outline {
  const { ball, toeTop, tip, toeSole } = FOOT_KNOTS;
  const about = ({ forward, down }: { forward: number; down: number }): Knot => ({
    x: (forward - ball.forward) * heightM,
    y: (ball.down - down) * heightM,
  });
  return smooth([
    about({ forward: ball.forward, down: 0.014 }),
    about(toeTop),
    about(tip),
    corner(about(toeSole)),
    corner(about({ forward: ball.forward - 0.01, down: ball.down })),
  ]);
}

const ORIGIN = { x: 0, y: 0 };

function segment(part: Segment, lengthM: number, heightM: number): Outline {
  const { front, back } = sides(part, lengthM, heightM);
  return smooth([
    { x: 0, y: part.over * heightM },
    ...front,
    { x: 0, y: -lengthM - part.under * heightM },
    ...[...back].reverse(),
  ]);
}

function sides(
  { girths, folds }: Segment,
  lengthM: number,
  heightM: number,
): Record<'front' | 'back', Knot[]> {
  const knots = (of: 'fold' | 'stretch', sign: number) =>
    girths.map((girth): Knot => ({ x: sign * girth[of] * heightM, y: -girth.share * lengthM }));
  return folds === 1
    ? { front: knots('fold', 1), back: knots('stretch', -1) }
    : { front: knots('stretch', 1), back: knots('fold', -1) };
}

function headShape(knots: typeof FACE_KNOTS, heightM: number): Outline {
  return smooth(knots.map(({ up, front, ...kind }) => ({ x: front * heightM, y: up * heightM, ...kind })));
}
