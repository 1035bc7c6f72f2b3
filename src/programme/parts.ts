/** The parts of the plan with their steps and cards: the present one, then the later rungs of a protocol by weeks. */
import type { ExerciseCard } from '../content/library.ts';
import type { Decided } from '../decisions/decide.ts';
import type { Shown } from '../decisions/days/work.ts';
import type { DayWords } from '../messages/en/patient/day.ts';

export interface Part {
  readonly step: number;
  /** By slot name. */
  readonly cards: ReadonlyMap<string, ExerciseCard>;
  readonly shown: Shown;
}

/** In the order of their dates. */
export function partsOf({ step, shown, following }: Decided): Part[] {
  return [partOf(step, shown[0]), ...following.map((part) => partOf(part.step, part.shown))];
}

function partOf(step: number, shown: Shown): Part {
  return {
    step,
    shown,
    cards: new Map(shown.prescriptions.map(({ exercise, card }) => [exercise.slot.name, card])),
  };
}

/** How the days of this plan name what they hold. */
export function dayWords(decided: Decided): DayWords {
  const parts = partsOf(decided);
  return {
    titleOf: (part, exercise) => parts[part]?.cards.get(exercise)?.title ?? exercise,
    stepOf: (part) => (part === 0 ? null : (parts[part]?.step ?? null)),
  };
}
