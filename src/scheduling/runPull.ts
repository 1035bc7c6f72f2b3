/** What easy running pulls on the hamstrings, to set beside a stage's cap. */

/**
 * Peak force in late swing, N per kg of body mass, of the long head of biceps femoris (BFLH) and semimembranosus (SM)
 * at 90, 100 and 110 % of the usual step rate, own easy pace, n = 30.
 * [read] Lenhart et al. 2014, JOSPT; PMC4296582 Table 1.
 */
const LATE_SWING_N_PER_KG = {
  // step rate, %
  90: { bflh: 4.69, sm: 12.12 },
  100: { bflh: 5.19, sm: 13.54 },
  110: { bflh: 5.25, sm: 13.98 },
} as const;

const GRAVITY_M_PER_S2 = 9.81;

/** Force of BFLH and SM together in late swing of easy running, N per kg of body mass. A faster step does not lower it. */
export function easyRunForceNPerKg(stepRatePct: 90 | 100 | 110 = 100): number {
  const { bflh, sm } = LATE_SWING_N_PER_KG[stepRatePct];
  return bflh + sm;
}

/** The same in body weights. @example easyRunPullBw() // => 1.909… */
export function easyRunPullBw(): number {
  return easyRunForceNPerKg() / GRAVITY_M_PER_S2;
}
