/** A body seen from the front: torso, head with hair and eyes, both legs and both arms. */
import { type Bar, chain } from '../clearance.ts';
import { edged, filled, type Stroke } from '../strokes.ts';
import { limbSides } from '../limb.ts';
import { circle, pressed, smooth, taperedCapsule, type Outline } from '../outline.ts';
import { along, directionFrom, frameAt, opposite } from '../plane.ts';
import { HIP_CAP, LINE } from '../proportions.ts';
import type { FrontArm } from './arms.ts';
import { EYE, FOOT, HEAD, LEG_SHAPE, NECK, TORSO_HALF } from './proportions.ts';
import type { FrontLeg, FrontStance } from './stance.ts';

/** Far leg of a lying body, trunk and head, then legs and arms; `both`: both legs work and both are solid. */
export function frontBody(
  stance: FrontStance,
  [workArm, otherArm]: readonly [FrontArm, FrontArm],
  both: boolean,
): readonly Stroke[] {
  const { heightM } = stance;
  const edge = LINE.edge * heightM;
  const arm = ({ outline }: FrontArm) => edged(onFloor(outline), 'arm', 'paperWhite', edge);
  const other = legOutline(stance.other, heightM);
  const behind = stance.pose.leanDeg < 0 ? [arm(otherArm)] : [];
  return [
    ...behind,
    ...headStrokes(stance),
    filled(onFloor(torso(stance)), 'body'),
    both
      ? edged(other, 'workLeg', 'paperWhite', edge)
      : edged(other, 'paperWhite', 'otherLegLine', LINE.outline * heightM),
    edged(legOutline(stance.work, heightM), 'workLeg', 'paperWhite', edge),
    ...(behind.length > 0 ? [] : [arm(otherArm)]),
    arm(workArm),
  ];
}

function torso({ pelvis, up, heightM }: FrontStance): Outline {
  const body = frameAt(pelvis, up);
  const half = (side: 1 | -1) =>
    TORSO_HALF.map(({ out, up: high }) => body(high * heightM, side * out * heightM));
  return smooth([...half(1), ...half(-1).reverse()]);
}

function headStrokes({ pelvis, up, heightM }: FrontStance): readonly Stroke[] {
  const body = frameAt(pelvis, up);
  const at = (high: number, out: number) => body(high * heightM, out * heightM);
  const on = (high: number, out: number) => at(HEAD.up + HEAD.high * high, HEAD.half * out);
  const oval = smooth([
    on(1, 0),
    on(0.72, 0.72),
    on(0, 1),
    on(-0.7, 0.72),
    on(-1, 0),
    on(-0.7, -0.72),
    on(0, -1),
    on(0.72, -0.72),
  ]);
  const hair = smooth([
    on(1.05, 0),
    on(0.8, 0.74),
    on(0.1, 1.1),
    { ...on(-0.1, 0.9), corner: true },
    on(0.42, 0.62),
    on(0.5, 0),
    on(0.42, -0.62),
    { ...on(-0.1, -0.9), corner: true },
    on(0.1, -1.1),
    on(0.8, -0.74),
  ]);
  const eye = (side: 1 | -1) =>
    filled(circle(at(HEAD.up + EYE.up - 0.01, side * EYE.out), EYE.radius * heightM), 'hair');
  return [
    filled(
      taperedCapsule(at(NECK.from, 0), NECK.radius * heightM, at(NECK.to, 0), NECK.radius * heightM),
      'body',
    ),
    edged(oval, 'body', 'paperWhite', LINE.edge * heightM * 0.6),
    edged(hair, 'hair', 'hairLine', LINE.edge * heightM),
    eye(1),
    eye(-1),
  ];
}

function legOutline({ hip, knee, ankle, toSole, footSeen }: FrontLeg, heightM: number): Outline {
  const sides = limbSides(hip, knee, ankle, LEG_SHAPE, heightM);
  const top = along(hip, HIP_CAP * heightM, opposite(directionFrom(hip, knee)));
  const right = { x: -toSole.y, y: toSole.x };
  const onFoot =
    (side: 1 | -1) =>
    ({ across, down }: (typeof FOOT)[number]) =>
      along(along(ankle, down * heightM, toSole), side * across * heightM, right);
  const foot = footSeen
    ? [...FOOT.map(onFoot(1)), ...[...FOOT].reverse().map(onFoot(-1))]
    : [along(ankle, 0.022 * heightM, directionFrom(knee, ankle))];
  return onFloor(smooth([top, ...sides.stretch, ...foot, ...[...sides.fold].reverse()]));
}

function onFloor(outline: Outline): Outline {
  return pressed(outline, 0);
}

/** The bars the body takes up, for an arrow to keep clear of. */
export function frontBars(stance: FrontStance, arms: readonly FrontArm[]): readonly Bar[] {
  const { heightM, pelvis, neck, up, workShoulder, otherShoulder, work, other } = stance;
  const head = along(pelvis, HEAD.up * heightM, up);
  const leg = ({ hip, knee, ankle }: FrontLeg) => chain([hip, knee, ankle], 0.05 * heightM);
  return [
    ...chain([pelvis, neck], 0.09 * heightM),
    ...chain([workShoulder, otherShoulder], 0.03 * heightM),
    { a: head, b: head, radiusM: 0.07 * heightM },
    ...leg(work),
    ...leg(other),
    ...arms.flatMap(({ shoulder, elbow, hand }) => chain([shoulder, elbow, hand], 0.028 * heightM)),
  ];
}
