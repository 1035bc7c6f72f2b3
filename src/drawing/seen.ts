/** Reads off a scene's drawings what they show: hands on things, bodies in things, what moved, arcs and numbers. */
import type { Point } from '../mechanics/pose.ts';
import type { Prop, Scene, SideScene } from '../mechanics/scene.ts';
import type { Entered, SeenFrame, Touched } from '../mechanics/seen.ts';
import { footKnots } from './foot.ts';
import { frontSeen } from './front/seen.ts';
import type { Thing } from './furniture.ts';
import type { Stroke } from './strokes.ts';
import { hullPoints } from './outline.ts';
import { between, directionFrom, distance, frameAt, upwardAt } from './plane.ts';
import { farReachOf } from './hands.ts';
import { castOf, sidePictures, type Cast } from './sidePicture.ts';
import type { Leg, Stance } from './stance.ts';

/** A hand this near to a thing's edge touches it, metres [choice]. */
const TOUCH_M = 0.05;

/** What each frame of the scene's drawings shows. */
export function seenIn(scene: Scene): readonly SeenFrame[] {
  if (scene.view !== 'side') return frontSeen(scene);
  const cast = castOf(scene);
  const { pictures } = sidePictures(scene);
  return scene.frames.map((frame, index) => {
    const stance = cast.stances[index] as Stance;
    const picture = pictures[index];
    const drawn = drawnProps(scene, cast, stance);
    return {
      hands: handsOn(scene, cast, index),
      entered: cast.furniture.things
        .filter(({ beside }) => !beside)
        .flatMap((thing) => enteredBy(stance, thing)),
      heel: stance.work.heel,
      ball: scene.props.includes('ball')
        ? middleOf(cast.furniture.moving.flatMap((draw) => draw(stance)))
        : null,
      arrowAt: picture?.arrowAt ?? null,
      arcDeg: picture?.arcDeg ?? null,
      shownDeg: frame.hipFlexionDeg,
      floatsM: floatsOf(stance, frame.offGroundM ?? 0, standsOnThings(scene, cast)),
      drawn,
    };
  });
}

function drawnProps({ props }: SideScene, { furniture }: Cast, stance: Stance): readonly Prop[] {
  const standing = furniture.things.map(({ prop }) => prop);
  const going = (['ball', 'hurdle', 'machine', 'pillows', 'towel', 'band'] as const).filter(
    (prop) =>
      props.includes(prop) &&
      (prop === 'band' || [...furniture.moving, ...furniture.over].some((draw) => draw(stance).length > 0)),
  );
  return [...new Set([...standing, ...going])];
}

function handsOn(scene: SideScene, cast: Cast, index: number): readonly Touched[] {
  const stance = cast.stances[index] as Stance;
  const figure = cast.figures[index];
  const far = farReachOf(scene, stance, cast.furniture, scene.frames[index]?.arms ?? null);
  const hands = [figure?.arm.hand, far?.hand].filter((hand) => hand !== undefined);
  return [...new Set(hands.flatMap((hand) => touchedBy(hand, scene, stance, cast)))];
}

function touchedBy(hand: Point, scene: SideScene, stance: Stance, { furniture }: Cast): readonly Touched[] {
  const { heightM, hip, shoulder, work, pose, lyingY } = stance;
  const near = (point: Point, within: number) => distance(hand, point) < within * heightM;
  const trunk = frameAt(shoulder, upwardAt(pose.trunk));
  const thigh = [0.35, 0.5, 0.65, 0.8, 0.95].map((share) => between(hip, work.knee, share));
  const ways: readonly (readonly [Touched, boolean])[] = [
    ['table', onThing(hand, furniture.things, 'table')],
    ['chair', onThing(hand, furniture.things, 'chair')],
    ['wall', onThing(hand, furniture.things, 'wall')],
    ['floor', hand.y - lyingY < 0.04 * heightM],
    ['grip', furniture.grip !== null && near(furniture.grip, 0.03)],
    [
      'weight',
      scene.weight?.at === 'hands' || (scene.weight?.at === 'pelvisFront' && near(stance.pelvisFront, 0.06)),
    ],
    ['band', scene.props.includes('band')],
    ['strap', scene.weight?.kind === 'rucksack' && near(trunk(-0.075 * heightM, 0.045 * heightM), 0.03)],
    ['hips', near(hip, 0.11)],
    ['thighs', thigh.some((point) => near(point, 0.07))],
    ['chest', near(trunk(-0.07 * heightM, 0.06 * heightM), 0.07)],
    ['forehead', pose.trunk > 60 && hand.x > shoulder.x],
  ];
  return ways.flatMap(([touched, is]) => (is ? [touched] : []));
}

function onThing(hand: Point, things: readonly Thing[], prop: Prop): boolean {
  return things
    .filter((thing) => thing.prop === prop)
    .some(({ strokes }) => strokes.some((stroke) => Math.abs(depthIn(hand, stroke)) < TOUCH_M));
}

/** Things one may lean on and press into without entering them. */
const SOFT: readonly Prop[] = ['mat', 'pillows', 'bed'];

function enteredBy(stance: Stance, { prop, strokes }: Thing): readonly Entered[] {
  if (SOFT.includes(prop)) return [];
  return pointsOf(stance).flatMap(({ part, points }) => {
    const depthM = Math.max(...points.flatMap((point) => strokes.map((stroke) => depthIn(point, stroke))));
    return depthM > 0 ? [{ part, prop, depthM }] : [];
  });
}

interface Sampled {
  readonly part: Entered['part'];
  readonly points: readonly Point[];
}

// The skin of the feet, and the middle of everything else: what is drawn before a thing's edge has not entered it.
function pointsOf(stance: Stance): readonly Sampled[] {
  const { hip, shoulder, work, other, symmetric, heightM } = stance;
  const line = (a: Point, b: Point) => [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => between(a, b, share));
  const leg = (one: Leg): readonly Sampled[] => [
    { part: 'foot', points: footKnots(one, heightM) },
    { part: 'shank', points: line(one.knee, one.ankle) },
    { part: 'thigh', points: line(hip, one.knee) },
  ];
  return [...leg(work), ...(symmetric ? [] : leg(other)), { part: 'trunk', points: line(hip, shoulder) }];
}

// Metres inside a filled outline of straight sides; negative outside of it.
function depthIn(point: Point, { outline, fill }: Stroke): number {
  const corners = hullPoints(outline);
  const sides = corners.map((b, index) => ({
    a: corners[(index + corners.length - 1) % corners.length] as Point,
    b,
  }));
  const away = Math.min(...sides.map(({ a, b }) => toLine(point, a, b)));
  return fill !== null && isWithin(point, sides) ? away : -away;
}

function isWithin({ x, y }: Point, sides: readonly { readonly a: Point; readonly b: Point }[]): boolean {
  return sides.reduce(
    (inside, { a, b }) =>
      a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x ? !inside : inside,
    false,
  );
}

function toLine(point: Point, a: Point, b: Point): number {
  const length = distance(a, b);
  if (length === 0) return distance(point, a);
  const way = directionFrom(a, b);
  const along = (point.x - a.x) * way.x + (point.y - a.y) * way.y;
  return distance(point, between(a, b, Math.min(Math.max(along / length, 0), 1)));
}

function middleOf(strokes: readonly Stroke[]): Point | null {
  const points = strokes.slice(0, 1).flatMap(({ outline }) => hullPoints(outline));
  if (points.length === 0) return null;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}

/** Things a foot may stand on instead of the floor. */
const STOOD_ON: readonly Prop[] = ['step', 'books', 'bench', 'chair', 'pillows', 'bed'];

function standsOnThings({ props }: SideScene, { furniture }: Cast): boolean {
  return props.includes('ball') || furniture.things.some(({ prop }) => STOOD_ON.includes(prop));
}

function floatsOf({ work, other, symmetric }: Stance, offGroundM: number, raised: boolean): number {
  if (offGroundM > 0) return 0;
  // A lying leg rests on its calf, the toes up.
  const stands = ({ planted, heel, fore }: Leg) =>
    planted && Math.abs(fore.x - heel.x) > Math.abs(fore.y - heel.y);
  const standing = [work, ...(symmetric ? [] : [other])].filter(stands);
  const over = standing.map(
    ({ heel, mid, fore, groundY }) => Math.min(heel.y, mid.y, fore.y) - (raised ? groundY : 0),
  );
  return Math.max(0, ...over);
}
