/** Pages one after the other: where the next thing goes, and a new page when it goes nowhere. */
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { pour, pourEven, type Column } from './flow.ts';
import type { Pen } from './pen.ts';

/** The place in hand; moves down as things are drawn. */
export interface Pages {
  readonly pen: Pen;
  /** False while pages are only counted. */
  readonly drawing: boolean;
  /** Lowest point of text on pages after the first. */
  readonly laterBottomPt: number;
  count: number;
  yPt: number;
  bottomPt: number;
}

/** White between two columns of text, points. */
const COLUMN_GAP_PT = 20;

/** Page one has no running head: its masthead begins in its place, this far from the edge of the sheet, points. */
const MASTHEAD_PT = 24;

/** Starts the document's first page. */
export function firstPage(pen: Pen, laterBottomPt: number): Pages {
  pen.doc.addPage();
  return {
    pen,
    drawing: true,
    laterBottomPt,
    count: 1,
    yPt: MASTHEAD_PT,
    bottomPt: pen.look.sheet.bottomPt,
  };
}

export function turnPage(pages: Pages): void {
  if (pages.drawing) pages.pen.doc.addPage();
  pages.count += 1;
  pages.yPt = pages.pen.look.sheet.topPt;
  pages.bottomPt = pages.laterBottomPt;
}

/** Room left on the page in hand, points. */
export function roomPt(pages: Pages): number {
  return pages.bottomPt - pages.yPt;
}

/** Width of one of so many columns of text, points. */
export function columnWidthPt(pen: Pen, count: number): number {
  const { leftPt, rightPt } = pen.look.sheet;
  return (rightPt - leftPt - (count - 1) * COLUMN_GAP_PT) / count;
}

/** Columns over the height between two points. */
export function columnsOf(pen: Pen, count: number, topPt: number, bottomPt: number): readonly Column[] {
  const widthPt = columnWidthPt(pen, count);
  return Array.from({ length: count }, (_, at) => ({
    xPt: pen.look.sheet.leftPt + at * (widthPt + COLUMN_GAP_PT),
    topPt,
    bottomPt,
  }));
}

/** Less than this is not worth starting a text in, points: a heading and a few lines. */
const WORTH_PT = 72;

/** Sets blocks in so many columns, over as many pages as they need, and leaves the place below them. */
export function flow(pages: Pages, blocks: readonly Block[], count: number, gapPt: number): void {
  let rest = blocks;
  if (rest.length === 0) return;
  const fresh = pages.yPt === pages.pen.look.sheet.topPt;
  if (!fresh) pages.yPt += gapPt;
  if (!fresh && roomPt(pages) < Math.min(WORTH_PT, stackHeightPt(rest) / count)) turnPage(pages);
  while (rest.length > 0) {
    const columns = columnsOf(pages.pen, count, pages.yPt, pages.bottomPt);
    const poured = count === 1 ? pour(rest, columns) : pourEven(rest, columns);
    if (pages.drawing) for (const { block, xPt, yPt } of poured.placed) block.draw(xPt, yPt);
    if (poured.placed.length === 0 && pages.yPt === pages.pen.look.sheet.topPt)
      throw new Error(
        `a block of ${Math.round(rest[0]?.heightPt ?? 0)} pt fits on no page and cannot be parted`,
      );
    rest = poured.rest;
    pages.yPt = poured.bottomPt;
    if (rest.length > 0) turnPage(pages);
  }
}

/** As `flow`, but from a new page when they fit whole on one and not on this. */
export function flowTogether(pages: Pages, blocks: readonly Block[], count: number, gapPt: number): void {
  const fits = (topPt: number) =>
    pour(blocks, columnsOf(pages.pen, count, topPt, pages.bottomPt)).rest.length === 0;
  if (!fits(pages.yPt + gapPt) && fits(pages.pen.look.sheet.topPt)) turnPage(pages);
  flow(pages, blocks, count, gapPt);
}

/** Draws blocks that stand together at the place in hand. */
export function place(pages: Pages, blocks: readonly Block[]): void {
  pages.yPt = drawStack(blocks, pages.pen.look.sheet.leftPt, pages.yPt);
}
