/** A posture set down in the picture: floor at y = 0, the point that stays put at x = 0, all in metres. */
import type { SupportPoint } from '../mechanics/movement.ts';
import type { LegPoints, Point, Pose, Posture } from '../mechanics/pose.ts';
import type { SideFrame, SideScene } from '../mechanics/scene.ts';
import { SKIN } from './proportions.ts';
import { settled } from './settled.ts';
import { torsoKnots } from './torso.ts';

/** One leg with the height of what its foot stands on; 0 is the floor. */
export interface Leg extends LegPoints {
  readonly groundY: number;
  /** Whether the foot rests on something, or hangs in the air. */
  readonly planted: boolean;
}

export interface Stance {
  readonly heightM: number;
  readonly pose: Pose;
  readonly hip: Point;
  readonly shoulder: Point;
  readonly hands: Point;
  readonly upperBack: Point;
  readonly seat: Point;
  readonly pelvisFront: Point;
  readonly work: Leg;
  /** Equal to `work` in a symmetric pose. */
  readonly other: Leg;
  readonly symmetric: boolean;
  /** Height of the floor or bench the body lies along; 0 when it does not lie. */
  readonly lyingY: number;
}

/** `asSolved`: no body is set over its feet; a moving picture shows the model's own angles. */
type Setting = SideScene & { readonly asSolved?: boolean };

/** Height of a bench and of a bed that carry a lying body, metres [common-practice]. */
const BENCH_TOP_M = 0.42;
const BED_TOP_M = 0.5;
// A foot within this of the lowest one stands on the same ground.
const LEVEL_M = 0.03;

/**
 * The scene's postures set down on one floor, in the order of its frames. The upper back stays put where it is a
 * support, otherwise the first support, otherwise the hip.
 */
export function stancesOf(scene: Setting): readonly Stance[] {
  const first = scene.frames[0];
  if (first === undefined) return [];
  const riseM = riseOf(scene, first.posture);
  return scene.frames.map((frame) => setDown(scene, frame, riseM));
}

/** The height of a support's skin in a set-down stance, metres above the floor. */
export function contactOf(stance: Stance, support: SupportPoint): Point {
  return skinPoint(stance, { x: stance.hip.x, y: stance.hip.y }, support, stance.heightM);
}

/** The leg and part a support names, or null for the trunk and hands. */
export function legPartOf(support: SupportPoint): { leg: 'work' | 'other' | 'both'; part: string } | null {
  const [leg, part] = support.split('.');
  return part === undefined ? null : { leg: leg as 'work' | 'other' | 'both', part };
}

function setDown(scene: Setting, frame: SideFrame, riseM: number): Stance {
  const { offGroundM = 0 } = frame;
  const posture = scene.asSolved === true ? frame.posture : settled(scene, frame.posture);
  const heightM = scene.body.heightM;
  const hip = { x: 0, y: 0 };
  const contacts = scene.supports.map((support) => skinPoint(posture, hip, support, heightM));
  const standsAt =
    contacts.length === 0 ? lyingFloor(scene, posture) : floorUnder(scene, posture, contacts, riseM);
  const floorY = offGroundM > 0 ? Math.min(standsAt, ...toeTips(posture)) - offGroundM : standsAt;
  const dx = -anchorOf(scene, posture, contacts[0] ?? hip).x;
  const move = (point: Point): Point => ({ x: point.x + dx, y: point.y - floorY });
  const leg = (points: LegPoints, which: 'work' | 'other'): Leg => {
    const moved = {
      knee: move(points.knee),
      ankle: move(points.ankle),
      heel: move(points.heel),
      mid: move(points.mid),
      fore: move(points.fore),
      footCom: move(points.footCom),
    };
    const planted = offGroundM === 0 && isPlanted(scene, posture, which);
    const soleY = Math.min(moved.heel.y, moved.fore.y);
    return { ...moved, planted, groundY: planted && soleY > LEVEL_M ? soleY : 0 };
  };
  const work = leg(posture.work, 'work');
  const other = leg(posture.other, 'other');
  return {
    heightM,
    pose: posture.pose,
    hip: move(hip),
    shoulder: move(posture.shoulder),
    hands: move(posture.hands),
    upperBack: move(posture.upperBack),
    seat: move(posture.seat),
    pelvisFront: move(posture.pelvisFront),
    work,
    other: overStep(work, other, heightM) ? { ...other, groundY: work.groundY } : other,
    symmetric: posture.pose.other === undefined,
    lyingY: contacts.length === 0 && isLying(posture) ? lyingTopM(scene) : 0,
  };
}

// A hanging foot beside the one on the step has the step under it too.
function overStep(work: Leg, other: Leg, heightM: number): boolean {
  return (
    !other.planted &&
    Math.abs(other.ankle.x - work.ankle.x) < 0.15 * heightM &&
    other.fore.y > work.groundY - 0.06 * heightM
  );
}

// One foot on a step: the card may leave the rise to the picture, where the hanging foot of the start shows it.
function riseOf(scene: SideScene, start: Posture): number {
  const [only, second] = scene.supports;
  if (scene.supportRiseM !== 0 || only === undefined || second !== undefined) return scene.supportRiseM;
  const stands = scene.props.includes('step') || scene.props.includes('books');
  if (!stands || start.pose.other === undefined || legPartOf(only)?.leg === 'both') return 0;
  const onStep = skinPoint(start, { x: 0, y: 0 }, only, scene.body.heightM).y;
  return Math.max(0, onStep - Math.min(start.other.heel.y, start.other.fore.y));
}

function floorUnder(scene: SideScene, posture: Posture, contacts: readonly Point[], riseM: number): number {
  const lowest = Math.min(...contacts.map(({ y }) => y));
  if (contacts.length > 1) return lowest;
  if (scene.supports[0] === 'seat') return Math.min(lowest, ...soles(posture));
  return lowest - Math.max(0, riseM);
}

function lyingFloor(scene: SideScene, posture: Posture): number {
  const heightM = scene.body.heightM;
  const flesh = torsoKnots(posture.pose, { x: 0, y: 0 }, heightM).map(({ y }) => y);
  // On a bench the legs may hang over its end.
  const top = lyingTopM(scene);
  if (isLying(posture) && top > 0) return Math.min(...flesh) - top;
  const legs = [posture.work, posture.other].flatMap(({ knee, ankle }) => [
    knee.y - SKIN.knee * heightM,
    ankle.y - SKIN.ankle * heightM,
  ]);
  return Math.min(...flesh, ...legs, ...(isLying(posture) ? plantedSoles(posture) : soles(posture)));
}

/** Height of what a lying body has under it; 0 for the floor. */
function lyingTopM({ props }: SideScene): number {
  if (props.includes('bed')) return BED_TOP_M;
  return props.includes('bench') ? BENCH_TOP_M : 0;
}

function anchorOf(scene: SideScene, posture: Posture, first: Point): Point {
  return scene.supports.includes('upperBack') ? posture.upperBack : first;
}

function isLying(posture: Posture): boolean {
  return Math.abs(posture.pose.trunk) > 60;
}

function soles(posture: Posture): readonly number[] {
  return [posture.work, posture.other].flatMap(({ heel, fore }) => [heel.y, fore.y]);
}

// In the air the tips of the toes hang lowest; they reach on from the ball of the foot by a good third of the sole.
function toeTips(posture: Posture): readonly number[] {
  return [posture.work, posture.other].map(({ heel, fore }) => fore.y + 0.38 * (fore.y - heel.y));
}

function plantedSoles({ pose, work, other }: Posture): readonly number[] {
  const otherPose = pose.other ?? pose.work;
  return [
    ...(pose.work.pitch === undefined ? [] : [work.heel.y, work.fore.y]),
    ...(otherPose.pitch === undefined ? [] : [other.heel.y, other.fore.y]),
  ];
}

function isPlanted(scene: SideScene, posture: Posture, which: 'work' | 'other'): boolean {
  const named = scene.supports.some((support) => {
    const at = legPartOf(support);
    return (
      at !== null && ['heel', 'mid', 'fore'].includes(at.part) && (at.leg === which || at.leg === 'both')
    );
  });
  const pose = which === 'work' ? posture.pose.work : (posture.pose.other ?? posture.pose.work);
  return named || pose.pitch !== undefined;
}

type Points = Pick<Posture, 'shoulder' | 'hands' | 'upperBack' | 'work' | 'other'>;

function skinPoint(points: Points, hip: Point, support: SupportPoint, heightM: number): Point {
  const at = legPartOf(support);
  if (at === null) return below(trunkPoint(points, hip, support), trunkSkin(support) * heightM);
  const leg = at.leg === 'other' ? points.other : points.work;
  if (at.part === 'knee') return below(leg.knee, SKIN.knee * heightM);
  if (at.part === 'ankle') return below(leg.ankle, SKIN.ankle * heightM);
  return at.part === 'heel' ? leg.heel : at.part === 'fore' ? leg.fore : leg.mid;
}

function trunkPoint(points: Points, hip: Point, support: SupportPoint): Point {
  if (support === 'seat') return hip;
  if (support === 'hands') return points.hands;
  return support === 'shoulder' ? points.shoulder : points.upperBack;
}

function trunkSkin(support: SupportPoint): number {
  return support === 'seat' || support === 'hands' || support === 'shoulder' ? SKIN[support] : 0;
}

function below(point: Point, metres: number): Point {
  return { x: point.x, y: point.y - metres };
}
