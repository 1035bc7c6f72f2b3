/** Whether a closed posture can stay where it is: nothing in the air, the weight over the foot, the ankle within reach. */
import type { Body } from './body.ts';
import { closePose, supportAt } from './closure.ts';
import { ankleDegOf } from './kinematics.ts';
import type { Movement, SupportPoint } from './movement.ts';
import type { BodyPoints, Posture } from './pose.ts';
import { reactionsOf } from './reaction.ts';
import { PLACE } from './support.ts';
import { poseAt } from './trajectory.ts';
import { weightsOf, type Total } from './weight.ts';

/**
 * `notClosed`: no angle of the unknown closes the pose · `supportInTheAir`: a support would have to pull the body down ·
 * `offBalance`: the weight does not stand over the one support · `ankleBeyondReach`: the standing ankle cannot bend so far.
 */
export type EquilibriumFault = 'notClosed' | 'supportInTheAir' | 'offBalance' | 'ankleBeyondReach';

/** Dorsiflexion a standing ankle can reach, degrees, plantarflexion negative [memory]. */
const ANKLE_DEG = [-50, 40] as const;

/** Under a pose without a balance closure the weight may stand this far from the support, metres: the sway of the centre of pressure. */
const SWAY_M = 0.03;

/** Supports nearer than this along the floor count as one above the other, metres [choice]. */
const NARROW_M = 0.02;

/**
 * What is wrong with the pose at fraction `t` under this load; null when nothing is. The ankle is looked at last and
 * by this function alone: a pose that asks too much of it is a fault of the card, but its statics still hold.
 */
export function equilibriumFaultAt(
  movement: Movement,
  body: Body,
  loadKg: number,
  t: number,
): EquilibriumFault | null {
  const posture = closePose(movement, poseAt(movement, t), body, loadKg);
  if (!posture) return 'notClosed';
  const unrest = unrestIn(movement, posture, weightsOf(posture, body, movement.loadAt, loadKg));
  if (unrest) return unrest;
  return movement.solve?.kind === 'balance' && !ankleReaches(movement, posture) ? 'ankleBeyondReach' : null;
}

/** Whether a closed body can rest on the movement's supports under weights of this total. */
export function restsOn(movement: Movement, points: BodyPoints, total: Total): boolean {
  return unrestIn(movement, points, total) === null;
}

function unrestIn(
  { supports }: Movement,
  points: BodyPoints,
  total: Total,
): 'supportInTheAir' | 'offBalance' | null {
  const [first, second] = supports;
  if (!first) return null;
  if (second) return liftsOff(points, supports, total) ? 'supportInTheAir' : null;
  return offsetM(points, first, total) > SWAY_M ? 'offBalance' : null;
}

// Only an ankle is ever strapped or held down; everything else just lies or stands there. Two supports almost above
// each other carry nothing that tips.
function liftsOff(points: BodyPoints, supports: readonly SupportPoint[], total: Total): boolean {
  const [first, second] = reactionsOf(points, supports, total, 0);
  if (!first || !second || Math.abs(first.at.x - second.at.x) < NARROW_M) return true;
  return [first, second].some(({ support, upN }) => upN < 0 && PLACE[support].part !== 'ankle');
}

function offsetM(points: BodyPoints, support: SupportPoint, { downN, momentNm }: Total): number {
  return Math.abs(supportAt(points, support).x + momentNm / downN);
}

function ankleReaches({ supports }: Movement, { pose }: Posture): boolean {
  const [support = ''] = supports;
  if (!/heel|mid|fore/.test(support)) return true;
  const leg = support.startsWith('other.') ? (pose.other ?? pose.work) : pose.work;
  const ankleDeg = ankleDegOf(leg, pose.trunk - (pose.lumbar ?? 0));
  return ankleDeg >= ANKLE_DEG[0] && ankleDeg <= ANKLE_DEG[1];
}
