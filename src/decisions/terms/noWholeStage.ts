/** Why a stage gives no whole programme. */
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import type { LimitReason } from './cardLimit.ts';

/** A card that was looked at for a slot, and what stood against it. */
export interface BarredCard {
  readonly card: string;
  readonly why: LimitReason;
}

/** The first step itself breaks a limit; `slot` null: the session as a whole. */
export interface NoRoom {
  readonly reason: 'no-room';
  readonly limit: string;
  readonly slot: string | null;
}

/** Why the proposal went back from a stage that its tests had opened. */
export type NoWholeStage =
  | {
      readonly reason: 'empty-slots';
      readonly slots: readonly { readonly slot: string; readonly barred: readonly BarredCard[] }[];
    }
  | NoRoom
  | Hollow;

/** Every exercise reaches at most this share of the bend of the stage, and `below` is asked. */
export interface Hollow {
  readonly reason: 'hollow';
  readonly angle: JointAngle;
  readonly share: number;
  readonly below: number;
}
