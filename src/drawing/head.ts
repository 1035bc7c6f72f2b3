/** Head and neck: in line with the trunk, eyes ahead when upright, at rest on the floor when lying. */
import type { Point } from '../mechanics/pose.ts';
import { pressed, smooth, taperedCapsule, type Knot, type Outline } from './outline.ts';
import { along, clamp, frameAt, upwardAt } from './plane.ts';
import { FACE_KNOTS, HAIR_KNOTS, HEAD_REST, NECK } from './proportions.ts';
import type { Stance } from './stance.ts';

export interface Head {
  readonly centre: Point;
  readonly face: Outline;
  readonly hair: Outline;
  readonly neck: Outline;
  /** Where the neck begins and ends, and the crown's angle from straight up, forward positive. */
  readonly root: Point;
  readonly nape: Point;
  readonly deg: number;
}

// The neck gives back part of a small lean, so that the eyes look ahead; on the back the chin tucks in.
const LEAN_GIVEN_BACK = 0.6;
const LEAN_LIMIT_DEG = 25;
// Lying, the face looks straight up, or down at the hands under the forehead.
const FACE_UP_DEG = -84;
const FACE_DOWN_DEG = 90;

/**
 * The head's outlines; nothing of them lies below the surface the body lies on. `restX`: where along the floor a head that
 * rests there stays; null for a head that goes with the trunk.
 */
export function headOf(stance: Stance, restX: number | null): Head {
  const { heightM, lyingY, pose } = stance;
  const neckDeg = pose.trunk - LEAN_GIVEN_BACK * clamp(pose.trunk, -LEAN_LIMIT_DEG, LEAN_LIMIT_DEG);
  const up = upwardAt(neckDeg);
  const base = along(stance.shoulder, NECK.base * heightM, upwardAt(pose.trunk));
  const free = frameAt(base, up)(NECK.length * heightM, NECK.forward * heightM);
  // Lifting the head off the floor bends the neck; in every pose a back can rest in, its length stays within a tenth.
  const rest = neckDeg < 0 ? HEAD_REST.back : HEAD_REST.face;
  const centre = { x: restX ?? free.x, y: Math.max(free.y, lyingY + rest * heightM) };
  const deg = clamp(neckDeg, FACE_UP_DEG, FACE_DOWN_DEG);
  const head = frameAt(centre, upwardAt(deg));
  const skin = (knots: typeof FACE_KNOTS): Outline => {
    const placed = knots.map(({ up: high, front, ...kind }): Knot => ({
      ...head(high * heightM, front * heightM),
      ...kind,
    }));
    return pressed(smooth(placed), lyingY);
  };
  const nape = head(-0.03 * heightM, -0.016 * heightM);
  const root = along(base, -0.02 * heightM, up);
  const neck = taperedCapsule(root, (NECK.radius + 0.004) * heightM, nape, NECK.radius * heightM);
  return {
    centre,
    face: skin(FACE_KNOTS),
    hair: skin(HAIR_KNOTS),
    neck: pressed(neck, lyingY),
    root,
    nape,
    deg,
  };
}
