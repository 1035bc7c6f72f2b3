/** From one leg's net moments to its muscle forces: which bounds hold, and what a supported thigh or a relaxed leg changes. */
import { MODEL_HEIGHT_M } from './anthropometry.ts';
import type { Body } from './body.ts';
import type { LegMoments } from './moment.ts';
import type { Movement } from './movement.ts';
import { ACHILLES_ARM_M, armsAt, LUMPS, STRENGTH_N, STRESS_N_PER_CM2, type Arms } from './muscle.ts';
import type { LegPose } from './pose.ts';
import { leastEffort, shareLoad, type Effort, type Shares, type SharingProblem } from './sharing.ts';
import { passiveTensionN } from './passiveTension.ts';

// Areas squared, cm⁴.
const WEIGHTS = STRENGTH_N.map((strength) => (strength / STRESS_N_PER_CM2) ** 2);
const GASTROCNEMII = LUMPS.indexOf('gastrocnemii');
const NO_ARMS = LUMPS.map(() => 0);

/** A leg at its joint angles, ready to be loaded: moment arms and the passive tension of the hamstrings. */
export interface Leg {
  readonly arms: Arms;
  /** Least force of each lump, in their order: the passive tension of the hamstrings, nothing of the others. */
  readonly leastN: readonly number[];
  readonly achillesArmM: number;
  /** Share of the hip's extension moment that the hamstrings take at least. */
  readonly leastHamstringShare: number;
}

/** What of a leg's pose its muscles feel, degrees. */
export type LegBend = Pick<LegPose, 'hip' | 'knee'>;

export function legOf({ hip, knee }: LegBend, body: Body): Leg {
  return {
    arms: armsAt(hip, knee, body.heightM),
    leastN: [passiveTensionN(hip, knee), 0, 0, 0, 0, 0, 0],
    achillesArmM: (ACHILLES_ARM_M * body.heightM) / MODEL_HEIGHT_M,
    leastHamstringShare: body.muscles?.leastHamstringShare ?? 0,
  };
}

/**
 * Muscle forces of a leg under its moments, newtons in the order of LUMPS.
 *
 * `active`: all seven share both moments, the hamstrings never below their passive tension, the gastrocnemii never
 * above what the ankle's moment allows, and the hamstrings never below the house's share of the hip's extension moment:
 * least effort lets them off where the knee must straighten, and people's do not (co-contraction). `thighSupported`:
 * the bench takes the hip moment unless the muscles of the knee alone would lift the thigh off it. `passive`: nothing
 * works, the hamstrings are only stretched.
 */
export function forcesOf(leg: Leg, moments: LegMoments, mode: Movement['mode']): Shares {
  if (mode === 'passive') return { forcesN: leg.leastN, cost: 0, multipliers: [0, 0] };
  if (mode === 'active') return sharedTogether(leg, moments);
  const problem = sharingOf(leg, moments);
  const atKnee = shareLoad({ ...problem, arms: { hipM: NO_ARMS, kneeM: leg.arms.kneeM }, hipNm: 0 });
  const liftsThigh = dot(leg.arms.hipM, atKnee.forcesN) > moments.hipNm;
  return liftsThigh ? sharedTogether(leg, moments) : atKnee;
}

/**
 * Least effort, the hamstrings at their least share where it would give them less. The sharing is convex, so they then
 * come out exactly at that share: pull and squeeze only ever rise by it.
 */
function sharedTogether(leg: Leg, moments: LegMoments): Shares {
  const problem = sharingOf(leg, moments);
  const shares = shareLoad(problem);
  const leastN = leastHamstringN(leg, moments);
  if ((shares.forcesN[0] as number) >= leastN) return shares;
  return shareLoad({ ...problem, leastN: [leastN, ...leg.leastN.slice(1)] });
}

// Below nothing where the hip flexes, and then asked of nobody.
function leastHamstringN({ leastHamstringShare, arms }: Leg, { hipNm }: LegMoments): number {
  return (leastHamstringShare * hipNm) / (arms.hipM[0] as number);
}

/**
 * What it costs an active leg, with the effort of a neighbouring case to start from. Without the least share of the
 * hamstrings: people push and drag by what their own effort tells them, and the share then only adds to that.
 */
export function effortOf(leg: Leg, moments: LegMoments, from: Effort | null): Effort {
  return leastEffort(sharingOf(leg, moments), from?.multipliers);
}

/**
 * How fast the cost of an active leg changes when its moments change at `rate` (N·m per unit of anything): the
 * derivative of `Effort.cost`. Through the ankle it acts only while the ankle is what holds the gastrocnemii back.
 */
export function costSlope(leg: Leg, moments: LegMoments, rate: LegMoments, effort: Effort): number {
  const [a, b] = effort.multipliers;
  const slope = 2 * (a * rate.hipNm + b * rate.kneeNm);
  if (moments.ankleNm <= 0) return slope;
  const mostN = moments.ankleNm / leg.achillesArmM;
  const wish = a * (leg.arms.hipM[GASTROCNEMII] as number) + b * (leg.arms.kneeM[GASTROCNEMII] as number);
  const saved = Math.max(0, wish - mostN / (WEIGHTS[GASTROCNEMII] as number));
  return slope - (2 * saved * rate.ankleNm) / leg.achillesArmM;
}

function sharingOf({ arms, leastN, achillesArmM }: Leg, moments: LegMoments): SharingProblem {
  // The gastrocnemii are the last of the lumps.
  const calfN = Math.max(0, moments.ankleNm) / achillesArmM;
  const mostN = [Infinity, Infinity, Infinity, Infinity, Infinity, Infinity, calfN];
  return { arms, hipNm: moments.hipNm, kneeNm: moments.kneeNm, leastN, mostN, weights: WEIGHTS };
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, i) => sum + value * (right[i] as number), 0);
}
