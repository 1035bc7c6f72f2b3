/**
 * Every number of every step. The present one is a table: exercises side by side, a row for each number. Of the steps
 * to come stands what is new, a list for each exercise.
 */
import type { LeafletLabels } from '../../messages/en/labels.ts';
import { type Prescription, type StepTable } from '../../programme/programme.ts';
import { CELLS, type CellName } from '../../decisions/terms/cell.ts';
import { kept, type Block } from './block.ts';
import { factBlocks, type Fact } from './facts.ts';
import type { Pen } from './pen.ts';
import { plainEntry } from './prose.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { gridBlock, GUTTER_PT, wishesOf, type Grid } from './table.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, listBlocks, plain, stuck, textBlock } from './text.ts';

/** Exercises beside one another before a second table is begun: a column must hold a few words. */
const ABREAST = 6;

/** A table higher than this may be parted, points. */
const WHOLE_PT = 640;

/** The present step as blocks for one wide column. */
export function presentBlocks(
  pen: Pen,
  root: Tag,
  steps: readonly StepTable[],
  labels: LeafletLabels,
  aside: TextStyle,
  widthPt: number,
): readonly Block[] {
  const present = steps.filter((step) => step.present && step.prescriptions.length > 0);
  if (present.length === 0) return [];
  const tag = open(root, 'Sect');
  return [
    headingBlock(pen, tag, 2, labels.dose, pen.look.style('heading2'), widthPt, pen.look.space.largePt),
    ...present.flatMap((step) => gridsOf(pen, tag, step, aside, widthPt)),
  ];
}

/** The steps to come as blocks for a column. */
export function comingBlocks(
  pen: Pen,
  root: Tag,
  steps: readonly StepTable[],
  labels: LeafletLabels,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (steps.every((step) => step.present)) return [];
  const tag = open(root, 'Sect');
  return [
    headingBlock(pen, tag, 2, labels.steps, pen.look.style('heading2'), widthPt, sectionGapPt(text)),
    ...steps.flatMap((step) => (step.present ? [] : stepBlocks(pen, tag, step, labels, text, widthPt))),
  ];
}

function gridsOf(
  pen: Pen,
  parent: Tag,
  step: StepTable,
  aside: TextStyle,
  widthPt: number,
): readonly Block[] {
  const tables = Math.ceil(step.prescriptions.length / ABREAST);
  const abreast = Math.ceil(step.prescriptions.length / tables);
  return Array.from({ length: tables }, (_, at) => {
    const some = step.prescriptions.slice(at * abreast, (at + 1) * abreast);
    return kept(
      gridBlock(pen, parent, gridOf(pen, step, some, abreast, aside, widthPt), pen.look.space.smallPt),
      WHOLE_PT,
    );
  });
}

function gridOf(
  pen: Pen,
  step: StepTable,
  prescriptions: readonly Prescription[],
  abreast: number,
  aside: TextStyle,
  widthPt: number,
): Grid {
  const small: TextStyle = { ...aside, tabular: true };
  const bold: TextStyle = { ...aside, cut: 'bold' };
  const quiet: TextStyle = { ...aside, colour: pen.look.colour.quiet };
  const head = [plain(step.heading, bold), ...prescriptions.map(({ title }) => plain(title, bold))];
  const there = CELLS.filter((name) =>
    prescriptions.some(({ cells }) => cells.some(({ cell }) => cell === name)),
  );
  const rows = there.map((cell) => [
    plain(step.columns[cell], quiet),
    ...prescriptions.map((prescription) => {
      const text = textOf(prescription, cell);
      return text === '' ? [] : plain(text, small);
    }),
  ]);
  const firstPt = wishesOf(pen, head, rows, GUTTER_PT, 0)[0]?.naturalPt ?? 0;
  const cellPt = (widthPt + GUTTER_PT - firstPt) / abreast;
  const widthsPt = head.map((_, at) => (at === 0 ? firstPt : cellPt));
  return {
    caption: plain(step.caption, aside),
    head,
    rows,
    widthsPt,
    gutterPt: GUTTER_PT,
    paddingPt: 1.5,
    boxesFrom: Infinity,
  };
}

function stepBlocks(
  pen: Pen,
  parent: Tag,
  step: StepTable,
  labels: LeafletLabels,
  body: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { look } = pen;
  const { hairPt, mediumPt, smallPt } = look.space;
  const tag = open(parent, 'Sect');
  const goOn = step.goOnWhen.map((words) => plainEntry(words, body));
  return [
    headingBlock(pen, tag, 3, step.heading, look.style('heading3'), widthPt, mediumPt),
    ...(step.change === '' ? [] : [textBlock(pen, tag, 'P', plain(step.change, body), widthPt, hairPt)]),
    ...(goOn.length === 0
      ? []
      : [
          stuck(textBlock(pen, tag, 'P', plain(labels.goOnWhen, { ...body, cut: 'bold' }), widthPt, smallPt)),
        ]),
    ...listBlocks(pen, tag, goOn, false, widthPt, hairPt),
    ...step.prescriptions.flatMap((prescription) =>
      factBlocks(pen, tag, newsOf(step, prescription), body, widthPt, smallPt, prescription.title),
    ),
  ];
}

/** What a step to come changes of an exercise. */
function newsOf(step: StepTable, prescription: Prescription): readonly Fact[] {
  return CELLS.filter((cell) => prescription.news.includes(cell)).map((cell) => ({
    label: step.columns[cell],
    text: textOf(prescription, cell),
  }));
}

function textOf(prescription: Prescription, name: CellName): string {
  return prescription.cells.find(({ cell }) => cell === name)?.text ?? '';
}
