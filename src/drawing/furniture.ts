/** Which prop stands where: decided once for all frames of a scene, so that things stay put while the body moves. */
import type { Point } from '../mechanics/pose.ts';
import type { Prop, SideScene } from '../mechanics/scene.ts';
import { ballUnder, gripPost, hurdle, isHooked, lever, machineGrip, sofaOver } from './apparatus.ts';
import { bed, bench, books, chair, mat, table, type Surface } from './blocks.ts';
import { facesDown, kneels, lowestHip, onTheBack, sinks, sits } from './carriage.ts';
import { bellyPillow, pillowUnderHips, sparePillows } from './cushions.ts';
import { edged, type Stroke } from './strokes.ts';
import { circle } from './outline.ts';
import { RAISED_FROM_M, raisedSupports } from './pedestal.ts';
import { between, distance } from './plane.ts';
import { SKIN } from './proportions.ts';
import { contactOf, type Stance } from './stance.ts';
import { heelTowel, wallFor } from './walls.ts';
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
  /** The pillow under the hips of a body on its back, in front of the arm beside it. */
  readonly underHips: readonly Stroke[];
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
const ARM_REACH = 0.39;
const AHEAD = [0.2, 0.17, 0.14, 0.11, 0.08, 0.05] as const;
const CHAIR_SEAT_M = 0.45;
const CHAIR_RAIL_M = 0.87;
/** How far a table's edge is nearer to the body than the hand on it. */
const TABLE_EDGE_M = 0.12;

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
  // The arm beside a lying body would hide the very pillow that says how low: the pillow goes over it.
  const underHips = free('pillows') && onTheBack(scene, stances) ? pillowUnderHips(stances) : [];
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
    ...(free('pillows') && !facesDown(stances) && underHips.length === 0
      ? named('pillows', sparePillows(stances))
      : []),
  ];
  return {
    things,
    underHips,
    between: free('ball')
      ? [({ work, heightM }) => [edged(circle(work.knee, 0.07 * heightM), 'prop', 'paperWhite', 0.011)]]
      : [],
    moving: [
      ...(used.has('ball') ? [(stance: Stance) => ballUnder(scene, stance, stances)] : []),
      ...(has('hurdle') ? [hurdle] : []),
    ],
    over: [
      ...(free('pillows') && facesDown(stances) ? [bellyPillow] : []),
      () => underHips,
      ...(has('machine') ? [lever, gripPost] : []),
      ...(has('towel') && has('wall') ? [heelTowel(stances)] : []),
    ],
    handRest,
    grip: has('machine') ? machineGrip(stances) : null,
    floorBelowM: has('mat') ? MAT_M : 0,
  };
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
  if (free('table')) return onTable(stances);
  if (!holdsChair) return null;
  if (typeof pose.arms === 'number') return first.hands;
  return { x: shoulder.x + 0.2 * heightM, y: (kneels(first) ? CHAIR_SEAT_M : CHAIR_RAIL_M) + palm };
}

// As far ahead as the hand reaches in every frame: a tall body stands nearer to its worktop.
function onTable(stances: readonly Stance[]): Point | null {
  const { shoulder, heightM } = stances[0] as Stance;
  const y = (sits(stances[0] as Stance) ? TABLE_TOP_M : WORKTOP_M) + SKIN.hands * heightM;
  const places = AHEAD.map((ahead) => ({ x: shoulder.x + ahead * heightM, y }));
  const reached = (place: Point) =>
    stances.every((one) => distance(one.shoulder, place) < ARM_REACH * heightM);
  return places.find(reached) ?? null;
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
