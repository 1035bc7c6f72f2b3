/** How an exercise entered the stage: against what it was held, and what was taken down for it. */
import type { Quantity, Shown } from './shown.ts';

/** What the entry is measured against. `slight`: neither squeezes nor bends the hip enough to matter. */
export type EntryBasis = 'own' | 'family' | 'nothing' | 'slight' | 'notModelled';

/** What was taken down to enter, and which quantity asked for it. */
export interface Lowered {
  /** `feltLoad`: the most that a weight may be which is felt for. */
  readonly what: 'range' | 'load' | 'feltLoad' | 'repetitions' | 'holdSeconds';
  readonly from: number;
  readonly to: number;
}

export interface Entry {
  readonly basis: EntryBasis;
  /** The card whose test or last dose decides; null where there is none. */
  readonly card: string | null;
  readonly by: Shown['by'] | null;
  readonly growth: number;
  /** The first quantity that the dose of the stage would have passed; null where it passes none. */
  readonly quantity: Quantity | null;
  readonly lowered: readonly Lowered[];
}
