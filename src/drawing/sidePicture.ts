/** The pictures of a scene seen from the side. */
import type { Point } from '../mechanics/pose.ts';
import type { ArrowSign } from '../mechanics/drawnPose.ts';
import type { SideFrame, SideScene } from '../mechanics/scene.ts';
import { figureOf, type Figure } from './body.ts';
import { chain, type Bar } from './clearance.ts';
import { headOf } from './head.ts';
import { furnish, type Furniture } from './furniture.ts';
import { hipAngle } from './hipAngle.ts';
import type { Caption, Stroke } from './strokes.ts';
import { arrow, ghost, ghostBars, NO_ARROW, signArrow, type Arrow, type Mover } from './motion.ts';
import { hullPoints } from './outline.ts';
import type { Picture, Pictures } from './picture.ts';
import { along, distance } from './plane.ts';
import { pliantStrokes } from './pliant.ts';
import { stancesOf, type Stance } from './stance.ts';

/** One picture a frame. An `end` frame carries a ghost of the `start` frame, and an arrow. */
export function sidePictures(scene: SideScene): Pictures {
  const cast = castOf(scene);
  return {
    pictures: scene.frames.map((frame, index) => pictureOf(scene, frame, index, cast)),
    floorBelowM: cast.furniture.floorBelowM,
  };
}

/** Everybody and everything in a scene's pictures, before a stroke is drawn. */
export function castOf(scene: SideScene): Cast {
  const stances = stancesOf(scene);
  const furniture = furnish(scene, stances);
  const restX = headRestX(scene, stances);
  const figures = scene.frames.map(({ arms = null }, index) =>
    figureOf(scene, stances[index] as Stance, furniture, { arms, restX }),
  );
  return { stances, figures, furniture };
}

// A head on the floor stays where it lies, however the back rolls up from it; the neck gives way.
export function headRestX(scene: SideScene, stances: readonly Stance[]): number | null {
  const [first] = stances;
  if (first === undefined || scene.supportRiseM > 0 || !scene.supports.includes('upperBack')) return null;
  return headOf(first, null).centre.x;
}

export interface Cast {
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
function pictureOf(scene: SideScene, frame: SideFrame, index: number, cast: Cast): Picture {
  const { stances, furniture } = cast;
  const now = posedAt(cast, index);
  const start = frame.name === 'end' ? startOf(scene, cast) : null;
  const { stance, figure } = now;
  const way = { first: stances[0] as Stance, last: stances[stances.length - 1] as Stance };
  const pliant = pliantStrokes(scene, stance, way, figure.arm.hand);
  const goes = [...furniture.moving, ...furniture.over].flatMap((draw) => draw(stance));
  const standing = furniture.things.flatMap(({ strokes }) => strokes);
  const things = [...standing, ...pliant, ...figure.weight].flatMap(barsAround);
  const taken = [...figure.bars, ...things];
  const ghostHead = start === null ? null : movedHead(start, now);
  const shade = start === null ? [] : ghostBars(start.stance, ghostHead);
  const angle = hipAngle(stance, frame.hipFlexionDeg, [...taken, ...goes.flatMap(barsAround), ...shade]);
  const signs = [...taken, ...angle.bars, ...angle.captions.map(captionBar)];
  const sign = arrowOf(scene, frame, index, cast, signs);
  return {
    strokes: [
      ...standing,
      ...(start === null ? [] : furniture.moving.flatMap((draw) => faint(draw(start.stance)))),
      ...furniture.moving.flatMap((draw) => draw(stance)),
      ...(start === null ? [] : ghost(start.stance, ghostHead)),
      ...figure.behind,
      ...furniture.between.flatMap((draw) => draw(stance)),
      ...figure.front,
      ...furniture.over.flatMap((draw) => draw(stance)),
      ...angle.strokes,
      ...figure.over,
      ...pliant,
      ...sign.strokes,
    ],
    captions: angle.captions,
    arrowAt: sign.at,
    arcDeg: angle.arcDeg,
  };
}

function posedAt({ stances, figures }: Cast, index: number): Posed {
  return { stance: stances[index] as Stance, figure: figures[index] as Figure };
}

// A head that moves by less than its own width has no ghost of its own.
function movedHead(start: Posed, { figure, stance }: Posed): Point | null {
  const from = start.figure.head.centre;
  return distance(from, figure.head.centre) < 0.13 * stance.heightM ? null : from;
}

function startOf(scene: SideScene, cast: Cast): Posed | null {
  const index = scene.frames.findIndex(({ name }) => name === 'start');
  return index < 0 ? null : posedAt(cast, index);
}

// The author's own arrow, or the way from the frame before.
function arrowOf(
  scene: SideScene,
  frame: SideFrame,
  index: number,
  cast: Cast,
  taken: readonly Bar[],
): Arrow {
  const now = posedAt(cast, index);
  const { heightM } = now.stance;
  if (frame.arrow !== undefined) {
    const { at, radius } = placesOf(now)[frame.arrow.at];
    const way = WAYS[frame.arrow.to];
    // Down on to the head: the arrow comes from over it.
    const over = frame.arrow.at === 'head' && frame.arrow.to === 'down';
    const from = over ? along(at, -(2 * radius + 0.155) * heightM, way) : at;
    return { strokes: signArrow(from, way, over ? 0 : radius * heightM, heightM), at: frame.arrow.at };
  }
  if (index === 0 || !['end', 'hold'].includes(frame.name)) return NO_ARROW;
  return arrow(moversOf(scene, posedAt(cast, index - 1), now), taken, heightM);
}

const WAYS = {
  up: { x: 0, y: 1 },
  down: { x: 0, y: -1 },
  forward: { x: 1, y: 0 },
  back: { x: -1, y: 0 },
  out: { x: 1, y: 0 },
  in: { x: -1, y: 0 },
} as const;

function placesOf({ stance, figure }: Posed): Record<ArrowSign['at'], { at: Point; radius: number }> {
  return {
    head: { at: figure.head.centre, radius: 0.08 },
    hands: { at: figure.arm.hand, radius: 0.05 },
    hip: { at: stance.hip, radius: 0.09 },
    knee: { at: stance.work.knee, radius: 0.06 },
    foot: { at: stance.work.ankle, radius: 0.05 },
  };
}

function faint(strokes: readonly Stroke[]): readonly Stroke[] {
  return strokes.map((stroke) => ({
    ...stroke,
    fill: stroke.fill === null ? null : 'paperWhite',
    stroke: stroke.stroke === null ? null : 'ghost',
  }));
}

// In the order in which a reader looks: the hips of a body that lies unless its foot travels clearly further, the foot
// that swings, or the head of a body that stands.
function moversOf(scene: SideScene, start: Posed, now: Posed): readonly Mover[] {
  const [from, to] = [start.stance, now.stance];
  const { heightM } = to;
  const loaded = scene.weight?.at.endsWith('ankle') ?? false;
  const lies = Math.abs(to.pose.trunk) > 60 && to.shoulder.y < 0.4 * heightM;
  const move = (part: Mover['part'], a: Point, b: Point, about: Point, radius: number) => ({
    part,
    from: a,
    to: b,
    about,
    radiusM: radius * heightM,
  });
  // A bar on the lap reaches further round the hips than they do.
  const hips = move('hip', from.hip, to.hip, to.shoulder, scene.weight?.at === 'pelvisFront' ? 0.15 : 0.075);
  const head = move('head', start.figure.head.centre, now.figure.head.centre, to.hip, 0.07);
  const foot = move(
    'foot',
    from.work.ankle,
    to.work.ankle,
    to.work.knee,
    loaded ? 0.09 : lies ? 0.05 : 0.065,
  );
  const travel = (mover: Mover) => distance(mover.from, mover.to);
  if (liftsHeels(from, to)) return [straightUp(head), hips];
  const back = Math.max(from.pose.trunk, to.pose.trunk) < -30;
  if (back || lies) return travel(foot) > 1.3 * travel(hips) ? [foot, hips] : [hips, foot];
  if (to.work.planted) return [head, hips];
  return [foot, head, hips];
}

// Rising on the toes goes straight up, whatever the balance does to the head.
function liftsHeels({ work: was }: Stance, { work: is, heightM }: Stance): boolean {
  return (
    is.planted && is.heel.y - was.heel.y > 0.02 * heightM && distance(was.fore, is.fore) < 0.02 * heightM
  );
}

function straightUp({ part, from, to, about, radiusM }: Mover): Mover {
  const below = { x: to.x, y: Math.min(from.y, to.y - 0.06) };
  return { part, from: below, to, about: { x: about.x - 10, y: to.y }, radiusM };
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
