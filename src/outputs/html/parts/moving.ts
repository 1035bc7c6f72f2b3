/** The figures that move when an exercise is counted, for the page's block. */
import { isPaced } from '../../../dosing/pace.ts';
import type { MovingFigure } from '../../../drawing/moving/movingFigure.ts';
import { movingFigure } from '../../../drawing/moving/moving.ts';
import { packed, type PackedFigures } from '../../../drawing/moving/packed.ts';
import type { Programme } from '../../../programme/programme.ts';
import { GRID_MM } from './drawing.ts';
import { shortPath } from './shortPath.ts';

/** Those of the exercises that are counted by repetitions, by their cards. */
export function movingOf({ exercises, inUse }: Programme): PackedFigures {
  const counted = new Set(
    inUse.exercises.filter((one) => isPaced(one) && one.holdSeconds === null).map(({ card }) => card),
  );
  const figures = exercises.flatMap(({ card, figures: pictures }): [string, MovingFigure][] => {
    const figure = counted.has(card) && pictures !== null ? movingFigure(pictures.scene) : null;
    return figure === null ? [] : [[card, figure]];
  });
  return packed(new Map(figures), { shorter: shortPath, unitMm: GRID_MM });
}
