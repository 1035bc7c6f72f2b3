/** A sheet to fill in with a pen: one row a day, a box for every answer. */
import type { LogSheet } from '../../messages/shapes.ts';
import type { Block } from './block.ts';
import { columnWidthsPt } from './columns.ts';
import { columnWidthPt } from './pages.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import { gridBlock, wishesOf } from './table.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, plain, stuck, textBlock } from './text.ts';
import { naturalWidthPt } from './wrap.ts';

/** White above and below a row's text, points: a row then takes a hand with a pen. */
const PADDING_PT = 3.5;

/** White between two columns, points: boxes part themselves. */
const GUTTER_PT = 5;

/** The columns before the boxes: the day, and what is planned. */
const PRINTED = 2;

/** Widths columns are content with in a narrow log, points: a plan may stand on two lines, a number has its box. */
const PLANNED_MOST_PT = 58;
const BOX_MOST_PT = 42;

/** Two columns of days; one where what is planned would take more than two narrow lines. */
export function logColumnsFor(pen: Pen, log: LogSheet): 1 | 2 {
  const note = pen.look.style('note');
  const widths = log.days.map(({ planned }) => naturalWidthPt(plain(planned, note), pen.fonts));
  return Math.max(0, ...widths) > 2 * (PLANNED_MOST_PT - GUTTER_PT) ? 1 : 2;
}

/** The log as blocks for a column. `paddingPt`: white above and below a row's text. */
export function logBlocks(
  pen: Pen,
  root: Tag,
  log: LogSheet,
  widthPt: number,
  paddingPt = PADDING_PT,
): readonly Block[] {
  const { look } = pen;
  const tag = open(root, 'Sect');
  const note = look.style('note');
  const bold = { ...note, cut: 'bold' as const };
  const head = log.columns.map((text) => plain(text, bold));
  const rows = log.days.map(({ label, planned }) => [
    plain(label, bold),
    planned === '' ? [] : plain(planned, note),
    ...head.slice(PRINTED).map((): readonly Run[] => []),
  ]);
  const wide = widthPt >= columnWidthPt(pen, 1);
  const wishes = wishesOf(pen, head, rows, GUTTER_PT, 0).map(({ leastPt, naturalPt }, at) => {
    if (at === 0) return { leastPt: naturalPt, naturalPt };
    const mostPt = at >= PRINTED ? BOX_MOST_PT : wide ? naturalPt : PLANNED_MOST_PT;
    return { leastPt, naturalPt: Math.max(leastPt, Math.min(naturalPt, mostPt)) };
  });
  const widthsPt = columnWidthsPt(wishes, widthPt + GUTTER_PT);
  const grid = {
    caption: null,
    head,
    rows,
    widthsPt,
    gutterPt: GUTTER_PT,
    paddingPt,
    boxesFrom: PRINTED,
  };
  return [
    headingBlock(pen, tag, 2, log.heading, look.style('heading2'), widthPt, look.space.largePt),
    stuck(textBlock(pen, tag, 'P', plain(log.hint, look.style('body')), widthPt, 2)),
    gridBlock(pen, tag, grid, look.space.smallPt),
  ];
}
