/**
 * Seven lumps of muscle about hip and knee: what they pull with, and at which moment arm.
 *
 * Arms: polynomials fitted to the path points of the gait2392 model (Delp et al. 1990, CC BY 3.0; see the credit in
 * tests/published), metres for its 1.80 m, scaled by height. Strengths: maximum isometric forces of Rajagopal et al.
 * 2016, young adults [read]. Between people arms differ by 10-15 %.
 */
import { toRadians } from '../units/angle.ts';
import { MODEL_HEIGHT_M } from './anthropometry.ts';
import { BONE_RADIUS_M, HIP_FIT_DEG, wrapDeg } from './belt.ts';
import { polynomial, polynomialIntegral } from './polynomial.ts';

/** In the order of every list of seven below. `hipExtensors`: gluteus maximus with adductor magnus. */
export const LUMPS = [
  'hamstrings',
  'bicepsShortHead',
  'hipExtensors',
  'vasti',
  'rectusFemoris',
  'iliopsoas',
  'gastrocnemii',
] as const;
export type Lump = (typeof LUMPS)[number];

/** Maximum isometric force, newtons, by lump [read]. */
export const STRENGTH_N: readonly number[] = [4105.5, 557.1, 5726.8, 9593.9, 2191.7, 2447.9, 4690.6];

/** Newtons a square centimetre of muscle can pull [memory]; turns strength into area and cancels out of every force. */
export const STRESS_N_PER_CM2 = 60;

/** Moment arm of the Achilles tendon in the 1.80 m model, metres [memory]. */
export const ACHILLES_ARM_M = 0.05;

// Beyond 75 deg (gluteus) and 90 deg (iliopsoas) straight lines run through bone and change sign; the arm is held there.
const GLUTEUS_FIT_DEG = [-15, 75] as const;
const ILIOPSOAS_FIT_DEG = [-15, 90] as const;
const KNEE_FIT_DEG = [0, 110] as const;

// Ascending powers of angle / 90, metres; hip: extension positive, knee: flexion positive. Largest error of each fit at the right.
const HIP = {
  hamstrings: /*    */ [0.052362, 0.057427, -0.088511, 0.00971, 0.004734], // 0.0010 (straight line)
  hipExtensors: /*  */ [0.043492, 0.030063, -0.054151, 0.006607, 0.00226], // 0.00005
  rectusFemoris: /* */ [-0.041515, -0.049877, 0.034122, 0.039631, -0.015957], // 0.0022
  iliopsoas: /*     */ [-0.038246, -0.014249, -0.013276, 0.032433], // 0.0033 (at 90)
} as const;
const KNEE = {
  hamstrings: /*      */ [0.031504, 0.032933, -0.031038, -0.006141], // 0.0015 (0.0023 at hip > 90)
  bicepsShortHead: /* */ [0.020955, 0.050999, -0.050711, 0.002286], // 0.0009
  vasti: /*           */ [-0.046474, 0.007583, 0.010241], // 0.0024
  rectusFemoris: /*   */ [-0.0509, 0.004008, 0.01829], // 0.0034
  gastrocnemii: /*    */ [0.022696, -0.003794, -0.005603], // 0.0017
} as const;

/** Moment arms in metres by lump: hip extension and knee flexion positive. */
export interface Arms {
  readonly hipM: readonly number[];
  readonly kneeM: readonly number[];
}

/** Moment arms at a hip and a knee flexion in degrees for a body `heightM` tall. Angles beyond the fits take their end value. */
export function armsAt(hipDeg: number, kneeDeg: number, heightM: number): Arms {
  const scale = heightM / MODEL_HEIGHT_M;
  const knee = (coefficients: readonly number[]) => scale * polynomial(coefficients, kneeDeg, KNEE_FIT_DEG);
  return {
    hipM: [
      scale * (straightHamstringArmM(hipDeg) + bendOverBoneM(hipDeg)),
      0,
      scale * polynomial(HIP.hipExtensors, hipDeg, GLUTEUS_FIT_DEG),
      0,
      scale * polynomial(HIP.rectusFemoris, hipDeg, HIP_FIT_DEG),
      scale * polynomial(HIP.iliopsoas, hipDeg, ILIOPSOAS_FIT_DEG),
      0,
    ],
    kneeM: [
      knee(KNEE.hamstrings),
      knee(KNEE.bicepsShortHead),
      0,
      knee(KNEE.vasti),
      knee(KNEE.rectusFemoris),
      0,
      knee(KNEE.gastrocnemii),
    ],
  };
}

/** Hamstring arm at the hip along a straight line, metres in the 1.80 m model. */
export function straightHamstringArmM(hipDeg: number): number {
  return polynomial(HIP.hamstrings, hipDeg, HIP_FIT_DEG);
}

/** How much longer the hamstrings are than standing straight, metres in the 1.80 m model; within 0.55 mm of gait2392. */
export function hamstringElongationM(hipDeg: number, kneeDeg: number): number {
  return (
    polynomialIntegral(HIP.hamstrings, hipDeg, HIP_FIT_DEG) -
    polynomialIntegral(KNEE.hamstrings, kneeDeg, KNEE_FIT_DEG)
  );
}

// Bent over a round bone the line moves away from the joint; without this it would run through the bone in deep flexion.
function bendOverBoneM(hipDeg: number): number {
  return BONE_RADIUS_M * (1 - Math.cos(toRadians(wrapDeg(hipDeg))));
}
