/**
 * How strong a body's muscles are taken to be.
 *
 * Muscle volume follows body mass times height (Handsfield et al. 2014, J Biomech 47:631-638 [secondary]), and a
 * muscle's length follows height; volume over length is its cross-section, which makes its force: force follows mass.
 * One factor for every muscle changes no sharing of a moment, since only ratios of areas count there: pull and squeeze
 * stay, and the share of strength alone moves. Pull at rest is not scaled; people differ by more (`passiveTension.ts`).
 */
import type { Body } from './body.ts';
import { STRENGTH_N } from './muscle.ts';

/**
 * By how much every greatest force of this body differs from the published one; 1 without settings.
 * @example strengthFactor({ massKg: 60, heightM: 1.7, muscles }) // => 0.8 from a base of 75 kg
 */
export function strengthFactor({ massKg, muscles }: Body): number {
  if (muscles === undefined) return 1;
  const { baseMassKg, massFromKg, massToKg } = muscles;
  return Math.min(massToKg, Math.max(massFromKg, massKg)) / baseMassKg;
}

/** The largest share of its greatest force that any muscle pulls with; forces in newtons in the order of LUMPS. */
export function demandOf(forcesN: readonly number[], factor: number): number {
  let most = -Infinity;
  for (let i = 0; i < forcesN.length; i++)
    most = Math.max(most, (forcesN[i] as number) / (STRENGTH_N[i] as number));
  return most / factor;
}
