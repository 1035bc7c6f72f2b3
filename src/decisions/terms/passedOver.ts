/** A card that was not taken, and what stood against it. */
import type { Obstacle } from './obstacle.ts';
import type { StageName } from './stageName.ts';

export interface PassedOver extends Obstacle {
  readonly card: string;
  readonly title: string;
  readonly slot: string;
  readonly stage: StageName;
}
