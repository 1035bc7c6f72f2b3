/**
 * Tagged tables: a caption, header cells with their scope, hairlines between the rows. No row is parted from itself;
 * on a new page the header row stands again, as page furniture. Long because one row is measured, drawn and parted here.
 */
import type { Table } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { columnWidthsPt } from './columns.ts';
import { drawArtifact, drawFurniture, drawLines, drawRules, baselineDropPt, type Pen } from './pen.ts';
import type { TextStyle } from './sheet.ts';
import type { Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';
import { naturalWidthPt, widestWordPt, wrap, type Line, type Run } from './wrap.ts';

/** A table ready to be set: every row as long as the head; the first cell of a row heads it. */
export interface Grid {
  readonly caption: readonly Run[] | null;
  readonly head: readonly (readonly Run[])[];
  readonly rows: readonly (readonly (readonly Run[])[])[];
  /** Points, one for each column, white between the columns included. */
  readonly widthsPt: readonly number[];
  /** White above and below the text of a row, points. */
  readonly paddingPt: number;
  /** Drawn in a cell without text: a short dash for "does not apply", a box for a pen, or nothing. */
  readonly empty: 'dash' | 'box';
}

/** White between two columns, points. */
export const GUTTER_PT = 9;

/** A column's head of no more than this stays on one line, points. */
const HEAD_PT = 60;

/** A row of more lines than these may be parted where it must; no text of the library comes near. */
const LINES_WHOLE = 30;

/** A programme's plain table, its first column the rows' headers. */
export function tableBlock(
  pen: Pen,
  parent: Tag,
  table: Table,
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): Block {
  const tabular = { ...style, tabular: true };
  const bold: TextStyle = { ...tabular, cut: 'bold' };
  const quiet: TextStyle = { ...style, colour: pen.look.colour.quiet };
  const head = table.columns.map((text) => plain(text, quiet));
  const rows = table.rows.map((row) => row.map((text, at) => plain(text, at === 0 ? bold : tabular)));
  const widthsPt = columnWidthsPt(
    head.map((_, at) =>
      wishOf(
        pen,
        [head, ...rows].map((row) => row[at] ?? []),
        HEAD_PT,
      ),
    ),
    widthPt + GUTTER_PT,
  );
  const caption = plain(table.caption, { ...style, cut: 'bold' });
  return gridBlock(pen, parent, { caption, head, rows, widthsPt, paddingPt: 2, empty: 'dash' }, gapPt);
}

/**
 * What a column of these cells asks for, points, the gutter included. Its head, the first of them, is not broken while
 * it is no wider than `headPt`.
 */
export function wishOf(
  pen: Pen,
  cells: readonly (readonly Run[])[],
  headPt: number,
): { leastPt: number; naturalPt: number } {
  const naturals = cells.map((runs) => naturalWidthPt(runs, pen.fonts));
  const [head = 0] = naturals;
  const words = cells.map((runs) => widestWordPt(runs, pen.fonts));
  return {
    leastPt: Math.max(...words, head <= headPt ? head : 0) + GUTTER_PT,
    naturalPt: Math.max(...naturals) + GUTTER_PT,
  };
}

/** A table as one block that parts between its rows. */
export function gridBlock(pen: Pen, parent: Tag, grid: Grid, gapPt: number): Block {
  const tag = parent.open('Table');
  const widthPt = grid.widthsPt.reduce((total, width) => total + width, 0) - GUTTER_PT;
  const caption = grid.caption ? textBlock(pen, tag, 'Caption', grid.caption, widthPt, 0) : null;
  const headTag = tag.open('THead').open('TR');
  const head = rowOf(
    pen,
    grid,
    grid.head,
    grid.head.map(() => headTag.open('TH', { scope: 'Column' })),
  );
  const body = tag.open('TBody');
  const rows = grid.rows.map((cells) => {
    const row = body.open('TR');
    return rowOf(
      pen,
      grid,
      cells,
      cells.map((_, at) => (at === 0 ? row.open('TH', { scope: 'Row' }) : row.open('TD'))),
    );
  });
  return partOf({ pen, grid, widthPt, caption, head, repeated: false }, rows, gapPt);
}

interface Row {
  readonly cells: readonly (readonly Line[])[];
  readonly tags: readonly Tag[];
  readonly leadingPt: number;
  readonly heightPt: number;
}

interface Part {
  readonly pen: Pen;
  readonly grid: Grid;
  readonly widthPt: number;
  readonly caption: Block | null;
  readonly head: Row;
  /** The head stands here for the second time. */
  readonly repeated: boolean;
}

function rowOf(pen: Pen, grid: Grid, cells: readonly (readonly Run[])[], tags: readonly Tag[]): Row {
  const lines = cells.map((runs, at) => wrap(runs, (grid.widthsPt[at] ?? 0) - GUTTER_PT, pen.fonts));
  const leadingPt = Math.max(...cells.flat().map((run) => run.style.leadingPt));
  return rowWith(grid, lines, tags, leadingPt);
}

function rowWith(grid: Grid, cells: Row['cells'], tags: readonly Tag[], leadingPt: number): Row {
  const lines = Math.max(1, ...cells.map((cell) => cell.length));
  return { cells, tags, leadingPt, heightPt: lines * leadingPt + 2 * grid.paddingPt };
}

function partOf(part: Part, rows: readonly Row[], gapPt: number): Block {
  const captionPt = part.caption ? part.caption.heightPt + CAPTION_GAP_PT : 0;
  const topPt = captionPt + part.head.heightPt;
  return {
    heightPt: topPt + sumPt(rows),
    gapPt,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      part.caption?.draw(xPt, yPt);
      drawGrid(part, rows, xPt, yPt + captionPt);
    },
    split: (roomPt) => {
      const parted = partRows(part.grid, rows, roomPt - topPt);
      if (!parted) return null;
      const rest = { ...part, caption: null, repeated: true };
      return [partOf(part, parted.head, gapPt), partOf(rest, parted.tail, 0)];
    },
  };
}

const CAPTION_GAP_PT = 2;

function partRows(
  grid: Grid,
  rows: readonly Row[],
  roomPt: number,
): { head: readonly Row[]; tail: readonly Row[] } | null {
  const fits = rows.findIndex((_, at) => sumPt(rows.slice(0, at + 1)) > roomPt);
  // A header with one row under it looks lost at the foot of a column; so does one row alone at the head.
  const count = Math.min(fits, rows.length - (rows.length > 3 ? 2 : 1));
  if (count >= Math.min(2, rows.length - 1) && count > 0)
    return { head: rows.slice(0, count), tail: rows.slice(count) };
  const [first] = rows;
  if (!first || Math.max(...first.cells.map((cell) => cell.length)) <= LINES_WHOLE) return null;
  const lines = Math.floor((roomPt - 2 * grid.paddingPt) / first.leadingPt);
  if (lines < 2) return null;
  const cut = (slice: (cell: readonly Line[]) => readonly Line[]) =>
    rowWith(grid, first.cells.map(slice), first.tags, first.leadingPt);
  return {
    head: [cut((cell) => cell.slice(0, lines))],
    tail: [cut((cell) => cell.slice(lines)), ...rows.slice(1)],
  };
}

function drawGrid(
  { pen, grid, widthPt, head, repeated }: Part,
  rows: readonly Row[],
  xPt: number,
  yPt: number,
): void {
  const { line, colour } = pen.look;
  if (repeated)
    drawArtifact(pen, 'Pagination', () =>
      drawCells(grid, head, xPt, yPt, (lines, x, y) =>
        lines.forEach((one, at) =>
          drawFurniture(pen, one, x, y + at * head.leadingPt + baselineDropPt(one, head.leadingPt)),
        ),
      ),
    );
  else drawRow(pen, grid, head, xPt, yPt);
  const rules: number[][] = [];
  let belowPt = yPt + head.heightPt;
  rows.forEach((row, at) => {
    if (at > 0) rules.push([xPt, belowPt, xPt + widthPt, belowPt]);
    drawRow(pen, grid, row, xPt, belowPt);
    belowPt += row.heightPt;
  });
  drawRules(pen, rules, line.hairPt, colour.hair);
  drawRules(pen, [[xPt, yPt + head.heightPt, xPt + widthPt, yPt + head.heightPt]], line.rulePt, colour.rule);
  drawRules(pen, [[xPt, belowPt, xPt + widthPt, belowPt]], line.hairPt, colour.rule);
}

function drawRow(pen: Pen, grid: Grid, row: Row, xPt: number, yPt: number): void {
  drawCells(grid, row, xPt, yPt, (lines, x, y, tag) => drawLines(pen, tag, lines, x, y, row.leadingPt));
  drawEmptyCells(pen, grid, row, xPt, yPt);
}

function drawCells(
  grid: Grid,
  row: Row,
  xPt: number,
  yPt: number,
  draw: (lines: readonly Line[], xPt: number, yPt: number, tag: Tag) => void,
): void {
  let leftPt = xPt;
  row.cells.forEach((lines, at) => {
    const tag = row.tags[at];
    if (tag && lines.length > 0) draw(lines, leftPt, yPt + grid.paddingPt, tag);
    leftPt += grid.widthsPt[at] ?? 0;
  });
}

/** Length of the dash that says "does not apply", and the pen box's white to its row, points. */
const DASH_PT = 5;
const BOX_GAP_PT = 2;

function drawEmptyCells(pen: Pen, grid: Grid, row: Row, xPt: number, yPt: number): void {
  const { line, colour } = pen.look;
  const rules: number[][] = [];
  let leftPt = xPt;
  row.cells.forEach((lines, at) => {
    const rightPt = leftPt + (grid.widthsPt[at] ?? 0) - GUTTER_PT;
    if (lines.length === 0) rules.push(...emptyRules(grid, row, leftPt, rightPt, yPt));
    leftPt = rightPt + GUTTER_PT;
  });
  drawRules(pen, rules, line.hairPt, grid.empty === 'dash' ? colour.hair : colour.quiet);
}

function emptyRules(grid: Grid, row: Row, leftPt: number, rightPt: number, yPt: number): number[][] {
  if (grid.empty === 'dash') {
    const middle = yPt + grid.paddingPt + row.leadingPt / 2;
    return [[leftPt, middle, leftPt + DASH_PT, middle]];
  }
  const [top, bottom] = [yPt + BOX_GAP_PT, yPt + row.heightPt - BOX_GAP_PT];
  return [
    [leftPt, top, rightPt, top],
    [rightPt, top, rightPt, bottom],
    [rightPt, bottom, leftPt, bottom],
    [leftPt, bottom, leftPt, top],
  ];
}

function sumPt(rows: readonly Row[]): number {
  return rows.reduce((total, row) => total + row.heightPt, 0);
}
