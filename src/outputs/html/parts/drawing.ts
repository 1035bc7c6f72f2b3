/** A drawing as a picture in the page. */
import type { Drawing } from '../../../drawing/drawing.ts';
import { svgOf } from '../../../drawing/svg.ts';
import { trusted, type Html } from '../html.ts';
import { shortPath } from './shortPath.ts';

/** So many millimetres of the pictured world are one unit of the page's pictures: a sixth of a pixel on each side. */
export const GRID_MM = 2;

/** The drawing `wideEm` ems wide, or as wide as its column if that is narrower; hidden from readers when `alt` is null. */
export function drawingHtml(drawing: Drawing, alt: string | null, wideEm: number): Html {
  const svg = svgOf(onGrid(drawing), alt);
  // Inside a page an SVG needs no namespace, but a width: without it, it would fill its column.
  return trusted(
    svg.replace('<svg xmlns="http://www.w3.org/2000/svg"', `<svg width="${wideEm.toFixed(2)}em"`),
  );
}

function onGrid({ viewBox, shapes, labels }: Drawing): Drawing {
  const told = (mm: number) => mm / GRID_MM;
  return {
    viewBox: {
      x: told(viewBox.x),
      y: told(viewBox.y),
      width: told(viewBox.width),
      height: told(viewBox.height),
    },
    shapes: shapes.map((shape) => ({
      ...shape,
      d: shortPath(shape.d, GRID_MM),
      width: told(shape.width),
      dash: shape.dash === null ? null : [told(shape.dash[0]), told(shape.dash[1])],
    })),
    labels: labels.map((label) => ({ ...label, x: told(label.x), y: told(label.y), size: told(label.size) })),
  };
}
