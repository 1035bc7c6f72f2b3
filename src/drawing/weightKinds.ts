/** The weights as the things they are, drawn about the point where they sit. Sizes grow with the kilograms. */
import type { Point } from '../mechanics/pose.ts';
import type { SideScene, WeightKind } from '../mechanics/scene.ts';
import { edged, lined, type Stroke } from './strokes.ts';
import { circle, corner, polyline, smooth, taperedCapsule, type Outline } from './outline.ts';
import { along, clamp, frameAt, opposite } from './plane.ts';

export type Weight = NonNullable<SideScene['weight']>;

/** Where a weight sits: its point, the direction away from the body, and how it is carried there. */
export interface WeightSeat {
  readonly at: Point;
  readonly away: Point;
  readonly carried: 'hanging' | 'lying' | 'worn';
}

const EDGE_M = 0.011;
const UP: Point = { x: 0, y: 1 };
const DOWN: Point = { x: 0, y: -1 };
/** A dumbbell's grip is as wide as a hand; a full-size plate measures 0.45 m across, home plates about half [common-practice]. */
const GRIP_HALF_M = 0.062;

/** How each kind is drawn in its seat. */
export const DRAWN: Record<WeightKind, (seat: WeightSeat, kg: number) => readonly Stroke[]> = {
  dumbbell: (seat, kg) => dumbbell(seat, kg),
  kettlebell: (seat, kg) => kettlebell(seat, kg),
  bar: (seat, kg) => plates(seat.at, kg),
  rucksack: (seat) => rucksack(seat),
  bottles: (seat) => bottle(seat),
};

function dumbbell({ at, away }: WeightSeat, kg: number): readonly Stroke[] {
  const axis = { x: -away.y, y: away.x };
  const [head, half] = [headRadius(kg), 0.024 + headRadius(kg) * 0.25];
  const headAt = (side: 1 | -1): Stroke => {
    const frame = frameAt(along(at, side * (GRIP_HALF_M + half), axis), away);
    const box = [frame(-head, -half), frame(head, -half), frame(head, half), frame(-head, half)];
    return edged(polyline(box, true), 'weight', 'weightLine', EDGE_M);
  };
  const handle = polyline([along(at, -GRIP_HALF_M - half, axis), along(at, GRIP_HALF_M + half, axis)], false);
  return [...rimmed(handle, 0.026), headAt(-1), headAt(1)];
}

function kettlebell({ at, away, carried }: WeightSeat, kg: number): readonly Stroke[] {
  const down = carried === 'hanging' ? DOWN : away;
  const radius = bellRadius(kg);
  const frame = frameAt(at, opposite(down));
  const drop = 0.075 + radius;
  const handle = polyline(
    [
      frame(-drop, -0.055),
      frame(-0.02, -0.055),
      frame(0, -0.035),
      frame(0, 0.035),
      frame(-0.02, 0.055),
      frame(-drop, 0.055),
    ],
    false,
  );
  return [
    ...rimmed(handle, 0.026),
    edged(circle(along(at, drop, down), radius), 'weight', 'weightLine', EDGE_M),
  ];
}

// A rod in the weight's colour with its rim beneath, for dark iron on a dark page has nothing else to show itself by.
function rimmed(rod: Outline, widthM: number): readonly Stroke[] {
  return [lined(rod, 'weightLine', widthM + EDGE_M), lined(rod, 'weight', widthM)];
}

// Seen from its end a bar is a plate with the sleeve in the middle.
function plates(at: Point, kg: number): readonly Stroke[] {
  const radius = plateRadius(kg);
  return [
    edged(circle(at, radius), 'weight', 'weightLine', EDGE_M),
    lined(circle(at, radius * 0.66), 'body', 0.008),
    edged(circle(at, 0.03), 'body', 'weight', 0.014),
  ];
}

function rucksack({ at, away, carried }: WeightSeat): readonly Stroke[] {
  const up = carried === 'hanging' ? UP : { x: away.y, y: -away.x };
  const frame = frameAt(carried === 'hanging' ? { x: at.x, y: at.y - 0.22 } : along(at, 0.075, away), up);
  const bag: Outline = smooth([
    frame(0.2, -0.05),
    frame(0.2, 0.05),
    frame(0.1, 0.085),
    corner(frame(-0.2, 0.085)),
    corner(frame(-0.2, -0.085)),
    frame(0.1, -0.085),
  ]);
  const pocket = polyline(
    [frame(-0.02, -0.055), frame(-0.02, 0.055), frame(-0.15, 0.055), frame(-0.15, -0.055)],
    true,
  );
  // Worn, a strap comes over the shoulder and back under the arm; carried, there is a loop to hold it by.
  const strap = [
    frame(0.19, 0.06),
    frame(0.18, 0.17),
    frame(0.1, 0.225),
    frame(-0.02, 0.2),
    frame(-0.1, 0.08),
  ];
  const loop = [frame(0.18, -0.03), frame(0.23, 0), frame(0.18, 0.03)];
  return [
    ...rimmed(polyline(carried === 'worn' ? strap : loop, false), carried === 'worn' ? 0.026 : 0.016),
    edged(bag, 'weight', 'weightLine', EDGE_M),
    lined(pocket, 'body', 0.009),
  ];
}

// Held about its middle by the hand, or lying along the limb.
function bottle({ at, away, carried }: WeightSeat): readonly Stroke[] {
  const up = carried === 'hanging' ? UP : { x: -away.y, y: away.x };
  const frame = frameAt(at, up);
  const body = smooth([
    corner(frame(-0.19, -0.045)),
    corner(frame(-0.19, 0.045)),
    frame(0.02, 0.045),
    frame(0.075, 0.02),
    corner(frame(0.11, 0.017)),
    corner(frame(0.11, -0.017)),
    frame(0.075, -0.02),
    frame(0.02, -0.045),
  ]);
  const cap = taperedCapsule(frame(0.118, -0.012), 0.011, frame(0.118, 0.012), 0.011);
  return [edged(body, 'weight', 'weightLine', EDGE_M), edged(cap, 'weight', 'weightLine', 0.004)];
}

/** How far a hanging weight reaches below the hand, metres. */
export function reachBelow({ kind, kg }: Weight): number {
  if (kind === 'kettlebell') return 0.09 + 2 * bellRadius(kg);
  if (kind === 'rucksack') return 0.42;
  if (kind === 'bottles') return 0.2;
  return kind === 'bar' ? plateRadius(kg) : headRadius(kg);
}

/** Radius of a dumbbell's head, metres. */
export function headRadius(kg: number): number {
  return clamp(0.042 + 0.0016 * kg, 0.042, 0.085);
}

function bellRadius(kg: number): number {
  return clamp(0.06 + 0.0018 * kg, 0.06, 0.11);
}

function plateRadius(kg: number): number {
  return clamp(0.085 + 0.0014 * kg, 0.085, 0.165);
}
