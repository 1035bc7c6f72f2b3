/** Exercises two or three in a row, hairlines between the rows, bodies of one size and as tall as the room allows. */
import type { ExerciseCell } from './exercise.ts';
import { columnsOf, type Pages } from './pages.ts';
import { drawRules } from './pen.ts';

export type Row = readonly ExerciseCell[];

/** Points of paper a millimetre of the pictured world; below the least a posture is hard to tell [choice]. */
const SCALE = { least: 0.028, most: 0.056, step: 0.002 };

/** Exercises in rows of so many. */
export function rowsOf(cells: readonly ExerciseCell[], abreast: number): readonly Row[] {
  return Array.from({ length: Math.ceil(cells.length / abreast) }, (_, at) =>
    cells.slice(at * abreast, (at + 1) * abreast),
  );
}

/** The largest scale with which all rows go into the room; where none does, as many rows as go in with the least. */
export function fitRows(
  rows: readonly Row[],
  roomPt: number,
  gapPt: number,
): { scale: number; count: number } {
  for (let scale = SCALE.most; scale >= SCALE.least; scale -= SCALE.step)
    if (rowsHeightPt(rows, scale, gapPt) <= roomPt) return { scale, count: rows.length };
  const scale = SCALE.least;
  const tooMany = rows.findIndex((_, at) => rowsHeightPt(rows.slice(0, at + 1), scale, gapPt) > roomPt);
  const count = Math.max(0, tooMany);
  // Fewer rows have more room.
  return count === 0 ? { scale, count } : fitRows(rows.slice(0, count), roomPt, gapPt);
}

/** Height of rows at a scale and white on both sides of the hairlines between them, points. */
export function rowsHeightPt(rows: readonly Row[], scale: number, gapPt: number): number {
  return rows.reduce((sum, row, at) => sum + rowHeightPt(row, scale) + (at === 0 ? 0 : 2 * gapPt), 0);
}

/** Draws rows at the place in hand. */
export function drawRows(
  pages: Pages,
  rows: readonly Row[],
  abreast: number,
  scale: number,
  gapPt: number,
): void {
  const { sheet, line, colour } = pages.pen.look;
  rows.forEach((row, at) => {
    if (at > 0) {
      pages.yPt += gapPt;
      drawRules(pages.pen, [[sheet.leftPt, pages.yPt, sheet.rightPt, pages.yPt]], line.hairPt, colour.hair);
      pages.yPt += gapPt;
    }
    columnsOf(pages.pen, abreast, pages.yPt, pages.bottomPt).forEach(({ xPt }, column) => {
      row[column]?.draw(xPt, pages.yPt, scale);
    });
    pages.yPt += rowHeightPt(row, scale);
  });
}

function rowHeightPt(row: Row, scale: number): number {
  return Math.max(...row.map((cell) => cell.heightPt(scale)));
}
