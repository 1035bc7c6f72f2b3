/** A drawing of the figure room on paper: its paths and words as PDF operators, fitted into a box. */
import type { Drawing, Label, Shape } from '../../drawing/drawing.ts';
import type { Point } from '../../mechanics/pose.ts';
import { widthPt } from './fonts.ts';
import { drawText, type Pen } from './pen.ts';
import { pt, rgb } from './operators.ts';
import { openForm, placeForm, type Form } from './pdfkit/form.ts';
import { describe, mark, type Tag } from './tag.ts';

export interface Box {
  readonly xPt: number;
  readonly yPt: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

/** No digits on paper are smaller than this, points: a drawing at a small scale has them larger than its strokes. */
const LEAST_LABEL_PT = 7;

/** A drawing so small that its digits would be under this goes without: the caption under it says them, points [choice]. */
const LOST_LABEL_PT = 4.5;

/**
 * Draws each drawing into its box, on the box's floor and at its left, as the content of one Figure, and gives the
 * Figure the bounding box ISO 32000-1 14.8.5.4.3 asks for.
 */
export function drawFigure(pen: Pen, figure: Tag, drawings: readonly Drawing[], boxes: readonly Box[]): void {
  const drawn = drawings.flatMap((drawing, at) => {
    const box = boxes[at];
    if (!box) return [];
    const scale = Math.min(box.widthPt / drawing.viewBox.width, box.heightPt / drawing.viewBox.height);
    const [widthPt, heightPt] = [drawing.viewBox.width * scale, drawing.viewBox.height * scale];
    const { xPt } = box;
    const yPt = box.yPt + box.heightPt - heightPt;
    return [{ drawing, scale, box: { xPt, yPt, widthPt, heightPt } }];
  });
  setBoundingBox(
    pen,
    figure,
    drawn.map(({ box }) => box),
  );
  mark(figure, () => drawn.forEach(({ drawing, scale, box }) => drawDrawing(pen, drawing, scale, box)));
}

/** Gives a Figure the box around these boxes. */
export function setBoundingBox({ look }: Pen, figure: Tag, boxes: readonly Box[]): void {
  const left = Math.min(...boxes.map(({ xPt }) => xPt));
  const right = Math.max(...boxes.map(({ xPt, widthPt: width }) => xPt + width));
  const top = Math.min(...boxes.map(({ yPt }) => yPt));
  const bottom = Math.max(...boxes.map(({ yPt, heightPt }) => yPt + heightPt));
  // PDF counts from the lower edge of the sheet.
  const BBox = [left, look.sheet.heightPt - bottom, right, look.sheet.heightPt - top].map(
    (edge) => Math.round(edge * 10) / 10,
  );
  describe(figure, { O: 'Layout', Placement: 'Block', BBox });
}

function drawDrawing(pen: Pen, drawing: Drawing, scale: number, { xPt, yPt }: Box): void {
  const { viewBox, labels } = drawing;
  const [leftPt, topPt] = [xPt - viewBox.x * scale, yPt - viewBox.y * scale];
  const matrix = [scale * GRAIN, 0, 0, scale * GRAIN, leftPt, topPt];
  placeForm(pen.doc, formOf(pen, drawing), matrix.map(exact).join(' '));
  for (const label of labels)
    if (label.size * scale >= LOST_LABEL_PT) drawLabel(pen, label, scale, leftPt, topPt);
}

/** The paths of a drawing, kept once in the file however often it is placed. */
function formOf(pen: Pen, drawing: Drawing): Form {
  const known = pen.forms.get(drawing);
  if (known) return known;
  const { x, y, width, height } = drawing.viewBox;
  const bounds = [x / GRAIN, y / GRAIN, (x + width) / GRAIN, (y + height) / GRAIN] as const;
  const operators = `1 j ${shapesOperators(pen, drawing.shapes)}`;
  const form = openForm(pen.doc, `X${pen.forms.size + 1}`, bounds, operators);
  pen.forms.set(drawing, form);
  return form;
}

/** Millimetres of the pictured world a step of a form: at the largest scale a ninth of a point, what a printer can show. */
const GRAIN = 2;

/**
 * Each shape in steps from where it begins, and thither from where the one before it began: numbers are short, and a leg
 * or an arm that is drawn again beside the other is the same text.
 */
function shapesOperators(pen: Pen, shapes: readonly Shape[]): string {
  let at = { x: 0, y: 0 };
  const operators = shapes.map((shape) => {
    const from = startOf(shape);
    const to = { x: Math.round(from.x / GRAIN), y: Math.round(from.y / GRAIN) };
    const move = `1 0 0 1 ${to.x - at.x} ${to.y - at.y} cm`;
    at = to;
    return `${move} ${shapeOperators(pen, coarse(shape, from))}`;
  });
  return operators.join(' ');
}

/** The first point of a shape's path, which every path begins with. */
function startOf({ d }: Shape): Point {
  const [x = 0, y = 0] = d
    .slice(1)
    .split(/[^-.\d]/, 2)
    .map(Number);
  return { x, y };
}

function coarse(shape: Shape, from: Point): Shape {
  let isAcross = false;
  return {
    ...shape,
    d: shape.d.replace(/-?\d+(?:\.\d+)?/g, (number) => {
      isAcross = !isAcross;
      return String(Math.round((Number(number) - (isAcross ? from.x : from.y)) / GRAIN));
    }),
    width: shape.width / GRAIN,
    dash: shape.dash && [shape.dash[0] / GRAIN, shape.dash[1] / GRAIN],
  };
}

function shapeOperators({ look }: Pen, { d, fill, stroke, width, dash, cap }: Shape): string {
  const state = [
    fill ? `${rgb(look.paint(fill))} rg` : '',
    stroke ? `${rgb(look.paint(stroke))} RG ${pt(width)} w ${cap === 'round' ? 1 : 0} J` : '',
    stroke ? `[${dash ? dash.map(pt).join(' ') : ''}] 0 d` : '',
  ];
  return `${state.join(' ')} ${pathOperators(d)} ${fill && stroke ? 'B' : fill ? 'f' : 'S'}`;
}

/** PDF operators of a shape's path text: absolute M, L, C and Z, numbers parted by spaces. Throws on any other letter. */
export function pathOperators(d: string): string {
  const operators = d.replace(/([a-zA-Z])([^a-zA-Z]*)/g, (_, letter: string, numbers: string) => {
    const operator = OPERATORS[letter as keyof typeof OPERATORS];
    if (operator === undefined) throw new Error(`path letter ${letter}; only M, L, C and Z are drawn`);
    return `${numbers.replace(operator.takes, operator.writes)} `;
  });
  return operators.trimEnd();
}

/** The operands of one operator, and what is written for them. */
const OPERATORS = {
  M: { takes: /\S+ \S+/g, writes: '$& m' },
  L: { takes: /\S+ \S+/g, writes: '$& l' },
  C: { takes: /(?:\S+ ){5}\S+/g, writes: '$& c' },
  Z: { takes: /^/, writes: 'h' },
};

function drawLabel(pen: Pen, label: Label, scale: number, leftPt: number, topPt: number): void {
  const sizePt = Math.max(LEAST_LABEL_PT, label.size * scale);
  const style = pen.look.style(label.weight === 'bold' ? 'label' : 'note');
  const set = { ...style, sizePt, colour: pen.look.paint(label.paint) };
  const widthOf = widthPt(pen.fonts[set.cut], label.text, sizePt, false);
  const shift = { start: 0, middle: -widthOf / 2, end: -widthOf }[label.anchor];
  drawText(pen, label.text, set, leftPt + label.x * scale + shift, topPt + label.y * scale);
}

/** A matrix needs more digits than a place on the page: a unit is far below a point. */
function exact(value: number): string {
  return String(Math.round(value * 1e5) / 1e5);
}
