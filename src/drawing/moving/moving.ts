/** The moving picture of a scene. */
import type { Scene } from '../../mechanics/scene.ts';
import { wholeMm } from '../../units/round.ts';
import { windowOf } from '../scene.ts';
import { frontFigure } from './frontFigure.ts';
import type { MovingFigure } from './movingFigure.ts';
import { sideFigure } from './sideFigure.ts';

/** On the sheet of the scene's pictures, so that it takes the place of the first one; null where nothing moves. */
export function movingFigure(scene: Scene): MovingFigure | null {
  const figure = scene.view === 'side' ? sideFigure(scene) : frontFigure(scene);
  const window = figure === null ? null : windowOf(scene);
  if (figure === null || window === null) return null;
  const { left, right, top, mirrored } = window;
  const x = wholeMm(mirrored ? right : -left);
  return { ...figure, sheet: { across: mirrored ? -1 : 1, x, y: wholeMm(top) } };
}
