/** What stands where in a picture: solved postures with their props and weight. Drawn by figure, decided in programme. */
import type { Body } from './body.ts';
import type { ArrowSign, DrawnArms, FrameName, FrontPose } from './drawnPose.ts';
import type { LoadPoint, SupportPoint } from './movement.ts';
import type { Posture } from './pose.ts';

/** Things drawn with the body. Words shared by exercise cards and figures. */
export const PROPS = [
  'floor',
  'mat',
  'bench',
  'step',
  'chair',
  'wall',
  'ball',
  'band',
  'bar',
  'table',
  'books',
  'pillows',
  'strap',
  'towel',
  'bed',
  'machine',
  'hurdle',
  'door',
] as const;
export type Prop = (typeof PROPS)[number];

/** Where hands rest on the body. */
export const RESTING_HANDS = ['thighs', 'hips', 'chest'] as const;
export type RestingHands = (typeof RESTING_HANDS)[number];

/** The weight as the thing it is. */
export type WeightKind = 'dumbbell' | 'kettlebell' | 'bar' | 'rucksack' | 'bottles';

interface Frame {
  /** `setUp` is drawn only where the card needs it; take-off, flight and landing are the steps of a hop. */
  readonly name: FrameName;
  /** Words of the card's author under this picture; those of its name where there are none. */
  readonly caption?: string;
  /** Where the author wants the arrow; without one it shows what moves from the frame before. */
  readonly arrow?: ArrowSign;
  /** How far the body hangs over the ground, metres. */
  readonly offGroundM?: number;
}

export interface SideFrame extends Frame {
  readonly posture: Posture;
  /**
   * Pelvis to thigh of the working leg in degrees, as rounded for the leaflet; drawn as the arc. Null for a pose that is
   * only drawn, and for a leg behind the body: there is no bend to show.
   */
  readonly hipFlexionDeg: number | null;
  /** Elbows and far arm of a pose that is only drawn. */
  readonly arms?: DrawnArms;
}

export interface FrontFrame extends Frame {
  readonly front: FrontPose;
}

export type SceneFrame = SideFrame | FrontFrame;

interface Setting {
  readonly body: Body;
  /** The affected or working side; decides which leg is solid and the words left and right. */
  readonly side: 'right' | 'left' | 'both';
  readonly props: readonly Prop[];
}

export interface SideScene extends Setting {
  readonly view: 'side';
  readonly supports: readonly SupportPoint[];
  /** Metres by which support 1 stands above support 2 (bench, step), 0 on one floor. */
  readonly supportRiseM: number;
  readonly weight: { readonly kind: WeightKind; readonly at: LoadPoint; readonly kg: number } | null;
  /** Where the card's words put the hands; the model's arms may hang elsewhere. */
  readonly hands?: RestingHands;
  readonly frames: readonly SideFrame[];
  /**
   * The body at even steps of the way from the `start` frame to the `end` frame, both included, each as solved; left out
   * where nothing moves, or where the frames are steps in time.
   */
  readonly moments?: readonly Pick<SideFrame, 'posture' | 'arms'>[];
}

/** Seen from the front, or lying and seen from above. */
export interface FrontScene extends Setting {
  readonly view: 'front' | 'above';
  readonly frames: readonly FrontFrame[];
  /** As from the side. */
  readonly moments?: readonly FrontPose[];
}

export type Scene = SideScene | FrontScene;
