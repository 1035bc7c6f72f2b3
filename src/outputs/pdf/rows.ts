/** Exercises two or three in a row, hairlines between the rows, figures as tall as the room allows. */
import type { ExerciseCell } from './exercise.ts';
import { columnsOf, type Pages } from './pages.ts';
import { drawRules } from './pen.ts';

export type Row = readonly ExerciseCell[];

/** Heights between which the drawings of an exercise are set, points; below 14 mm a posture is hard to tell [choice]. */
const DRAWING_PT = { least: 40, most: 106, step: 4 };

/** Exercises in rows of so many. */
export function rowsOf(cells: readonly ExerciseCell[], abreast: number): readonly Row[] {
  return Array.from({ length: Math.ceil(cells.length / abreast) }, (_, at) =>
    cells.slice(at * abreast, (at + 1) * abreast),
  );
}

/** The tallest drawings with which all rows go into the room; with the smallest, as many rows as go in. */
export function fitRows(
  rows: readonly Row[],
  roomPt: number,
  gapPt: number,
): { drawingPt: number; count: number } {
  for (let drawingPt = DRAWING_PT.most; drawingPt >= DRAWING_PT.least; drawingPt -= DRAWING_PT.step)
    if (rowsHeightPt(rows, drawingPt, gapPt) <= roomPt) return { drawingPt, count: rows.length };
  const drawingPt = DRAWING_PT.least;
  const tooMany = rows.findIndex((_, at) => rowsHeightPt(rows.slice(0, at + 1), drawingPt, gapPt) > roomPt);
  return { drawingPt, count: Math.max(0, tooMany) };
}

/** Height of rows with drawings of a height and white on both sides of the hairlines between them, points. */
export function rowsHeightPt(rows: readonly Row[], drawingPt: number, gapPt: number): number {
  return rows.reduce((sum, row, at) => sum + rowHeightPt(row, drawingPt) + (at === 0 ? 0 : 2 * gapPt), 0);
}

/** Draws rows at the place in hand; a cell with room to spare shows its drawings larger. */
export function drawRows(
  pages: Pages,
  rows: readonly Row[],
  abreast: number,
  drawingPt: number,
  gapPt: number,
): void {
  const { sheet, line, colour } = pages.pen.look;
  rows.forEach((row, at) => {
    if (at > 0) {
      pages.yPt += gapPt;
      drawRules(pages.pen, [[sheet.leftPt, pages.yPt, sheet.rightPt, pages.yPt]], line.hairPt, colour.hair);
      pages.yPt += gapPt;
    }
    const heightPt = rowHeightPt(row, drawingPt);
    columnsOf(pages.pen, abreast, pages.yPt, pages.bottomPt).forEach(({ xPt }, column) => {
      const cell = row[column];
      cell?.draw(xPt, pages.yPt, grownDrawingPt(cell, drawingPt, heightPt));
    });
    pages.yPt += heightPt;
  });
}

function grownDrawingPt(cell: ExerciseCell, drawingPt: number, heightPt: number): number {
  let grownPt = drawingPt;
  while (grownPt < DRAWING_PT.most && cell.heightPt(grownPt + DRAWING_PT.step) <= heightPt)
    grownPt += DRAWING_PT.step;
  return grownPt;
}

function rowHeightPt(row: Row, drawingPt: number): number {
  return Math.max(...row.map((cell) => cell.heightPt(drawingPt)));
}
