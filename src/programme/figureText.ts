/** The pictures of an exercise with their words. */
import { altText, ANGLE_LEGEND, captionText, captionWithDegrees } from '../messages/en/patient/figures.ts';
import type { FigureText } from './programme.ts';
import type { Picture } from '../decisions/candidates/scene.ts';

/** Null where there is nothing to draw. `explains`: the sign of the hip's bend is explained beside it. */
export function figureText(
  title: string,
  side: string,
  picture: Picture | null,
  explains: boolean,
): FigureText | null {
  if (picture === null) return null;
  const { scene } = picture;
  return {
    scene,
    captions: scene.frames.map(captionText),
    captionsWithDegrees: scene.frames.map(captionWithDegrees),
    legend: explains ? ANGLE_LEGEND : null,
    alt: altText(title, side, scene),
  };
}
