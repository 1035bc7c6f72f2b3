/** One row of a table: its cells wrapped, drawn into their elements, parted only when it must be. */
import { baselineDropPt, drawRunningLine, drawLines, drawRules, drawText, type Pen } from './pen.ts';
import type { Run } from './run.ts';
import { mark, type Tag } from './tag.ts';
import type { Line } from './measurer.ts';
import { wrap } from './wrap.ts';

/** What the rows of a table have in common. */
export interface Columns {
  /** Points, one for each column, white between the columns included. */
  readonly widthsPt: readonly number[];
  /** White between two columns, points. */
  readonly gutterPt: number;
  /** White above and below the text of a row, points. */
  readonly paddingPt: number;
  /** Columns from this on have boxes for a pen; before it an empty cell has a short dash for "does not apply". */
  readonly boxesFrom: number;
}

export interface Row {
  readonly cells: readonly RowCell[];
  readonly leadingPt: number;
  readonly heightPt: number;
}

interface RowCell {
  readonly lines: readonly Line[];
  readonly tag: Tag;
  readonly xPt: number;
  readonly widthPt: number;
  /** What is drawn when there is no text from the start, not merely at its end. */
  readonly blank: 'dash' | 'box' | null;
}

/** A row of cells in the columns of a table. */
export function rowOf(
  pen: Pen,
  columns: Columns,
  cells: readonly (readonly Run[])[],
  tags: readonly Tag[],
): Row {
  const set: RowCell[] = [];
  let xPt = 0;
  cells.forEach((runs, at) => {
    const [tag, columnPt = 0] = [tags[at], columns.widthsPt[at]];
    const widthPt = columnPt - columns.gutterPt;
    const blank = runs.length > 0 ? null : at >= columns.boxesFrom ? 'box' : 'dash';
    if (tag) set.push({ lines: wrap(runs, widthPt, pen.measurer), tag, xPt, widthPt, blank });
    xPt += columnPt;
  });
  return rowWith(columns, set, leadingOf(cells));
}

function leadingOf(cells: readonly (readonly Run[])[]): number {
  let leadingPt = 0;
  for (const runs of cells) for (const { style } of runs) leadingPt = Math.max(leadingPt, style.leadingPt);
  return leadingPt;
}

/** The row in two, the first no higher than the room; null where it has too few lines or too little room for that. */
export function cutRow(columns: Columns, row: Row, roomPt: number): readonly [Row, Row] | null {
  const lines = Math.floor((roomPt - 2 * columns.paddingPt) / row.leadingPt);
  if (lines < 2 || linesIn(row) <= Math.max(lines, LINES_WHOLE)) return null;
  const part = (from: number, to: number) =>
    rowWith(
      columns,
      row.cells.map((cell) => ({
        ...cell,
        blank: from === 0 ? cell.blank : null,
        lines: cell.lines.slice(from, to),
      })),
      row.leadingPt,
    );
  return [part(0, lines), part(lines, Infinity)];
}

/** A row of no more lines than these stays whole whatever happens; no text of the library comes near. */
const LINES_WHOLE = 30;

/** Draws a row as content, a blank in an empty cell. */
export function drawRow(pen: Pen, columns: Columns, row: Row, xPt: number, yPt: number): void {
  const topPt = yPt + columns.paddingPt;
  for (const cell of row.cells) {
    drawLines(pen, cell.tag, cell.lines, xPt + cell.xPt, topPt, row.leadingPt);
    if (cell.blank) drawBlank(pen, cell, xPt + cell.xPt, topPt);
  }
  const rules = row.cells.flatMap((cell) => (cell.blank ? blankRules(columns, row, cell, xPt, yPt) : []));
  const { line, colour } = pen.look;
  drawRules(pen, rules, line.hairPt, colour.quiet);
}

/** Draws a row that stood as content before; call inside an artifact. */
export function drawRowAgain(pen: Pen, columns: Columns, row: Row, xPt: number, yPt: number): void {
  for (const { lines, xPt: cellPt } of row.cells)
    lines.forEach((line, at) => {
      const topPt = yPt + columns.paddingPt + at * row.leadingPt;
      drawRunningLine(pen, line, xPt + cellPt, topPt + baselineDropPt(line, row.leadingPt));
    });
}

function rowWith(columns: Columns, cells: readonly RowCell[], leadingPt: number): Row {
  const lines = Math.max(1, ...cells.map((cell) => cell.lines.length));
  return { cells, leadingPt, heightPt: lines * leadingPt + 2 * columns.paddingPt };
}

function linesIn({ cells }: Row): number {
  return Math.max(...cells.map(({ lines }) => lines.length));
}

/** A space: readers of the tree pass over a cell that holds nothing at all, and the columns after it slip. */
function drawBlank(pen: Pen, { tag }: RowCell, xPt: number, topPt: number): void {
  const style = pen.look.style('small');
  mark(tag, () => drawText(pen, ' ', style, xPt, topPt + style.leadingPt));
}

/** Length of the dash that says "does not apply", and the white between a pen box and its row, points. */
const DASH_PT = 5;
const BOX_GAP_PT = 2;

function blankRules(
  columns: Columns,
  row: Row,
  cell: RowCell,
  xPt: number,
  yPt: number,
): readonly (readonly number[])[] {
  const left = xPt + cell.xPt;
  if (cell.blank === 'dash') {
    const middle = yPt + columns.paddingPt + row.leadingPt / 2;
    return [[left, middle, left + DASH_PT, middle]];
  }
  const right = left + cell.widthPt;
  const [top, bottom] = [yPt + BOX_GAP_PT, yPt + row.heightPt - BOX_GAP_PT];
  return [
    [left, top, right, top],
    [right, top, right, bottom],
    [right, bottom, left, bottom],
    [left, bottom, left, top],
  ];
}
