/** Which prop stands where: decided once for all frames of a scene, so that things stay put while the body moves. */
import type { Point } from '../mechanics/pose.ts';
import type { Prop, Scene } from '../mechanics/scene.ts';
import { bench, books, chair, mat, pillows, table, wall, type Surface } from './blocks.ts';
import { edged, type Stroke } from './ink.ts';
import { circle } from './outline.ts';
import { SKIN } from './proportions.ts';
import { RAISED_FROM_M, raisedSupports } from './pedestal.ts';
import { contactOf, type Leg, type Stance } from './stance.ts';
import { torsoKnots } from './torso.ts';
import { reachBelow } from './weightKinds.ts';

export interface Furniture {
  /** Drawn behind the body. */
  readonly behind: readonly Stroke[];
  /** Drawn between the two legs. */
  readonly between: readonly ((stance: Stance) => readonly Stroke[])[];
  /** Where a free hand rests, when a prop offers it a place. */
  readonly handRest: Point | null;
  /** Depth of the floor line under the figure's floor: a mat's thickness, else 0. */
  readonly floorBelowM: number;
}

const MAT_M = 0.03;
const TABLE_TOP_M = 0.74;
const CHAIR_SEAT_M = 0.45;
const CHAIR_RAIL_M = 0.87;
const WALL_M = 0.5;
/** The scene's props for its set-down stances. A raised support always gets something to rest on, named or not. */
export function furnish(scene: Scene, stances: readonly Stance[]): Furniture {
  const has = (prop: Prop) => scene.props.includes(prop);
  const raised = raisedSupports(scene, stances);
  const used = new Set(raised.map(({ prop }) => prop));
  const free = (prop: Prop) => has(prop) && !used.has(prop);
  const handRest = restFor(scene, stances, free);
  return {
    behind: [
      ...(has('wall') ? wallFor(stances, scene.supports.includes('hands')) : []),
      ...(has('mat') ? matFor(scene, stances) : []),
      ...raised.flatMap(({ strokes }) => strokes),
      ...(free('bench') ? lyingBench(stances) : []),
      ...(free('chair') ? spareChair(stances, handRest) : []),
      ...(free('table') && handRest !== null ? table(tableAt(handRest, scene.body.heightM)) : []),
      ...(free('books') ? booksUnderHands(scene, stances) : []),
      ...(free('pillows') ? sparePillows(stances) : []),
    ],
    between: free('ball')
      ? [({ work, heightM }) => [edged(circle(work.knee, 0.07 * heightM), 'prop', 'paperWhite', 0.011)]]
      : [],
    handRest,
    floorBelowM: has('mat') ? MAT_M : 0,
  };
}

function wallFor(stances: readonly Stance[], pushed: boolean): readonly Stroke[] {
  const reachesForward = stances.every(({ pose }) => typeof pose.arms === 'number' && pose.arms > 60);
  const top = Math.max(...stances.map(({ shoulder, hip }) => Math.max(shoulder.y, hip.y))) + WALL_M;
  if (pushed || reachesForward) {
    // The palm lies half a hand behind the finger tips.
    return wall(Math.max(...stances.map(({ hands, heightM }) => hands.x + 0.05 * heightM)), top, 'right');
  }
  return wall(Math.min(...stances.flatMap(skinXs)), top, 'left');
}

function skinXs(stance: Stance): readonly number[] {
  return torsoKnots(stance.pose, stance.hip, stance.heightM).map(({ x }) => x);
}

function matFor(scene: Scene, stances: readonly Stance[]): readonly Stroke[] {
  const xs = stances.flatMap((stance) => {
    const { hip, shoulder, work, other, heightM } = stance;
    const lying =
      shoulder.y < 0.35 * heightM ? [shoulder.x - 0.2 * Math.sign(hip.x - shoulder.x) * heightM] : [];
    const resting = scene.supports.map((support) => contactOf(stance, support).x);
    return [
      ...lying,
      ...resting,
      ...[work, other]
        .filter(({ ankle }) => ankle.y < 0.15 * heightM)
        .flatMap(({ heel, fore }) => [heel.x, fore.x]),
      work.knee.x,
      hip.x,
    ];
  });
  return mat(Math.min(...xs) - 0.08, Math.max(...xs) + 0.12, MAT_M);
}

// It ends under the shins, or at the hips when a leg hangs over its end.
function lyingBench(stances: readonly Stance[]): readonly Stroke[] {
  const lying = stances.find(({ lyingY }) => lyingY > 0);
  if (lying === undefined) return [];
  const { hip, shoulder, other, heightM, lyingY } = lying;
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  const hangs = stances.some(({ work, other: far }) => Math.min(work.knee.y, far.knee.y) < lyingY);
  const foot = hangs ? hip.x - headwards * 0.03 * heightM : other.ankle.x + headwards * 0.05 * heightM;
  const head = shoulder.x + headwards * 0.2 * heightM;
  return bench({ left: Math.min(head, foot), right: Math.max(head, foot), y: lyingY });
}

// A free chair is a seat to be aimed at when the hips sink towards it, otherwise something to hold on to: its rail when
// standing, its seat when kneeling.
function spareChair(stances: readonly Stance[], handRest: Point | null): readonly Stroke[] {
  const lowest = lowestHip(stances);
  if (sinks(stances)) {
    return chair(
      { left: lowest.hip.x - 0.3, right: lowest.hip.x + 0.13, y: lowest.hip.y - SKIN.seat * lowest.heightM },
      'left',
    );
  }
  if (handRest === null) return [];
  if (kneels(lowest))
    return chair({ left: handRest.x - 0.1, right: handRest.x + 0.32, y: CHAIR_SEAT_M }, 'right');
  return chair({ left: handRest.x - 0.03, right: handRest.x + 0.4, y: CHAIR_SEAT_M }, 'left');
}

function restFor(scene: Scene, stances: readonly Stance[], free: (prop: Prop) => boolean): Point | null {
  const first = stances[0];
  if (first === undefined || scene.supports.includes('hands')) return null;
  const { shoulder, heightM, pose } = first;
  if (scene.weight?.at === 'hands' || pose.arms === 'hang') return null;
  const holdsChair = free('chair') && !sinks(stances);
  if (typeof pose.arms === 'number') return free('table') || holdsChair ? first.hands : null;
  const palm = SKIN.hands * heightM;
  if (free('table')) return { x: shoulder.x + 0.24 * heightM, y: TABLE_TOP_M + palm };
  if (!holdsChair) return null;
  return { x: shoulder.x + 0.2 * heightM, y: (kneels(first) ? CHAIR_SEAT_M : CHAIR_RAIL_M) + palm };
}

function tableAt(handRest: Point, heightM: number): Surface {
  return { left: handRest.x - 0.12, right: handRest.x + 0.42, y: handRest.y - SKIN.hands * heightM };
}

function booksUnderHands(scene: Scene, stances: readonly Stance[]): readonly Stroke[] {
  const lowest = stances.reduce((low, stance) => (stance.hands.y < low.hands.y ? stance : low));
  const y = lowest.hands.y - (scene.weight?.at === 'hands' ? reachBelow(scene.weight) : 0.05);
  return y < RAISED_FROM_M ? [] : books({ left: lowest.hands.x - 0.13, right: lowest.hands.x + 0.13, y });
}

// Pillows mark how low the seat may come; under a knee one of them is a pad.
function sparePillows(stances: readonly Stance[]): readonly Stroke[] {
  const lowest = lowestHip(stances);
  const knee = kneeDown(lowest)?.knee;
  if (knee !== undefined) return pillows({ left: knee.x - 0.2, right: knee.x + 0.16, y: 0.06 });
  const under = Math.min(
    ...torsoKnots(lowest.pose, lowest.hip, lowest.heightM)
      .slice(0, 3)
      .map(({ y }) => y),
  );
  return under < RAISED_FROM_M || under > 0.7
    ? []
    : pillows({ left: lowest.hip.x - 0.26, right: lowest.hip.x + 0.14, y: under });
}

function lowestHip(stances: readonly Stance[]): Stance {
  return stances.reduce((low, stance) => (stance.hip.y < low.hip.y ? stance : low));
}

// Both feet planted and the hips on their way down, or down already: standing, they are 0.53 of height above the floor.
function sinks(stances: readonly Stance[]): boolean {
  const lowest = lowestHip(stances);
  const highest = Math.max(...stances.map(({ hip }) => hip.y));
  const { hip, heightM, symmetric, work } = lowest;
  return symmetric && work.planted && (hip.y < 0.42 * heightM || highest - hip.y > 0.06 * heightM);
}

function kneels(stance: Stance): boolean {
  return kneeDown(stance) !== null;
}

// A leg on its knee, not one that lies along the floor.
function kneeDown({ work, other, hip, heightM }: Stance): Leg | null {
  const down = (leg: Leg) => !leg.planted && leg.knee.y < 0.06 * heightM && hip.y > 0.15 * heightM;
  return down(work) ? work : down(other) ? other : null;
}
