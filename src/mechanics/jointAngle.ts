/** The joint angle that guards a tendon: one the model sees from the side, named by the protocol. */
import type { Body } from './body.ts';
import { closePose } from './closure.ts';
import { ankleDegOf } from './kinematics.ts';
import type { Movement } from './movement.ts';
import { poseAt } from './trajectory.ts';

export const JOINT_ANGLES = ['hipFlexion', 'kneeFlexion', 'ankleDorsiflexion'] as const;
export type JointAngle = (typeof JOINT_ANGLES)[number];

/** Whether a limit is one on a joint angle. */
export function isJointAngle(limit: string): limit is JointAngle {
  return (JOINT_ANGLES as readonly string[]).includes(limit);
}

/** A joint's key in a leg's pose where the pose itself holds the angle; an ankle's follows from the whole body. */
const POSED = { hipFlexion: 'hip', kneeFlexion: 'knee', ankleDorsiflexion: null } as const;

/**
 * The working leg's angle at fraction `t`, degrees, flexion and dorsiflexion positive. Of a foot on the ground the ankle
 * is read off the closed pose; NaN, which is over every cap, where it does not close.
 */
export function angleAtDeg(
  movement: Movement,
  body: Body,
  loadKg: number,
  t: number,
  angle: JointAngle,
): number {
  const joint = POSED[angle];
  const pose = poseAt(movement, t);
  if (joint !== null) return pose.work[joint];
  const closed = closePose(movement, pose, body, loadKg)?.pose;
  return closed === undefined ? NaN : ankleDegOf(closed.work, closed.trunk - (closed.lumbar ?? 0));
}

/** Both ends of a movement by an angle, degrees, start first; null for a hold, and for an ankle, which no pose states. */
export function endsDeg({ start, end }: Movement, angle: JointAngle): readonly [number, number] | null {
  const joint = POSED[angle];
  return joint === null || !end ? null : [start.work[joint], end.work[joint]];
}

/**
 * The fraction at which the working leg has the angle; null when the movement never gets there, holds still there, or
 * cannot be set by it: an ankle's angle is no straight line between two poses.
 */
export function fractionAtAngle(movement: Movement, angle: JointAngle, deg: number): number | null {
  const ends = endsDeg(movement, angle);
  if (ends === null || ends[0] === ends[1]) return null;
  const t = (deg - ends[0]) / (ends[1] - ends[0]);
  return t >= 0 && t <= 1 ? t : null;
}
