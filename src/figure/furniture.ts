/** Which prop stands where: decided once for all frames of a scene, so that things stay put while the body moves. */
import type { Point } from '../mechanics/pose.ts';
import type { Prop, SideScene } from '../mechanics/scene.ts';
import { ball, bed, bench, books, chair, mat, pillows, table, wall, type Surface } from './blocks.ts';
import { edged, lined, type Stroke } from './ink.ts';
import { circle, polyline, rectangle } from './outline.ts';
import { along, between, directionFrom, distance, turned } from './plane.ts';
import { LINE, SKIN } from './proportions.ts';
import { RAISED_FROM_M, raisedSupports } from './pedestal.ts';
import { contactOf, legPartOf, type Leg, type Stance } from './stance.ts';
import { torsoKnots } from './torso.ts';
import { reachBelow } from './weightKinds.ts';

/** A prop where it stands. */
export interface Thing {
  readonly prop: Prop;
  readonly strokes: readonly Stroke[];
  /** It stands beside the body, which may pass before it; nothing can then enter it. */
  readonly beside: boolean;
}

type Draw = (stance: Stance) => readonly Stroke[];

export interface Furniture {
  /** What stands still behind the body. */
  readonly things: readonly Thing[];
  /** Drawn between the two legs. */
  readonly between: readonly Draw[];
  /** Things that go with the body, drawn behind it: a ball rolls. */
  readonly moving: readonly Draw[];
  /** Things that hide an edge of the body. */
  readonly over: readonly Draw[];
  /** Where a free hand rests, when a prop offers it a place. */
  readonly handRest: Point | null;
  /** What a hand holds on to all the time; null where nothing offers itself. */
  readonly grip: Point | null;
  /** Depth of the floor line under the figure's floor: a mat's thickness, else 0. */
  readonly floorBelowM: number;
}

const MAT_M = 0.03;
const TABLE_TOP_M = 0.74;
const WORKTOP_M = 0.9;
const ARM_REACH = 0.42;
const CHAIR_SEAT_M = 0.45;
const CHAIR_RAIL_M = 0.87;
const WALL_M = 0.5;
/** How far a table's edge is nearer to the body than the hand on it. */
const TABLE_EDGE_M = 0.12;
const TOWEL_M = 0.07;
const BELLY_PILLOW_M = 0.055;
/** A folded blanket under lying hips. */
const LOW_PILLOW_M = 0.025;
const HURDLE_M = 0.4;

/** The scene's props for its set-down stances. A raised support always gets something to rest on, named or not. */
export function furnish(scene: SideScene, stances: readonly Stance[]): Furniture {
  const has = (prop: Prop) => scene.props.includes(prop);
  const raised = raisedSupports(scene, stances);
  const used = new Set(raised.map(({ prop }) => prop));
  const free = (prop: Prop) => has(prop) && !used.has(prop);
  const handRest = restFor(scene, stances, free);
  const swung = handRest !== null && free('table') && legSwingsPast(handRest, stances);
  const named = (prop: Prop, strokes: readonly Stroke[], beside = false): readonly Thing[] =>
    strokes.length === 0 ? [] : [{ prop, strokes, beside }];
  const things: readonly Thing[] = [
    ...(has('wall') ? named('wall', wallFor(stances, scene.supports.includes('hands'), has('towel'))) : []),
    ...(has('mat') ? named('mat', matFor(scene, stances)) : []),
    ...raised.filter(({ prop }) => prop !== 'ball').flatMap(({ prop, strokes }) => named(prop, strokes)),
    ...(free('bench') ? named('bench', lyingBench(stances, { isBed: false, machine: has('machine') })) : []),
    ...(has('bed') ? named('bed', lyingBench(stances, { isBed: true, machine: false })) : []),
    ...(has('strap') && isHooked(scene) ? named('strap', sofaOver(stances)) : []),
    ...(free('chair') ? named('chair', spareChair(stances, handRest), handRest !== null) : []),
    ...(free('table') && handRest !== null ? named('table', table(tableAt(handRest, stances)), swung) : []),
    ...(free('books') ? named('books', booksUnderHands(scene, stances)) : []),
    ...(free('pillows') && !facesDown(stances) ? named('pillows', sparePillows(stances)) : []),
  ];
  return {
    things,
    between: free('ball')
      ? [({ work, heightM }) => [edged(circle(work.knee, 0.07 * heightM), 'prop', 'paperWhite', 0.011)]]
      : [],
    moving: [
      ...(used.has('ball') ? [(stance: Stance) => ballUnder(scene, stance, stances)] : []),
      ...(has('hurdle') ? [hurdle] : []),
    ],
    over: [
      ...(free('pillows') && facesDown(stances) ? [bellyPillow] : []),
      ...(has('machine') ? [lever, gripPost] : []),
      ...(has('towel') && has('wall') ? [heelTowel(stances)] : []),
    ],
    handRest,
    grip: has('machine') ? machineGrip(stances) : null,
    floorBelowM: has('mat') ? MAT_M : 0,
  };
}

function wallFor(stances: readonly Stance[], pushed: boolean, towelled: boolean): readonly Stroke[] {
  const reachesForward = stances.every(({ pose }) => typeof pose.arms === 'number' && pose.arms > 60);
  const top = Math.max(...stances.map(({ shoulder, hip }) => Math.max(shoulder.y, hip.y))) + WALL_M;
  if (pushed || reachesForward) {
    // The palm lies half a hand behind the finger tips.
    return wall(Math.max(...stances.map(({ hands, heightM }) => hands.x + 0.05 * heightM)), top, 'right');
  }
  return wall(wallBehind(stances, towelled), top, 'left');
}

// A folded towel between heel and wall keeps the body a hand away from it.
function wallBehind(stances: readonly Stance[], towelled: boolean): number {
  return Math.min(...stances.flatMap(skinXs)) - (towelled ? TOWEL_M : 0);
}

function skinXs(stance: Stance): readonly number[] {
  return torsoKnots(stance.pose, stance.hip, stance.heightM).map(({ x }) => x);
}

function matFor(scene: SideScene, stances: readonly Stance[]): readonly Stroke[] {
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
function lyingBench(
  stances: readonly Stance[],
  { isBed, machine }: { isBed: boolean; machine: boolean },
): readonly Stroke[] {
  const lying = stances.find(({ lyingY }) => lyingY > 0);
  if (lying === undefined) return [];
  const { hip, shoulder, other, heightM, lyingY } = lying;
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  const hangs = stances.some(({ work, other: far }) => Math.min(work.knee.y, far.knee.y) < lyingY);
  const end = machine
    ? other.knee.x - headwards * 0.02 * heightM
    : other.ankle.x + headwards * 0.05 * heightM;
  const foot = hangs ? hip.x - headwards * 0.03 * heightM : end;
  const head = shoulder.x + headwards * 0.2 * heightM;
  const surface = { left: Math.min(head, foot), right: Math.max(head, foot), y: lyingY };
  return isBed ? bed(surface) : bench(surface);
}

// A free chair is a seat to be aimed at when the hips sink towards it, otherwise something to hold on to: its rail when
// standing, its seat when kneeling.
function spareChair(stances: readonly Stance[], handRest: Point | null): readonly Stroke[] {
  const lowest = lowestHip(stances);
  if (sinks(stances)) {
    const calves = backOfCalves(stances);
    return chair(
      {
        left: Math.min(calves - 0.42, lowest.hip.x - 0.24),
        right: calves,
        y: lowest.hip.y - SKIN.seat * lowest.heightM,
      },
      'left',
    );
  }
  if (handRest === null) return [];
  if (kneels(lowest))
    return chair({ left: handRest.x - 0.1, right: handRest.x + 0.32, y: CHAIR_SEAT_M }, 'right');
  return chair({ left: handRest.x - 0.03, right: handRest.x + 0.4, y: CHAIR_SEAT_M }, 'left');
}

// A seat to be aimed at stands behind the legs, never in them.
function backOfCalves(stances: readonly Stance[]): number {
  return Math.min(
    ...stances.flatMap(({ work, other, heightM }) =>
      [work, other].flatMap(({ knee, ankle, heel }) => [
        heel.x - 0.02,
        ankle.x - 0.045 * heightM,
        between(knee, ankle, 0.27).x - 0.045 * heightM,
      ]),
    ),
  );
}

function restFor(scene: SideScene, stances: readonly Stance[], free: (prop: Prop) => boolean): Point | null {
  const first = stances[0];
  if (first === undefined || scene.supports.includes('hands')) return null;
  const { shoulder, heightM, pose } = first;
  // Fingertips on the worktop balance a standing body whatever else the arms carry.
  if (pose.arms === 'hang' && !free('table')) return null;
  if (scene.weight?.at === 'hands' && !free('table')) return null;
  const holdsChair = free('chair') && !sinks(stances);
  const palm = SKIN.hands * heightM;
  if (free('table')) {
    const top = { x: shoulder.x + 0.2 * heightM, y: (sits(first) ? TABLE_TOP_M : WORKTOP_M) + palm };
    return stances.every((one) => distance(one.shoulder, top) < ARM_REACH * heightM) ? top : null;
  }
  if (!holdsChair) return null;
  if (typeof pose.arms === 'number') return first.hands;
  return { x: shoulder.x + 0.2 * heightM, y: (kneels(first) ? CHAIR_SEAT_M : CHAIR_RAIL_M) + palm };
}

function legSwingsPast(handRest: Point, stances: readonly Stance[]): boolean {
  return stances.some(({ work }) => !work.planted && work.fore.x > handRest.x - TABLE_EDGE_M);
}

// A leg that swings forward would meet the table: it then runs along the side of the body, behind the one who watches it.
function tableAt(handRest: Point, stances: readonly Stance[]): Surface {
  const { heightM } = stances[0] as Stance;
  const before = handRest.x - TABLE_EDGE_M;
  const left = legSwingsPast(handRest, stances)
    ? Math.min(...stances.map(({ hip }) => hip.x)) - 0.35
    : before;
  return { left, right: handRest.x + 0.42, y: handRest.y - SKIN.hands * heightM };
}

function booksUnderHands(scene: SideScene, stances: readonly Stance[]): readonly Stroke[] {
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
  const lies = Math.abs(lowest.pose.trunk) > 60;
  return under < (lies ? LOW_PILLOW_M : RAISED_FROM_M) || under > 0.7
    ? []
    : pillows({ left: lowest.hip.x - 0.28, right: lowest.hip.x + 0.2, y: under });
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

// Upright on a seat: the hips are no higher than the knees are far from the floor.
function sits({ hip, heightM }: Stance): boolean {
  return hip.y < 0.4 * heightM;
}

function kneels(stance: Stance): boolean {
  return kneeDown(stance) !== null;
}

// A leg on its knee, not one that lies along the floor.
function kneeDown({ work, other, hip, heightM }: Stance): Leg | null {
  const down = (leg: Leg) => !leg.planted && leg.knee.y < 0.06 * heightM && hip.y > 0.15 * heightM;
  return down(work) ? work : down(other) ? other : null;
}

function facesDown(stances: readonly Stance[]): boolean {
  return stances.every(({ pose }) => pose.trunk > 60);
}

// It rolls: under the heels in every frame, its seam turned by the way it went.
function ballUnder(scene: SideScene, stance: Stance, stances: readonly Stance[]): readonly Stroke[] {
  const support = scene.supports.find((name) => legPartOf(name) !== null) ?? 'work.heel';
  const [at, from] = [contactOf(stance, support), contactOf(stances[0] as Stance, support)];
  const radius = at.y / 2;
  const middle = { x: at.x + 0.03, y: radius };
  const turn = (from.x - at.x) / Math.max(radius, 0.05);
  const seamEnd = (side: 1 | -1) =>
    turned({ x: middle.x + side * radius * 0.86, y: middle.y }, middle, turn + 0.5);
  return [
    ...ball({ left: middle.x - radius, right: middle.x + radius, y: at.y }),
    lined(polyline([seamEnd(-1), seamEnd(1)], false), 'prop', 0.014),
    lined(circle(middle, radius * 0.5), 'prop', 0.008),
  ];
}

// Between belly and bed, from the hip bones to the lowest ribs.
function bellyPillow({ hip, shoulder, heightM, lyingY }: Stance): readonly Stroke[] {
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  const [foot, head] = [hip.x - headwards * 0.05 * heightM, hip.x + headwards * 0.19 * heightM];
  return pillows(
    { left: Math.min(foot, head), right: Math.max(foot, head), y: lyingY + BELLY_PILLOW_M },
    lyingY,
  );
}

// A post with a bar at knee height between the feet: one has gone over, the other has still to.
function hurdle({ work, other }: Stance): readonly Stroke[] {
  const { x } = between(work.ankle, other.ankle, 0.5);
  return [
    edged(
      rectangle({ x: x - 0.02, y: HURDLE_M }, { x: x + 0.02, y: 0 }),
      'propFill',
      'prop',
      LINE.prop * 1.75,
    ),
    edged(rectangle({ x: x - 0.13, y: 0.025 }, { x: x + 0.13, y: 0 }), 'propFill', 'prop', LINE.prop * 1.75),
    edged(circle({ x, y: HURDLE_M }, 0.028), 'prop', 'paperWhite', 0.008),
  ];
}

// Feet held down are hooked under something heavy.
function isHooked({ supports }: SideScene): boolean {
  return supports.some((support) => support.endsWith('.ankle'));
}

// The heels are hooked under its front edge: a sofa too heavy to tip, with a gap below.
function sofaOver(stances: readonly Stance[]): readonly Stroke[] {
  const heel = Math.min(...stances.map(({ work }) => work.heel.x));
  const ankle = Math.min(...stances.map(({ work }) => work.ankle.x));
  const front = ankle - 0.01;
  const under = Math.max(...stances.map(({ work, heightM }) => work.ankle.y + 0.03 * heightM));
  const line = LINE.prop * 1.75;
  const back = Math.min(heel, front) - 0.42;
  return [
    edged(rectangle({ x: back + 0.02, y: under }, { x: back + 0.06, y: 0 }), 'propFill', 'prop', line),
    edged(rectangle({ x: back, y: 0.82 }, { x: back + 0.16, y: under }), 'propFill', 'prop', line),
    edged(rectangle({ x: back + 0.1, y: 0.46 }, { x: front, y: under + 0.13 }), 'propFill', 'prop', line),
    edged(rectangle({ x: back, y: under + 0.13 }, { x: front, y: under }), 'propFill', 'prop', line),
  ];
}

// The pad above the heels swings about a pivot beside the knees; a post carries it.
function lever({ work, heightM }: Stance): readonly Stroke[] {
  const shank = directionFrom(work.knee, work.ankle);
  const calf = { x: shank.y, y: -shank.x };
  const pad = along(along(work.ankle, -0.02 * heightM, shank), 0.05 * heightM, calf);
  return [
    edged(
      rectangle({ x: work.knee.x - 0.025, y: work.knee.y }, { x: work.knee.x + 0.025, y: 0 }),
      'propFill',
      'prop',
      LINE.prop * 1.75,
    ),
    lined(polyline([work.knee, pad], false), 'prop', 0.03),
    edged(circle(work.knee, 0.035), 'propFill', 'prop', 0.012),
    edged(circle(pad, 0.055), 'prop', 'paperWhite', 0.01),
  ];
}

// Grips stand below the head end of the bench.
function machineGrip(stances: readonly Stance[]): Point | null {
  const [first] = stances;
  if (first === undefined) return null;
  const { shoulder, hip, heightM, lyingY } = first;
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  return { x: shoulder.x + headwards * 0.13 * heightM, y: lyingY - 0.16 };
}

// The grip hangs from the head end of the bench.
function gripPost(stance: Stance): readonly Stroke[] {
  const grip = machineGrip([stance]);
  if (grip === null) return [];
  const top = { x: grip.x - 0.02, y: stance.lyingY - 0.05 };
  return [lined(polyline([top, { x: grip.x, y: grip.y - 0.06 }], false), 'prop', 0.026)];
}

function heelTowel(stances: readonly Stance[]): Draw {
  const face = wallBehind(stances, true);
  return ({ work }) => [
    edged(
      rectangle({ x: face + 0.008, y: 0.13 }, { x: Math.max(work.heel.x + 0.01, face + TOWEL_M), y: 0.01 }),
      'prop',
      'paperWhite',
      0.008,
    ),
  ];
}
