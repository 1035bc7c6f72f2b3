/** A card's last picture as a file of its own, for the index: one scale for all, light and dark by the reader's choice. */
import { drawScene } from '../../../drawing/scene.ts';
import type { Drawing } from '../../../drawing/drawing.ts';
import { svgOf } from '../../../drawing/svg.ts';
import type { CardView } from '../../../catalogue/view.ts';
import { shortPath } from '../parts/shortPath.ts';

// So many pixels of the page make a metre of the pictured world: a standing figure is as tall as three lines.
const PX_PER_METRE = 76;

export interface CardFigure {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** From the public folder. */
export function figurePath(id: string): string {
  return `exercises/figures/${id}.svg`;
}

/** Null for a card without a pose. `colours`: rules for the paints by class, as the picture stands alone. */
export function cardFigure({ figures }: CardView, colours: string): CardFigure | null {
  const drawing = figures === null ? undefined : drawScene(figures.scene).at(-1);
  if (drawing === undefined) return null;
  const { width, height } = drawing.viewBox;
  return {
    svg: withStyle(svgOf(bare(drawing), null), colours),
    widthPx: pixels(width),
    heightPx: pixels(height),
  };
}

// The angle's number would be too small to read; the words beside the picture say it.
function bare(drawing: Drawing): Drawing {
  const shapes = drawing.shapes.map((shape) => ({ ...shape, d: shortPath(shape.d) }));
  return { ...drawing, shapes, labels: [] };
}

function withStyle(svg: string, colours: string): string {
  return `${svg.replace('>', `><style>${colours}</style>`)}\n`;
}

function pixels(millimetres: number): number {
  return Math.round((millimetres / 1000) * PX_PER_METRE);
}
