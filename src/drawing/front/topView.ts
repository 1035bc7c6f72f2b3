/** A standing body seen from above, looking up the picture: shoulders, head, arms and feet. */
import type { HandPlace } from '../../mechanics/drawnPose.ts';
import type { Point } from '../../mechanics/pose.ts';
import type { FrontFrame, FrontScene } from '../../mechanics/scene.ts';
import { edged, filled, lined, type Stroke } from '../strokes.ts';
import { signArrow } from '../motion.ts';
import { circle, polyline, rectangle, smooth, taperedCapsule, type Outline } from '../outline.ts';
import { LINE } from '../proportions.ts';
import { armOutline } from './arms.ts';
import { SHOULDER_HALF } from './proportions.ts';

const HEAD = { ahead: 0.012, half: 0.05, deep: 0.064 } as const;
const CHEST_DEEP = 0.052;
const FOOT = { out: 0.06, from: -0.03, to: 0.115, heel: 0.026, toes: 0.034 } as const;
/** Elbow and hand by place: across from the middle, and ahead of the shoulders. */
const ARMS: Readonly<
  Record<HandPlace, { readonly elbow: readonly [number, number]; readonly hand: readonly [number, number] }>
> = {
  sides: { elbow: [0.145, -0.02], hand: [0.15, 0.02] },
  hips: { elbow: [0.22, -0.07], hand: [0.12, 0.03] },
  chest: { elbow: [0.165, 0.03], hand: [0.02, 0.125] },
  ahead: { elbow: [0.075, 0.18], hand: [0.016, 0.355] },
  elbow: { elbow: [0.165, 0.03], hand: [0.02, 0.125] },
};
const ANCHOR = { out: -0.5, ahead: 0.125 } as const;
const BAND_M = 0.022;

/** Strokes of one frame; a band runs to the edge of a door on the other side. */
export function topViewStrokes(
  { body: { heightM }, props }: FrontScene,
  { front, arrow }: FrontFrame,
): readonly Stroke[] {
  const at = (out: number, ahead: number): Point => ({ x: out * heightM, y: ahead * heightM });
  const { elbow, hand } = ARMS[front.hands];
  const edge = LINE.edge * heightM;
  const arm = (side: 1 | -1): Stroke =>
    edged(
      armOutline(
        at(side * SHOULDER_HALF, 0),
        at(side * elbow[0], elbow[1]),
        at(side * hand[0], hand[1]),
        heightM,
      ),
      'arm',
      'paperWhite',
      edge,
    );
  const handle = at(ANCHOR.out, ANCHOR.ahead);
  const doorEdge = rectangle(at(ANCHOR.out, -0.25), { x: handle.x - 0.07, y: 0.3 * heightM });
  return [
    ...(props.includes('door') ? [edged(doorEdge, 'propFill', 'prop', LINE.prop * 1.75)] : []),
    foot(1, at),
    foot(-1, at),
    ...(props.includes('band')
      ? [
          lined(polyline([handle, at(-hand[0], hand[1])], false), 'prop', BAND_M),
          edged(circle(handle, 0.03), 'prop', 'paperWhite', 0.008),
        ]
      : []),
    edged(
      taperedCapsule(at(-SHOULDER_HALF, 0), CHEST_DEEP * heightM, at(SHOULDER_HALF, 0), CHEST_DEEP * heightM),
      'body',
      'paperWhite',
      edge,
    ),
    arm(-1),
    arm(1),
    edged(face(at), 'body', 'paperWhite', edge),
    edged(hair(at), 'hair', 'hairLine', edge),
    ...(arrow === undefined ? [] : signArrow(at(0.09, 0.2), { x: 0, y: 1 }, 0, heightM)),
  ];
}

type Place = (out: number, ahead: number) => Point;

function foot(side: 1 | -1, at: Place): Stroke {
  const x = side * FOOT.out;
  const outline = smooth([
    at(x - FOOT.heel, FOOT.from),
    at(x, FOOT.from - 0.02),
    at(x + FOOT.heel, FOOT.from),
    at(x + FOOT.toes, FOOT.to - 0.03),
    at(x, FOOT.to),
    at(x - FOOT.toes, FOOT.to - 0.03),
  ]);
  return filled(outline, 'workLeg');
}

// The tip of the nose tells which way the face looks.
function face(at: Place): Outline {
  const on = (out: number, ahead: number) => at(out * HEAD.half, HEAD.ahead + ahead * HEAD.deep);
  return smooth([
    on(0, -1),
    on(0.9, -0.5),
    on(0.95, 0.3),
    on(0.3, 0.96),
    { ...on(0, 1.3), corner: true },
    on(-0.3, 0.96),
    on(-0.95, 0.3),
    on(-0.9, -0.5),
  ]);
}

function hair(at: Place): Outline {
  const on = (out: number, ahead: number) => at(out * HEAD.half, HEAD.ahead + ahead * HEAD.deep);
  return smooth([
    on(0, -1.08),
    on(0.95, -0.6),
    { ...on(1.02, 0.3), corner: true },
    on(0, 0.72),
    { ...on(-1.02, 0.3), corner: true },
    on(-0.95, -0.6),
  ]);
}
