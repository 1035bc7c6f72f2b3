/** Pillows that carry nothing: a mark for the hips, a pad for a knee, a cushion under the belly. */
import { pillows } from './blocks.ts';
import { kneeDown, lowestHip } from './carriage.ts';
import type { Stroke } from './strokes.ts';
import { RAISED_FROM_M } from './pedestal.ts';
import type { Stance } from './stance.ts';
import { torsoKnots } from './torso.ts';

const BELLY_PILLOW_M = 0.055;
/** Thickness of a folded blanket under lying hips, metres. */
const LEAST_BLANKET_M = 0.045;

/** They mark how low the seat may come; under a knee one of them is a pad. */
export function sparePillows(stances: readonly Stance[]): readonly Stroke[] {
  const lowest = lowestHip(stances);
  const knee = kneeDown(lowest)?.knee;
  if (knee !== undefined) return pillows({ left: knee.x - 0.2, right: knee.x + 0.16, y: 0.06 });
  const under = underHips(lowest);
  return under < RAISED_FROM_M || under > 0.7
    ? []
    : pillows({ left: lowest.hip.x - 0.28, right: lowest.hip.x + 0.2, y: under });
}

/** The pillow or folded blanket that says how low lying hips come; a thin one gives way to them. */
export function pillowUnderHips(stances: readonly Stance[]): readonly Stroke[] {
  const lowest = lowestHip(stances);
  const y = Math.max(underHips(lowest), LEAST_BLANKET_M);
  return pillows({ left: lowest.hip.x - 0.28, right: lowest.hip.x + 0.18, y });
}

function underHips({ pose, hip, heightM }: Stance): number {
  return Math.min(
    ...torsoKnots(pose, hip, heightM)
      .slice(0, 3)
      .map(({ y }) => y),
  );
}

/** Between belly and bed, from the hip bones to the lowest ribs. */
export function bellyPillow({ hip, shoulder, heightM, lyingY }: Stance): readonly Stroke[] {
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  const [foot, head] = [hip.x - headwards * 0.05 * heightM, hip.x + headwards * 0.19 * heightM];
  return pillows(
    { left: Math.min(foot, head), right: Math.max(foot, head), y: lyingY + BELLY_PILLOW_M },
    lyingY,
  );
}
