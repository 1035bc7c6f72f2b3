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

/** What pulls down, sorted by what it hangs on. */
export interface Hanging {
  readonly upper: readonly Weight[];
  readonly work: readonly LegWeight[];
  readonly other: readonly LegWeight[];
}

/** Weights together. */
export interface Total {
  readonly downN: number;
  /** Moment about the hip, counter-clockwise positive. */
  readonly momentNm: number;
}

/** Everything that pulls down. */
export interface Weights extends Hanging, Total {}

/** The weights of a posture for this body with `loadKg` at `loadAt`; no point means no load, whatever its kilograms. */
export function weightsOf(
  posture: BodyPoints,
  body: Body,
  loadAt: LoadPoint | undefined,
  loadKg: number,
): Weights {
  const own = bodyWeights(posture, body);
  const load = loadWeights(posture, loadAt, loadKg * GRAVITY);
  const upper = [...own.upper, ...load.upper];
  const work = [...own.work, ...load.work];
  const other = [...own.other, ...load.other];
  const { downN, momentNm } = sumOf({ upper, work, other });
  return { upper, work, other, downN, momentNm };
}

/** Those of the body alone. */
export function bodyWeights(posture: BodyPoints, body: Body): Hanging {
  const massN = body.massKg * GRAVITY;
  return {
    upper: [
      { at: scaled(posture.shoulder, CENTRE.trunkHead), downN: MASS.trunkHead * massN },
      { at: armCentre(posture), downN: MASS.arms * massN },
    ],
    work: legWeights(posture.work, massN),
    other: legWeights(posture.other, massN),
  };
}

/** Those of a load alone, `loadN` heavy. */
export function loadWeights(posture: BodyPoints, loadAt: LoadPoint | undefined, loadN: number): Hanging {
  const at = (point: Point, downN: number): Weight => ({ at: point, downN });
  const on = (segment: LegSegment, point: Point, downN: number): LegWeight => ({ at: point, downN, segment });
  const { work, other } = posture;
  switch (loadAt) {
    case undefined:
      return { upper: [], work: [], other: [] };
    case 'hands':
    case 'shoulder':
    case 'pelvisFront':
      return { upper: [at(posture[loadAt], loadN)], work: [], other: [] };
    case 'work.knee':
      return { upper: [], work: [on('thigh', work.knee, loadN)], other: [] };
    case 'work.ankle':
      return { upper: [], work: [on('shank', work.ankle, loadN)], other: [] };
    case 'both.ankle':
      return {
        upper: [],
        work: [on('shank', work.ankle, loadN / 2)],
        other: [on('shank', other.ankle, loadN / 2)],
      };
  }
}

export function sumOf({ upper, work, other }: Hanging): Total {
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
