/** From one leg's net moments to its muscle forces: which bounds hold, and what a supported thigh or a relaxed leg changes. */
import { MODEL_HEIGHT_M } from './anthropometry.ts';
import type { Body } from './body.ts';
import type { LegMoments } from './moment.ts';
import type { Movement } from './movement.ts';
import { ACHILLES_ARM_M, armsAt, LUMPS, STRENGTH_N, STRESS_N_PER_CM2, type Arms } from './muscle.ts';
import type { LegPose } from './pose.ts';
import { shareLoad, type Shares, type SharingProblem } from './sharing.ts';
import { passiveTensionN } from './stretch.ts';

const AREA_CM2 = STRENGTH_N.map((strength) => strength / STRESS_N_PER_CM2);
const HAMSTRINGS = LUMPS.indexOf('hamstrings');
const GASTROCNEMII = LUMPS.indexOf('gastrocnemii');
const NO_ARMS = LUMPS.map(() => 0);

/** A leg at its joint angles, ready to be loaded: moment arms and the passive tension of the hamstrings. */
export interface Leg {
  readonly arms: Arms;
  readonly passiveN: number;
  readonly achillesArmM: number;
}

export function legOf({ hip, knee }: LegPose, body: Body): Leg {
  return {
    arms: armsAt(hip, knee, body.heightM),
    passiveN: passiveTensionN(hip, knee),
    achillesArmM: (ACHILLES_ARM_M * body.heightM) / MODEL_HEIGHT_M,
  };
}

/**
 * Muscle forces of a leg under its moments, newtons in the order of LUMPS.
 *
 * `active`: all seven share both moments, the hamstrings never below their passive tension, the gastrocnemii never
 * above what the ankle's moment allows. `thighSupported`: the bench takes the hip moment unless the muscles of the
 * knee alone would lift the thigh off it. `passive`: nothing works, the hamstrings are only stretched.
 */
export function forcesOf(leg: Leg, moments: LegMoments, mode: Movement['mode']): Shares {
  if (mode === 'passive') return relaxed(leg);
  const problem = sharingOf(leg, moments);
  if (mode === 'active') return shareLoad(problem);
  const atKnee = shareLoad({ ...problem, arms: { hipM: NO_ARMS, kneeM: leg.arms.kneeM }, hipNm: 0 });
  const liftsThigh = dot(leg.arms.hipM, atKnee.forcesN) > moments.hipNm;
  return liftsThigh ? shareLoad(problem) : atKnee;
}

/**
 * How fast the cost of an active leg changes when its moments change at `rate` (N·m per unit of anything): the
 * derivative of `Shares.cost`. Through the ankle it acts only while the ankle is what holds the gastrocnemii back.
 */
export function costSlope(leg: Leg, moments: LegMoments, rate: LegMoments, shares: Shares): number {
  const [a, b] = shares.multipliers;
  const slope = 2 * (a * rate.hipNm + b * rate.kneeNm);
  if (moments.ankleNm <= 0) return slope;
  const mostN = moments.ankleNm / leg.achillesArmM;
  const area = AREA_CM2[GASTROCNEMII] as number;
  const wish = a * (leg.arms.hipM[GASTROCNEMII] as number) + b * (leg.arms.kneeM[GASTROCNEMII] as number);
  const saved = Math.max(0, wish - mostN / (area * area));
  return slope - (2 * saved * rate.ankleNm) / leg.achillesArmM;
}

function sharingOf({ arms, passiveN, achillesArmM }: Leg, moments: LegMoments): SharingProblem {
  const leastN = LUMPS.map((_, i) => (i === HAMSTRINGS ? passiveN : 0));
  const calfN = Math.max(0, moments.ankleNm) / achillesArmM;
  const mostN = LUMPS.map((_, i) => (i === GASTROCNEMII ? calfN : Infinity));
  return { arms, hipNm: moments.hipNm, kneeNm: moments.kneeNm, leastN, mostN, areaCm2: AREA_CM2 };
}

function relaxed({ passiveN }: Leg): Shares {
  return { forcesN: LUMPS.map((_, i) => (i === HAMSTRINGS ? passiveN : 0)), cost: 0, multipliers: [0, 0] };
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, i) => sum + value * (right[i] as number), 0);
}
