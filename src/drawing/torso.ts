/** The trunk from buttock to the base of the neck. */
import type { Point, Pose } from '../mechanics/pose.ts';
import { pressed, smooth, type Knot, type Outline } from './outline.ts';
import { frameAt, upwardAt } from './plane.ts';
import { TORSO_KNOTS } from './proportions.ts';

/** The trunk's outline, pressed flat where it lies on `surfaceY` (metres). */
export function torsoOutline(pose: Pose, hip: Point, heightM: number, surfaceY: number): Outline {
  return pressed(smooth(torsoKnots(pose, hip, heightM)), surfaceY);
}

/** Points on the trunk's skin, up the back and down the front, for a hip at `hip`; metres. */
export function torsoKnots(pose: Pose, hip: Point, heightM: number): readonly Knot[] {
  const trunk = frameAt(hip, upwardAt(pose.trunk));
  const pelvis = frameAt(hip, upwardAt(pose.trunk - (pose.lumbar ?? 0)));
  return TORSO_KNOTS.map(({ of, up, front }) =>
    (of === 'pelvis' ? pelvis : trunk)(up * heightM, front * heightM),
  );
}
