/** The emergency box on page one, and the strip at the foot of every page after it. */
import type { EmergencyBox } from '../programme/programme.ts';
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { drawArtifact, pt, rgb, type Pen } from './pen.ts';
import type { TextStyle } from './sheet.ts';
import type { Tag } from './tag.ts';
import { headingBlock, listBlocks } from './text.ts';
import { plainEntry } from './prose.ts';
import { wrap, type Line } from './wrap.ts';

/** White inside the box, points. */
const PADDING_PT = 5;

/** Share of the width that the call to make takes. */
const CALL = 0.26;

/** The box: the number to call white on black, beside it when to call. */
export function emergencyBlock(
  pen: Pen,
  root: Tag,
  emergency: EmergencyBox,
  text: TextStyle,
  widthPt: number,
): Block {
  const { look } = pen;
  const tag = root.open('Sect');
  const callPt = widthPt * CALL;
  const linesPt = widthPt - callPt - 2 * PADDING_PT;
  const heading = { ...look.style('heading3', 'paper'), sizePt: 13, leadingPt: 15.5 };
  const call = headingBlock(pen, tag, 2, emergency.heading, heading, callPt - 2 * PADDING_PT, 0);
  const when = listBlocks(
    pen,
    tag,
    emergency.lines.map((line) => plainEntry(line, text)),
    false,
    linesPt,
    0,
  );
  const heightPt = Math.max(call.heightPt, stackHeightPt(when)) + 2 * PADDING_PT;
  return {
    heightPt,
    gapPt: look.space.mediumPt,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      const { heavyPt } = look.line;
      const box = [xPt + heavyPt / 2, yPt + heavyPt / 2, widthPt - heavyPt, heightPt - heavyPt]
        .map(pt)
        .join(' ');
      const ground = [xPt, yPt, callPt, heightPt].map(pt).join(' ');
      drawArtifact(pen, 'Layout', () => {
        pen.doc.addContent(
          `q ${rgb(look.colour.ink)} rg ${ground} re f ${rgb(look.colour.ink)} RG ${pt(heavyPt)} w ${box} re S Q`,
        );
      });
      call.draw(xPt + PADDING_PT, yPt + (heightPt - call.heightPt) / 2);
      drawStack(when, xPt + callPt + PADDING_PT, yPt + (heightPt - stackHeightPt(when)) / 2);
    },
  };
}

/** The same words for the foot of a page, in as few lines as they need. */
export function emergencyStrip(pen: Pen, emergency: EmergencyBox, widthPt: number): readonly Line[] {
  const { look } = pen;
  const runs = [
    { text: `${emergency.heading} `, style: { ...look.style('note'), cut: 'bold' as const } },
    { text: emergency.lines.join(' '), style: look.style('note') },
  ];
  return wrap(runs, widthPt, pen.fonts);
}
