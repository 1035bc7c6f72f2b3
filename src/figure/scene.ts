/** A scene as pictures: one a frame, all of one size, one scale and one floor. */
import type { Point } from '../mechanics/pose.ts';
import type { Scene, SceneFrame } from '../mechanics/scene.ts';
import { figureOf, type Figure } from './body.ts';
import { chain, type Bar } from './clearance.ts';
import type { Drawing } from './drawing.ts';
import { furnish, type Furniture } from './furniture.ts';
import { hipAngle } from './hipAngle.ts';
import { lined, setOnSheet, windowAround, type Caption, type Stroke, type Window } from './ink.ts';
import { arrow, ghost, ghostBars, type Mover } from './motion.ts';
import { hullPoints, polyline } from './outline.ts';
import { distance } from './plane.ts';
import { pliantStrokes } from './pliant.ts';
import { LINE } from './proportions.ts';
import { stancesOf, type Stance } from './stance.ts';

interface Picture {
  readonly strokes: readonly Stroke[];
  readonly captions: readonly Caption[];
}

const MARGIN_M = 0.02;

/**
 * One drawing for each frame of the scene, in their order. All share one view box, so that shown at one width they have
 * one scale and their floor lines meet. The working side faces the viewer: right legs look right, left legs look left.
 * An `end` frame carries a ghost of the `start` frame and an arrow. A scene without frames gives no drawings.
 */
export function drawScene(scene: Scene): readonly Drawing[] {
  const known = drawn.get(scene);
  if (known !== undefined) return known;
  const drawings = draw(scene);
  drawn.set(scene, drawings);
  return drawings;
}

// A scene never changes; its page, its thumbnail and its paper show the same drawings.
const drawn = new WeakMap<Scene, readonly Drawing[]>();

function draw(scene: Scene): readonly Drawing[] {
  const stances = stancesOf(scene);
  const furniture = furnish(scene, stances);
  const figures = stances.map((stance) => figureOf(scene, stance, furniture));
  const pictures = scene.frames.map((frame, index) =>
    pictureOf(scene, frame, index, { stances, figures, furniture }),
  );
  if (pictures.length === 0) return [];
  const window = windowAround(
    pictures.flatMap(({ strokes }) => strokes),
    pictures.flatMap(({ captions }) => captions),
    MARGIN_M,
    scene.side === 'left',
  );
  const floor = floorLine(window, furniture.floorBelowM, scene.body.heightM);
  return pictures.map(({ strokes, captions }) =>
    setOnSheet([floor, ...strokes], captions, withFloor(window, floor)),
  );
}

interface Cast {
  readonly stances: readonly Stance[];
  readonly figures: readonly Figure[];
  readonly furniture: Furniture;
}

/** A stance with the figure drawn in it. */
interface Posed {
  readonly stance: Stance;
  readonly figure: Figure;
}

// From the back to the front: furniture, ghost, far leg, body, the hip's angle, near arm and weight, band, arrow.
function pictureOf(scene: Scene, frame: SceneFrame, index: number, cast: Cast): Picture {
  const { stances, furniture } = cast;
  const now = posedAt(cast, index);
  const start = frame.name === 'end' ? startOf(scene, cast) : null;
  const { stance, figure } = now;
  const way = { first: stances[0] as Stance, last: stances[stances.length - 1] as Stance };
  const pliant = pliantStrokes(scene, stance, way, figure.arm.hand);
  const taken = [...figure.bars, ...[...furniture.behind, ...pliant, ...figure.weight].flatMap(barsAround)];
  const shade = start === null ? [] : ghostBars(start.stance, start.figure.head.centre);
  const angle = hipAngle(stance, frame.hipFlexionDeg, [...taken, ...shade]);
  const signs = [...taken, ...angle.bars, captionBar(angle.caption)];
  return {
    strokes: [
      ...furniture.behind,
      ...(start === null ? [] : ghost(start.stance, start.figure.head.centre)),
      ...figure.behind,
      ...furniture.between.flatMap((draw) => draw(stance)),
      ...figure.front,
      ...angle.strokes,
      ...figure.over,
      ...pliant,
      ...(start === null ? [] : arrow(moversOf(scene, start, now), signs, stance.heightM)),
    ],
    captions: [angle.caption],
  };
}

function posedAt({ stances, figures }: Cast, index: number): Posed {
  return { stance: stances[index] as Stance, figure: figures[index] as Figure };
}

function startOf(scene: Scene, cast: Cast): Posed | null {
  const index = scene.frames.findIndex(({ name }) => name === 'start');
  return index < 0 ? null : posedAt(cast, index);
}

// In the order in which a reader looks: the hips of a body that lies unless its foot travels clearly further, the foot
// that swings, or the head of a body that stands.
function moversOf(scene: Scene, start: Posed, now: Posed): readonly Mover[] {
  const [from, to] = [start.stance, now.stance];
  const { heightM } = to;
  const loaded = scene.weight?.at.endsWith('ankle') ?? false;
  const move = (a: Point, b: Point, about: Point, radius: number) => ({
    from: a,
    to: b,
    about,
    radiusM: radius * heightM,
  });
  const hips = move(from.hip, to.hip, to.shoulder, 0.075);
  const head = move(start.figure.head.centre, now.figure.head.centre, to.hip, 0.07);
  const foot = move(from.work.ankle, to.work.ankle, to.work.knee, loaded ? 0.09 : 0.05);
  const travel = (mover: Mover) => distance(mover.from, mover.to);
  const lies = Math.abs(to.pose.trunk) > 60 && to.shoulder.y < 0.4 * heightM;
  if (lies) return travel(foot) > 1.3 * travel(hips) ? [foot, hips, head] : [hips, foot, head];
  if (to.work.planted) return [head, hips];
  return travel(foot) > travel(head) ? [foot, head, hips] : [head, foot, hips];
}

function barsAround({ outline, widthM }: Stroke): readonly Bar[] {
  const points = hullPoints(outline);
  const closed = points[0] === undefined ? points : [...points, points[0]];
  return chain(closed, widthM / 2);
}

function captionBar({ centre, sizeM, text }: Caption): Bar {
  const half = ([...text].length * sizeM) / 3;
  return {
    a: { x: centre.x - half, y: centre.y },
    b: { x: centre.x + half, y: centre.y },
    radiusM: sizeM / 2,
  };
}

function floorLine({ left, right }: Window, belowM: number, heightM: number): Stroke {
  const width = LINE.floor * heightM;
  const y = -belowM - width / 2;
  return lined(
    polyline(
      [
        { x: left + width / 2, y },
        { x: right - width / 2, y },
      ],
      false,
    ),
    'floor',
    width,
  );
}

function withFloor(window: Window, floor: Stroke): Window {
  const lowest = Math.min(...hullPoints(floor.outline).map(({ y }) => y));
  return { ...window, bottom: Math.min(window.bottom, lowest - floor.widthM / 2) };
}
