/** A sheet to fill in with a pen: one row a day, a box for every answer. */
import type { LogSheet } from '../../messages/shapes.ts';
import type { Block } from './block.ts';
import { columnWidthsPt } from './columns.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import { gridBlock, wishesOf } from './table.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, plain, stuck, textBlock } from './text.ts';

/** White above and below a row's text, points: a row is then 6.1 mm high, enough for a hand with a pen [choice]. */
const PADDING_PT = 2.25;

/** White between two columns, points: boxes part themselves. */
const GUTTER_PT = 5;

/** The columns before the boxes: the day, and what is planned. */
const PRINTED = 2;

/** A number has its box, no wider than this, points. */
const BOX_MOST_PT = 42;

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
  const note = look.style('small');
  const bold = { ...note, cut: 'bold' as const };
  const head = log.columns.map((text) => plain(text, bold));
  const rows = log.days.map(({ label, planned }) => [
    plain(label, bold),
    planned === '' ? [] : plain(planned, note),
    ...head.slice(PRINTED).map((): readonly Run[] => []),
  ]);
  const wishes = wishesOf(pen, head, rows, GUTTER_PT, 0).map(({ leastPt, naturalPt }, at) => {
    if (at === 0) return { leastPt: naturalPt, naturalPt };
    const mostPt = at >= PRINTED ? BOX_MOST_PT : naturalPt;
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
