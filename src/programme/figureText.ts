/** The pictures of an exercise with their words. */
import type { Messages } from '../messages/messages.ts';

import type { FigureText } from './programme.ts';
import type { Picture } from '../decisions/candidates/scene.ts';

/** Null where there is nothing to draw. `explains`: the sign of the hip's bend is explained beside it. */
export function figureText(
  say: Messages,
  title: string,
  side: string,
  picture: Picture | null,
  explains: boolean,
): FigureText | null {
  if (picture === null) return null;
  const { scene } = picture;
  return {
    scene,
    captions: scene.frames.map(say.captionText),
    captionsWithDegrees: scene.frames.map(say.captionWithDegrees),
    legend: explains ? say.ANGLE_LEGEND : null,
    alt: say.altText(title, side, scene),
  };
}
