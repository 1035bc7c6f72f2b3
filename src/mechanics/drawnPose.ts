/**
 * Poses that are only drawn: the model closes none of them and says nothing of their loads. They show a card whose
 * movement lies outside the sagittal plane, or is a hop; angles in degrees, as in a pose of the model.
 */
import type { SupportPoint } from './movement.ts';
import type { LegPose, Pose } from './pose.ts';

/** The steps of a picture in the order of time. */
export const FRAME_NAMES = ['setUp', 'start', 'end', 'hold', 'takeOff', 'flight', 'landing'] as const;
export type FrameName = (typeof FRAME_NAMES)[number];

/** From the side, from the front, or from above: on a body that lies on its back, or stands. */
export const VIEWS = ['side', 'front', 'above'] as const;
export type View = (typeof VIEWS)[number];

/** Where an arrow stands, and which way it points; `out` is away from the middle of the body on the working side. */
export const ARROW_PLACES = ['head', 'hands', 'hip', 'knee', 'foot'] as const;
export const ARROW_WAYS = ['up', 'down', 'forward', 'back', 'out', 'in'] as const;
export interface ArrowSign {
  readonly at: (typeof ARROW_PLACES)[number];
  readonly to: (typeof ARROW_WAYS)[number];
}

/** What both hands do in a view from the front. `elbow`: the lower forearm carries the body. */
export const HAND_PLACES = ['sides', 'hips', 'chest', 'ahead', 'elbow'] as const;
export type HandPlace = (typeof HAND_PLACES)[number];

interface DrawnFrame {
  readonly name: FrameName;
  /** Words under this picture instead of those of its name. */
  readonly caption: string | null;
  readonly arrow: ArrowSign | null;
  /** How far the lowest point of the body is off the ground, metres. */
  readonly offGroundM: number;
}

/** Elbow flexion and the far arm, where a pose seen from the side needs them. */
export interface DrawnArms {
  readonly elbowDeg: number;
  /** The far arm from straight down, forward positive; null where it hangs behind the near one. */
  readonly farDeg: number | null;
}

export interface DrawnSideFrame extends DrawnFrame {
  readonly pose: Pose;
  readonly arms: DrawnArms | null;
}

/** A leg seen from the front: `outDeg` away from the other leg; hip and knee flexion make it look shorter. */
export interface FrontLegPose extends Pick<LegPose, 'hip' | 'knee'> {
  readonly outDeg: number;
}

export interface FrontPose {
  /** The trunk's side lean towards the working side; 0 upright, -90 lying on the other side. */
  readonly leanDeg: number;
  readonly hands: HandPlace;
  readonly work: FrontLegPose;
  readonly other: FrontLegPose;
}

export interface DrawnFrontFrame extends DrawnFrame {
  readonly front: FrontPose;
}

/** The picture of a card that has no pose of the model. */
export type DrawnPicture =
  | {
      readonly view: 'side';
      /** Body points that rest on something raised; without them the lowest point of the body stands on the floor. */
      readonly supports: readonly SupportPoint[];
      /** Metres by which the first of them stands over the floor. */
      readonly riseM: number;
      readonly frames: readonly DrawnSideFrame[];
    }
  | { readonly view: 'front' | 'above'; readonly frames: readonly DrawnFrontFrame[] };
