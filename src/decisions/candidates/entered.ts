/** How an exercise entered the stage: against what it was held, and what was taken down for it. */
import type { EntryRule } from '../terms/entryRule.ts';

/** What was taken down to enter, and which quantity asked for it. */
export interface Lowered {
  /** `feltLoad`: the most that a weight may be which is felt for. */
  readonly what: 'range' | 'load' | 'feltLoad' | 'repetitions' | 'holdSeconds';
  readonly from: number;
  readonly to: number;
}

export interface Entry extends EntryRule {
  readonly lowered: readonly Lowered[];
}
