/** A figure that moves, as data: rigid parts, each hung on another, and how they are painted over one another. */
import type { Track } from '../../units/track.ts';
import type { Paint } from '../drawing.ts';

/**
 * A rigid part's own place: its joint in the coordinates of the part it hangs on (an index; null: of the whole figure),
 * and its turn against the upright, counter-clockwise. Millimetres, y up; degrees.
 */
export interface Joint {
  readonly on: number | null;
  readonly x: Track;
  readonly y: Track;
  readonly deg: Track;
}

/** An outline in the coordinates of a joint. */
export interface Piece {
  readonly joint: number;
  /** SVG path text in whole millimetres. */
  readonly d: string;
}

/**
 * What changes its shape on the way: the commands of a path, and their numbers, x before y, millimetres. Of each command
 * first where it ends; of a curve then its handles, each from the end it belongs to: where a limb is only carried along
 * they stay as they are.
 */
export interface Morph {
  readonly letters: string;
  readonly numbers: readonly Track[];
}

/** Painted in their order. Pieces of one layer are one limb: no line is seen where they meet. */
export interface Layer {
  readonly fill: Paint | null;
  readonly line: Paint | null;
  readonly widthMm: number;
  /** Nothing of it is seen under this height; null for no limit. */
  readonly floorMm: number | null;
  readonly parts: readonly Piece[] | Morph;
}

/** The joints of a body seen from the side, by their places in the list; what is carried follows. */
export const SIDE_JOINTS = ['trunk', 'thigh', 'shank', 'foot', 'toes'] as const;

export interface MovingFigure {
  /** So many shapes of the start picture stand still behind it, the first ones. */
  readonly still: number;
  /** To the sheet of the pictures: 1 or -1 for a figure that faces left, and where its zero lies there. */
  readonly sheet: { readonly across: 1 | -1; readonly x: number; readonly y: number };
  readonly joints: readonly Joint[];
  readonly layers: readonly Layer[];
}
