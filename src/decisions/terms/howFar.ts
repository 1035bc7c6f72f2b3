/** How far an exercise goes, as codes and numbers: what a patient can see or measure alone. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Landmark } from '../../mechanics/landmark.ts';

export type HowFar =
  /** The author's own landmark, written for this card. */
  | { readonly far: 'card'; readonly text: string }
  /** `legs`: whether one heel or both are on the floor; `held`: nothing is lowered; `onBed`: for someone who does not get down to the floor. */
  | {
      readonly far: 'landmark';
      readonly landmark: Landmark;
      readonly legs: ExerciseCard['legs'];
      readonly held: boolean;
      readonly onBed: boolean;
    }
  /** Less than the whole way where no landmark shows it: a share, 0 to 1. */
  | { readonly far: 'part'; readonly share: number }
  | { readonly far: 'whole'; readonly held: boolean };
