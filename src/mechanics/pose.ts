/**
 * A pose in the sagittal plane, angles in degrees. x points forward, y up, the hip joint centre is the origin.
 * Hip and knee: 0 standing straight, flexion positive. Trunk: inclination of the hip-to-shoulder line from the
 * upward vertical, forward positive (standing 0, supine -90, prone +90). Pitch: heel-to-toe line, toes up positive.
 */

export interface LegPose {
  readonly hip: number;
  readonly knee: number;
  /** The foot's own angle to the ground; a foot in the air gives `ankle` instead. */
  readonly pitch?: number;
  /** Dorsiflexion positive, 0 = foot square to the shank. */
  readonly ankle?: number;
}

/** `trunk`: along the body · `hang`: straight down · a number: degrees from the downward vertical, forward positive. */
export type Arms = 'trunk' | 'hang' | number;

export interface Pose {
  readonly trunk: number;
  /** Forward bend between pelvis and trunk, 0 when left out. */
  readonly lumbar?: number;
  readonly arms?: Arms;
  readonly work: LegPose;
  /** The other leg; left out, the pose is symmetric. */
  readonly other?: LegPose;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Joints and contact points of one leg, metres from the hip. */
export interface LegPoints {
  readonly knee: Point;
  readonly ankle: Point;
  readonly heel: Point;
  /** Centre of pressure of a flat foot. */
  readonly mid: Point;
  /** Ball of the foot. */
  readonly fore: Point;
  readonly footCom: Point;
}

/** The points of a body, metres, hip at the origin. */
export interface BodyPoints {
  readonly shoulder: Point;
  readonly hands: Point;
  readonly upperBack: Point;
  readonly seat: Point;
  readonly pelvisFront: Point;
  readonly work: LegPoints;
  /** Equal to `work` in a symmetric pose. */
  readonly other: LegPoints;
}

/** A closed pose with its points. */
export interface Posture extends BodyPoints {
  readonly pose: Pose;
}
