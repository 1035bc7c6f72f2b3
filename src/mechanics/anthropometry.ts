/**
 * Segment masses and lengths as fractions of body mass and height, one set for every sex and build.
 *
 * Masses and centres of mass: Dempster in Winter, Biomechanics and Motor Control (table 4.1), read from a published
 * copy of the table. Lengths: Drillis & Contini 1966 in Winter [memory]. What is marked choice was chosen here.
 * For one person a segment's mass is uncertain by 10-15 %.
 */

/** Fractions of body mass; two legs, one trunk with head, one pair of arms make 1 [read]. */
export const MASS = {
  foot: 0.0145,
  shank: 0.0465,
  thigh: 0.1,
  trunkHead: 0.578,
  arms: 0.1,
} as const;

/** Centres of mass as fractions of their segment, counted from the end nearer the trunk; the trunk's from the hip [read]. */
export const CENTRE = {
  thigh: 0.433,
  shank: 0.433,
  trunkHead: 0.66,
  arm: 0.53,
} as const;

/** Lengths as fractions of height [memory]; `grip` reaches half a hand further than the wrist. */
export const LENGTH = {
  thigh: 0.245,
  shank: 0.246,
  ankle: 0.039,
  trunk: 0.288,
  arm: 0.332,
  grip: 0.386,
} as const;

/** Points of the foot as fractions of height: forward along the sole and down towards it, from the ankle [choice]. */
export const FOOT = {
  heel: { forward: -0.035, down: LENGTH.ankle },
  mid: { forward: 0.03, down: LENGTH.ankle },
  fore: { forward: 0.075, down: LENGTH.ankle },
  com: { forward: 0.0365, down: 0.0195 },
} as const;

/** Upper-back contact: share of the trunk from the hip, and depth behind the trunk line as a fraction of height [choice]. */
export const BACK = { along: 0.85, behind: 0.06 } as const;

/** A bar across the pelvis lies this far in front of the hip, fraction of height [choice]. */
export const PELVIS_FRONT = 0.06;

/** Sit bone behind and below the hip in pelvis axes, metres in the 1.80 m model: weighted hamstring origin of gait2392. */
export const SEAT = { behindM: 0.0517, belowM: 0.0348 } as const;

/** Height of the gait2392 model, metres [memory]; its lengths and moment arms scale by height over this. */
export const MODEL_HEIGHT_M = 1.8;

/** Standard gravity as used in the published checks, m/s². */
export const GRAVITY = 9.81;
