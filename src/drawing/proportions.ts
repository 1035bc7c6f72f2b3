/**
 * The drawn shape of a body, all as fractions of height [choice]: set by eye on the tried recipe until a pose could be
 * recognised at 45 mm. Joint places come from the posture; only flesh is added here, and nothing is read off it.
 */

/** Width of a limb at a share of its segment's length: on the side to which the joint folds, and on the other. */
export interface Girth {
  readonly share: number;
  readonly fold: number;
  readonly stretch: number;
}

export const THIGH: readonly Girth[] = [
  { share: 0, fold: 0.06, stretch: 0.052 },
  { share: 0.34, fold: 0.05, stretch: 0.053 },
  { share: 0.74, fold: 0.038, stretch: 0.043 },
];
export const SHANK: readonly Girth[] = [
  { share: 0.27, fold: 0.039, stretch: 0.028 },
  { share: 0.62, fold: 0.028, stretch: 0.024 },
  { share: 0.93, fold: 0.018, stretch: 0.021 },
];
export const KNEE = { fold: 0.029, stretch: 0.036 } as const;
/** How far the rounded top of the leg rises over the hip joint. */
export const HIP_CAP = 0.055;

export const UPPER_ARM: readonly Girth[] = [
  { share: 0.08, fold: 0.028, stretch: 0.028 },
  { share: 0.5, fold: 0.026, stretch: 0.023 },
];
export const FOREARM: readonly Girth[] = [
  { share: 0.28, fold: 0.023, stretch: 0.021 },
  { share: 0.98, fold: 0.014, stretch: 0.014 },
];
export const ELBOW = { fold: 0.02, stretch: 0.022 } as const;
export const SHOULDER_CAP = 0.031;

/** Shoulder to elbow, elbow to wrist, wrist to the middle of the grip: Drillis & Contini in Winter [memory]. */
export const ARM_LENGTHS = { upper: 0.186, lower: 0.146, grip: 0.054 } as const;

/** Foot outline from the ankle: forward along the sole, down towards it. The sole lies 0.039 below the ankle. */
export const FOOT_KNOTS = {
  instep: { forward: 0.046, down: 0.006 },
  toeTop: { forward: 0.097, down: 0.022 },
  tip: { forward: 0.116, down: 0.033 },
  toeSole: { forward: 0.106, down: 0.039 },
  ball: { forward: 0.075, down: 0.039 },
  heel: { forward: -0.03, down: 0.039 },
  heelBack: { forward: -0.041, down: 0.023 },
} as const;

/** Torso outline: `up` along the pelvis or trunk line from the hip, `front` across it. Walks up the back, down the front. */
export const TORSO_KNOTS: readonly {
  readonly of: 'pelvis' | 'trunk';
  readonly up: number;
  readonly front: number;
}[] = [
  { of: 'pelvis', up: -0.056, front: -0.036 },
  { of: 'pelvis', up: -0.018, front: -0.068 },
  { of: 'pelvis', up: 0.045, front: -0.057 },
  { of: 'trunk', up: 0.115, front: -0.044 },
  { of: 'trunk', up: 0.2, front: -0.059 },
  { of: 'trunk', up: 0.262, front: -0.05 },
  { of: 'trunk', up: 0.303, front: -0.024 },
  { of: 'trunk', up: 0.3, front: 0.022 },
  { of: 'trunk', up: 0.262, front: 0.05 },
  { of: 'trunk', up: 0.2, front: 0.063 },
  { of: 'trunk', up: 0.115, front: 0.054 },
  { of: 'pelvis', up: 0.035, front: 0.056 },
  { of: 'pelvis', up: -0.04, front: 0.046 },
];

/** The neck turns about a point this far above the shoulder; the head's centre stands a neck's length from there. */
export const NECK = { base: 0.012, length: 0.105, forward: 0.012, radius: 0.026 } as const;

/** Face in profile from the head's centre: `up` towards the crown, `front` towards the nose. */
export const FACE_KNOTS: readonly {
  readonly up: number;
  readonly front: number;
  readonly corner?: boolean;
}[] = [
  { up: 0.052, front: 0.03 },
  { up: 0.02, front: 0.052 },
  { up: -0.006, front: 0.069, corner: true },
  { up: -0.015, front: 0.053 },
  { up: -0.05, front: 0.046 },
  { up: -0.058, front: 0.022 },
  { up: -0.04, front: -0.02 },
  { up: 0.0, front: -0.045 },
];

/** Hair: the crown and the back of the head down to the nape, its line in front of the ear shows which way the face looks. */
export const HAIR_KNOTS: readonly {
  readonly up: number;
  readonly front: number;
  readonly corner?: boolean;
}[] = [
  { up: 0.036, front: 0.046, corner: true },
  { up: 0.061, front: 0.02 },
  { up: 0.062, front: -0.016 },
  { up: 0.04, front: -0.047 },
  { up: 0.002, front: -0.058 },
  { up: -0.038, front: -0.042, corner: true },
  { up: -0.022, front: -0.012 },
  { up: 0.018, front: 0.006 },
];
/** How close the head's centre comes to what it lies on: on the back of the head, and on the face or its hands. */
export const HEAD_REST = { back: 0.058, face: 0.07 } as const;

/** Flesh between a body point and what it rests on. Feet and upper back are skin points already. */
export const SKIN = { seat: 0.058, knee: 0.034, ankle: 0.024, shoulder: 0.045, hands: 0.018 } as const;

/** Line widths and letters, sized so that a 1.9 m picture printed 45 mm wide keeps 0.3 mm lines and 6.5 point figures. */
export const LINE = {
  outline: 0.0075,
  edge: 0.0065,
  prop: 0.008,
  arc: 0.0105,
  floor: 0.007,
  arrow: 0.0145,
} as const;
export const LETTER = 0.062;
