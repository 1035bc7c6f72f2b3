/** A posed exercise as the model sees it: two end poses, what carries the body, and where a weight sits. */
import type { Pose } from './pose.ts';

/** Body points that can rest on something. `both.*`: both feet of a symmetric pose share the reaction. */
export type SupportPoint =
  | 'upperBack'
  | 'seat'
  | 'shoulder'
  | 'hands'
  | `${'work' | 'other' | 'both'}.${'heel' | 'mid' | 'fore' | 'knee' | 'ankle'}`;

export type LoadPoint = 'hands' | 'shoulder' | 'pelvisFront' | 'work.ankle' | 'both.ankle' | 'work.knee';

/**
 * How the pose is closed. `balance`: the trunk tips until the weight stands over the one support.
 * `height`: the unknown turns until support 1 is `dh` metres higher than support 2.
 */
export interface Closure {
  readonly unknown: 'trunk' | 'other.knee';
  readonly kind: 'balance' | 'height';
  /** Metres, 0 when left out. */
  readonly dh?: number;
  /** Degrees in which the unknown is sought, lowest first. */
  readonly range: readonly [number, number];
}

export interface Movement {
  /** At most two; none when bench or floor carries the body along its length. */
  readonly supports: readonly SupportPoint[];
  readonly solve?: Closure;
  /** `thighSupported`: the bench can supply any hip moment · `passive`: relaxed stretch or supported sitting. */
  readonly mode: 'active' | 'thighSupported' | 'passive';
  /** Friction between two supports: least effort, or vertical reactions only. */
  readonly horizontal: 'minEffort' | 'none';
  readonly loadAt?: LoadPoint;
  readonly start: Pose;
  /** Left out for a hold. */
  readonly end?: Pose;
  /** How the range may be graded: anywhere between the ends, by step or book heights, or not at all. */
  readonly range: 'continuous' | 'steps' | 'fixed';
}
