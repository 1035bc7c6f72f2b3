/** The weight as the thing it is, drawn about the point where it is held or worn. */
import type { Point } from '../mechanics/pose.ts';
import type { Scene, WeightKind } from '../mechanics/scene.ts';
import { edged, lined, type Stroke } from './ink.ts';
import {
  circle,
  corner,
  hullPoints,
  polyline,
  shifted,
  smooth,
  taperedCapsule,
  type Outline,
} from './outline.ts';
import { along, clamp, directionFrom, frameAt, opposite, upwardAt } from './plane.ts';
import type { Stance } from './stance.ts';

type Weight = NonNullable<Scene['weight']>;

const EDGE_M = 0.011;
const UP: Point = { x: 0, y: 1 };
const DOWN: Point = { x: 0, y: -1 };
/** A dumbbell's grip is as wide as a hand; a full-size plate measures 0.45 m across, home plates about half [common-practice]. */
const GRIP_HALF_M = 0.062;

/**
 * The strokes of a weight in a stance. `handAt` is the middle of the near hand: the weight sits there when it is held,
 * otherwise at the body point the card names.
 */
export function weightStrokes(weight: Weight, stance: Stance, handAt: Point): readonly Stroke[] {
  const strokes = DRAWN[weight.kind](seatOf(weight, stance, handAt), weight.kg);
  const lowest = Math.min(...strokes.flatMap(({ outline }) => hullPoints(outline).map(({ y }) => y)));
  if (lowest >= 0) return strokes;
  // A weight on the ankle of a standing leg rests on the floor, it does not go through it.
  return strokes.map((stroke) => ({ ...stroke, outline: shifted(stroke.outline, 0, -lowest) }));
}

/** Where a weight sits: its point, the direction away from the body, and how it is carried there. */
interface WeightSeat {
  readonly at: Point;
  readonly away: Point;
  readonly carried: 'hanging' | 'lying' | 'worn';
}

/** How far a hanging weight reaches below the hand, metres. */
export function reachBelow({ kind, kg }: Weight): number {
  if (kind === 'kettlebell') return 0.09 + 2 * bellRadius(kg);
  if (kind === 'rucksack') return 0.42;
  if (kind === 'bottles') return 0.2;
  return kind === 'bar' ? plateRadius(kg) : headRadius(kg);
}

function seatOf({ at, kind, kg }: Weight, stance: Stance, handAt: Point): WeightSeat {
  const { heightM, pose } = stance;
  const up = upwardAt(pose.trunk);
  const pelvisUp = upwardAt(pose.trunk - (pose.lumbar ?? 0));
  const [front, pelvisFront] = [
    { x: up.y, y: -up.x },
    { x: pelvisUp.y, y: -pelvisUp.x },
  ];
  const lift = kind === 'bar' ? 0.02 : 0.05;
  if (at === 'hands') return { at: handAt, away: DOWN, carried: 'hanging' };
  if (at === 'shoulder') return shoulderSeat(kind, stance, up, front);
  if (at === 'pelvisFront')
    return { at: along(stance.pelvisFront, lift, pelvisFront), away: pelvisFront, carried: 'lying' };
  if (at === 'work.knee') {
    const thigh = directionFrom(stance.hip, stance.work.knee);
    const away = { x: -thigh.y, y: thigh.x };
    return {
      at: along(along(stance.work.knee, -0.04 * heightM, thigh), 0.045 * heightM + lift, away),
      away,
      carried: 'lying',
    };
  }
  const calf = opposite(frontOfShank(stance));
  return {
    at: along(stance.work.ankle, 0.02 * heightM + headRadius(kg) * 0.6, calf),
    away: calf,
    carried: 'lying',
  };
}

function shoulderSeat(kind: WeightKind, stance: Stance, up: Point, front: Point): WeightSeat {
  const { heightM, shoulder } = stance;
  if (kind === 'bar')
    return {
      at: along(along(shoulder, 0.012 * heightM, up), -0.03 * heightM, front),
      away: up,
      carried: 'worn',
    };
  if (kind === 'rucksack') {
    return {
      at: along(along(shoulder, -0.1 * heightM, up), -0.055 * heightM, front),
      away: opposite(front),
      carried: 'worn',
    };
  }
  const chest = along(along(shoulder, -0.03 * heightM, up), 0.09 * heightM, front);
  return kind === 'dumbbell'
    ? { at: chest, away: front, carried: 'lying' }
    : { at: chest, away: DOWN, carried: 'hanging' };
}

const DRAWN: Record<WeightKind, (seat: WeightSeat, kg: number) => readonly Stroke[]> = {
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
    return edged(polyline(box, true), 'weight', 'paperWhite', EDGE_M);
  };
  const handle = polyline([along(at, -GRIP_HALF_M - half, axis), along(at, GRIP_HALF_M + half, axis)], false);
  return [lined(handle, 'weight', 0.026), headAt(-1), headAt(1)];
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
    lined(handle, 'weight', 0.026),
    edged(circle(along(at, drop, down), radius), 'weight', 'paperWhite', EDGE_M),
  ];
}

// Seen from its end a bar is a plate with the sleeve in the middle.
function plates(at: Point, kg: number): readonly Stroke[] {
  const radius = plateRadius(kg);
  return [
    edged(circle(at, radius), 'weight', 'paperWhite', EDGE_M),
    lined(circle(at, radius * 0.66), 'paperWhite', 0.008),
    edged(circle(at, 0.03), 'paperWhite', 'weight', 0.014),
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
    lined(polyline(carried === 'worn' ? strap : loop, false), 'weight', carried === 'worn' ? 0.026 : 0.016),
    edged(bag, 'weight', 'paperWhite', EDGE_M),
    lined(pocket, 'paperWhite', 0.009),
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
  return [edged(body, 'weight', 'paperWhite', EDGE_M), edged(cap, 'weight', 'paperWhite', 0.004)];
}

function frontOfShank({ work }: Stance): Point {
  const down = directionFrom(work.knee, work.ankle);
  return { x: -down.y, y: down.x };
}

function headRadius(kg: number): number {
  return clamp(0.042 + 0.0016 * kg, 0.042, 0.085);
}

function bellRadius(kg: number): number {
  return clamp(0.06 + 0.0018 * kg, 0.06, 0.11);
}

function plateRadius(kg: number): number {
  return clamp(0.085 + 0.0014 * kg, 0.085, 0.165);
}
