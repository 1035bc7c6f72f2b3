/** A scene as pictures: one a frame, all of one size, one scale and one floor. */
import type { Scene } from '../mechanics/scene.ts';
import type { Drawing } from './drawing.ts';
import { frontPictures } from './front/picture.ts';
import { lined, setOnSheet, windowAround, type Stroke, type Window } from './strokes.ts';
import { hullPoints, polyline } from './outline.ts';
import { LINE } from './proportions.ts';
import type { Picture } from './picture.ts';
import { sidePictures } from './sidePicture.ts';

const MARGIN_M = 0.02;

/**
 * One drawing for each frame of the scene, in their order. All share one view box, so that shown at one width they have
 * one scale and their floor lines meet. From the side the working side faces the viewer: right legs look right, left
 * legs look left. From the front the person faces the viewer. A scene without frames gives no drawings.
 */
export function drawScene(scene: Scene): readonly Drawing[] {
  const known = drawn.get(scene);
  if (known !== undefined) return known;
  const drawings = draw(scene);
  drawn.set(scene, drawings);
  return drawings;
}

// A scene never changes; its page, its thumbnail and its paper show the same drawings.
const drawn = new WeakMap<Scene, readonly Drawing[]>();
const windows = new WeakMap<Scene, Window>();

function draw(scene: Scene): readonly Drawing[] {
  const { pictures, floorBelowM } = scene.view === 'side' ? sidePictures(scene) : frontPictures(scene);
  if (pictures.length === 0) return [];
  const window = windowAroundAll(pictures, isMirrored(scene));
  windows.set(scene, window);
  if (floorBelowM === null)
    return pictures.map(({ strokes, captions }) => setOnSheet(strokes, captions, window));
  const floor = floorLine(window, floorBelowM, scene.body.heightM);
  return pictures.map(({ strokes, captions }) =>
    setOnSheet([floor, ...strokes], captions, withFloor(window, floor)),
  );
}

/** The part of the world that all its drawings show, without the floor line's own thickness; null without drawings. */
export function windowOf(scene: Scene): Window | null {
  drawScene(scene);
  return windows.get(scene) ?? null;
}

function windowAroundAll(pictures: readonly Picture[], mirrored: boolean): Window {
  return windowAround(
    pictures.flatMap(({ strokes }) => strokes),
    pictures.flatMap(({ captions }) => captions),
    MARGIN_M,
    mirrored,
  );
}

// A person who faces the viewer has the right leg on the viewer's left.
function isMirrored({ view, side }: Scene): boolean {
  return (view === 'side') === (side === 'left');
}

function floorLine({ left, right }: Window, belowM: number, heightM: number): Stroke {
  const width = LINE.floor * heightM;
  const y = -belowM - width / 2;
  return lined(
    polyline(
      [
        { x: left + width / 2, y },
        { x: right - width / 2, y },
      ],
      false,
    ),
    'floor',
    width,
  );
}

function withFloor(window: Window, floor: Stroke): Window {
  const lowest = Math.min(...hullPoints(floor.outline).map(({ y }) => y));
  return { ...window, bottom: Math.min(window.bottom, lowest - floor.widthM / 2) };
}
