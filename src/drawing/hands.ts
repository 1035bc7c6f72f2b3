/** Where the hands go: to the weight, to a prop, where the pose sends them, or where a person would put them. */
import type { Point } from '../mechanics/pose.ts';
import type { DrawnArms } from '../mechanics/drawnPose.ts';
import type { SideScene } from '../mechanics/scene.ts';
import type { Reach } from './arm.ts';
import type { Furniture } from './furniture.ts';
import { along, between, directionFrom, distance, frameAt, opposite, upwardAt } from './plane.ts';
import { ARM_LENGTHS, SKIN } from './proportions.ts';
import type { Stance } from './stance.ts';

const REACH = ARM_LENGTHS.upper + ARM_LENGTHS.lower + ARM_LENGTHS.grip;

/** The reach of the near hand in a stance; `handRest` is a place a prop offers, `headAt` the centre of the head. */
export function reachOf(
  scene: SideScene,
  stance: Stance,
  { handRest, grip }: Pick<Furniture, 'handRest' | 'grip'>,
  headAt: Point,
  drawn: DrawnArms | null,
): Reach {
  const { pose, heightM, shoulder } = stance;
  if (drawn !== null && typeof pose.arms === 'number')
    return { ...drawnArm(stance, pose.arms, drawn.elbowDeg), grips: scene.weight?.at === 'hands' };
  if (grip !== null) return { hand: grip, grips: true };
  const told = scene.hands === undefined || scene.weight?.at === 'hands' ? null : toldAt(scene.hands, stance);
  if (told !== null) return { ...told, grips: false };
  const held = heldAt(scene, stance);
  const hands = { x: stance.hands.x, y: Math.max(stance.hands.y, stance.lyingY + SKIN.hands * heightM) };
  if (held !== null) return { ...held, grips: true };
  if (scene.supports.includes('hands')) return { hand: hands, grips: false };
  if (handRest !== null && distance(shoulder, handRest) <= 1.15 * REACH * heightM)
    return { ...rested(stance, handRest), grips: false };
  if (typeof pose.arms === 'number' || pose.arms === 'hang') return { hand: hands, grips: false };
  return { ...atEase(scene, stance, headAt), grips: false };
}

/**
 * The far arm where it does something else than the near one: it swings the other way in a drawn pose, or steadies on
 * the worktop while the near hand carries a weight. Null where it hangs behind the near one.
 */
export function farReachOf(
  scene: SideScene,
  stance: Stance,
  { handRest }: Pick<Furniture, 'handRest'>,
  drawn: DrawnArms | null,
): Reach | null {
  if (drawn !== null && drawn.farDeg !== null)
    return { ...drawnArm(stance, drawn.farDeg, drawn.elbowDeg), grips: false };
  if (handRest === null || scene.weight?.at !== 'hands') return null;
  return { hand: handRest, grips: false };
}

function drawnArm({ shoulder, heightM, lyingY }: Stance, upperDeg: number, elbowDeg: number): Held {
  const swung = (deg: number) => opposite(upwardAt(-deg));
  const elbow = along(shoulder, ARM_LENGTHS.upper * heightM, swung(upperDeg));
  const lower = (ARM_LENGTHS.lower + ARM_LENGTHS.grip) * heightM;
  const hand = along(elbow, lower, swung(upperDeg + elbowDeg));
  return { elbow, hand: { x: hand.x, y: Math.max(hand.y, lyingY + SKIN.hands * heightM) } };
}

interface Held {
  readonly hand: Point;
  readonly elbow?: Point;
}

// Where the card's words put the hands: they slide along the thigh as far as the arm reaches.
function toldAt(
  place: NonNullable<SideScene['hands']>,
  { hip, shoulder, work, pose, heightM }: Stance,
): Held {
  const pelvis = frameAt(hip, upwardAt(pose.trunk - (pose.lumbar ?? 0)));
  if (place === 'hips') return { hand: pelvis(0.085 * heightM, 0.02 * heightM) };
  if (place === 'chest')
    return { hand: frameAt(shoulder, upwardAt(pose.trunk))(-0.07 * heightM, 0.075 * heightM) };
  const thigh = directionFrom(hip, work.knee);
  const front = { x: -thigh.y, y: thigh.x };
  const onThigh = (share: number) => along(between(hip, work.knee, share), 0.05 * heightM, front);
  const reachable = [0.95, 0.85, 0.75, 0.65, 0.55, 0.45, 0.35].find(
    (share) => distance(shoulder, onThigh(share)) <= 0.985 * REACH * heightM,
  );
  return { hand: onThigh(reachable ?? 0.35) };
}

function heldAt(scene: SideScene, stance: Stance): Held | null {
  const { heightM, shoulder, pose } = stance;
  const trunk = frameAt(shoulder, upwardAt(pose.trunk));
  const at = scene.weight?.at;
  if (at === 'pelvisFront') return { hand: stance.pelvisFront };
  if (at === 'hands') return { hand: stance.hands };
  if (at === 'shoulder' && scene.weight?.kind === 'bar') {
    return { hand: trunk(0.012 * heightM, -0.03 * heightM), elbow: trunk(-0.135 * heightM, -0.05 * heightM) };
  }
  if (at === 'shoulder' && scene.weight?.kind === 'rucksack') {
    return {
      hand: trunk(-0.075 * heightM, 0.045 * heightM),
      elbow: trunk(-0.175 * heightM, -0.02 * heightM),
    };
  }
  if (at === 'shoulder') return { hand: trunk(-0.03 * heightM, 0.09 * heightM) };
  return at === undefined && scene.props.includes('bar') ? { hand: stance.hands } : null;
}

// Lying on the back the arms lie beside the body, on the front they pillow the forehead, on the knees they wait
// before the chest, sitting they rest on the thighs, and over a split stance they go to the hips.
function atEase(scene: SideScene, stance: Stance, headAt: Point): Held {
  const { pose, heightM, hip, shoulder, hands, work, lyingY } = stance;
  const trunk = frameAt(shoulder, upwardAt(pose.trunk));
  if (pose.trunk < -60) return { hand: besideBody(stance) };
  if (pose.trunk > 60 && pose.arms === undefined && shoulder.y - lyingY < 0.12 * heightM) {
    const restY = lyingY + SKIN.hands * heightM;
    return { hand: { x: headAt.x, y: restY }, elbow: { x: headAt.x + 0.05 * heightM, y: restY } };
  }
  if (scene.supports.some((support) => support.endsWith('.knee')))
    return { hand: trunk(-0.06 * heightM, 0.14 * heightM) };
  if (scene.supports.includes('seat') || isSitting(stance)) {
    const thigh = along(between(hip, work.knee, pose.trunk > 25 ? 0.92 : 0.62), 0.056 * heightM, {
      x: 0,
      y: 1,
    });
    const shin = along(between(work.knee, work.ankle, 0.5), 0.04 * heightM, { x: 0, y: 1 });
    return { hand: pose.work.knee < 40 ? shin : thigh };
  }
  if (pose.arms === undefined && !stance.symmetric) {
    const pelvis = frameAt(hip, upwardAt(pose.trunk - (pose.lumbar ?? 0)));
    const hand = pelvis(0.085 * heightM, 0.005 * heightM);
    return { hand, elbow: along(between(shoulder, hand, 0.52), -0.1 * heightM, directionAcross(pose.trunk)) };
  }
  return { hand: hands };
}

// Sitting, the whole forearm lies on the table; standing, the hand only steadies.
function rested(stance: Stance, handRest: Point): Held {
  if (!isSitting(stance)) return { hand: handRest };
  return { hand: handRest, elbow: { x: handRest.x - 0.17 * stance.heightM, y: handRest.y } };
}

// On the floor when the back lies on it; on the belly when bench or stool keeps the back off the floor.
function besideBody({ shoulder, hip, heightM, lyingY, pelvisFront }: Stance): Point {
  const restY = lyingY + SKIN.hands * heightM;
  const drop = shoulder.y - restY;
  if (drop > 0.15 * heightM) return between(pelvisFront, hip, 0.55);
  const span = 0.97 * REACH * heightM;
  return {
    x: shoulder.x + Math.sign(hip.x - shoulder.x) * Math.sqrt(Math.max(0, span ** 2 - drop ** 2)),
    y: restY,
  };
}

// On a seat with level thighs, or on the floor.
function isSitting({ work, hip, pose, heightM, symmetric }: Stance): boolean {
  if (Math.abs(pose.trunk) > 60) return false;
  return (
    hip.y < 0.2 * heightM ||
    (symmetric && pose.work.hip > 45 && Math.abs(work.knee.y - hip.y) < 0.1 * heightM)
  );
}

function directionAcross(trunkDeg: number): Point {
  return frameAt({ x: 0, y: 0 }, upwardAt(trunkDeg))(0, 1);
}
