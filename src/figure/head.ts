/** Head and neck: in line with the trunk, eyes ahead when upright, at rest on the floor when lying. */
import type { Point } from '../mechanics/pose.ts';
import { pressed, smooth, taperedCapsule, type Knot, type Outline } from './outline.ts';
import { along, clamp, frameAt, upwardAt } from './plane.ts';
import { FACE_KNOTS, HAIR_KNOTS, HEAD_REST, NECK } from './proportions.ts';
import { toDegrees } from '../units/angle.ts';
import type { Stance } from './stance.ts';

export interface Head {
  readonly centre: Point;
  readonly face: Outline;
  readonly hair: Outline;
  readonly neck: Outline;
}

// The neck gives back part of a small lean, so that the eyes look ahead; on the back the chin tucks in.
const LEAN_GIVEN_BACK = 0.6;
const LEAN_LIMIT_DEG = 25;
// Lying, the face looks straight up, or down at the hands under the forehead.
const FACE_UP_DEG = -84;
const FACE_DOWN_DEG = 90;

/** The head's outlines; nothing of them lies below the surface the body lies on. */
export function headOf(stance: Stance): Head {
  const { heightM, lyingY } = stance;
  const base = along(stance.shoulder, NECK.base * heightM, upwardAt(stance.pose.trunk));
  const wished =
    stance.pose.trunk - LEAN_GIVEN_BACK * clamp(stance.pose.trunk, -LEAN_LIMIT_DEG, LEAN_LIMIT_DEG);
  const neckDeg = restingDeg(wished, base, heightM, lyingY);
  const up = upwardAt(neckDeg);
  const at = frameAt(base, up)(NECK.length * heightM, NECK.forward * heightM);
  // What the rest distance of the centre leaves over, the head itself gives by rolling on the floor.
  const centre = { x: at.x, y: Math.max(at.y, lyingY + restOf(neckDeg) * heightM) };
  const head = frameAt(centre, upwardAt(clamp(wished, FACE_UP_DEG, FACE_DOWN_DEG)));
  const drawn = (knots: typeof FACE_KNOTS) =>
    pressed(
      smooth(
        knots.map(({ up: u, front, ...rest }): Knot => ({ ...head(u * heightM, front * heightM), ...rest })),
      ),
      lyingY,
    );
  const nape = head(-0.03 * heightM, -0.016 * heightM);
  return {
    centre,
    face: drawn(FACE_KNOTS),
    hair: drawn(HAIR_KNOTS),
    neck: pressed(
      taperedCapsule(
        along(base, -0.02 * heightM, up),
        (NECK.radius + 0.004) * heightM,
        nape,
        NECK.radius * heightM,
      ),
      lyingY,
    ),
  };
}

// The centre's height over the neck's base is R cos(neck + φ), φ for its place before the neck line; it is bounded below.
function restingDeg(wishedDeg: number, base: Point, heightM: number, surfaceY: number): number {
  const lift = surfaceY + restOf(wishedDeg) * heightM - base.y;
  const ahead = toDegrees(Math.atan2(NECK.forward, NECK.length));
  const reach = Math.sqrt(NECK.length ** 2 + NECK.forward ** 2) * heightM;
  const steepest = toDegrees(Math.acos(clamp(lift / reach, -1, 1)));
  return clamp(wishedDeg, -steepest - ahead, steepest - ahead);
}

function restOf(neckDeg: number): number {
  return neckDeg < 0 ? HEAD_REST.back : HEAD_REST.face;
}
