/** A drawing as a picture in the page. */
import type { Drawing } from '../../../drawing/drawing.ts';
import { svgOf } from '../../../drawing/svg.ts';
import { trusted, type Html } from '../html.ts';
import { relativePath } from './relativePath.ts';

/** The drawing `wideEm` ems wide, or as wide as its column if that is narrower; hidden from readers when `alt` is null. */
export function drawingHtml(drawing: Drawing, alt: string | null, wideEm: number): Html {
  const shapes = drawing.shapes.map((shape) => ({ ...shape, d: relativePath(shape.d) }));
  const svg = svgOf({ ...drawing, shapes }, alt);
  // Inside a page an SVG needs no namespace, but a width: without it, it would fill its column.
  return trusted(
    svg.replace('<svg xmlns="http://www.w3.org/2000/svg"', `<svg width="${wideEm.toFixed(2)}em"`),
  );
}
