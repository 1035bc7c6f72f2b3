/** The way of the movement: an arrow from where a part of the body was to where it is, and a ghost of the start. */
import type { ArrowSign } from '../mechanics/drawnPose.ts';
import type { Point } from '../mechanics/pose.ts';
import { chain, clearanceOf, type Bar } from './clearance.ts';
import { edged, filled, lined, type Stroke } from './strokes.ts';
import { circle, polyline, pressed, type Outline } from './outline.ts';
import { along, between, directionFrom, distance, frameAt, turnFrom, turned } from './plane.ts';
import { LINE } from './proportions.ts';
import type { Stance } from './stance.ts';

/** A part of the body by which a movement can be shown, with how far its flesh reaches round its point. */
export interface Mover {
  readonly part: ArrowSign['at'];
  readonly from: Point;
  readonly to: Point;
  /** What it turns about, so that the arrow bends the way the part travels. */
  readonly about: Point;
  readonly radiusM: number;
}

const LEAST_TRAVEL = 0.03;
const SHORTEST = 0.115;
const HEAD_LENGTH = 0.054;
const HEAD_HALF = 0.032;
const GAP_M = 0.03;
const STEPS = 6;
/** Free room an arrow wants on either side, fraction of height. */
const ROOM = 0.033;
const LITTLE_ROOM = 0.012;

/**
 * The faint body of the start pose: thick strokes, because it says where, not what. Nothing of it sinks into the floor.
 * `headAt` is null where the head stays: half a head beside the head would look like a second one.
 */
export function ghost(start: Stance, headAt: Point | null): readonly Stroke[] {
  return [
    ...ghostLines(start).map(({ points, widthM }) => lined(polyline(points, false), 'ghost', widthM)),
    ...(headAt === null ? [] : [filled(pressed(circle(headAt, 0.058 * start.heightM), 0), 'ghost')]),
  ];
}

/** The bars a ghost takes up. */
export function ghostBars(start: Stance, headAt: Point | null): readonly Bar[] {
  const head = headAt === null ? [] : [{ a: headAt, b: headAt, radiusM: 0.058 * start.heightM }];
  return [...ghostLines(start).flatMap(({ points, widthM }) => chain(points, widthM / 2)), ...head];
}

function ghostLines({
  heightM,
  hip,
  shoulder,
  work,
  other,
  symmetric,
}: Stance): readonly { points: readonly Point[]; widthM: number }[] {
  const line = (width: number, ...points: readonly Point[]) => {
    const widthM = width * heightM;
    return { points: points.map(({ x, y }) => ({ x, y: Math.max(y, widthM / 2) })), widthM };
  };
  const leg = ({ knee, ankle, heel, fore }: Stance['work']) => [
    line(0.06, hip, knee, ankle),
    line(0.036, between(heel, ankle, 0.5), along(fore, 0.018 * heightM, { x: 0, y: 1 })),
  ];
  return [line(0.115, hip, shoulder), ...leg(work), ...(symmetric ? [] : leg(other))];
}

/** An arrow and the part it belongs to; null for none. */
export interface Arrow {
  readonly strokes: readonly Stroke[];
  readonly at: ArrowSign['at'] | null;
}

export const NO_ARROW: Arrow = { strokes: [], at: null };

/**
 * The arrow of the first mover that travels at least 3 % of height and finds room: along its way up to where it is now,
 * or on from there, or beside it; a little room will do before the next mover is asked. None when nothing travels.
 */
export function arrow(movers: readonly Mover[], taken: readonly Bar[], heightM: number): Arrow {
  const far = movers.filter(({ from, to }) => distance(from, to) >= LEAST_TRAVEL * heightM);
  const best = far.map((mover) => roomiest(mover, taken, heightM));
  const chosen =
    best.find(({ room }) => room >= LITTLE_ROOM * heightM) ?? best.toSorted((a, b) => b.room - a.room)[0];
  if (chosen === undefined) return NO_ARROW;
  return { strokes: drawn(chosen.path, heightM), at: chosen.part };
}

/** The arrow an author asked for: from the flesh round `at` on in this direction (a unit vector). */
export function signArrow(at: Point, way: Point, radiusM: number, heightM: number): readonly Stroke[] {
  const start = along(at, radiusM + 0.02 * heightM, way);
  return drawn([start, along(start, SHORTEST * heightM, way)], heightM);
}

interface ArrowPath {
  readonly part: ArrowSign['at'];
  readonly path: readonly Point[];
  readonly room: number;
}

function roomiest(mover: Mover, taken: readonly Bar[], heightM: number): ArrowPath {
  const enough = ROOM * heightM - 1e-6;
  const way = (path: readonly Point[]): ArrowPath => ({
    part: mover.part,
    path,
    room: roomFor(path, taken, enough),
  });
  let best = way(trailing(mover, heightM));
  const others = [
    () => leading(mover, heightM),
    ...SIDESTEPS.map((side) => () => beside(mover, side * heightM, heightM)),
  ];
  for (const other of others) {
    if (best.room >= enough) break;
    const next = way(other());
    if (next.room > best.room) best = next;
  }
  return best;
}

const SIDESTEPS = [0.1, -0.1, 0.14, -0.14, 0.19, -0.19, 0.25, -0.25] as const;

// Room on either side of the whole way, `enough` at most; none at all for a way through the floor.
function roomFor(path: readonly Point[], taken: readonly Bar[], enough: number): number {
  if (path.some(({ y }) => y < GAP_M / 2)) return -Infinity;
  return chain(path, 0).reduce((least, bar) => clearanceOf(bar, taken, least), enough);
}

function trailing(mover: Mover, heightM: number): readonly Point[] {
  return lengthened(shortened(wayOf(mover, heightM), mover.radiusM + ROOM * heightM), SHORTEST * heightM);
}

function leading({ from, to, radiusM }: Mover, heightM: number): readonly Point[] {
  const way = directionFrom(from, to);
  const start = along(to, radiusM + ROOM * heightM, way);
  return [start, along(start, SHORTEST * heightM, way)];
}

function beside(mover: Mover, sideM: number, heightM: number): readonly Point[] {
  return sidestepped(lengthened(wayOf(mover, heightM), SHORTEST * heightM), sideM);
}

function wayOf({ from, to, about }: Mover, heightM: number): readonly Point[] {
  const turn = turnFrom(directionFrom(about, from), directionFrom(about, to));
  const [near, far] = [distance(about, from), distance(about, to)];
  const straight = Math.min(near, far) < 0.05 * heightM;
  return Array.from({ length: STEPS + 1 }, (_, index) => {
    const share = index / STEPS;
    if (straight) return between(from, to, share);
    return along(
      about,
      near + (far - near) * share,
      turned(directionFrom(about, from), { x: 0, y: 0 }, turn * share),
    );
  });
}

// Cuts `cutM` off the end, so that the head stops before the part's present place.
function shortened(path: readonly Point[], cutM: number): readonly Point[] {
  const end = path[path.length - 1] as Point;
  const kept = path.filter((point) => distance(point, end) > cutM);
  const last = kept[kept.length - 1];
  if (last === undefined)
    return [
      along(end, -cutM - 0.01, directionFrom(path[0] as Point, end)),
      along(end, -cutM, directionFrom(path[0] as Point, end)),
    ];
  return [...kept, along(end, cutM, directionFrom(end, last))];
}

function lengthened(path: readonly Point[], leastM: number): readonly Point[] {
  const [first, second] = [path[0] as Point, path[1] as Point];
  const length = path.slice(1).reduce((sum, point, index) => sum + distance(path[index] as Point, point), 0);
  return length >= leastM ? path : [along(first, length - leastM, directionFrom(first, second)), ...path];
}

function sidestepped(path: readonly Point[], sideM: number): readonly Point[] {
  const way = directionFrom(path[0] as Point, path[path.length - 1] as Point);
  return path.map((point) => along(point, sideM, { x: way.y, y: -way.x }));
}

function drawn(path: readonly Point[], heightM: number): readonly Stroke[] {
  const tip = path[path.length - 1] as Point;
  const length = HEAD_LENGTH * heightM;
  const shaft = path.filter((point) => distance(point, tip) > length * 0.8);
  const neck = shaft[shaft.length - 1] ?? (path[0] as Point);
  const frame = frameAt(tip, directionFrom(neck, tip));
  const head: Outline = polyline(
    [frame(0, 0), frame(-length, HEAD_HALF * heightM), frame(-length, -HEAD_HALF * heightM)],
    true,
  );
  const line = polyline([...shaft, frame(-length * 0.7, 0)], false);
  const width = LINE.arrow * heightM;
  return [
    lined(line, 'paperWhite', width * 2.1),
    lined(line, 'arrow', width),
    edged(head, 'arrow', 'paperWhite', width * 0.4),
  ];
}
