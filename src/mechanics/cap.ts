/** The limits of a stage, and what of an exercise is held against them. */
import type { Body } from './body.ts';
import { loadingsAt, type Loading } from './loading.ts';
import { JOINT_ANGLES, type JointAngle } from './jointAngle.ts';
import type { Movement } from './movement.ts';

/** Caps of a stage; null where a cap is lifted. */
export interface Caps {
  /** The joint angle that guards the tendon, and how far it may go, degrees. */
  readonly angle: JointAngle;
  readonly angleDeg: number | null;
  readonly compressionBw: number | null;
  readonly tensionBw: number | null;
  readonly demand: number | null;
  /** Factor on squeeze and pull where two supports leave the friction between them to the person. */
  readonly supportMargin: number;
}

/** Named in this order where several are broken alike. */
export const LIMITS = [...JOINT_ANGLES, 'compression', 'tension', 'demand'] as const;
export type Limit = (typeof LIMITS)[number];

/** What caps are compared with, least-effort friction, without the margin. */
export interface Demands {
  readonly hipFlexionDeg: number;
  readonly kneeFlexionDeg: number;
  readonly ankleDorsiflexionDeg: number;
  readonly compressionBw: number;
  readonly tensionBw: number;
  readonly demand: number;
}

/** Values this little above a cap, as a share of it, count as on it: the dust of interpolating to an end pose. */
const DUST = 1e-12;

/** The factor on squeeze and pull with which an exercise is held against its caps. */
export function marginOf(
  { supports }: Pick<Movement, 'supports'>,
  { supportMargin }: Pick<Caps, 'supportMargin'>,
): number {
  return supports.length > 1 ? supportMargin : 1;
}

/** The cap that demands break by the largest share; null when all hold. */
export function brokenCap(movement: Movement, demands: Demands, caps: Caps): Limit | null {
  const margin = marginOf(movement, caps);
  const angleExcess = (angle: JointAngle) =>
    angle === caps.angle ? excessOf(demands[`${angle}Deg`], caps.angleDeg) : NONE;
  const excess = [
    ...JOINT_ANGLES.map(angleExcess),
    excessOf(margin * demands.compressionBw, caps.compressionBw),
    excessOf(margin * demands.tensionBw, caps.tensionBw),
    excessOf(demands.demand, caps.demand),
  ];
  let worst = -1;
  for (let i = 0; i < LIMITS.length; i++) {
    if (excess[i] === NONE) continue;
    if (worst < 0 || (excess[i] as number) > (excess[worst] as number)) worst = i;
  }
  return LIMITS[worst] ?? null;
}

const NONE = -Infinity;

/** The share by which a value is over its cap; NONE where it holds. */
function excessOf(value: number, cap: number | null): number {
  return cap === null || !isOver(value, cap) ? NONE : (value - cap) / Math.max(cap, DUST);
}

// Not a number is over every cap.
function isOver(value: number, cap: number): boolean {
  return !(value <= cap + DUST * Math.max(1, Math.abs(cap)));
}

/**
 * The demands at fraction `t` that any load from nothing up to `loadKg` can cause; null when one of them cannot rest.
 *
 * Squeeze does not always rise with load: on a step a weight in the hands moves the trunk and lets the hamstrings off.
 * A cap must also hold for whoever takes less, so every value is the largest on the way up. Angles and pull are those
 * of either leg, since in an uneven exercise the painful one takes both parts; demand is the working leg's.
 */
export function demandsUpTo(movement: Movement, body: Body, loadKg: number, t: number): Demands | null {
  const at = demandsBy(movement, body, t);
  const loadsKg = looksUpTo(movement, loadKg);
  const all = loadsKg.map(at);
  return all.every((demands) => demands !== null) ? largestOf(all, loadsKg, at) : null;
}

type DemandsBy = (loadKg: number) => Demands | null;

function demandsBy(movement: Movement, body: Body, t: number): DemandsBy {
  const loadingAt = loadingsAt(movement, body, t);
  return (loadKg) => {
    const loading = loadingAt(loadKg);
    return loading && demandsOf(loading);
  };
}

/** Where the way up to a load is looked at, ascending. */
function looksUpTo({ loadAt }: Movement, loadKg: number): readonly number[] {
  return loadAt === undefined || loadKg === 0 ? [loadKg] : NODES.map((share) => share * loadKg);
}

function largestOf(all: readonly Demands[], loadsKg: readonly number[], at: DemandsBy): Demands {
  const humps = (['tensionBw', 'demand'] as const).map((key) => humpKg(all, loadsKg, key, at));
  return humps.reduce((so, kg) => larger(so, (kg === null ? null : at(kg)) ?? so), all.reduce(larger));
}

// Along the load pull and demand are smooth with one hump at most; five looks find it, a golden section its top.
const NODES = [0, 0.25, 0.5, 0.75, 1];
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SECTIONS = 20;

/** The load at which one value is largest, kilograms, when that lies between the looks; null when it is at either end. */
function humpKg(
  all: readonly Demands[],
  loadsKg: readonly number[],
  key: 'tensionBw' | 'demand',
  at: DemandsBy,
): number | null {
  const values = all.map((demands) => demands[key]);
  const top = values.indexOf(Math.max(...values));
  if (top === 0 || top === values.length - 1) return null;
  const value = (kg: number) => at(kg)?.[key] ?? Infinity;
  let [from, to] = [loadsKg[top - 1] as number, loadsKg[top + 1] as number];
  let [left, right] = [to - GOLDEN * (to - from), from + GOLDEN * (to - from)];
  let [atLeft, atRight] = [value(left), value(right)];
  for (let section = 0; section < SECTIONS; section++) {
    if (atLeft > atRight) {
      [to, right, atRight] = [right, left, atLeft];
      left = to - GOLDEN * (to - from);
      atLeft = value(left);
    } else {
      [from, left, atLeft] = [left, right, atRight];
      right = from + GOLDEN * (to - from);
      atRight = value(right);
    }
  }
  return (from + to) / 2;
}

function demandsOf({ work, other }: Loading): Demands {
  const both = other ?? work;
  return {
    hipFlexionDeg: Math.max(work.hipFlexionDeg, both.hipFlexionDeg),
    kneeFlexionDeg: Math.max(work.kneeFlexionDeg, both.kneeFlexionDeg),
    ankleDorsiflexionDeg: Math.max(work.ankleDorsiflexionDeg, both.ankleDorsiflexionDeg),
    compressionBw: Math.max(work.compressionBw, both.compressionBw),
    tensionBw: Math.max(work.tensionBw, both.tensionBw),
    demand: work.demand,
  };
}

function larger(left: Demands, right: Demands): Demands {
  return {
    hipFlexionDeg: Math.max(left.hipFlexionDeg, right.hipFlexionDeg),
    kneeFlexionDeg: Math.max(left.kneeFlexionDeg, right.kneeFlexionDeg),
    ankleDorsiflexionDeg: Math.max(left.ankleDorsiflexionDeg, right.ankleDorsiflexionDeg),
    compressionBw: Math.max(left.compressionBw, right.compressionBw),
    tensionBw: Math.max(left.tensionBw, right.tensionBw),
    demand: Math.max(left.demand, right.demand),
  };
}
