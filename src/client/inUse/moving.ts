/** The picture of an exercise while it is counted: the figure moves, or its pictures change where it may not. */
import type { Phase } from '../../dosing/pace.ts';
import type { PackedFigure, PackedFigures, PackedJoint, PackedLayer } from '../../drawing/moving/packed.ts';
import { type Track, trackAt } from '../../units/track.ts';
import { svgElement } from './element.ts';
import { pathAt } from './morph.ts';

export interface MovingPicture {
  /** Whether it has to be shown anew at every frame. */
  readonly moves: boolean;
  /** `mirrored` for the leg on the other side. */
  begin(mirrored: boolean): void;
  /** The picture of a phase, with so much of the way gone. */
  show(phase: Phase, share: number): void;
  end(): void;
}

/** For the exercise on the page. Whoever wants less motion sees the still pictures change. */
export function movingPicture(exercise: HTMLElement, all: PackedFigures, card: string): MovingPicture {
  const frames = [...exercise.querySelectorAll<HTMLElement>('.frame')];
  const still = frames[0]?.querySelector('svg') ?? null;
  const figure = matchMedia('(prefers-reduced-motion: reduce)').matches ? undefined : all.figures[card];
  const moving = figure === undefined || still === null ? null : drawn(figure, all, still);
  let mirrors = false;
  const now = (index: number) =>
    frames.forEach((frame, at) => frame.classList.toggle('is-now', at === index));
  return {
    moves: moving !== null || frames.length > 2,
    begin: (mirrored) => {
      mirrors = mirrored;
      exercise.classList.add('counted');
      now(moving === null ? 0 : frames.length - 1);
      if (moving === null) return;
      frames[frames.length - 1]?.prepend(moving.svg);
      moving.svg.classList.toggle('mirrored', mirrors);
      moving.pose(0);
      exercise.classList.add('moved');
    },
    show: (phase, share) => {
      if (moving !== null) moving.pose(share);
      else now(pictureOf(phase, share, frames.length));
    },
    end: () => {
      exercise.classList.remove('counted', 'moved');
      moving?.svg.remove();
      now(-1);
    },
  };
}

/** Two pictures change at the turning points; steps in time follow one another. */
function pictureOf({ kind }: Phase, share: number, count: number): number {
  if (kind === 'hold' || (kind === 'go' && count < 3)) return count - 1;
  return kind === 'go' ? Math.min(count - 1, Math.floor(share * count)) : 0;
}

type Pose = (share: number) => void;

interface Figure {
  readonly svg: SVGElement;
  readonly pose: Pose;
}

/** On the sheet of the first picture, with the things that stand there. */
function drawn(figure: PackedFigure, all: PackedFigures, picture: SVGElement): Figure {
  const svg = picture.cloneNode() as SVGElement;
  for (const name of ['role', 'aria-label']) svg.removeAttribute(name);
  svg.setAttribute('aria-hidden', 'true');
  svg.classList.add('moving');
  svg.append(...[...picture.children].slice(0, figure.still).map((one) => one.cloneNode(true)));
  const [across, up, x, y] = figure.sheet;
  const body = svgElement('g', { transform: `matrix(${across} 0 0 ${-up} ${x} ${y})` });
  svg.append(body);
  const poses = figure.layers.map((index) => painted(all.layers[index] as PackedLayer, all.outlines, body));
  return {
    svg,
    pose: (share) => {
      const places = placesAt(figure.joints, share);
      for (const pose of poses) pose(share, places);
    },
  };
}

type Painted = (share: number, places: readonly string[]) => void;

function painted(
  [fill, line, width, floor, parts]: PackedLayer,
  outlines: readonly string[],
  body: Element,
): Painted {
  const place = floor === null ? body : cutAt(floor, body);
  const path = (classes: string, strokeWidth: number) => {
    const made = svgElement('path', { class: classes, 'stroke-width': strokeWidth });
    if (fill === '' || !classes.includes(fill)) made.setAttribute('fill', 'none');
    place.append(made);
    return made;
  };
  if (isMorph(parts)) {
    const [letters, ...numbers] = parts;
    const only = path(`${fill} ${line}`, width);
    return (share) => only.setAttribute('d', pathAt(letters, numbers, share));
  }
  const put = (classes: string, strokeWidth: number) =>
    parts.map(([joint, outline]) => {
      const made = path(classes, strokeWidth);
      made.setAttribute('d', outlines[outline] as string);
      return { made, joint };
    });
  // Where limbs meet no line may be seen: all lines first, then all fills over them.
  const pieces =
    parts.length === 1 ? put(`${fill} ${line}`, width) : [...put(line, width * OUTER), ...put(fill, 0)];
  return (_, places) => {
    for (const { made, joint } of pieces) made.setAttribute('transform', places[joint] as string);
  };
}

// Half of a line lies under the fill; of what is left a little more than half as wide reads the same.
const OUTER = 1.7;
const FAR = 9999;

/** What lies under a floor is not seen. */
function cutAt(floor: number, body: Element): Element {
  const window = { x: -FAR, y: floor, width: 2 * FAR, height: FAR };
  const cut = svgElement('svg', { ...window, viewBox: Object.values(window).join(' ') });
  body.append(cut);
  return cut;
}

function isMorph(parts: PackedLayer[4]): parts is readonly [string, ...Track[]] {
  return typeof parts[0] === 'string';
}

/** Where each joint is, as a transform: a joint comes after the one it hangs on. */
function placesAt(joints: readonly PackedJoint[], share: number): readonly string[] {
  const places: { x: number; y: number; deg: number }[] = [];
  for (const [on, x, y, deg] of joints) {
    const [ownX, ownY, turn] = [trackAt(x, share), trackAt(y, share), trackAt(deg, share)];
    const parent = on === null ? { x: 0, y: 0, deg: 0 } : (places[on] ?? { x: 0, y: 0, deg: 0 });
    const rad = (parent.deg * Math.PI) / 180;
    const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
    places.push({ x: parent.x + ownX * cos - ownY * sin, y: parent.y + ownX * sin + ownY * cos, deg: turn });
  }
  return places.map(
    (one) => `translate(${one.x.toFixed(1)} ${one.y.toFixed(1)}) rotate(${one.deg.toFixed(2)})`,
  );
}
