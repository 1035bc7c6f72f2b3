/** The drawn shape of a body seen from the front, fractions of height [choice], set by eye beside the side view. */
import type { LimbShape } from '../limb.ts';
import { ELBOW, FOREARM, KNEE, SHANK, THIGH, UPPER_ARM, type Girth } from '../proportions.ts';

/** Half the distance between the hip joints, and between the shoulder joints. */
export const HIP_HALF = 0.05;
export const SHOULDER_HALF = 0.108;
/** Pelvis centre to the line of the shoulders: the side view's trunk. */
export const TRUNK = 0.288;
export const THIGH_LENGTH = 0.245;
export const SHANK_LENGTH = 0.246;
/** Flesh round hip, knee, ankle, shoulder and elbow, for what rests on a surface. */
export const FLESH = { hip: 0.052, knee: 0.034, ankle: 0.022, shoulder: 0.034, elbow: 0.022 } as const;

/** One half of the torso from the crotch up to the base of the neck: `out` from the middle, `up` from the hips. */
export const TORSO_HALF: readonly { readonly out: number; readonly up: number }[] = [
  { out: 0.05, up: -0.048 },
  { out: 0.088, up: -0.02 },
  { out: 0.098, up: 0.02 },
  { out: 0.085, up: 0.075 },
  { out: 0.075, up: 0.13 },
  { out: 0.09, up: 0.2 },
  { out: 0.115, up: 0.265 },
  { out: 0.108, up: 0.298 },
  { out: 0.05, up: 0.314 },
];

export const NECK = { from: 0.3, to: 0.37, radius: 0.027 } as const;
/** The head's centre above the hips, and its half width and half height. */
export const HEAD = { up: 0.412, half: 0.046, high: 0.062 } as const;
export const EYE = { out: 0.017, up: 0.004, radius: 0.0055 } as const;

// From the front a limb is as wide to one side as to the other.
const even = (girths: readonly Girth[], share: number): readonly Girth[] =>
  girths.map(({ share: at, fold, stretch }) => {
    const half = ((fold + stretch) / 2) * share;
    return { share: at, fold: half, stretch: half };
  });
const evenJoint = ({ fold, stretch }: { readonly fold: number; readonly stretch: number }) => ({
  fold: (fold + stretch) / 2,
  stretch: (fold + stretch) / 2,
});

export const LEG_SHAPE: LimbShape = {
  upper: even(THIGH, 0.92),
  lower: even(SHANK, 0.95),
  joint: evenJoint(KNEE),
  folds: 'back',
};
export const ARM_SHAPE: LimbShape = {
  upper: UPPER_ARM,
  lower: FOREARM,
  joint: evenJoint(ELBOW),
  folds: 'front',
};

/** Foot pointing at the viewer, from the ankle: `across` to either side, `down` along the shank. */
export const FOOT = [
  { across: 0.021, down: 0.004 },
  { across: 0.036, down: 0.03 },
  { across: 0.034, down: 0.041 },
] as const;
export const SOLE = 0.041;
