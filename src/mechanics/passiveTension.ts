/** The pull of the hamstrings at rest, from nothing but their length. */
import { hamstringElongationM } from './muscle.ts';

// gait2392's passive curve of the three heads together, N and 1/m: fits within 22 % from 200 N to 3.6 kN, 28 N below.
const CURVE_N = 20;
const CURVE_PER_M = 55;
const MOST_ELONGATION_M = 0.1;

/** Share of that curve that is used, within 0.25-1.0: unscaled, a long sit would take 88 N·m where 40-60 are reported [choice]. */
export const PASSIVE_SHARE = 0.5;

/**
 * Passive hamstring tension in newtons at a hip and a knee flexion in degrees, 0 when slack. Not scaled by body size:
 * people differ by more than a factor of two.
 */
export function passiveTensionN(hipDeg: number, kneeDeg: number, share: number = PASSIVE_SHARE): number {
  const elongationM = Math.min(MOST_ELONGATION_M, hamstringElongationM(hipDeg, kneeDeg));
  return share * CURVE_N * Math.max(0, Math.expm1(CURVE_PER_M * elongationM));
}
