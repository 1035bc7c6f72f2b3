/** What stands against a card for one person in one stage, as codes and numbers. */
import type { ExerciseCard } from '../../content/library.ts';
import type { CannotDo, Equipment, Position } from '../../content/schema/words.ts';
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import type { Limit } from '../../mechanics/cap.ts';
import type { TestedReason } from './testedReason.ts';

export interface CardLimit {
  /** The name of the limit: position, hipFlexion, compression, tension, demand, provokedAngle, pose, pain, testedSet, kit, cannotDo, screen, minutes, days, slotFull, entry, newStress, kind, clinician. */
  readonly limit: string;
  readonly value: number | string | null;
  readonly why: LimitReason;
}

export type LimitReason =
  | { readonly reason: 'position'; readonly position: Position }
  | { readonly reason: 'light-holds-only' | 'no-spring-by-screen' | 'no-spring-by-maternity' }
  | { readonly reason: 'cannot-do'; readonly need: CannotDo }
  | { readonly reason: 'no-thing'; readonly thing: Equipment }
  | { readonly reason: 'stated-bend'; readonly statedDeg: number; readonly capDeg: number }
  | { readonly reason: 'bend-not-known'; readonly angle: JointAngle; readonly capDeg: number }
  | { readonly reason: 'hurt'; readonly pain: number }
  | { readonly reason: 'hurt-without-weight' }
  | { readonly reason: 'no-step' | 'no-pose' }
  | CapReason
  | { readonly reason: 'hold-too-short'; readonly testedSeconds: number }
  | { readonly reason: 'tested-too-much'; readonly tested: TestedReason }
  /** An easier card stands against it. */
  | { readonly reason: 'harder-than'; readonly card: ExerciseCard['id']; readonly than: LimitReason }
  | { readonly reason: 'known-goes-first' | 'nothing-like-it' | 'more-than-shown' | 'in-session-already' }
  | { readonly reason: 'half-cap'; readonly cardsAtMost: number }
  | {
      readonly reason: 'slot-full';
      readonly exercisesAtMost: number;
      readonly where: 'session' | 'daily' | 'between';
    }
  | { readonly reason: 'waits-for-review' }
  /** By the clinician. `because`: as written. */
  | { readonly reason: 'left-out'; readonly because: string }
  | { readonly reason: 'other-chosen' | 'other-kind' }
  | { readonly reason: 'no-minutes'; readonly minutes: number }
  | { readonly reason: 'no-day' | 'makes-way' };

/** A cap of the stage over the way of the card, or over lifting its weight into place. */
export interface CapReason {
  readonly reason: 'cap';
  readonly where: 'range' | 'lift';
  readonly cap: Limit;
  /** Degrees, body weights, or the share of strength. */
  readonly most: number | null;
  readonly byProvokedAngle: boolean;
}
