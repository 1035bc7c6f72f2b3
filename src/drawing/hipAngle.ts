/** The hip's bend as an arc from the backward-lengthened pelvis line to the thigh, with its degrees in a free place. */
import type { Point } from '../mechanics/pose.ts';
import { captionHalf, edged, lined, type Caption, type Stroke } from './strokes.ts';
import { clearanceOf, chain, type Bar } from './clearance.ts';
import { arc, circle, polyline } from './outline.ts';
import { along, directionFrom, distance, opposite, turnFrom, turned, upwardAt } from './plane.ts';
import { LETTER, LINE } from './proportions.ts';
import type { Stance } from './stance.ts';

export interface HipAngle {
  readonly strokes: readonly Stroke[];
  /** The degrees; none where there is no bend to show. */
  readonly captions: readonly Caption[];
  /** The lines of the sign itself, for what comes after to keep clear of. */
  readonly bars: readonly Bar[];
  /** Degrees the arc spans; null where none is drawn. */
  readonly arcDeg: number | null;
}

const ORIGIN: Point = { x: 0, y: 0 };
const RADIUS = 0.145;
const TAIL = 0.175;
/** No bend to show. */
const NO_ANGLE: HipAngle = { strokes: [], captions: [], bars: [], arcDeg: null };
/** Under this an arc is a hook on the thigh and no angle: dashed line and degrees stand alone [choice]. */
const ARC_FROM_DEG = 12;
const ARC_BARS = 8;

/**
 * The sign of a stance's hip angle. `hipFlexionDeg` is printed as it is given; the arc shows the posture's own angle,
 * and there is none where the number is small or nothing at all.
 * With a rounded back it starts from the pelvis, whose bend to the thigh is what the number counts.
 */
export function hipAngle(stance: Stance, hipFlexionDeg: number | null, taken: readonly Bar[]): HipAngle {
  if (hipFlexionDeg === null) return NO_ANGLE;
  const { hip, work, pose, heightM } = stance;
  const tail = opposite(upwardAt(pose.trunk - (pose.lumbar ?? 0)));
  const thigh = directionFrom(hip, work.knee);
  const radius = RADIUS * heightM;
  const sweep = turnFrom(tail, thigh);
  const start = along(hip, radius, tail);
  const tailEnd = along(hip, TAIL * heightM, tail);
  const turnedBy = (share: number) => turned(start, hip, sweep * share);
  const bars = [
    ...chain([hip, tailEnd], 0.012),
    ...chain(
      Array.from({ length: ARC_BARS + 1 }, (_, index) => turnedBy(index / ARC_BARS)),
      (LINE.arc * heightM) / 2,
    ),
  ];
  const sizeM = LETTER * heightM;
  const text = `${hipFlexionDeg < 0 ? '−' : ''}${Math.abs(hipFlexionDeg)}°`;
  const wished = along(hip, RINGS[0] * radius, directionFrom(hip, turnedBy(0.5)));
  const centre = freePlace({ text, centre: wished, sizeM, paint: 'arc' }, hip, [...taken, ...bars], heightM);
  const bow = Math.abs(hipFlexionDeg) < ARC_FROM_DEG ? 0 : sweep;
  return {
    arcDeg: bow === 0 ? null : (bow * 180) / Math.PI,
    strokes: signStrokes(stance, start, tailEnd, bow),
    captions: [{ text, centre, sizeM, paint: 'arc' }],
    bars,
  };
}

function signStrokes(
  { hip, heightM }: Stance,
  start: Point,
  tailEnd: Point,
  sweep: number,
): readonly Stroke[] {
  const width = LINE.arc * heightM;
  const line = polyline([hip, tailEnd], false);
  const under = lined(line, 'paperWhite', width * 1.7);
  const tail = lined(line, 'arc', width * 0.85, [0.026, 0.016]);
  const joint = edged(circle(hip, 0.011 * heightM), 'arc', 'paperWhite', width * 0.55);
  if (sweep === 0) return [under, tail, joint];
  const bow = arc(hip, start, sweep);
  return [lined(bow, 'paperWhite', width * 2), under, tail, lined(bow, 'arc', width), joint];
}

// Rings about the hip in arc radii, and turns away from the wished direction; the cheapest places are looked at first.
const RINGS = [1.45, 1.7, 1.95, 2.2, 2.5, 2.8, 3.2, 3.6] as const;
const DIRECTIONS = 32;
const SPARE_M = 0.015;
const WISHED: Point = { x: RINGS[0], y: 0 };
const PLACES: readonly Point[] = RINGS.flatMap((ring) =>
  Array.from({ length: DIRECTIONS }, (_, index) => {
    const away = (index % 2 === 0 ? 1 : -1) * Math.ceil(index / 2);
    return turned({ x: ring, y: 0 }, ORIGIN, (away * 2 * Math.PI) / DIRECTIONS);
  }),
).toSorted((a, b) => costOf(a) - costOf(b));

function costOf(place: Point): number {
  return distance(place, WISHED) + 0.5 * distance(place, ORIGIN);
}

function freePlace(caption: Caption, hip: Point, taken: readonly Bar[], heightM: number): Point {
  const half = captionHalf(caption);
  const turn = turnFrom({ x: 1, y: 0 }, directionFrom(hip, caption.centre));
  for (const place of PLACES) {
    const centre = along(hip, RADIUS * heightM, turned(place, ORIGIN, turn));
    const [a, b] = [centre.x - half.x, centre.x + half.x].map((x) => ({ x, y: centre.y })) as [Point, Point];
    const box = { a, b, radiusM: half.y };
    if (centre.y - half.y > SPARE_M && clearanceOf(box, taken, SPARE_M) >= SPARE_M) return centre;
  }
  // Nothing free within three hand breadths: over the trunk's own height there always is.
  return { x: hip.x, y: hip.y + 0.75 * heightM };
}
