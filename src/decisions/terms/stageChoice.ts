/** The stage a programme is of, who chose it, and why. */
import type { NoWholeStage } from './noWholeStage.ts';
import type { StageLooked } from './stageLimit.ts';
import type { StageName } from './stageName.ts';

export interface StageChoice {
  readonly chosen: StageName;
  /** As the protocol names it. */
  readonly name: string;
  readonly proposed: StageName;
  readonly chosenBy: 'proposal' | 'clinician';
  readonly because: readonly StageReason[];
}

/** In the order in which it was decided. `reason`: stageBecause, null where none is needed. */
export type StageReason =
  | ({ readonly code: 'looked' } & StageLooked)
  | {
      readonly code: 'own';
      readonly stage: StageName;
      readonly proposed: StageName;
      readonly reason: string | null;
    }
  | { readonly code: 'end-of-treatment' }
  | {
      readonly code: 'fell-back';
      readonly from: StageName;
      readonly to: StageName;
      readonly why: NoWholeStage;
    }
  | { readonly code: 'light-holds-only'; readonly first: StageName; readonly written: StageName | null };
