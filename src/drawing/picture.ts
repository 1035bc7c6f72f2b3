/** The pictures of one scene before they are set on the sheet. */
import type { ArrowSign } from '../mechanics/drawnPose.ts';
import type { Caption, Stroke } from './strokes.ts';

export interface Picture {
  readonly strokes: readonly Stroke[];
  readonly captions: readonly Caption[];
  /** Which part the arrow belongs to; null without an arrow. */
  readonly arrowAt: ArrowSign['at'] | null;
  /** Degrees the drawn arc spans; null without one. */
  readonly arcDeg: number | null;
}

export interface Pictures {
  /** One a frame, in their order. */
  readonly pictures: readonly Picture[];
  /** How far the drawn floor line lies under the figure's own floor: a mat's thickness, else 0; null for no floor line. */
  readonly floorBelowM: number | null;
}
