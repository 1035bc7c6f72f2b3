/** Strokes in metres, y up, on their way to a drawing in whole millimetres, y down. */
import { wholeMm } from '../units/round.ts';
import type { Point } from '../mechanics/pose.ts';
import type { Drawing, Label, Paint, Shape } from './drawing.ts';
import { hullPoints, type Outline } from './outline.ts';

/** A shape before it is set on the sheet. */
export interface Stroke {
  readonly outline: Outline;
  readonly fill: Paint | null;
  readonly stroke: Paint | null;
  readonly widthM: number;
  readonly dashM: readonly [number, number] | null;
}

/** Words centred about a point, metres. */
export interface Caption {
  readonly text: string;
  readonly centre: Point;
  readonly sizeM: number;
  readonly paint: Paint;
}

/** The window of the world a drawing shows, metres; `mirrored` turns the figure to face left. */
export interface Window {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly mirrored: boolean;
}

/** Height of a figure's digits over the font size, and how wide a bold digit and a degree sign are at most. */
const CAP_HEIGHT = 0.68;
const DIGIT_WIDTH = 0.66;

/** A filled outline without a line. */
export function filled(outline: Outline, fill: Paint): Stroke {
  return { outline, fill, stroke: null, widthM: 0, dashM: null };
}

/** A line without a fill. */
export function lined(
  outline: Outline,
  stroke: Paint,
  widthM: number,
  dashM: Stroke['dashM'] = null,
): Stroke {
  return { outline, fill: null, stroke, widthM, dashM };
}

/** A filled outline with a line round it, which may be in the paper's white to part it from what lies behind. */
export function edged(outline: Outline, fill: Paint, stroke: Paint, widthM: number): Stroke {
  return { outline, fill, stroke, widthM, dashM: null };
}

/** Half width and half height of a caption's box, metres; a little wider than any of our fonts sets it. */
export function captionHalf({ text, sizeM }: Caption): { readonly x: number; readonly y: number } {
  return { x: ([...text].length * DIGIT_WIDTH * sizeM) / 2, y: (CAP_HEIGHT * sizeM) / 2 };
}

/** The smallest window round everything, grown by half of each line's width and by `marginM`. */
export function windowAround(
  strokes: readonly Stroke[],
  captions: readonly Caption[],
  marginM: number,
  mirrored: boolean,
): Window {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  const hold = ({ x, y }: Point, dx: number, dy: number) => {
    left = Math.min(left, x - dx);
    right = Math.max(right, x + dx);
    bottom = Math.min(bottom, y - dy);
    top = Math.max(top, y + dy);
  };
  for (const { outline, widthM } of strokes) {
    for (const point of hullPoints(outline)) hold(point, widthM / 2, widthM / 2);
  }
  for (const caption of captions) {
    const half = captionHalf(caption);
    hold(caption.centre, half.x, half.y);
  }
  return {
    left: left - marginM,
    right: right + marginM,
    bottom: bottom - marginM,
    top: top + marginM,
    mirrored,
  };
}

/** The drawing of everything within the window, in whole millimetres. */
export function setOnSheet(
  strokes: readonly Stroke[],
  captions: readonly Caption[],
  window: Window,
): Drawing {
  const across = (x: number) => wholeMm(window.mirrored ? window.right - x : x - window.left);
  const down = (y: number) => wholeMm(window.top - y);
  const place = ({ x, y }: Point) => `${across(x)} ${down(y)}`;
  return {
    viewBox: {
      x: 0,
      y: 0,
      width: Math.ceil((window.right - window.left) * 1000),
      height: Math.ceil((window.top - window.bottom) * 1000),
    },
    shapes: strokes.map((stroke) => shapeOf(stroke, place)),
    labels: captions.map((caption) => labelOf(caption, across(caption.centre.x), down(caption.centre.y))),
  };
}

/** A point as the path says it. */
type Place = (point: Point) => string;

function shapeOf(stroke: Stroke, place: Place): Shape {
  const { outline, fill, widthM, dashM } = stroke;
  return {
    d: pathText(outline, place),
    fill,
    stroke: stroke.stroke,
    width: wholeMm(widthM),
    dash: dashM === null ? null : [wholeMm(dashM[0]), wholeMm(dashM[1])],
    cap: dashM === null ? 'round' : 'butt',
  };
}

function labelOf(caption: Caption, x: number, middle: number): Label {
  const size = wholeMm(caption.sizeM);
  return {
    text: caption.text,
    x,
    y: middle + wholeMm(captionHalf(caption).y),
    anchor: 'middle',
    size,
    paint: caption.paint,
    weight: 'bold',
  };
}

/** The outline as path text: a letter is written once for a run of like commands, as SVG allows; M is always written. */
export function pathText(outline: Outline, place: Place): string {
  let text = '';
  let letter = '';
  for (const command of outline) {
    const again = command.kind === letter && command.kind !== 'M';
    letter = command.kind;
    text += again ? ' ' : letter;
    if (command.kind === 'C') text += `${place(command.c1)} ${place(command.c2)} ${place(command.to)}`;
    else if (command.kind !== 'Z') text += place(command.to);
  }
  return text;
}
