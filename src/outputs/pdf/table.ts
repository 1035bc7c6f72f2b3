/**
 * Tagged tables: a caption, header cells with their scope, hairlines between the rows. No row is parted from itself;
 * on a new page the header row stands again, as page furniture.
 */
import type { Table } from '../../messages/shapes.ts';
import type { Block } from './block.ts';
import { columnWidthsPt, type Wish } from './columns.ts';
import { drawArtifact, drawRules, type Pen } from './pen.ts';
import { cutRow, drawRow, drawRowAgain, rowOf, type Columns, type Row } from './row.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { open, type Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';
import { naturalWidthPt, widestWordPt } from './wrap.ts';

/** A table ready to be set: every row as long as the head; the first cell of a row heads it. */
export interface Grid extends Columns {
  readonly caption: readonly Run[] | null;
  readonly head: readonly (readonly Run[])[];
  readonly rows: readonly (readonly (readonly Run[])[])[];
}

/** A cell of no more than this share of the table's width stays on one line where there is room for all such. */
const WHOLE = 0.24;

/** White above and below a row's text in a plain table, and between the columns of a table of words, points. */
const PADDING_PT = 2;
export const GUTTER_PT = 9;

/** A programme's plain table, its first column the rows' headers. */
export function tableBlock(
  pen: Pen,
  parent: Tag,
  table: Table,
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): Block {
  const tabular: TextStyle = { ...style, tabular: true };
  const bold: TextStyle = { ...tabular, cut: 'bold' };
  const quiet: TextStyle = { ...style, colour: pen.look.colour.quiet };
  const cell = (text: string, own: TextStyle) => (text === '' ? [] : plain(text, own));
  const head = table.columns.map((text) => cell(text, quiet));
  const rows = table.rows.map((row) => row.map((text, at) => cell(text, at === 0 ? bold : tabular)));
  const wishes = wishesOf(pen, head, rows, GUTTER_PT, WHOLE * widthPt);
  const caption = table.caption === '' ? null : plain(table.caption, { ...style, cut: 'bold' });
  const widthsPt = columnWidthsPt(wishes, widthPt + GUTTER_PT);
  return gridBlock(
    pen,
    parent,
    { caption, head, rows, widthsPt, gutterPt: GUTTER_PT, paddingPt: PADDING_PT, boxesFrom: Infinity },
    gapPt,
  );
}

/** What each column asks for, gutter included; a cell no wider than `wholePt` is not broken. */
export function wishesOf(
  pen: Pen,
  head: Grid['head'],
  rows: Grid['rows'],
  gutterPt: number,
  wholePt: number,
): readonly Wish[] {
  return head.map((top, at) => {
    const cells = [top, ...rows.map((row) => row[at] ?? [])];
    const naturals = cells.map((runs) => naturalWidthPt(runs, pen.measurer));
    const words = cells.map((runs) => widestWordPt(runs, pen.measurer));
    const wholes = naturals.filter((width) => width <= wholePt);
    return {
      leastPt: Math.max(...words, ...wholes) + gutterPt,
      naturalPt: Math.max(...naturals) + gutterPt,
    };
  });
}

/** A table as one block that parts between its rows. */
export function gridBlock(pen: Pen, parent: Tag, grid: Grid, gapPt: number): Block {
  const tag = open(parent, 'Table');
  const widthPt = grid.widthsPt.reduce((total, width) => total + width, 0) - grid.gutterPt;
  const caption = grid.caption ? textBlock(pen, tag, 'Caption', grid.caption, widthPt, 0) : null;
  const headTag = open(open(tag, 'THead'), 'TR');
  const heads = grid.head.map(() => open(headTag, 'TH', { scope: 'Column' }));
  const head = rowOf(pen, grid, grid.head, heads);
  const body = open(tag, 'TBody');
  const rows = grid.rows.map((cells) => {
    const row = open(body, 'TR');
    const tags = cells.map((_, at) => (at === 0 ? open(row, 'TH', { scope: 'Row' }) : open(row, 'TD')));
    return rowOf(pen, grid, cells, tags);
  });
  return partOf({ pen, grid, widthPt, caption, head, repeated: false }, rows, gapPt);
}

/** Some rows of a table with the head above them. */
interface Part {
  readonly pen: Pen;
  readonly grid: Grid;
  readonly widthPt: number;
  readonly caption: Block | null;
  readonly head: Row;
  /** The head stands here for the second time. */
  readonly repeated: boolean;
}

/** White between caption and head, points. */
const CAPTION_GAP_PT = 2;

function partOf(part: Part, rows: readonly Row[], gapPt: number): Block {
  const captionPt = part.caption ? part.caption.heightPt + CAPTION_GAP_PT : 0;
  const topPt = captionPt + part.head.heightPt;
  return {
    heightPt: topPt + sumPt(rows),
    gapPt,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      part.caption?.draw(xPt, yPt);
      drawPart(part, rows, xPt, yPt + captionPt);
    },
    split: (roomPt) => {
      const parted = partRows(part.grid, rows, roomPt - topPt);
      if (!parted) return null;
      const rest = { ...part, caption: null, repeated: true };
      return [partOf(part, parted[0], gapPt), partOf(rest, parted[1], 0)];
    },
  };
}

/** Rows that go into the room and the others; a single row is left alone on neither side of many. */
function partRows(
  grid: Grid,
  rows: readonly Row[],
  roomPt: number,
): readonly [readonly Row[], readonly Row[]] | null {
  const least = rows.length > 3 ? 2 : 1;
  let usedPt = 0;
  const tooMany = rows.findIndex(({ heightPt }) => (usedPt += heightPt) > roomPt);
  const count = Math.min(tooMany, rows.length - least);
  if (count >= least) return [rows.slice(0, count), rows.slice(count)];
  const [first, ...others] = rows;
  const cut = first && cutRow(grid, first, roomPt);
  return cut ? [[cut[0]], [cut[1], ...others]] : null;
}

function drawPart(
  { pen, grid, widthPt, head, repeated }: Part,
  rows: readonly Row[],
  xPt: number,
  yPt: number,
): void {
  const { line, colour } = pen.look;
  if (repeated) drawArtifact(pen, 'Pagination', () => drawRowAgain(pen, grid, head, xPt, yPt));
  else drawRow(pen, grid, head, xPt, yPt);
  const across = (atPt: number) => [xPt, atPt, xPt + widthPt, atPt];
  const between: number[][] = [];
  let belowPt = yPt + head.heightPt;
  rows.forEach((row, at) => {
    if (at > 0) between.push(across(belowPt));
    drawRow(pen, grid, row, xPt, belowPt);
    belowPt += row.heightPt;
  });
  drawRules(pen, between, line.hairPt, colour.hair);
  drawRules(pen, [across(yPt + head.heightPt)], line.rulePt, colour.rule);
  drawRules(pen, [across(belowPt)], line.hairPt, colour.rule);
}

function sumPt(rows: readonly Row[]): number {
  return rows.reduce((total, row) => total + row.heightPt, 0);
}
