/** The parts of the plan with their steps and cards: the present one, then the later rungs of a protocol by weeks. */
import type { ExerciseCard } from '../../content/library.ts';
import type { FollowingPart } from './followingParts.ts';
import type { Shown, Work } from './work.ts';

export interface Part {
  readonly step: number;
  /** By slot name. */
  readonly cards: ReadonlyMap<string, ExerciseCard>;
  readonly shown: Shown;
}

/** What the parts are made of. */
export interface Parted extends Pick<Work, 'step' | 'shown'> {
  readonly following: readonly FollowingPart[];
}

/** In the order of their dates. */
export function partsOf({ step, shown, following }: Parted): Part[] {
  return [partOf(step, shown[0]), ...following.map((part) => partOf(part.step, part.shown))];
}

function partOf(step: number, shown: Shown): Part {
  return {
    step,
    shown,
    cards: new Map(shown.prescriptions.map(({ exercise, card }) => [exercise.slot.name, card])),
  };
}
