/** Where a weight sits on a stance: held, worn or lying on the body. */
import type { Point } from '../mechanics/pose.ts';
import type { WeightKind } from '../mechanics/scene.ts';
import type { Stroke } from './strokes.ts';
import { hullPoints, shifted } from './outline.ts';
import { along, directionFrom, frontOf, opposite, upwardAt } from './plane.ts';
import type { Stance } from './stance.ts';
import { DRAWN, headRadius, type Weight, type WeightSeat } from './weightKinds.ts';

const DOWN: Point = { x: 0, y: -1 };

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

function seatOf({ at, kind, kg }: Weight, stance: Stance, handAt: Point): WeightSeat {
  const { heightM, pose } = stance;
  const up = upwardAt(pose.trunk);
  const pelvisUp = upwardAt(pose.trunk - (pose.lumbar ?? 0));
  const [front, pelvisFront] = [frontOf(up), frontOf(pelvisUp)];
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
  // A bag hangs from the ankle by its loop, whichever way the shin points.
  if (kind === 'rucksack') return { at: stance.work.ankle, away: DOWN, carried: 'hanging' };
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

function frontOfShank({ work }: Stance): Point {
  const down = directionFrom(work.knee, work.ankle);
  return { x: -down.y, y: down.x };
}
