/** One exercise of the next session: title, picture, the dose in big type, how far, and what else one cannot start without. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { Exercise } from '../../programme/programme.ts';
import { drawStack, stackHeightPt } from './block.ts';
import { doseBlocks } from './dose.ts';
import { factBlocks, factsToStart, type Detail } from './facts.ts';
import { figuresOf } from './figures.ts';
import type { Pen } from './pen.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock } from './text.ts';

/** An exercise measured for a width; how high it is depends on the scale of its picture. */
export interface ExerciseCell {
  heightPt(scale: number): number;
  draw(xPt: number, yPt: number, scale: number): void;
}

/** An exercise with its pictures, one for each posture. */
export interface Pictured {
  readonly exercise: Exercise;
  readonly drawings: readonly Drawing[];
}

/** White between picture and dose, points. */
const GUTTER_PT = 10;

/** Share of the width that the picture takes beside the dose. */
const FIGURE = 0.46;

/** White below a title, and below picture and dose, points. */
const TITLE_GAP_PT = 3;
const FIGURE_GAP_PT = 4;

/**
 * Measures one exercise for page one; its elements are hung into `parent` now, in reading order. The picture is the
 * last one, which shows the first as a shadow; all of them stand overleaf.
 */
export function exerciseCell(
  pen: Pen,
  parent: Tag,
  { exercise, drawings }: Pictured,
  howFarLabel: string,
  detail: Detail,
  widthPt: number,
): ExerciseCell {
  const tag = open(parent, 'Sect');
  const title = headingBlock(pen, tag, 3, exercise.title, pen.look.style('heading3'), widthPt, 0);
  const figurePt = widthPt * FIGURE;
  const figures = figuresOf(pen, tag, exercise.figures, drawings.slice(-1), false, figurePt);
  const leftPt = drawings.length > 0 ? figurePt + GUTTER_PT : 0;
  const dose = doseBlocks(pen, tag, exercise, detail, widthPt - leftPt);
  const facts = factBlocks(pen, tag, factsToStart(exercise, howFarLabel), detail.text, widthPt, 0);
  const topPt = title.heightPt + TITLE_GAP_PT;
  const upperPt = (scale: number) =>
    Math.max(figures.heightPt(scale), stackHeightPt(dose)) + (facts.length > 0 ? FIGURE_GAP_PT : 0);
  return {
    heightPt: (scale) => topPt + upperPt(scale) + stackHeightPt(facts),
    draw: (xPt, yPt, scale) => {
      title.draw(xPt, yPt);
      figures.draw(xPt, yPt + topPt, scale);
      drawStack(dose, xPt + leftPt, yPt + topPt);
      drawStack(facts, xPt, yPt + topPt + upperPt(scale));
    },
  };
}
