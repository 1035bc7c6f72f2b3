/** Net joint moments of one leg: what its muscles must supply against everything that acts beyond the joint. */
import type { LegPoints, Point } from './pose.ts';
import type { Reaction } from './reaction.ts';
import { PLACE } from './support.ts';
import type { LegSegment, LegWeight } from './weight.ts';

/** N·m; hip extension, knee flexion and ankle plantarflexion positive. */
export interface LegMoments {
  readonly hipNm: number;
  readonly kneeNm: number;
  readonly ankleNm: number;
}

/**
 * Moments of one leg from the forces on its thigh, shank and foot: the sum of r x F about each joint, over the parts
 * beyond it. A reaction on `both` counts half. A force at the knee counts as thigh, one at the ankle as shank.
 */
export function legMoments(
  which: 'work' | 'other',
  leg: LegPoints,
  weights: readonly LegWeight[],
  reactions: readonly Reaction[],
): LegMoments {
  let hipNm = 0;
  let kneeNm = 0;
  let ankleNm = 0;
  const act = (at: Point, segment: LegSegment, forwardN: number, upN: number) => {
    hipNm += at.x * upN - at.y * forwardN;
    if (segment === 'thigh') return;
    kneeNm += (at.x - leg.knee.x) * upN - (at.y - leg.knee.y) * forwardN;
    if (segment === 'shank') return;
    ankleNm += (at.x - leg.ankle.x) * upN - (at.y - leg.ankle.y) * forwardN;
  };
  for (const weight of weights) act(weight.at, weight.segment, 0, -weight.downN);
  for (const { support, at, upN, forwardN } of reactions) {
    const { owner, part } = PLACE[support];
    const share = owner === which ? 1 : owner === 'both' ? 0.5 : 0;
    if (share > 0) act(at, segmentOf(part), share * forwardN, share * upN);
  }
  return { hipNm, kneeNm, ankleNm };
}

function segmentOf(part: string | null): LegSegment {
  if (part === 'knee') return 'thigh';
  return part === 'ankle' ? 'shank' : 'foot';
}
