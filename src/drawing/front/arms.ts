/** Both arms of a body seen from the front, reaching to where the pose puts the hands. */
import type { Point } from '../../mechanics/pose.ts';
import { limbSides } from '../limb.ts';
import { smooth, type Outline } from '../outline.ts';
import { along, clamp, directionFrom, distance, frameAt, opposite, turned } from '../plane.ts';
import { ARM_LENGTHS, SHOULDER_CAP } from '../proportions.ts';
import { ARM_SHAPE, FLESH } from './proportions.ts';
import type { FrontStance } from './stance.ts';

export interface FrontArm {
  readonly shoulder: Point;
  readonly elbow: Point;
  readonly hand: Point;
  readonly outline: Outline;
}

const LOWER = ARM_LENGTHS.lower + ARM_LENGTHS.grip;

/** The two arms, the one of the working side first. */
export function frontArms(stance: FrontStance): readonly [FrontArm, FrontArm] {
  return [armOf(stance, 1), armOf(stance, -1)];
}

function armOf(stance: FrontStance, side: 1 | -1): FrontArm {
  const shoulder = side === 1 ? stance.workShoulder : stance.otherShoulder;
  const { elbow, hand } = reach(stance, shoulder, side);
  return { shoulder, elbow, hand, outline: armOutline(shoulder, elbow, hand, stance.heightM) };
}

interface Bent {
  readonly elbow: Point;
  readonly hand: Point;
}

function reach(stance: FrontStance, shoulder: Point, side: 1 | -1): Bent {
  const { heightM, pose, pelvis, up } = stance;
  const body = frameAt(pelvis, up);
  const at = (high: number, out: number) => body(high * heightM, side * out * heightM);
  const lower = side === Math.sign(pose.leanDeg);
  switch (pose.hands) {
    case 'sides':
      return { elbow: at(0.105, 0.138), hand: at(-0.09, 0.145) };
    case 'hips':
      return { elbow: at(0.125, 0.215), hand: at(0.05, 0.098) };
    case 'chest':
      return stance.lies && !lower
        ? onMat(stance, shoulder)
        : { elbow: at(0.125, 0.128), hand: at(0.215, 0.022) };
    case 'ahead':
      return { elbow: at(0.235, 0.065), hand: at(0.225, 0.018) };
    case 'elbow':
      return lower ? propped(stance, shoulder) : { elbow: at(0.125, 0.215), hand: at(0.05, 0.098) };
  }
}

// On the side the upper hand lies on the mat before the chest.
function onMat({ heightM, neck, up }: FrontStance, shoulder: Point): Bent {
  const hand = { x: along(neck, -0.1 * heightM, up).x, y: 0.018 * heightM };
  return bentTo(shoulder, hand, heightM);
}

// The elbow stands below the shoulder; the forearm comes forward, towards the viewer.
function propped({ heightM, up }: FrontStance, shoulder: Point): Bent {
  const elbow = { x: shoulder.x, y: FLESH.elbow * heightM };
  return { elbow, hand: { x: elbow.x + Math.sign(up.x) * 0.06 * heightM, y: 0.02 * heightM } };
}

function bentTo(shoulder: Point, target: Point, heightM: number): Bent {
  const [upper, lower] = [ARM_LENGTHS.upper * heightM, LOWER * heightM];
  const span = clamp(distance(shoulder, target), 0.1 * (upper + lower), 0.99 * (upper + lower));
  const towards = directionFrom(shoulder, target);
  const angle = Math.acos(clamp((upper ** 2 + span ** 2 - lower ** 2) / (2 * upper * span), -1, 1));
  return {
    elbow: along(shoulder, upper, turned(towards, { x: 0, y: 0 }, -angle)),
    hand: along(shoulder, span, towards),
  };
}

/** The arm's outline from shoulder over elbow to the finger tips. */
export function armOutline(shoulder: Point, elbow: Point, hand: Point, heightM: number): Outline {
  const outward = directionFrom(elbow, hand);
  const wrist = along(hand, -Math.min(ARM_LENGTHS.grip * heightM, distance(elbow, hand) / 2), outward);
  // Left and right arm fold to opposite sides of the picture.
  const upper = directionFrom(shoulder, elbow);
  const folds = upper.x * outward.y - upper.y * outward.x >= 0 ? 'front' : 'back';
  const sides = limbSides(shoulder, elbow, wrist, { ...ARM_SHAPE, folds }, heightM);
  const top = along(shoulder, SHOULDER_CAP * heightM, opposite(directionFrom(shoulder, elbow)));
  const turn = folds === 'front' ? 1 : -1;
  const across = { x: -turn * outward.y, y: turn * outward.x };
  const palm = [
    along(hand, -0.019 * heightM, across),
    along(hand, 0.028 * heightM, outward),
    along(hand, 0.019 * heightM, across),
  ];
  return smooth([top, ...sides.stretch, ...palm, ...[...sides.fold].reverse()]);
}
