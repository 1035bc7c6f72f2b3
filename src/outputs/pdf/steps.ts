/**
 * Every number of every step. The present one: exercises side by side, a row for each number. The steps to come stand
 * back: of each exercise what is new, in a run of words. For who hears the file, both are tables of one header and one
 * cell a number.
 */
import type { LeafletLabels } from '../../messages/en/labels.ts';
import { type Prescription, type StepTable } from '../../programme/programme.ts';
import { CELLS, type CellName } from '../../decisions/terms/cell.ts';
import { kept, type Block } from './block.ts';
import { FURNITURE, type Pen } from './pen.ts';
import { plainEntry } from './prose.ts';
import type { Run } from './run.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { gridBlock, GUTTER_PT, wishesOf, type Grid } from './table.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, listBlocks, plain, runsBlock, stuck, textBlock } from './text.ts';

/** Exercises beside one another before a second table is begun: a column must hold a few words. */
const ABREAST = 6;

/** A table higher than this may be parted, points. */
const WHOLE_PT = 430;

/** How the steps to come are set: what is said of them, and their numbers. */
export interface Preview {
  readonly text: TextStyle;
  readonly preview: TextStyle;
}

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
  { text, preview }: Preview,
  widthPt: number,
): readonly Block[] {
  if (steps.every((step) => step.present)) return [];
  const tag = open(root, 'Sect');
  return [
    headingBlock(pen, tag, 2, labels.steps, pen.look.style('heading2'), widthPt, sectionGapPt(text)),
    ...steps.flatMap((step) =>
      step.present ? [] : stepBlocks(pen, tag, step, labels, { text, preview }, widthPt),
    ),
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
  { text: body, preview }: Preview,
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
    ...step.prescriptions
      .filter(({ news }) => news.length > 0)
      .map((prescription) => runInTable(pen, tag, step, prescription, preview, widthPt)),
  ];
}

/** One exercise of a step to come: a table whose rows follow one another like the words of a paragraph. */
function runInTable(
  pen: Pen,
  parent: Tag,
  step: StepTable,
  prescription: Prescription,
  aside: TextStyle,
  widthPt: number,
): Block {
  const quiet: TextStyle = { ...aside, colour: pen.look.colour.quiet };
  const label: TextStyle = { ...quiet, slanted: true };
  const dot: Run = { text: '\u00a0· ', style: quiet, tag: FURNITURE };
  const table = open(parent, 'Table');
  const title: Run = {
    text: prescription.title,
    style: { ...quiet, cut: 'bold' },
    tag: open(table, 'Caption'),
  };
  const body = open(table, 'TBody');
  const rows = CELLS.filter((cell) => prescription.news.includes(cell)).flatMap((cell): readonly Run[] => {
    const row = open(body, 'TR');
    return [
      dot,
      { text: `${step.columns[cell]} `, style: label, tag: open(row, 'TH', { scope: 'Row' }) },
      { text: textOf(prescription, cell), style: quiet, tag: open(row, 'TD') },
    ];
  });
  return kept(runsBlock(pen, table, [title, ...rows], widthPt, pen.look.space.smallPt), WHOLE_PT);
}

function textOf(prescription: Prescription, name: CellName): string {
  return prescription.cells.find(({ cell }) => cell === name)?.text ?? '';
}
