/** A front pose set down in the picture: joints in metres, x towards the working side, y up, the floor at 0. */
import type { FrontLegPose, FrontPose } from '../../mechanics/drawnPose.ts';
import type { Point } from '../../mechanics/pose.ts';
import { toRadians } from '../../units/angle.ts';
import { along, frameAt, upwardAt } from '../plane.ts';
import { FLESH, HIP_HALF, SHANK_LENGTH, SHOULDER_HALF, SOLE, THIGH_LENGTH, TRUNK } from './proportions.ts';

export interface FrontLeg {
  readonly hip: Point;
  readonly knee: Point;
  readonly ankle: Point;
  /** From the ankle towards the sole; a standing foot points straight down. */
  readonly toSole: Point;
  /** Whether a foot is seen at all: a shank that points away from the viewer hides it. */
  readonly footSeen: boolean;
}

export interface FrontStance {
  readonly heightM: number;
  readonly pose: FrontPose;
  /** Middle between the hips, and between the shoulders. */
  readonly pelvis: Point;
  readonly neck: Point;
  readonly up: Point;
  readonly work: FrontLeg;
  readonly other: FrontLeg;
  readonly workShoulder: Point;
  readonly otherShoulder: Point;
  /** Whether the body lies along the floor. */
  readonly lies: boolean;
}

const DOWN: Point = { x: 0, y: -1 };
const LYING_FROM_DEG = 40;

/** The pose on its ground, `offGroundM` over it, with the foot it stands on or the middle of a lying body at x = 0. */
export function frontStance(pose: FrontPose, heightM: number, offGroundM: number): FrontStance {
  const loose = jointsOf(pose, heightM);
  const lies = Math.abs(pose.leanDeg) > LYING_FROM_DEG;
  const floorY = lowestOf(loose, heightM) - offGroundM;
  const anchorX = lies ? loose.pelvis.x : loose.other.ankle.x;
  const move = ({ x, y }: Point): Point => ({ x: x - anchorX, y: y - floorY });
  const leg = (one: FrontLeg): FrontLeg => ({
    ...one,
    hip: move(one.hip),
    knee: move(one.knee),
    ankle: move(one.ankle),
  });
  return {
    ...loose,
    lies,
    pelvis: move(loose.pelvis),
    neck: move(loose.neck),
    work: leg(loose.work),
    other: leg(loose.other),
    workShoulder: move(loose.workShoulder),
    otherShoulder: move(loose.otherShoulder),
  };
}

function jointsOf(pose: FrontPose, heightM: number): Omit<FrontStance, 'lies'> {
  const pelvis = { x: 0, y: 0 };
  const up = upwardAt(pose.leanDeg);
  const body = frameAt(pelvis, up);
  const at = (high: number, out: number) => body(high * heightM, out * heightM);
  return {
    heightM,
    pose,
    pelvis,
    up,
    neck: at(TRUNK, 0),
    workShoulder: at(TRUNK, SHOULDER_HALF),
    otherShoulder: at(TRUNK, -SHOULDER_HALF),
    work: legOf(pose.work, at(0, HIP_HALF), up, 1, heightM),
    other: legOf(pose.other, at(0, -HIP_HALF), up, -1, heightM),
  };
}

// A bent hip or knee turns its segment out of the picture's plane and shortens it there; `out` turns it in the plane.
function legOf(
  { hip, knee, outDeg }: FrontLegPose,
  from: Point,
  up: Point,
  side: 1 | -1,
  heightM: number,
): FrontLeg {
  const lean = Math.atan2(up.x, up.y);
  const turn = lean - side * toRadians(outDeg);
  const down = { x: -Math.sin(turn), y: -Math.cos(turn) };
  const shankShare = Math.cos(toRadians(hip - knee));
  const kneeAt = along(from, THIGH_LENGTH * heightM * Math.cos(toRadians(hip)), down);
  const ankle = along(kneeAt, SHANK_LENGTH * heightM * shankShare, down);
  const stands = Math.abs(lean) < toRadians(LYING_FROM_DEG);
  return {
    hip: from,
    knee: kneeAt,
    ankle,
    toSole: stands ? DOWN : down,
    footSeen: Math.abs(shankShare) > 0.35,
  };
}

function lowestOf(
  { work, other, workShoulder, otherShoulder }: Omit<FrontStance, 'lies'>,
  heightM: number,
): number {
  const under = (point: Point, flesh: number) => point.y - flesh * heightM;
  const leg = ({ hip, knee, ankle, toSole, footSeen }: FrontLeg) => [
    under(hip, FLESH.hip),
    under(knee, FLESH.knee),
    under(ankle, FLESH.ankle),
    ...(footSeen ? [ankle.y + SOLE * heightM * toSole.y] : []),
  ];
  const shoulders = [workShoulder, otherShoulder].map((point) => under(point, FLESH.shoulder));
  return Math.min(...leg(work), ...leg(other), ...shoulders);
}
