/** The limits of a stage, and what of an exercise is held against them. */
import type { Body } from './body.ts';
import { loadingsAt, type Loading } from './loading.ts';
import type { Movement } from './movement.ts';

/** Caps of a stage; null where a cap is lifted. */
export interface Caps {
  readonly hipFlexionDeg: number | null;
  readonly compressionBw: number | null;
  readonly tensionBw: number | null;
  readonly demand: number | null;
  /** Factor on squeeze and pull where two supports leave the friction between them to the person. */
  readonly supportMargin: number;
}

/** Named in this order where several are broken alike. */
export const LIMITS = ['hipFlexion', 'compression', 'tension', 'demand'] as const;
export type Limit = (typeof LIMITS)[number];

/** What caps are compared with, least-effort friction, without the margin. */
export interface Strain {
  readonly hipFlexionDeg: number;
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

/** The cap that a strain breaks by the largest share; null when all hold. */
export function brokenCap(movement: Movement, strain: Strain, caps: Caps): Limit | null {
  const margin = marginOf(movement, caps);
  const excess = [
    excessOf(strain.hipFlexionDeg, caps.hipFlexionDeg),
    excessOf(margin * strain.compressionBw, caps.compressionBw),
    excessOf(margin * strain.tensionBw, caps.tensionBw),
    excessOf(strain.demand, caps.demand),
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
 * The strain at fraction `t` that any load from nothing up to `loadKg` can cause; null when one of them cannot rest.
 *
 * Squeeze does not always rise with load: on a step a weight in the hands moves the trunk and lets the hamstrings off.
 * A cap must also hold for whoever takes less, so every value is the largest on the way up. Angles and pull are those
 * of either leg, since in an uneven exercise the painful one takes both parts; demand is the working leg's.
 */
export function strainUpTo(movement: Movement, body: Body, loadKg: number, t: number): Strain | null {
  const at = strainBy(movement, body, t);
  const loadsKg = looksUpTo(movement, loadKg);
  const strains = loadsKg.map(at);
  return strains.every((strain) => strain !== null) ? largestOf(strains, loadsKg, at) : null;
}

type StrainBy = (loadKg: number) => Strain | null;

function strainBy(movement: Movement, body: Body, t: number): StrainBy {
  const loadingAt = loadingsAt(movement, body, t);
  return (loadKg) => {
    const loading = loadingAt(loadKg);
    return loading && strainOf(loading);
  };
}

/** Where the way up to a load is looked at, ascending. */
function looksUpTo({ loadAt }: Movement, loadKg: number): readonly number[] {
  return loadAt === undefined || loadKg === 0 ? [loadKg] : NODES.map((share) => share * loadKg);
}

function largestOf(strains: readonly Strain[], loadsKg: readonly number[], at: StrainBy): Strain {
  const humps = (['tensionBw', 'demand'] as const).map((key) => humpKg(strains, loadsKg, key, at));
  return humps.reduce((so, kg) => larger(so, (kg === null ? null : at(kg)) ?? so), strains.reduce(larger));
}

// Along the load pull and demand are smooth with one hump at most; five looks find it, a golden section its top.
const NODES = [0, 0.25, 0.5, 0.75, 1];
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SECTIONS = 20;

/** The load at which one value is largest, kilograms, when that lies between the looks; null when it is at either end. */
function humpKg(
  strains: readonly Strain[],
  loadsKg: readonly number[],
  key: 'tensionBw' | 'demand',
  at: StrainBy,
): number | null {
  const values = strains.map((strain) => strain[key]);
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

function strainOf({ work, other }: Loading): Strain {
  const both = other ?? work;
  return {
    hipFlexionDeg: Math.max(work.hipFlexionDeg, both.hipFlexionDeg),
    compressionBw: Math.max(work.compressionBw, both.compressionBw),
    tensionBw: Math.max(work.tensionBw, both.tensionBw),
    demand: work.demand,
  };
}

function larger(left: Strain, right: Strain): Strain {
  return {
    hipFlexionDeg: Math.max(left.hipFlexionDeg, right.hipFlexionDeg),
    compressionBw: Math.max(left.compressionBw, right.compressionBw),
    tensionBw: Math.max(left.tensionBw, right.tensionBw),
    demand: Math.max(left.demand, right.demand),
  };
}
