/** What a drawn picture shows, read off the drawing itself: for rules that hold a card's words against its figure. */
import type { ArrowSign } from './drawnPose.ts';
import type { Point } from './pose.ts';
import type { Prop, Scene } from './scene.ts';

/** What a drawn hand touches. */
export type Touched =
  | 'table'
  | 'chair'
  | 'wall'
  | 'floor'
  | 'band'
  | 'weight'
  | 'strap'
  | 'grip'
  | 'hips'
  | 'thighs'
  | 'chest'
  | 'forehead';

/** A part of the body that reaches into a thing, by how much. */
export interface Entered {
  readonly part: 'foot' | 'shank' | 'thigh' | 'trunk' | 'head' | 'forearm';
  readonly prop: Prop;
  readonly depthM: number;
}

export interface SeenFrame {
  readonly hands: readonly Touched[];
  readonly entered: readonly Entered[];
  /** Where the working foot is, its heel; and a ball's middle, where there is one. */
  readonly heel: Point;
  readonly ball: Point | null;
  /** Which part the arrow belongs to; null without an arrow. */
  readonly arrowAt: ArrowSign['at'] | null;
  /** Degrees of the drawn arc and those printed beside it; null where not drawn. */
  readonly arcDeg: number | null;
  readonly shownDeg: number | null;
  /** How far the highest foot that stands is over its ground, metres. */
  readonly floatsM: number;
  /** Props of the card that are drawn in this frame. */
  readonly drawn: readonly Prop[];
}

/** Looks at a scene's drawings; one entry a frame. */
export type Look = (scene: Scene) => readonly SeenFrame[];
