/** The pictures of an exercise with their words. */
import { altText, captionText } from './phrases/figures.ts';
import type { FigureText } from './programme.ts';
import type { Picture } from './scene.ts';

/** Null where the card has no pose to draw. */
export function figureText(title: string, side: string, picture: Picture | null): FigureText | null {
  if (picture === null) return null;
  const { scene } = picture;
  return { scene, captions: scene.frames.map(captionText), alt: altText(title, side, scene.frames) };
}
