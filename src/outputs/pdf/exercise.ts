/** One exercise of the next session: title, figures, the dose in big type, how far, and what else must be known. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { Exercise } from '../../programme/programme.ts';
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { doseBlocks } from './dose.ts';
import { factBlocks, factsInARun, factsOf, howFarOf, type Detail } from './facts.ts';
import { areWide, figuresOf } from './figures.ts';
import type { Pen } from './pen.ts';
import { openList, type Tag, open } from './tag.ts';
import { headingBlock } from './text.ts';

/** An exercise measured for a width; how high it is depends on how high its drawings may be. */
export interface ExerciseCell {
  heightPt(drawingPt: number): number;
  draw(xPt: number, yPt: number, drawingPt: number): void;
}

/** An exercise with its pictures, one for each posture. */
export interface Pictured {
  readonly exercise: Exercise;
  readonly drawings: readonly Drawing[];
}

/** White between figures and dose, points. */
const GUTTER_PT = 10;

/** Share of the width that figures take beside the dose, by exercises in a row. */
const FIGURES = { 2: 0.48, 3: 0.43 };

/** White below a title, below figures, and above facts beside a dose, whose digits stand lower in their line, points. */
const TITLE_GAP_PT = 3;
const FIGURE_GAP_PT = 3;
const FACTS_DROP_PT = 4;

/** Measures one exercise for page one; its elements are hung into `parent` now, in reading order. */
export function exerciseCell(
  pen: Pen,
  parent: Tag,
  pictured: Pictured,
  howFarLabel: string,
  detail: Detail,
  widthPt: number,
): ExerciseCell {
  const tag = open(parent, 'Sect');
  const title = headingBlock(pen, tag, 3, pictured.exercise.title, pen.look.style('heading3'), widthPt, 0);
  const set = detail.setting === 'close' ? closeCell : areWide(pictured.drawings) ? wideCell : besideCell;
  const below = set(pen, tag, pictured, howFarLabel, detail, widthPt);
  const topPt = title.heightPt + TITLE_GAP_PT;
  return {
    heightPt: (drawingPt) => topPt + below.heightPt(drawingPt),
    draw: (xPt, yPt, drawingPt) => {
      title.draw(xPt, yPt);
      below.draw(xPt, yPt + topPt, drawingPt);
    },
  };
}

type Setting = (
  pen: Pen,
  tag: Tag,
  pictured: Pictured,
  howFarLabel: string,
  detail: Detail,
  widthPt: number,
) => ExerciseCell;

/** Figures and how far at the left, dose and facts at the right. */
const besideCell: Setting = (pen, tag, { exercise, drawings }, howFarLabel, detail, widthPt) => {
  const leftPt = widthPt * FIGURES[detail.abreast];
  const rightPt = widthPt - leftPt - GUTTER_PT;
  const figures = figuresOf(pen, tag, exercise.figures, drawings, true, leftPt);
  const dose = doseBlocks(pen, tag, exercise, detail, rightPt);
  const list = openList(tag, 'None');
  const howFar = factBlocks(pen, list, howFarOf(exercise, howFarLabel, detail), detail.text, leftPt);
  const right = [...dose, ...factBlocks(pen, list, factsOf(exercise, detail), detail.text, rightPt)];
  const figurePt = (drawingPt: number) => withGap(figures.heightPt(drawingPt));
  return {
    heightPt: (drawingPt) => Math.max(figurePt(drawingPt) + stackHeightPt(howFar), stackHeightPt(right)),
    draw: (xPt, yPt, drawingPt) => {
      figures.draw(xPt, yPt, drawingPt);
      drawStack(howFar, xPt, yPt + figurePt(drawingPt));
      drawStack(right, xPt + leftPt + GUTTER_PT, yPt);
    },
  };
};

/** Lying bodies over the whole width, under them dose and facts in two columns. */
const wideCell: Setting = (pen, tag, { exercise, drawings }, howFarLabel, detail, widthPt) => {
  const halfPt = (widthPt - GUTTER_PT) / 2;
  const figures = figuresOf(pen, tag, exercise.figures, drawings, true, widthPt);
  const dose = doseBlocks(pen, tag, exercise, detail, halfPt);
  const list = openList(tag, 'None');
  const howFar = factBlocks(pen, list, howFarOf(exercise, howFarLabel, detail), detail.text, halfPt);
  const facts = factBlocks(pen, list, factsOf(exercise, detail), detail.text, halfPt);
  const [left, right] = shorter(dose, howFar, facts);
  const figurePt = (drawingPt: number) => withGap(figures.heightPt(drawingPt));
  return {
    heightPt: (drawingPt) =>
      figurePt(drawingPt) + Math.max(stackHeightPt(left), FACTS_DROP_PT + stackHeightPt(right)),
    draw: (xPt, yPt, drawingPt) => {
      const topPt = yPt + figurePt(drawingPt);
      figures.draw(xPt, yPt, drawingPt);
      drawStack(left, xPt, topPt);
      drawStack(right, xPt + halfPt + GUTTER_PT, topPt + FACTS_DROP_PT);
    },
  };
};

/** Many exercises: the last picture, which shows the first as a shadow, beside the dose; under both all facts in a run. */
const closeCell: Setting = (pen, tag, { exercise, drawings }, howFarLabel, detail, widthPt) => {
  const figurePt = widthPt * FIGURES[detail.abreast];
  const figures = figuresOf(pen, tag, exercise.figures, drawings.slice(-1), false, figurePt);
  const leftPt = drawings.length > 0 ? figurePt + GUTTER_PT : 0;
  const rightPt = widthPt - leftPt;
  const dose = doseBlocks(pen, tag, exercise, detail, rightPt);
  const said = [...howFarOf(exercise, howFarLabel, detail), ...factsOf(exercise, detail)];
  const facts = factsInARun(pen, tag, said, detail.text, widthPt);
  const upperPt = (drawingPt: number) => Math.max(withGap(figures.heightPt(drawingPt)), stackHeightPt(dose));
  return {
    heightPt: (drawingPt) => upperPt(drawingPt) + stackHeightPt(facts),
    draw: (xPt, yPt, drawingPt) => {
      figures.draw(xPt, yPt, drawingPt);
      drawStack(dose, xPt + leftPt, yPt);
      drawStack(facts, xPt, yPt + upperPt(drawingPt));
    },
  };
};

function withGap(figurePt: number): number {
  return figurePt > 0 ? figurePt + FIGURE_GAP_PT : 0;
}

/** Under wide figures how far stands with the dose or with the facts, whichever makes the longer column shorter. */
function shorter(
  dose: readonly Block[],
  howFar: readonly Block[],
  facts: readonly Block[],
): readonly [readonly Block[], readonly Block[]] {
  const tallestPt = (left: readonly Block[], right: readonly Block[]) =>
    Math.max(stackHeightPt(left), FACTS_DROP_PT + stackHeightPt(right));
  const withDose: readonly Block[] = [...dose, ...howFar];
  const withFacts: readonly Block[] = [...howFar, ...facts];
  return tallestPt(withDose, facts) <= tallestPt(dose, withFacts) ? [withDose, facts] : [dose, withFacts];
}
