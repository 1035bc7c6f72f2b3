/** A drawing as SVG text: classes for its paints, no style attributes and no ids, so that any page can hold many. */
import { PAINTS, type Drawing, type Label, type Paint, type Shape } from './drawing.ts';

/** Colours for a picture that stands alone; inside a page the style sheet gives them by class. */
export type Colours = Readonly<Record<Paint, string>>;

/**
 * SVG text of a drawing. With `alt` it is an image of that name, without (null) it is hidden from assistive technology,
 * for a picture whose text stands beside it. Without `colours` the page's style holds the rules of `paintRules`.
 */
export function svgOf(drawing: Drawing, alt: string | null, colours: Colours | null = null): string {
  const { x, y, width, height } = drawing.viewBox;
  const usual = usualWidth(drawing.shapes);
  const role = alt === null ? 'aria-hidden="true"' : `role="img" aria-label="${escaped(alt)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${width} ${height}" ${role}${colours === null ? '' : ROUND}${usual === null ? '' : ` stroke-width="${usual}"`}>`,
    ...drawing.shapes.map((shape) => shapeText(shape, usual, colours)),
    ...drawing.labels.map((label) => labelText(label, colours)),
    '</svg>',
  ].join('');
}

/** The width of most lines, which the picture says once for all of them; null without lines. */
function usualWidth(shapes: readonly Shape[]): number | null {
  const counts = new Map<number, number>();
  for (const { stroke, width } of shapes)
    if (stroke !== null) counts.set(width, (counts.get(width) ?? 0) + 1);
  const [[width] = [null]] = [...counts].sort(([, one], [, other]) => other - one);
  return width;
}

/** The classes of a shape: `f` and `l` for its fill and its line, each with the letter of its paint. */
export function classesOf(fill: Paint | null, stroke: Paint | null): string {
  return [
    ...(fill === null ? [] : [`f${letterOf(fill)}`]),
    ...(stroke === null ? [] : [`l${letterOf(stroke)}`]),
  ].join(' ');
}

const letterOf = (paint: Paint) => String.fromCharCode('a'.charCodeAt(0) + PAINTS.indexOf(paint));

/**
 * The rules of style for all classes, each paint in its colour; lines end and meet round, dashes end
 * straight, and what has no fill has none.
 */
export function paintRules(colourOf: (paint: Paint) => string): string {
  const rules = PAINTS.map((paint) => {
    const colour = colourOf(paint);
    return `.${classesOf(paint, null)}{fill:${colour}}.${classesOf(null, paint)}{stroke:${colour}}`;
  });
  const ends =
    'path{stroke-linejoin:round;stroke-linecap:round}path[stroke-dasharray]{stroke-linecap:butt}path[class^=l]{fill:none}';
  return `${ends}${rules.join('')}`;
}

const ROUND = ' stroke-linejoin="round" stroke-linecap="round"';

function shapeText(
  { d, fill, stroke, width, dash, cap }: Shape,
  usual: number | null,
  colours: Colours | null,
): string {
  const dashed = dash !== null;
  return [
    `<path class="${classesOf(fill, stroke)}"`,
    fill === null && colours !== null ? ' fill="none"' : '',
    fill === null ? '' : colourAttribute('fill', fill, colours),
    stroke === null ? '' : colourAttribute('stroke', stroke, colours),
    stroke === null || width === usual ? '' : ` stroke-width="${width}"`,
    stroke !== null && cap === 'butt' && !(dashed && colours === null) ? ' stroke-linecap="butt"' : '',
    dash === null ? '' : ` stroke-dasharray="${dash.join(' ')}"`,
    ` d="${d}"/>`,
  ].join('');
}

function labelText({ text, x, y, anchor, size, paint, weight }: Label, colours: Colours | null): string {
  return [
    `<text class="${classesOf(paint, null)}"${colourAttribute('fill', paint, colours)} x="${x}" y="${y}" font-size="${size}"`,
    anchor === 'start' ? '' : ` text-anchor="${anchor}"`,
    weight === 'bold' ? ' font-weight="700"' : '',
    `>${escaped(text)}</text>`,
  ].join('');
}

function colourAttribute(name: 'fill' | 'stroke', paint: Paint, colours: Colours | null): string {
  return colours === null ? '' : ` ${name}="${colours[paint]}"`;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
