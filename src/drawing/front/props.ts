/** Things seen from the front, or from above on a lying body: decided once for all frames, or following the body. */
import type { Point } from '../../mechanics/pose.ts';
import type { FrontScene, Prop } from '../../mechanics/scene.ts';
import { mat, pillows, wall } from '../blocks.ts';
import { edged, filled, lined, type Stroke } from '../strokes.ts';
import { circle, polyline, rectangle, smooth, taperedCapsule } from '../outline.ts';
import { along, between, directionFrom, frameAt } from '../plane.ts';
import { LINE } from '../proportions.ts';
import { HEAD } from './proportions.ts';
import type { FrontLeg, FrontStance } from './stance.ts';

export const MAT_M = 0.03;
const TOWEL_M = 0.05;
const BAND_M = 0.02;
const BELT_M = 0.04;
/** Half a mat's width seen from above, and how far the wall stands over the head, metres. */
const MAT_HALF_M = 0.34;
const WALL_OVER_M = 0.1;

/** What stands there behind the body in all frames alike. */
export function standing({ props, view }: FrontScene, stances: readonly FrontStance[]): readonly Stroke[] {
  const has = (prop: Prop) => props.includes(prop);
  const first = stances[0] as FrontStance;
  if (view === 'above')
    return [...(has('mat') ? [matFromAbove(first)] : []), ...(has('pillows') ? pillowsFromAbove(first) : [])];
  return [
    ...(has('wall') ? wall(wallX(stances), topOf(first) + WALL_OVER_M, 'right') : []),
    ...(has('mat') ? matUnder(stances) : []),
    ...(has('pillows') ? pillowUnderHead(first) : []),
  ];
}

/** What goes with the body of one frame, drawn over it. */
export function carried(scene: FrontScene, stance: FrontStance): readonly Stroke[] {
  const has = (prop: Prop) => scene.props.includes(prop);
  return [
    ...(has('towel') ? towel(scene, stance) : []),
    ...(has('band') ? bandRoundAnkles(stance) : []),
    ...(has('strap') ? beltRoundThighs(stance) : []),
  ];
}

/** The middle of the outer thigh, where a towel lies between it and the wall. */
export function outerThigh({ work, heightM }: Pick<FrontStance, 'work' | 'heightM'>): Point {
  const middle = between(work.hip, work.knee, 0.42);
  return { x: middle.x + 0.05 * heightM, y: middle.y };
}

/** Face of the wall on the working side: the folded towel just fits. */
export function wallX(stances: readonly FrontStance[]): number {
  const skin = stances.map((stance) =>
    Math.max(outerThigh(stance).x + TOWEL_M, stance.workShoulder.x + 0.05 * stance.heightM),
  );
  return Math.max(...skin);
}

function topOf({ pelvis, up, heightM }: FrontStance): number {
  return along(pelvis, (HEAD.up + HEAD.high) * heightM, up).y;
}

function matUnder(stances: readonly FrontStance[]): readonly Stroke[] {
  const xs = stances.flatMap(({ pelvis, up, heightM, work, other }) => [
    along(pelvis, (HEAD.up + 0.1) * heightM, up).x,
    work.ankle.x,
    other.ankle.x,
  ]);
  return mat(Math.min(...xs) - 0.1, Math.max(...xs) + 0.1, MAT_M);
}

function pillowUnderHead(stance: FrontStance): readonly Stroke[] {
  const { pelvis, up, heightM } = stance;
  const head = along(pelvis, HEAD.up * heightM, up);
  const top = head.y - HEAD.half * 0.75 * heightM;
  return pillows({ left: head.x - 0.2, right: head.x + 0.17, y: top }, 0);
}

function matFromAbove({ pelvis, up, heightM }: FrontStance): Stroke {
  const body = frameAt(pelvis, up);
  const [head, feet] = [0.53 * heightM, -0.6 * heightM];
  const box = [
    body(head, MAT_HALF_M),
    body(head, -MAT_HALF_M),
    body(feet, -MAT_HALF_M),
    body(feet, MAT_HALF_M),
  ];
  return edged(polyline(box, true), 'propFill', 'prop', LINE.prop * heightM);
}

function pillowsFromAbove({ pelvis, up, heightM, work, other }: FrontStance): readonly Stroke[] {
  const knees = between(work.knee, other.knee, 0.5);
  return [
    pillowFromAbove(knees, up, 0.085 * heightM, 0.16 * heightM, heightM),
    pillowFromAbove(along(pelvis, 0.43 * heightM, up), up, 0.085 * heightM, 0.14 * heightM, heightM),
  ];
}

function pillowFromAbove(centre: Point, up: Point, half: number, wide: number, heightM: number): Stroke {
  const at = frameAt(centre, up);
  const knots = [
    at(half * 0.86, 0),
    { ...at(half, wide), corner: true },
    at(0, wide * 0.93),
    { ...at(-half, wide), corner: true },
    at(-half * 0.86, 0),
    { ...at(-half, -wide), corner: true },
    at(0, -wide * 0.93),
    { ...at(half, -wide), corner: true },
  ];
  return edged(smooth(knots), 'pillow', 'prop', LINE.prop * heightM);
}

// Between thigh and wall it is held by the push; on a smooth floor the foot slides on it.
function towel({ props }: FrontScene, stance: FrontStance): readonly Stroke[] {
  const { work, heightM } = stance;
  if (props.includes('wall')) {
    const { x, y } = outerThigh(stance);
    const folded = rectangle({ x: x - 0.005, y: y + 0.09 }, { x: wallX([stance]), y: y - 0.09 });
    return [edged(folded, 'prop', 'paperWhite', 0.008)];
  }
  const half = 0.055 * heightM;
  return [
    filled(
      taperedCapsule({ x: work.ankle.x - half, y: 0.01 }, 0.011, { x: work.ankle.x + half, y: 0.01 }, 0.011),
      'prop',
    ),
  ];
}

function bandRoundAnkles({ work, other }: FrontStance): readonly Stroke[] {
  const at = ({ knee, ankle }: FrontLeg) => between(knee, ankle, 0.86);
  const [a, b] = [at(other), at(work)];
  const cuff = (point: Point) => edged(circle(point, 0.036), 'prop', 'paperWhite', 0.008);
  return [lined(polyline([a, b], false), 'prop', BAND_M * 1.4), cuff(a), cuff(b)];
}

function beltRoundThighs({ work, other, heightM }: FrontStance): readonly Stroke[] {
  const at = ({ hip, knee }: FrontLeg) => between(hip, knee, 0.78);
  const [a, b] = [at(other), at(work)];
  const out = directionFrom(a, b);
  const ends = [along(a, -0.05 * heightM, out), along(b, 0.05 * heightM, out)];
  return [
    lined(polyline(ends, false), 'paperWhite', BELT_M + 0.014),
    lined(polyline(ends, false), 'prop', BELT_M),
  ];
}
