/** The pictures of one exercise side by side, each with its caption under it. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { FigureText } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { drawFigure, type Box } from './drawing.ts';
import type { Pen } from './pen.ts';
import { open, type Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';

/** Pictures measured for a width; how high they are depends on how high a drawing may be. */
export interface Figures {
  heightPt(drawingPt: number): number;
  draw(xPt: number, yPt: number, drawingPt: number): void;
}

/** White between two pictures, and between a picture and its caption, points. */
const GAP_PT = 8;
const CAPTION_GAP_PT = 1;

/** Wider than this for its height, a body lies: two such pictures need the whole width. */
const LYING = 1.3;

/** Whether the pictures are too wide to stand beside a text. */
export function areWide(drawings: readonly Drawing[]): boolean {
  const [first] = drawings;
  return first !== undefined && drawings.length > 1 && first.viewBox.width > LYING * first.viewBox.height;
}

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
  const naturalPt = (framePt * first.viewBox.height) / first.viewBox.width;
  const frameLeftPt = (xPt: number, at: number) => xPt + at * (framePt + GAP_PT);
  return {
    heightPt: (drawingPt) => Math.min(drawingPt, naturalPt) + captionPt + legendPt,
    draw: (xPt, yPt, drawingPt) => {
      const heightPt = Math.min(drawingPt, naturalPt);
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

/** Height at most of the drawings of a figure that stands in running text, points. */
const IN_TEXT_PT = 60;

/** The pictures as a block for a column of text, captions under them; none without pictures. */
export function figureBlocks(
  pen: Pen,
  parent: Tag,
  text: FigureText | null,
  drawings: readonly Drawing[],
  widthPt: number,
): readonly Block[] {
  const figures = figuresOf(pen, parent, text, drawings, true, widthPt);
  const heightPt = figures.heightPt(IN_TEXT_PT);
  if (heightPt === 0) return [];
  const draw = (xPt: number, yPt: number) => figures.draw(xPt, yPt, IN_TEXT_PT);
  return [{ heightPt, gapPt: pen.look.space.smallPt, keepWithNext: true, draw }];
}
