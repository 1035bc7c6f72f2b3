/** Things to stand, lie, sit and lean on, in metres; each is drawn from the surface it offers down to the floor. */
import type { Point } from '../mechanics/pose.ts';
import { edged, filled, lined, type Stroke } from './strokes.ts';
import { circle, polyline, rectangle, smooth, corner } from './outline.ts';
import { LINE } from './proportions.ts';

/** A level surface from `left` to `right` at height `y` over the floor. */
export interface Surface {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

const LINE_M = LINE.prop * 1.75;
const PAD_M = 0.07;
const LEG_M = 0.03;
const BOOK_M = 0.045;
const PILLOW_M = 0.1;
const BACKREST_M = 0.42;

/** A solid box: a step or a stair. */
export function step({ left, right, y }: Surface): readonly Stroke[] {
  return [panel({ x: left, y }, { x: right, y: 0 })];
}

/** A stack of books of about equal thickness, every other one a little shorter. */
export function books({ left, right, y }: Surface): readonly Stroke[] {
  const count = Math.max(1, Math.round(y / BOOK_M));
  const each = y / count;
  return Array.from({ length: count }, (_, index) => {
    const inset = index % 2 === 0 ? 0 : 0.02;
    return panel({ x: left + inset, y: each * (index + 1) }, { x: right - inset * 0.5, y: each * index });
  });
}

/** A stack of pillows, from `base` up to the surface. */
export function pillows({ left, right, y }: Surface, base = 0): readonly Stroke[] {
  const count = Math.max(1, Math.round((y - base) / PILLOW_M));
  const each = (y - base) / count;
  return Array.from({ length: count }, (_, index) =>
    pillow(left, right, base + each * index, base + each * (index + 1)),
  );
}

/** A bench seen along its side: a pad on two legs. */
export function bench({ left, right, y }: Surface): readonly Stroke[] {
  const inset = Math.min(0.09, (right - left) / 5);
  const legs = [left + inset, right - inset - LEG_M].map((x) =>
    panel({ x, y: y - PAD_M }, { x: x + LEG_M, y: 0 }),
  );
  return [...legs, panel({ x: left, y }, { x: right, y: y - PAD_M })];
}

/** A bed seen along its side: a thick mattress on a frame with two legs. */
export function bed({ left, right, y }: Surface): readonly Stroke[] {
  const legs = [left + 0.05, right - 0.05 - LEG_M].map((x) =>
    panel({ x, y: y - 0.26 }, { x: x + LEG_M, y: 0 }),
  );
  return [
    ...legs,
    panel({ x: left + 0.015, y: y - 0.2 }, { x: right - 0.015, y: y - 0.27 }),
    edged(
      smooth([
        { x: (left + right) / 2, y },
        corner({ x: right - 0.02, y }),
        corner({ x: right, y: y - 0.04 }),
        corner({ x: right, y: y - 0.18 }),
        corner({ x: right - 0.02, y: y - 0.2 }),
        corner({ x: left + 0.02, y: y - 0.2 }),
        corner({ x: left, y: y - 0.18 }),
        corner({ x: left, y: y - 0.04 }),
        corner({ x: left + 0.02, y }),
      ]),
      'propFill',
      'prop',
      LINE_M,
    ),
  ];
}

/** A chair; its backrest stands at the left or right end of the seat. */
export function chair({ left, right, y }: Surface, backrest: 'left' | 'right'): readonly Stroke[] {
  const seat = panel({ x: left, y }, { x: right, y: y - 0.04 });
  const x = backrest === 'left' ? left : right - LEG_M;
  const front = backrest === 'left' ? right - LEG_M : left;
  return [
    panel({ x: front, y: y - 0.04 }, { x: front + LEG_M, y: 0 }),
    panel({ x, y: y + BACKREST_M }, { x: x + LEG_M, y: 0 }),
    seat,
  ];
}

/** A table top on two legs. */
export function table({ left, right, y }: Surface): readonly Stroke[] {
  const legs = [left + 0.04, right - 0.08].map((x) => panel({ x, y: y - 0.035 }, { x: x + 0.035, y: 0 }));
  return [...legs, panel({ x: left, y }, { x: right, y: y - 0.035 })];
}

/** A ball that touches the floor and the surface. */
export function ball({ left, right, y }: Surface): readonly Stroke[] {
  const radius = y / 2;
  return [edged(circle({ x: (left + right) / 2, y: radius }, radius), 'propFill', 'prop', LINE_M)];
}

/** A wall with its face at `x`, filled on the side away from the body. */
export function wall(x: number, top: number, side: 'left' | 'right'): readonly Stroke[] {
  const thickness = side === 'left' ? -0.07 : 0.07;
  return [
    filled(rectangle({ x, y: top }, { x: x + thickness, y: 0 }), 'propFill'),
    lined(
      polyline(
        [
          { x, y: 0 },
          { x, y: top },
        ],
        false,
      ),
      'prop',
      LINE_M * 1.3,
    ),
  ];
}

/** A mat from `left` to `right`, its upper face at the floor of the figure. */
export function mat(left: number, right: number, thicknessM: number): readonly Stroke[] {
  return [panel({ x: left, y: 0 }, { x: right, y: -thicknessM })];
}

function panel(a: Point, b: Point): Stroke {
  return edged(rectangle(a, b), 'propFill', 'prop', LINE_M);
}

function pillow(left: number, right: number, bottom: number, top: number): Stroke {
  const middle = (left + right) / 2;
  const [low, high] = [bottom + (top - bottom) * 0.3, bottom + (top - bottom) * 0.7];
  const knots = [
    { x: left + 0.03, y: top - 0.01 },
    { x: middle, y: top },
    { x: right - 0.03, y: top - 0.01 },
    corner({ x: right, y: high }),
    corner({ x: right, y: low }),
    { x: right - 0.03, y: bottom + 0.005 },
    { x: middle, y: bottom },
    { x: left + 0.03, y: bottom + 0.005 },
    corner({ x: left, y: low }),
    corner({ x: left, y: high }),
  ];
  return edged(smooth(knots), 'pillow', 'prop', LINE_M);
}
