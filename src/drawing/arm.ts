/** An arm that reaches its hand to a point, bending at the elbow as elbows do. */
import type { Point } from '../mechanics/pose.ts';
import { limbSides } from './limb.ts';
import { circle, pressed, smooth, type Outline } from './outline.ts';
import { along, clamp, directionFrom, distance, opposite, turned } from './plane.ts';
import { ARM_LENGTHS, ELBOW, FOREARM, SHOULDER_CAP, UPPER_ARM } from './proportions.ts';

/** Where the hand goes and what it does there. */
export interface Reach {
  readonly hand: Point;
  readonly grips: boolean;
  /** Given where the arm is turned towards the viewer and looks shorter than it is. */
  readonly elbow?: Point;
}

export interface Arm {
  readonly elbow: Point;
  readonly wrist: Point;
  /** Middle of the palm. */
  readonly hand: Point;
  readonly outline: Outline;
}

const SHAPE = { upper: UPPER_ARM, lower: FOREARM, joint: ELBOW, folds: 'front' } as const;
const FIST = 0.021;
// An arm is never drawn dead straight, and never folded beyond what flesh allows.
const LONGEST = 0.992;
const FOLD_LEAST = 0.09;

/** The arm from `shoulder` towards `reach`; a hand out of reach ends on the line to it. Nothing lies below `surfaceY`. */
export function armTo(shoulder: Point, reach: Reach, heightM: number, surfaceY: number): Arm {
  const { elbow, hand } =
    reach.elbow === undefined ? bentTowards(shoulder, reach.hand, heightM) : { ...reach, elbow: reach.elbow };
  const lower = distance(elbow, hand);
  const wrist = along(hand, -Math.min(ARM_LENGTHS.grip * heightM, lower / 2), directionFrom(elbow, hand));
  return {
    elbow,
    wrist,
    hand,
    outline: pressed(drawn(shoulder, elbow, wrist, hand, reach.grips, heightM), surfaceY),
  };
}

// Law of cosines. The elbow lies clockwise of the line to the hand, so that the forearm turns forward.
function bentTowards(
  shoulder: Point,
  target: Point,
  heightM: number,
): { readonly elbow: Point; readonly hand: Point } {
  const upper = ARM_LENGTHS.upper * heightM;
  const lower = (ARM_LENGTHS.lower + ARM_LENGTHS.grip) * heightM;
  const towards = directionFrom(shoulder, target);
  const span = clamp(distance(shoulder, target), FOLD_LEAST * (upper + lower), LONGEST * (upper + lower));
  const atShoulder = Math.acos(clamp((upper ** 2 + span ** 2 - lower ** 2) / (2 * upper * span), -1, 1));
  const elbow = along(shoulder, upper, turned(towards, { x: 0, y: 0 }, -atShoulder));
  return { elbow, hand: along(shoulder, span, towards) };
}

function drawn(
  shoulder: Point,
  elbow: Point,
  wrist: Point,
  hand: Point,
  grips: boolean,
  heightM: number,
): Outline {
  const sides = limbSides(shoulder, elbow, wrist, SHAPE, heightM);
  const top = along(shoulder, SHOULDER_CAP * heightM, opposite(directionFrom(shoulder, elbow)));
  const outward = directionFrom(elbow, hand);
  const across = { x: -outward.y, y: outward.x };
  const fingers = grips ? FIST : 0.05;
  const palm = grips ? FIST : 0.017;
  const knots = [
    along(hand, -palm * heightM, across),
    along(hand, fingers * heightM, outward),
    along(hand, palm * heightM, across),
  ];
  return smooth([top, ...sides.stretch, ...knots, ...[...sides.fold].reverse()]);
}

/** A fist seen over the thing it holds. */
export function fist(hand: Point, heightM: number): Outline {
  return circle(hand, FIST * heightM);
}
