/** A card that was not taken, and what stood against it. */
import type { CardLimit } from './cardLimit.ts';
import type { StageName } from './stageName.ts';

export interface PassedOver extends CardLimit {
  readonly card: string;
  readonly title: string;
  readonly slot: string;
  readonly stage: StageName;
}
