/** A drawing as a picture in the page. */
import type { Drawing } from '../../figure/drawing.ts';
import { svgOf } from '../../figure/svg.ts';
import { trusted, type Html } from '../html.ts';

/** The drawing `wideEm` ems wide, or as wide as its column if that is narrower; hidden from readers when `alt` is null. */
export function drawingHtml(drawing: Drawing, alt: string | null, wideEm: number): Html {
  return trusted(svgOf(drawing, alt).replace('<svg ', `<svg width="${wideEm.toFixed(2)}em" `));
}
