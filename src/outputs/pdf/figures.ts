/** The pictures of one exercise side by side, each with its caption under it; all bodies of a leaflet of one size. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { FigureText } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { drawFigure, type Box } from './drawing.ts';
import type { Pen } from './pen.ts';
import { open, type Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';

/** Pictures measured for a width; how high they are depends on the scale, points of paper a unit of the drawing. */
export interface Figures {
  heightPt(scale: number): number;
  draw(xPt: number, yPt: number, scale: number): void;
}

/** White between two pictures, and between a picture and its caption, points. */
const GAP_PT = 8;
const CAPTION_GAP_PT = 1;

/**
 * Measures the drawings of a scene, which share one view box and so one scale and one floor. They become one Figure
 * with one text alternative; the captions, if wanted, follow as paragraphs.
 */
export function figuresOf(
  pen: Pen,
  parent: Tag,
  text: FigureText | null,
  drawings: readonly Drawing[],
  captioned: boolean,
  widthPt: number,
): Figures {
  const [first] = drawings;
  if (!first || !text) return { heightPt: () => 0, draw: () => undefined };
  const framePt = (widthPt - (drawings.length - 1) * GAP_PT) / drawings.length;
  const figure = open(parent, 'Figure', { alt: text.alt });
  const style = pen.look.style('note', 'quiet');
  const captions = (captioned ? text.captionsWithDegrees : []).map((words) =>
    textBlock(pen, parent, 'P', plain(words, style), framePt, 0),
  );
  const legend =
    captioned && text.legend !== null
      ? textBlock(pen, parent, 'P', plain(text.legend, style), widthPt, 0)
      : null;
  const legendPt = legend === null ? 0 : legend.heightPt + CAPTION_GAP_PT;
  const captionPt = Math.max(0, ...captions.map(({ heightPt }) => heightPt + CAPTION_GAP_PT));
  const drawnPt = (scale: number) => Math.min(scale, framePt / first.viewBox.width) * first.viewBox.height;
  const frameLeftPt = (xPt: number, at: number) => xPt + at * (framePt + GAP_PT);
  return {
    heightPt: (scale) => drawnPt(scale) + captionPt + legendPt,
    draw: (xPt, yPt, scale) => {
      const heightPt = drawnPt(scale);
      const boxes = drawings.map((_, at): Box => ({
        xPt: frameLeftPt(xPt, at),
        yPt,
        widthPt: framePt,
        heightPt,
      }));
      drawFigure(pen, figure, drawings, boxes);
      captions.forEach((caption, at) => caption.draw(frameLeftPt(xPt, at), yPt + heightPt + CAPTION_GAP_PT));
      legend?.draw(xPt, yPt + heightPt + captionPt + CAPTION_GAP_PT);
    },
  };
}

/** Scale in running text, points a millimetre of the pictured world: two bodies lie side by side in a column [choice]. */
const IN_TEXT = 0.046;

/** The pictures as a block for a column of text, captions under them; none without pictures. */
export function figureBlocks(
  pen: Pen,
  parent: Tag,
  text: FigureText | null,
  drawings: readonly Drawing[],
  widthPt: number,
): readonly Block[] {
  const figures = figuresOf(pen, parent, text, drawings, true, widthPt);
  const heightPt = figures.heightPt(IN_TEXT);
  if (heightPt === 0) return [];
  const draw = (xPt: number, yPt: number) => figures.draw(xPt, yPt, IN_TEXT);
  return [{ heightPt, gapPt: pen.look.space.smallPt, keepWithNext: true, draw }];
}
