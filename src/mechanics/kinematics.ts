/** Joint angles to points in the plane: x forward, y up, the hip joint centre at the origin, both hips in one place. */
import { toRadians } from '../units/angle.ts';
import { BACK, FOOT, LENGTH, MODEL_HEIGHT_M, PELVIS_FRONT, SEAT } from './anthropometry.ts';
import type { Body } from './body.ts';
import type { Arms, BodyPoints, LegPoints, LegPose, Point, Pose, Posture } from './pose.ts';

/**
 * The points of a pose, metres from the hip, for a body of this height; mass plays no part.
 * Total: any finite angles give finite points. Whether the pose can rest there is for `closePose` and `loadingAt` to say.
 * @example postureOf({ trunk: 0, work: { hip: 90, knee: 90, pitch: 0 } }, { massKg: 70, heightM: 1.75 }).work.knee.x // => 0.42875
 */
export function postureOf(pose: Pose, body: Body): Posture {
  return { pose, ...pointsOf(anglesOf(pose), body) };
}

/** The angles of a pose, degrees, with nothing left out: all poses alike, for what looks at very many of them. */
export interface Angles {
  readonly trunk: number;
  readonly lumbar: number;
  readonly arms: Arms;
  readonly work: LegAngles;
  readonly other: LegAngles | null;
}

export interface LegAngles {
  readonly hip: number;
  readonly knee: number;
  /** To the ground, or of a foot in the air to the shank. */
  readonly foot: number;
  readonly inTheAir: boolean;
}

/** What a pose leaves out filled in. */
export function anglesOf({ trunk, lumbar = 0, arms = 'trunk', work, other }: Pose): Angles {
  return { trunk, lumbar, arms, work: legAngles(work), other: other ? legAngles(other) : null };
}

function legAngles({ hip, knee, pitch = 0, ankle }: LegPose): LegAngles {
  return { hip, knee, foot: ankle ?? pitch, inTheAir: ankle !== undefined };
}

/** The points of a body at these angles. */
export function pointsOf({ trunk, lumbar, arms, work: workLeg, other }: Angles, body: Body): BodyPoints {
  const heightM = body.heightM;
  const pelvisDeg = trunk - lumbar;
  const up = upwardAt(trunk);
  const front = frontOf(up);
  const pelvisUp = upwardAt(pelvisDeg);
  const pelvisFront = frontOf(pelvisUp);
  const shoulder = times(up, LENGTH.trunk * heightM);
  const seatScale = heightM / MODEL_HEIGHT_M;
  const work = legPoints(workLeg, pelvisDeg, heightM);
  return {
    shoulder,
    hands: from(shoulder, LENGTH.grip * heightM, armDirection(arms, up)),
    upperBack: from(times(shoulder, BACK.along), -BACK.behind * heightM, front),
    seat: from(times(pelvisFront, -SEAT.behindM * seatScale), -SEAT.belowM * seatScale, pelvisUp),
    pelvisFront: times(pelvisFront, PELVIS_FRONT * heightM),
    work,
    other: other ? legPoints(other, pelvisDeg, heightM) : work,
  };
}

/** Dorsiflexion of a foot in degrees, whether the pose gives it or the foot's angle to the ground. */
export function ankleDegOf(leg: LegPose, pelvisDeg: number): number {
  return dorsiflexionDeg(legAngles(leg), pelvisDeg);
}

/** The same with nothing left out. */
export function dorsiflexionDeg({ hip, knee, foot, inTheAir }: LegAngles, pelvisDeg: number): number {
  return inTheAir ? foot : foot - (hip - pelvisDeg - knee);
}

function legPoints(leg: LegAngles, pelvisDeg: number, heightM: number): LegPoints {
  const thighDeg = leg.hip - pelvisDeg;
  const shankDeg = thighDeg - leg.knee;
  const knee = times(limbDirection(thighDeg), LENGTH.thigh * heightM);
  const ankle = from(knee, LENGTH.shank * heightM, limbDirection(shankDeg));
  const along = limbDirection(leg.inTheAir ? shankDeg + 90 + leg.foot : 90 + leg.foot);
  const onFoot = ({ forward, down }: { readonly forward: number; readonly down: number }) => ({
    x: ankle.x + forward * heightM * along.x + down * heightM * along.y,
    y: ankle.y + forward * heightM * along.y - down * heightM * along.x,
  });
  return {
    knee,
    ankle,
    heel: onFoot(FOOT.heel),
    mid: onFoot(FOOT.mid),
    fore: onFoot(FOOT.fore),
    footCom: onFoot(FOOT.com),
  };
}

function armDirection(arms: Arms, up: Point): Point {
  if (arms === 'trunk') return times(up, -1);
  return limbDirection(arms === 'hang' ? 0 : arms);
}

/** A limb's direction, its angle counted from straight down, forward positive. */
function limbDirection(deg: number): Point {
  const rad = toRadians(deg);
  return { x: Math.sin(rad), y: -Math.cos(rad) };
}

/** The trunk's direction, its inclination counted from straight up, forward positive. */
function upwardAt(deg: number): Point {
  const rad = toRadians(deg);
  return { x: Math.sin(rad), y: Math.cos(rad) };
}

function frontOf(up: Point): Point {
  return { x: up.y, y: -up.x };
}

function times(point: Point, factor: number): Point {
  return { x: point.x * factor, y: point.y * factor };
}

function from(point: Point, distance: number, direction: Point): Point {
  return { x: point.x + distance * direction.x, y: point.y + distance * direction.y };
}
