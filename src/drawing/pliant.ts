/** Things that give way: a band, a strap and a towel, drawn between the body and what holds them. */
import type { Point } from '../mechanics/pose.ts';
import type { SideScene } from '../mechanics/scene.ts';
import { edged, filled, lined, type Stroke } from './strokes.ts';
import { circle, polyline, rectangle, taperedCapsule } from './outline.ts';
import { along, clamp, directionFrom, distance } from './plane.ts';
import { LINE } from './proportions.ts';
import type { Stance } from './stance.ts';

/** The first and the last stance of a movement. */
export interface FirstAndLast {
  readonly first: Stance;
  readonly last: Stance;
}

const BAND_M = 0.02;
const STRAP_M = 0.026;

/** Band, strap and towel of one stance, drawn over the body. `way` holds the first and the last stance: a band pulls back from there. */
export function pliantStrokes(
  scene: SideScene,
  stance: Stance,
  way: FirstAndLast,
  hand: Point,
): readonly Stroke[] {
  return [
    ...(scene.props.includes('band') ? band(scene, stance, way, hand) : []),
    ...(scene.props.includes('strap') && !isHooked(scene) ? [roundTheSole(stance, hand)] : []),
    ...(scene.props.includes('towel') ? towel(scene, stance, hand) : []),
  ];
}

// A free leg is pulled back to where it came from, a planted one holds the band down for the hands or the hips.
function band(scene: SideScene, stance: Stance, way: FirstAndLast, hand: Point): readonly Stroke[] {
  const { work, hip, heightM } = stance;
  if (!work.planted) return pulledLeg(stance, way);
  const lying = Math.abs(stance.pose.trunk) > 60 && scene.supports.includes('upperBack');
  const from = lying ? along(stance.pelvisFront, 0.01, { x: 0, y: 1 }) : hand;
  const foot = lying ? { x: hip.x, y: 0 } : { x: work.mid.x, y: work.groundY };
  return [
    lined(polyline([from, foot], false), 'prop', BAND_M),
    ...(lying ? [cuff(from, 0.02 * heightM)] : []),
  ];
}

// The post stands where the band pulls to: back along the ankle's way, or along the shank when the pose is held.
function pulledLeg({ work, heightM }: Stance, { first, last }: FirstAndLast): readonly Stroke[] {
  const [start, end] = [first.work.ankle, last.work.ankle];
  const pull = distance(end, start) < 0.02 ? directionFrom(last.work.knee, end) : directionFrom(end, start);
  const side = Math.sign(pull.x) || 1;
  const anchor = { x: start.x + side * 0.42, y: clamp(start.y, 0.06, 0.3) };
  const post = rectangle({ x: anchor.x, y: anchor.y + 0.08 }, { x: anchor.x + side * 0.05, y: 0 });
  return [
    edged(post, 'propFill', 'prop', LINE.prop * heightM),
    lined(polyline([work.ankle, anchor], false), 'prop', BAND_M),
    cuff(work.ankle, 0.026 * heightM),
  ];
}

// Feet held down are hooked under something heavy, which stands with the furniture.
function isHooked({ supports }: SideScene): boolean {
  return supports.some((support) => support.endsWith('.knee') || support.endsWith('.ankle'));
}

// From the hands round the sole.
function roundTheSole({ work }: Stance, hand: Point): Stroke {
  return lined(polyline([hand, work.mid], false), 'prop', STRAP_M);
}

// Under sliding heels on the floor, otherwise a loop for the hands.
function towel(scene: SideScene, stance: Stance, hand: Point): readonly Stroke[] {
  // Folded behind a heel that pushes it stands with the wall.
  if (scene.props.includes('wall')) return [];
  const slides = scene.supports.includes('upperBack') || Math.abs(stance.pose.trunk) < 60;
  if (!slides) return [lined(polyline([hand, stance.work.mid], false), 'prop', STRAP_M * 1.3)];
  const { heel, groundY } = stance.work;
  const flat = taperedCapsule(
    { x: heel.x - 0.11, y: groundY + 0.008 },
    0.012,
    { x: heel.x + 0.2, y: groundY + 0.008 },
    0.012,
  );
  return [filled(flat, 'prop')];
}

function cuff(at: Point, radiusM: number): Stroke {
  return edged(circle(at, radiusM), 'prop', 'paperWhite', 0.008);
}
