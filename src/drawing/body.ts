/** The body of one stance, from the far leg to the near arm, and the bars it takes up in the picture. */
import type { DrawnArms } from '../mechanics/drawnPose.ts';
import type { SideScene } from '../mechanics/scene.ts';
import { armTo, fist, type Arm } from './arm.ts';
import { chain, type Bar } from './clearance.ts';
import { placed } from './foot.ts';
import type { Furniture } from './furniture.ts';
import { farReachOf, reachOf } from './hands.ts';
import { headOf, type Head } from './head.ts';
import { edged, filled, type Stroke } from './strokes.ts';
import { legOutline } from './leg.ts';
import { pressed, shifted, type Outline } from './outline.ts';
import { along } from './plane.ts';
import { LINE } from './proportions.ts';
import type { Leg, Stance } from './stance.ts';
import { torsoOutline } from './torso.ts';
import { weightStrokes } from './weight.ts';

export interface Figure extends Held {
  readonly behind: readonly Stroke[];
  readonly front: readonly Stroke[];
  /** Weight and near arm, drawn over the hip's angle. */
  readonly over: readonly Stroke[];
  readonly bars: readonly Bar[];
}

/** What head and hands do in a stance. */
export interface Held {
  readonly weight: readonly Stroke[];
  readonly head: Head;
  readonly arm: Arm;
  /** The other arm where it does something else; null where it hangs behind the near one. */
  readonly farArm: Arm | null;
  /** Whether the near arm lies behind a pillow under the hips. */
  readonly armBehind: boolean;
  readonly grips: boolean;
}

/** How a frame holds what the pose of the model does not say: drawn arms, and where a resting head stays. */
export interface Bearing {
  readonly arms: DrawnArms | null;
  readonly restX: number | null;
}

/** How far the far leg of a symmetric pose stands ahead, so that both are seen. */
export const FAR_LEG = 0.04;

/**
 * The figure in a stance. The working leg is solid and nearest; the other leg is white with a line round it. When both
 * legs work, both are solid. `behind` is drawn before what stands between the legs, `front` after it.
 */
export function figureOf(scene: SideScene, stance: Stance, furniture: Furniture, bearing: Bearing): Figure {
  const { heightM, pose, hip, lyingY } = stance;
  const held = heldIn(scene, stance, furniture, bearing);
  const { head, arm, farArm, armBehind, weight } = held;
  const edge = LINE.edge * heightM;
  const nearArm = edged(arm.outline, 'arm', 'paperWhite', edge);
  const near = legOutline(hip, stance.work, heightM, 0);
  return {
    ...held,
    behind: [
      ...(armBehind ? [nearArm] : []),
      farLeg(stance, near),
      ...(farArm === null ? [] : [edged(farArm.outline, 'arm', 'paperWhite', edge)]),
    ],
    front: [
      filled(head.neck, 'body'),
      edged(head.face, 'body', 'paperWhite', edge * 0.6),
      edged(head.hair, 'hair', 'hairLine', edge),
      filled(torsoOutline(pose, hip, heightM, lyingY), 'body'),
      edged(near, 'workLeg', 'paperWhite', edge),
    ],
    over: [
      ...weight,
      ...(armBehind ? [] : [nearArm]),
      ...(scene.weight?.at === 'hands'
        ? [edged(pressed(fist(arm.hand, heightM), lyingY), 'arm', 'paperWhite', edge * 0.7)]
        : []),
    ],
    bars: barsOf(stance, head, arm),
  };
}

/** Where head and hands are in a stance, and what they hold. */
export function heldIn(
  scene: SideScene,
  stance: Stance,
  furniture: Furniture,
  { arms, restX }: Bearing,
): Held {
  const { heightM, shoulder, lyingY } = stance;
  const head = headOf(stance, restX);
  const reach = reachOf(scene, stance, furniture, head.centre, arms);
  // A grip may be below what the body lies on.
  const arm = armTo(shoulder, reach, heightM, furniture.grip === null ? lyingY : 0);
  const farReach = farReachOf(scene, stance, furniture, arms);
  return {
    weight: scene.weight === null ? [] : weightStrokes(scene.weight, stance, arm.hand),
    head,
    arm,
    farArm: farReach === null ? null : armTo(shoulder, farReach, heightM, lyingY),
    armBehind: furniture.underHips.length > 0,
    grips: reach.grips,
  };
}

function farLeg({ hip, other, symmetric, heightM }: Stance, near: Outline): Stroke {
  if (symmetric)
    return edged(shifted(near, FAR_LEG * heightM, 0), 'workLeg', 'paperWhite', LINE.edge * heightM);
  return edged(legOutline(hip, other, heightM, 0), 'paperWhite', 'otherLegLine', LINE.outline * heightM);
}

// Radii a little over the drawn girths: words keep clear of what they cover, not of what they average.
function barsOf(stance: Stance, head: Head, { elbow, hand }: Arm): readonly Bar[] {
  const { heightM, hip, shoulder, work, other } = stance;
  const leg = (points: Leg) => {
    const { ankle, forward } = placed(points, heightM);
    const sole = [along(ankle, -0.035 * heightM, forward), along(ankle, 0.115 * heightM, forward)];
    return [
      ...chain([hip, points.knee], 0.058 * heightM),
      ...chain([points.knee, points.ankle], 0.042 * heightM),
      ...chain(sole, 0.042 * heightM),
    ];
  };
  return [
    ...chain([hip, shoulder], 0.073 * heightM),
    ...chain([shoulder, head.centre], 0.03 * heightM),
    { a: head.centre, b: head.centre, radiusM: 0.073 * heightM },
    ...chain([shoulder, elbow], 0.03 * heightM),
    ...chain([elbow, hand], 0.03 * heightM),
    { a: hand, b: along(hand, 0.03 * heightM, { x: 0, y: -1 }), radiusM: 0.03 * heightM },
    ...leg(work),
    ...(stance.symmetric ? [] : leg(other)),
  ];
}
