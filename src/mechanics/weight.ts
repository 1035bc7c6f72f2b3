/** What gravity pulls at: the segments of the body and the weight it carries. */
import { CENTRE, GRAVITY, LENGTH, MASS } from './anthropometry.ts';
import type { Body } from './body.ts';
import type { LoadPoint } from './movement.ts';
import type { BodyPoints, LegPoints, Point } from './pose.ts';

export type LegSegment = 'thigh' | 'shank' | 'foot';

/** A pull straight down, newtons, at a point in metres from the hip. */
export interface Weight {
  readonly at: Point;
  readonly downN: number;
}

export interface LegWeight extends Weight {
  readonly segment: LegSegment;
}

/** Everything that pulls down, sorted by what it hangs on. */
export interface Weights {
  readonly upper: readonly Weight[];
  readonly work: readonly LegWeight[];
  readonly other: readonly LegWeight[];
}

/** The weights of a posture for this body with `loadKg` at `loadAt`; no point means no load, whatever its kilograms. */
export function weightsOf(
  posture: BodyPoints,
  body: Body,
  loadAt: LoadPoint | undefined,
  loadKg: number,
): Weights {
  const massN = body.massKg * GRAVITY;
  const loadN = loadKg * GRAVITY;
  const upper: Weight[] = [
    { at: scaled(posture.shoulder, CENTRE.trunkHead), downN: MASS.trunkHead * massN },
    { at: armCentre(posture), downN: MASS.arms * massN },
  ];
  const work = legWeights(posture.work, massN);
  const other = legWeights(posture.other, massN);
  switch (loadAt) {
    case 'hands':
    case 'shoulder':
    case 'pelvisFront':
      upper.push({ at: posture[loadAt], downN: loadN });
      break;
    case 'work.knee':
      work.push({ at: posture.work.knee, downN: loadN, segment: 'thigh' });
      break;
    case 'work.ankle':
      work.push({ at: posture.work.ankle, downN: loadN, segment: 'shank' });
      break;
    case 'both.ankle':
      work.push({ at: posture.work.ankle, downN: loadN / 2, segment: 'shank' });
      other.push({ at: posture.other.ankle, downN: loadN / 2, segment: 'shank' });
  }
  return { upper, work, other };
}

/** Total of the weights, newtons, and their moment about the hip, N·m, counter-clockwise positive. */
export function sumOf({ upper, work, other }: Weights): {
  readonly downN: number;
  readonly momentNm: number;
} {
  let downN = 0;
  let momentNm = 0;
  for (const weights of [upper, work, other]) {
    for (const weight of weights) {
      downN += weight.downN;
      momentNm -= weight.at.x * weight.downN;
    }
  }
  return { downN, momentNm };
}

function legWeights(leg: LegPoints, massN: number): LegWeight[] {
  return [
    { at: scaled(leg.knee, CENTRE.thigh), downN: MASS.thigh * massN, segment: 'thigh' },
    { at: between(leg.knee, leg.ankle, CENTRE.shank), downN: MASS.shank * massN, segment: 'shank' },
    { at: leg.footCom, downN: MASS.foot * massN, segment: 'foot' },
  ];
}

// The hand reaches LENGTH.grip, the arm's centre lies on the same line at a share of shoulder to wrist.
function armCentre({ shoulder, hands }: BodyPoints): Point {
  return between(shoulder, hands, (CENTRE.arm * LENGTH.arm) / LENGTH.grip);
}

function scaled(point: Point, share: number): Point {
  return { x: point.x * share, y: point.y * share };
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
