/** A leg in one outline: rounded over the hip, thigh, knee, calf and foot. */
import type { Point } from '../mechanics/pose.ts';
import { footKnots } from './foot.ts';
import { limbSides } from './limb.ts';
import { pressed, smooth, type Outline } from './outline.ts';
import { along, directionFrom, opposite } from './plane.ts';
import { HIP_CAP, KNEE, SHANK, THIGH } from './proportions.ts';
import type { Leg } from './stance.ts';

const SHAPE = { upper: THIGH, lower: SHANK, joint: KNEE, folds: 'back' } as const;

/** The leg's outline from the hip joint at `hip`; nothing of it lies below `surfaceY`, and no foot below its own ground. */
export function legOutline(hip: Point, leg: Leg, heightM: number, surfaceY: number): Outline {
  const sides = limbSides(hip, leg.knee, leg.ankle, SHAPE, heightM);
  const top = along(hip, HIP_CAP * heightM, opposite(directionFrom(hip, leg.knee)));
  const foot = footKnots(leg, heightM);
  const curve = smooth([top, ...sides.stretch, ...foot, ...[...sides.fold].reverse()]);
  // The curve's command of index n leads to knot n; one more closes the heel.
  const toes = 1 + sides.stretch.length;
  return curve.flatMap((command, index) =>
    pressed(
      [command],
      index >= toes && index <= toes + foot.length ? Math.max(surfaceY, leg.groundY) : surfaceY,
    ),
  );
}
