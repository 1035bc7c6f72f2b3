/** By what an exercise was held as it entered the stage. */

/** What the entry is measured against. `slight`: neither squeezes nor bends the hip enough to matter. */
export type EntryBasis = 'own' | 'family' | 'nothing' | 'slight' | 'notModelled';

/** Peak squeeze and hip moment; squeeze and pull over the session. */
export const QUANTITIES = ['compressionBw', 'hipMomentNm', 'compressionTimeBwS', 'tensionTimeBwS'] as const;
export type Quantity = (typeof QUANTITIES)[number];

export interface EntryRule {
  readonly rule: 'entry';
  readonly basis: EntryBasis;
  /** The card whose test or last dose decides; null where there is none. */
  readonly card: string | null;
  readonly by: 'lastDone' | 'testedSet' | 'test' | null;
  readonly growth: number;
  /** The first quantity that the dose of the stage would have passed; null where it passes none. */
  readonly quantity: Quantity | null;
}
