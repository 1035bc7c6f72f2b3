/** What a picture shows, as codes: how the body is placed in its first frame, and what moves from each frame to the next. */
import type { View } from '../../mechanics/drawnPose.ts';
import type { FrontFrame, SceneFrame, SideFrame } from '../../mechanics/scene.ts';
import type { LegPose, Posture } from '../../mechanics/pose.ts';

export type Placed =
  | 'standing'
  | 'sitting'
  | 'kneeling'
  | 'onTheBack'
  | 'backRaised'
  | 'faceDown'
  | 'onTheSide'
  | 'onHandsAndFeet';

/** What a pose that is held shows. */
export type Held = 'legBehind' | 'footUp' | 'hipsUp' | 'oneLine' | 'otherLegUp';

export type Move =
  | 'heelToButtock'
  | 'heelAway'
  | 'kneeBends'
  | 'kneeStraightens'
  | 'hipBends'
  | 'hipStraightens'
  | 'hipStaysStraight'
  | 'hipStaysBent'
  | 'legGoesBack'
  | 'legGoesForward'
  | 'legGoesOut'
  | 'legComesIn'
  | 'legComesUp'
  | 'chestRises'
  | 'chestSinks'
  | 'trunkTips'
  | 'trunkComesUp'
  | 'hipsRise'
  | 'hipsSink'
  | 'heelsRise'
  | 'heelsSink'
  | 'bodyLeans'
  | 'bodyComesUp'
  | 'bodyRises'
  | 'bodySinks'
  | 'leavesTheGround'
  | 'landsAgain'
  | 'otherLegGoesBack'
  | 'otherKneeComesUp'
  | 'armsGoForward'
  | 'armsRise'
  | 'stepsOut';

/** A turn or a way is told from here on: less is the drawing's own sway [choice]. */
const TOLD_DEG = 12;
const TOLD_M = 0.04;
const STRAIGHT_BELOW_DEG = 12;
const LYING_FROM_DEG = 60;

/** How the body is placed. `rests`: the names of its supports. */
export function placedAt(frame: SceneFrame, view: View, rests: readonly string[]): Placed {
  if ('front' in frame) {
    if (Math.abs(frame.front.leanDeg) < 40) return 'standing';
    return view === 'above' ? 'onTheBack' : 'onTheSide';
  }
  const { pose, work } = frame.posture;
  if (rests.includes('upperBack') && pose.trunk > -LYING_FROM_DEG) return 'backRaised';
  if (pose.trunk < -LYING_FROM_DEG) return 'onTheBack';
  if (pose.trunk > LYING_FROM_DEG)
    return typeof pose.arms === 'number' && Math.abs(pose.arms) < 45 ? 'onHandsAndFeet' : 'faceDown';
  if (rests.some((name) => name.endsWith('.knee'))) return 'kneeling';
  if (rests.includes('seat')) return 'sitting';
  return work.ankle.y > -0.35 * legLength(frame.posture) ? 'sitting' : 'standing';
}

/** What a held pose shows, beyond how the body is placed. */
export function heldIn(frame: SceneFrame): readonly Held[] {
  if ('front' in frame)
    return Math.abs(frame.front.leanDeg) > 40 && frame.front.hands === 'elbow' ? ['hipsUp'] : [];
  const { posture } = frame;
  const { work, other, trunk } = posture.pose;
  const free = work.ankle !== undefined;
  return [
    ...(trunk < -LYING_FROM_DEG - 35 ? (['hipsUp'] as const) : []),
    ...(trunk > LYING_FROM_DEG && !free && Math.abs(work.hip) < STRAIGHT_BELOW_DEG
      ? (['oneLine'] as const)
      : []),
    ...(free && work.knee >= 25
      ? (['footUp'] as const)
      : free && work.hip < 0
        ? (['legBehind'] as const)
        : []),
    ...(trunk < 0 && other?.ankle !== undefined ? (['otherLegUp'] as const) : []),
  ];
}

/** What moves from one frame to the next, what a reader looks at first coming first; at most three. */
export function movesBetween(from: SceneFrame, to: SceneFrame): readonly Move[] {
  const all =
    'front' in from || 'front' in to ? frontMoves(from as FrontFrame, to as FrontFrame) : sideMoves(from, to);
  const hop = flightMoves(from, to);
  return hop.length > 0 ? hop : [...new Set(all)].slice(0, 3);
}

function flightMoves(from: SceneFrame, to: SceneFrame): readonly Move[] {
  const [low, high] = [from.offGroundM ?? 0, to.offGroundM ?? 0];
  if (low === 0 && high > 0) return ['leavesTheGround'];
  return low > 0 && high === 0 ? ['landsAgain'] : [];
}

function frontMoves({ front: from }: FrontFrame, { front: to }: FrontFrame): readonly Move[] {
  const lean = Math.abs(from.leanDeg) - Math.abs(to.leanDeg);
  const out = to.work.outDeg - from.work.outDeg;
  const both = out > 4 && to.other.outDeg - from.other.outDeg > 4;
  return [
    ...told<Move>(lean, 6, 'hipsRise', 'hipsSink'),
    ...(both
      ? (['stepsOut'] as const)
      : Math.abs(lean) >= 6
        ? []
        : told<Move>(out, 6, from.leanDeg < -40 ? 'legComesUp' : 'legGoesOut', 'legComesIn')),
    ...(from.hands !== to.hands && to.hands === 'ahead' ? (['armsGoForward'] as const) : []),
  ];
}

function sideMoves(from: SideFrame, to: SideFrame): readonly Move[] {
  const [a, b] = [from.posture, to.posture];
  const [was, is] = [a.pose, b.pose];
  const hip = is.work.hip - was.work.hip;
  const knee = is.work.knee - was.work.knee;
  const trunk = is.trunk - was.trunk;
  const onTheBack = Math.max(was.trunk, is.trunk) < -LYING_FROM_DEG / 2;
  const lying = onTheBack || Math.min(was.trunk, is.trunk) > LYING_FROM_DEG;
  const freeLeg = is.work.ankle !== undefined;
  if (freeLeg && Math.abs(trunk) >= 8 && Math.abs(hip) < 5 && !lying)
    return [trunk > 0 ? 'bodyLeans' : 'bodyComesUp', staying(is.work)];
  const rise = heightOf(b) - heightOf(a);
  const heel = (was.work.pitch ?? 0) - (is.work.pitch ?? 0);
  if (freeLeg && Math.abs(knee) >= TOLD_DEG && Math.abs(hip) < TOLD_DEG)
    return [knee > 0 ? 'heelToButtock' : 'heelAway', staying(is.work)];
  if (freeLeg && Math.abs(hip) >= 8 && Math.abs(trunk) < TOLD_DEG)
    return [lying ? (hip < 0 ? 'legComesUp' : 'hipBends') : hip < 0 ? 'legGoesBack' : 'legGoesForward'];
  if (lying)
    return [
      ...(is.trunk > 0 ? told<Move>(-trunk, 6, 'chestRises', 'chestSinks') : []),
      ...told<Move>(rise, TOLD_M, 'hipsRise', 'hipsSink'),
      ...told<Move>(hip, is.trunk > 0 ? 2 * TOLD_DEG : TOLD_DEG, 'hipBends', 'hipStraightens'),
      ...(Math.abs(hip) < TOLD_DEG && is.trunk < 0 ? [staying(is.work)] : []),
      ...told<Move>(knee, 2 * TOLD_DEG, 'kneeBends', 'kneeStraightens'),
    ];
  if (Math.abs(hip) < 5 && Math.abs(heel) >= TOLD_DEG)
    return [heel > 0 ? 'heelsRise' : 'heelsSink', staying(is.work)];
  const stands = Math.abs(hip) >= TOLD_DEG || Math.abs(rise) >= TOLD_M;
  return [
    ...told<Move>(trunk, TOLD_DEG, 'trunkTips', 'trunkComesUp'),
    ...(Math.abs(trunk) < 2 * TOLD_DEG && stands ? told<Move>(rise, TOLD_M, 'bodyRises', 'bodySinks') : []),
    ...(Math.abs(hip) < 5 && Math.abs(trunk) >= TOLD_DEG
      ? [staying(is.work)]
      : told<Move>(hip, TOLD_DEG, 'hipBends', 'hipStraightens')),
    ...otherMoves(was.other, is.other, trunk),
    ...told<Move>(knee, TOLD_DEG, 'kneeBends', 'kneeStraightens'),
    ...(hands(b) - hands(a) > 0.3 ? (['armsRise'] as const) : []),
  ];
}

function staying({ hip }: LegPose): Move {
  return Math.abs(hip) < STRAIGHT_BELOW_DEG ? 'hipStaysStraight' : 'hipStaysBent';
}

function otherMoves(was: LegPose | undefined, is: LegPose | undefined, trunk: number): readonly Move[] {
  if (was === undefined || is === undefined || is.ankle === undefined) return [];
  if (is.hip - was.hip > 20) return ['otherKneeComesUp'];
  // In line with a trunk that tips, a straight leg rises behind.
  return trunk > 2 * TOLD_DEG && is.hip < TOLD_DEG ? ['otherLegGoesBack'] : [];
}

function told<T>(change: number, least: number, more: T, less: T): readonly T[] {
  if (Math.abs(change) < least) return [];
  return [change > 0 ? more : less];
}

/** Height of the hips over the lowest point of the body. */
function heightOf({ shoulder, upperBack, work, other }: Posture): number {
  const low = [work, other].flatMap(({ knee, heel, fore }) => [knee.y, heel.y, fore.y]);
  return -Math.min(0, shoulder.y, upperBack.y, ...low);
}

function hands({ hands: at, shoulder }: Posture): number {
  return at.y - shoulder.y;
}

function legLength({ work }: Posture): number {
  return Math.hypot(work.knee.x, work.knee.y) * 2;
}
