/** Strokes drawn anew at every step of the way, told as one that stays, goes along as it is, or changes its shape. */
import type { Point } from '../../mechanics/pose.ts';
import { wholeMm } from '../../units/round.ts';
import { trackOf } from '../../units/track.ts';
import { hullPoints, type Outline } from '../outline.ts';
import { pathText, type Stroke } from '../strokes.ts';
import type { Joints } from './joints.ts';
import type { Layer, Morph } from './movingFigure.ts';

// Off by no more than this it is the same thing, moved and turned.
const RIGID_WITHIN_M = 0.004;
const WITHIN_MM = 5;

/** One layer a stroke; null when a step has other strokes than the first one. */
export function followed(steps: readonly (readonly Stroke[])[], joints: Joints): readonly Layer[] | null {
  const first = steps[0] ?? [];
  if (steps.some((strokes) => strokes.length !== first.length)) return null;
  const layers = first.map((_, index) =>
    layerOf(
      steps.map((strokes) => strokes[index] as Stroke),
      joints,
    ),
  );
  return layers.every((layer) => layer !== null) ? layers : null;
}

function layerOf(steps: readonly Stroke[], joints: Joints): Layer | null {
  const [first] = steps;
  if (first === undefined || steps.some(({ outline }) => lettersOf(outline) !== lettersOf(first.outline)))
    return null;
  const points = steps.map(({ outline }) => hullPoints(outline));
  const fits = points.map((now) => fitOf(points[0] as readonly Point[], now));
  const isRigid = fits.every(({ offM }) => offM <= RIGID_WITHIN_M);
  return {
    fill: first.fill,
    line: first.stroke,
    widthMm: wholeMm(first.widthM),
    floorMm: null,
    parts: isRigid ? [rigid(first.outline, fits, joints)] : morph(steps.map(({ outline }) => outline)),
  };
}

function rigid(outline: Outline, fits: readonly Fit[], joints: Joints) {
  const at = fits.map(({ middle }) => middle);
  const { x, y } = at[0] as Point;
  const joint = joints.add({ at, rad: fits.map(({ rad }) => rad) });
  return { joint, d: pathText(outline, (point) => `${wholeMm(point.x - x)} ${wholeMm(point.y - y)}`) };
}

function morph(steps: readonly Outline[]): Morph {
  const told = steps.map(toldPoints);
  const [first = []] = told;
  const track = (index: number, of: 'x' | 'y') =>
    trackOf(
      told.map((now) => (now[index] as Point)[of] * 1000),
      WITHIN_MM,
      1,
    );
  return {
    letters: lettersOf(steps[0] ?? []),
    numbers: first.flatMap((_, index) => [track(index, 'x'), track(index, 'y')]),
  };
}

/** As `Morph` tells them: ends as they are, handles from theirs. */
function toldPoints(outline: Outline): readonly Point[] {
  let last: Point = { x: 0, y: 0 };
  return outline.flatMap((command) => {
    if (command.kind === 'Z') return [];
    const from = last;
    last = command.to;
    if (command.kind !== 'C') return [command.to];
    return [command.to, minus(command.c1, from), minus(command.c2, command.to)];
  });
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

interface Fit {
  readonly middle: Point;
  readonly rad: number;
  readonly offM: number;
}

// The turn by which points come nearest to others (Procrustes in the plane), and how far the worst is off then.
function fitOf(from: readonly Point[], to: readonly Point[]): Fit {
  const [a, b] = [middleOf(from), middleOf(to)];
  let [dot, cross] = [0, 0];
  from.forEach((point, index) => {
    const [px, py] = [point.x - a.x, point.y - a.y];
    const other = to[index] as Point;
    const [qx, qy] = [other.x - b.x, other.y - b.y];
    dot += px * qx + py * qy;
    cross += px * qy - py * qx;
  });
  const rad = Math.atan2(cross, dot);
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  const off = from.map((point, index) => {
    const [px, py] = [point.x - a.x, point.y - a.y];
    const other = to[index] as Point;
    return Math.hypot(b.x + px * cos - py * sin - other.x, b.y + px * sin + py * cos - other.y);
  });
  return { middle: b, rad, offM: Math.max(0, ...off) };
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function lettersOf(outline: Outline): string {
  return outline.map(({ kind }) => kind).join('');
}
