/** What stands where in a picture: solved postures with their props and weight. Drawn by figure, decided in programme. */
import type { Body } from './body.ts';
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
] as const;
export type Prop = (typeof PROPS)[number];

/** The weight as the thing it is. */
export type WeightKind = 'dumbbell' | 'kettlebell' | 'bar' | 'rucksack' | 'bottles';

export interface SceneFrame {
  /** `setUp` is drawn only where the card needs it. */
  readonly name: 'setUp' | 'start' | 'end' | 'hold';
  readonly posture: Posture;
  /** Pelvis to thigh of the working leg in degrees, as rounded for the leaflet; drawn as the arc. */
  readonly hipFlexionDeg: number;
}

export interface Scene {
  readonly body: Body;
  /** The affected or working side; decides which leg is solid and the words left and right. */
  readonly side: 'right' | 'left' | 'both';
  readonly supports: readonly SupportPoint[];
  /** Metres by which support 1 stands above support 2 (bench, step), 0 on one floor. */
  readonly supportRiseM: number;
  readonly props: readonly Prop[];
  readonly weight: { readonly kind: WeightKind; readonly at: LoadPoint; readonly kg: number } | null;
  readonly frames: readonly SceneFrame[];
}
