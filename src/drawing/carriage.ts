/** How a set-down body carries itself: on its knees, on a seat, on its way down. */
import type { SideScene } from '../mechanics/scene.ts';
import type { Leg, Stance } from './stance.ts';

/** The stance with the lowest hips. */
export function lowestHip(stances: readonly Stance[]): Stance {
  return stances.reduce((low, stance) => (stance.hip.y < low.hip.y ? stance : low));
}

/** Both feet planted and the hips on their way down, or down already: standing, they are 0.53 of height above the floor. */
export function sinks(stances: readonly Stance[]): boolean {
  const lowest = lowestHip(stances);
  const highest = Math.max(...stances.map(({ hip }) => hip.y));
  const { hip, heightM, symmetric, work } = lowest;
  return symmetric && work.planted && (hip.y < 0.42 * heightM || highest - hip.y > 0.06 * heightM);
}

/** Upright on a seat: the hips are no higher than the knees are far from the floor. */
export function sits({ hip, heightM }: Stance): boolean {
  return hip.y < 0.4 * heightM;
}

/** Whether a knee carries the body. */
export function kneels(stance: Stance): boolean {
  return kneeDown(stance) !== null;
}

/** The leg on its knee, not one that lies along the floor; null for none. */
export function kneeDown({ work, other, hip, heightM }: Stance): Leg | null {
  const down = (leg: Leg) => !leg.planted && leg.knee.y < 0.06 * heightM && hip.y > 0.15 * heightM;
  return down(work) ? work : down(other) ? other : null;
}

/** Whether the body lies on its front throughout. */
export function facesDown(stances: readonly Stance[]): boolean {
  return stances.every(({ pose }) => pose.trunk > 60);
}

/** Whether the body lies on its back on the floor, hips down or raised. */
export function onTheBack({ supports, supportRiseM }: SideScene, stances: readonly Stance[]): boolean {
  return supports.includes('upperBack') && supportRiseM <= 0 && stances.every(({ pose }) => pose.trunk < -60);
}
