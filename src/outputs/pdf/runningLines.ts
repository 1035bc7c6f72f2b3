/** Head and foot of every page: whose programme, which dates and revision, which page of how many, whom to call. */
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';
import { emergencyStrip } from './emergency.ts';
import { drawArtifact, drawRunningLine, drawRules, type Pen } from './pen.ts';
import { plain } from './text.ts';
import type { Line } from './measurer.ts';
import { wrap } from './wrap.ts';

/** Baseline of the foot's last line above the edge of the sheet, points: more than printers leave white. */
const FOOT_PT = 26;

/** Baseline of the head below the edge of the sheet, points. */
const HEAD_PT = 30;

/** The lowest point text may reach on a page after the first, points from the top. */
export function bodyBottomPt(pen: Pen, programme: Programme): number {
  const { sheet, space } = pen.look;
  const { leadingPt } = pen.look.style('note');
  const strip = stripOf(pen, programme).length * leadingPt;
  return Math.min(sheet.bottomPt, sheet.heightPt - FOOT_PT - leadingPt * 1.4 - strip - space.mediumPt);
}

/** Draws head and foot on all pages; the emergency strip on all but the first, which has the box. */
export function drawRunningLines(pen: Pen, programme: Programme): void {
  const { start, count } = pen.doc.bufferedPageRange();
  for (let at = start; at < start + count; at++) {
    pen.doc.switchToPage(at);
    drawFoot(pen, programme, at - start + 1, count);
    if (at > start) {
      drawHead(pen, programme);
      drawStrip(pen, programme);
    }
  }
}

function drawHead(pen: Pen, { title, clinic }: Programme): void {
  drawEnds(pen, title, clinic.name, HEAD_PT);
}

function drawFoot(pen: Pen, programme: Programme, page: number, pages: number): void {
  const { sheet, line, colour } = pen.look;
  const baselinePt = sheet.heightPt - FOOT_PT;
  const rulePt = baselinePt - pen.look.style('note').leadingPt;
  drawRules(pen, [[sheet.leftPt, rulePt, sheet.rightPt, rulePt]], line.hairPt, colour.hair);
  drawEnds(
    pen,
    programme.runningLine,
    `${markText(programme)}${programme.pageWord} ${page} of ${pages}`,
    baselinePt,
  );
}

// Beside the page's number, for every sheet to be held against the others and the telephone.
function markText({ mark, language }: Programme): string {
  return mark === undefined ? '' : `${labelsOf(language).leaflet.mark} ${mark} · `;
}

function drawStrip(pen: Pen, programme: Programme): void {
  const { sheet, line, colour } = pen.look;
  const { leadingPt } = pen.look.style('note');
  const lines = stripOf(pen, programme);
  const topPt = sheet.heightPt - FOOT_PT - leadingPt * 1.4 - lines.length * leadingPt;
  drawRules(pen, [[sheet.leftPt, topPt - 1, sheet.rightPt, topPt - 1]], line.rulePt, colour.rule);
  drawArtifact(pen, 'Pagination', () =>
    lines.forEach((one, at) => drawRunningLine(pen, one, sheet.leftPt, topPt + (at + 0.85) * leadingPt)),
  );
}

/** One text at the left margin, one at the right, each only where it stands whole on the line. */
function drawEnds(pen: Pen, left: string, right: string, baselinePt: number): void {
  const { sheet } = pen.look;
  const style = pen.look.style('note', 'quiet');
  const set = (text: string) => wrap(plain(text, style), Infinity, pen.measurer)[0];
  const [leftLine, rightLine] = [set(left), set(right)];
  const roomPt = sheet.rightPt - sheet.leftPt - (rightLine?.widthPt ?? 0) - style.sizePt;
  drawArtifact(pen, 'Pagination', () => {
    if (leftLine && leftLine.widthPt <= roomPt) drawRunningLine(pen, leftLine, sheet.leftPt, baselinePt);
    if (rightLine && roomPt >= 0)
      drawRunningLine(pen, rightLine, sheet.rightPt - rightLine.widthPt, baselinePt);
  });
}

function stripOf(pen: Pen, programme: Programme): readonly Line[] {
  const { leftPt, rightPt } = pen.look.sheet;
  return emergencyStrip(pen, programme.emergency, rightPt - leftPt);
}
