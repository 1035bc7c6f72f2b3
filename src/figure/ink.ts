/** Strokes in metres, y up, on their way to a drawing in whole millimetres, y down. */
import type { Point } from '../mechanics/pose.ts';
import type { Drawing, Label, Paint, Shape } from './drawing.ts';
import { hullPoints, type Command, type Outline } from './outline.ts';

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
  const boxes = [
    ...strokes.flatMap(({ outline, widthM }) =>
      hullPoints(outline).map(({ x, y }) => ({ x, y, dx: widthM / 2, dy: widthM / 2 })),
    ),
    ...captions.map((caption) => {
      const half = captionHalf(caption);
      return { ...caption.centre, dx: half.x, dy: half.y };
    }),
  ];
  return {
    left: boxes.reduce((low, { x, dx }) => Math.min(low, x - dx), Infinity) - marginM,
    right: boxes.reduce((high, { x, dx }) => Math.max(high, x + dx), -Infinity) + marginM,
    bottom: boxes.reduce((low, { y, dy }) => Math.min(low, y - dy), Infinity) - marginM,
    top: boxes.reduce((high, { y, dy }) => Math.max(high, y + dy), -Infinity) + marginM,
    mirrored,
  };
}

/** The drawing of everything within the window, in whole millimetres. */
export function setOnSheet(
  strokes: readonly Stroke[],
  captions: readonly Caption[],
  window: Window,
): Drawing {
  const place = ({ x, y }: Point): readonly [number, number] => [
    millimetres(window.mirrored ? window.right - x : x - window.left),
    millimetres(window.top - y),
  ];
  return {
    viewBox: {
      x: 0,
      y: 0,
      width: Math.ceil((window.right - window.left) * 1000),
      height: Math.ceil((window.top - window.bottom) * 1000),
    },
    shapes: strokes.map((stroke) => shapeOf(stroke, place)),
    labels: captions.map((caption) => labelOf(caption, place)),
  };
}

function shapeOf(stroke: Stroke, place: (point: Point) => readonly [number, number]): Shape {
  const { outline, fill, widthM, dashM } = stroke;
  return {
    d: pathText(outline, place),
    fill,
    stroke: stroke.stroke,
    width: millimetres(widthM),
    dash: dashM === null ? null : [millimetres(dashM[0]), millimetres(dashM[1])],
    cap: dashM === null ? 'round' : 'butt',
  };
}

function labelOf(caption: Caption, place: (point: Point) => readonly [number, number]): Label {
  const [x, middle] = place(caption.centre);
  const size = millimetres(caption.sizeM);
  return {
    text: caption.text,
    x,
    y: middle + Math.round(captionHalf(caption).y * 1000),
    anchor: 'middle',
    size,
    paint: caption.paint,
    weight: 'bold',
  };
}

// A letter is written once for a run of like commands, as SVG allows; M starts a figure and is always written.
function pathText(outline: Outline, place: (point: Point) => readonly [number, number]): string {
  const points = (command: Command): readonly Point[] =>
    command.kind === 'Z' ? [] : command.kind === 'C' ? [command.c1, command.c2, command.to] : [command.to];
  let letter = '';
  return outline
    .map((command) => {
      const numbers = points(command).flatMap(place).join(' ');
      const again = command.kind === letter && command.kind !== 'M' && command.kind !== 'Z';
      letter = command.kind;
      return again ? ` ${numbers}` : command.kind + numbers;
    })
    .join('');
}

function millimetres(metres: number): number {
  return Math.round(metres * 1000) + 0;
}
