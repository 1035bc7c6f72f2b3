/** Joints of a figure from where its parts are at even steps of the way. */
import { wholeOf } from '../../units/round.ts';
import type { Point } from '../../mechanics/pose.ts';
import { toDegrees, toRadians } from '../../units/angle.ts';
import { trackAt, trackOf } from '../../units/track.ts';
import { turned } from '../plane.ts';
import type { Joint } from './movingFigure.ts';

/** Where a part is at each step: its joint in metres, its turn in radians. */
export interface Places {
  readonly at: readonly Point[];
  readonly rad: readonly number[];
}

// What an eye does not see in a figure of a hand's height.
const WITHIN_MM = 3;
const WITHIN_DEG = 0.2;
const ORIGIN: Point = { x: 0, y: 0 };

/** A list of joints to which parts are added one after the other. */
export interface Joints {
  readonly list: Joint[];
  /** The place of a new joint in the list; `on` is the place of the part it hangs on. */
  add(places: Places, on?: number): number;
}

export function noJoints(): Joints {
  const list: Joint[] = [];
  return {
    list,
    add: ({ at, rad }, on) => {
      const steps = at.length - 1;
      const parents = at.map((_, step) => (on === undefined ? null : placeAt(list, on, step / steps)));
      const own = at.map((point, step) => within(parents[step] ?? null, point));
      const lengths = (pick: (point: Point) => number) => trackOf(own.map(pick), WITHIN_MM, 1);
      const deg = trackOf(unwound(rad).map(toDegrees), WITHIN_DEG, 10);
      const joint = { x: lengths(({ x }) => x * 1000), y: lengths(({ y }) => y * 1000), deg };
      return list.push({ on: on ?? null, ...joint }) - 1;
    },
  };
}

/** Where a joint is at a share of the way, as the page places it: millimetres, and degrees. */
export function placeAt(
  joints: readonly Joint[],
  index: number,
  share: number,
): { readonly x: number; readonly y: number; readonly deg: number } {
  const { on, x, y, deg } = joints[index] as Joint;
  const own = { x: trackAt(x, share), y: trackAt(y, share) };
  const turn = trackAt(deg, share);
  if (on === null) return { ...own, deg: turn };
  const parent = placeAt(joints, on, share);
  const there = turned(own, ORIGIN, toRadians(parent.deg));
  return { x: parent.x + there.x, y: parent.y + there.y, deg: turn };
}

function within(parent: ReturnType<typeof placeAt> | null, { x, y }: Point): Point {
  if (parent === null) return { x, y };
  const from = { x: x - parent.x / 1000, y: y - parent.y / 1000 };
  return turned(from, ORIGIN, -toRadians(parent.deg));
}

// Angles go on where they were, never the long way round.
function unwound(rad: readonly number[]): readonly number[] {
  let before = rad[0] ?? 0;
  return rad.map((angle) => {
    before = angle - 2 * Math.PI * wholeOf((angle - before) / (2 * Math.PI));
    return before;
  });
}
