/** A session cut to the minutes there are: what gives way first is the protocol's, and what gave way is said. */
import { refuseDose, type DoseRefusal } from './doseRefusal.ts';
import { daySeconds, type TimedExercise } from './session.ts';

export type GivesWay = 'timesPerDay' | 'sets' | 'exercise' | 'needed' | 'lastSets';

/**
 * Once a day instead of twice, then a set less from the last slot up, then the last exercise that is not needed, then
 * one that is, as long as enough are left, and at last all sets but one [choice].
 */
export const GIVES_WAY: readonly GivesWay[] = ['timesPerDay', 'sets', 'exercise', 'needed', 'lastSets'];

/** Sets below which an exercise is rather left out [choice]. */
export const LEAST_SETS = 2;

/** `needed`: its slot must stay filled. Exercises come most important first. */
export type FittedExercise = TimedExercise & { readonly needed: boolean };

/** One thing given up: an exercise whole (`to` 0), a set less, or once a day less. */
export interface GivenUp {
  readonly what: 'timesPerDay' | 'sets' | 'exercise';
  readonly exercise: string;
  readonly from: number;
  readonly to: number;
}

export type MinutesAnswer =
  | {
      readonly exercises: readonly FittedExercise[];
      readonly gaveUp: readonly GivenUp[];
      readonly seconds: number;
    }
  | DoseRefusal<{ readonly rule: 'tooFewMinutes'; readonly leastSeconds: number }>;

/**
 * The exercises cut until a day with them takes no more than `minutes`, and what was given up, in order.
 * Things give way in the protocol's order, from the last exercise backwards; what turns out not to have been
 * necessary is given back. `leastExercises`: needed ones are left out no further than to so many. None, with the seconds of what cannot give way, when even that is too long.
 */
export function fitToMinutes(
  exercises: readonly FittedExercise[],
  minutes: number,
  order: readonly GivesWay[] = GIVES_WAY,
  leastExercises: number = exercises.length,
): MinutesAnswer {
  const atMost = minutes * 60;
  let kept = exercises;
  while (daySeconds(kept) > atMost) {
    const cut = nextCut(kept, order, leastExercises);
    if (!cut) return refuseDose({ rule: 'tooFewMinutes', leastSeconds: daySeconds(kept) });
    kept = cut;
  }
  return givenBack(exercises, kept, order, atMost);
}

function nextCut(
  kept: readonly FittedExercise[],
  order: readonly GivesWay[],
  leastExercises: number,
): readonly FittedExercise[] | null {
  for (const what of order) {
    const index = kept.findLastIndex((exercise) => canGive(exercise, what, kept.length, leastExercises));
    if (index >= 0) return cutAt(kept, index, what);
  }
  return null;
}

function canGive(
  { dose, needed }: FittedExercise,
  what: GivesWay,
  count: number,
  leastExercises: number,
): boolean {
  switch (what) {
    case 'exercise':
      return !needed && count > 1;
    case 'needed':
      return needed && count > leastExercises;
    case 'sets':
      return dose.sets > LEAST_SETS;
    case 'lastSets':
      return dose.sets > 1;
    case 'timesPerDay':
      return dose.timesPerDay > 1;
  }
}

function cutAt(kept: readonly FittedExercise[], index: number, what: GivesWay): readonly FittedExercise[] {
  if (what === 'exercise' || what === 'needed') return kept.toSpliced(index, 1);
  const exercise = kept[index] as FittedExercise;
  const count = what === 'lastSets' ? 'sets' : what;
  return kept.with(index, withCount(exercise, count, exercise.dose[count] - 1));
}

function withCount(exercise: FittedExercise, what: 'sets' | 'timesPerDay', count: number): FittedExercise {
  return { ...exercise, dose: { ...exercise.dose, [what]: count } };
}

// An exercise left out late can make room for what was given up before it: back comes first what gave way last.
function givenBack(
  asked: readonly FittedExercise[],
  cut: readonly FittedExercise[],
  order: readonly GivesWay[],
  atMost: number,
): MinutesAnswer {
  const original = new Map(asked.map((exercise) => [exercise.exercise, exercise]));
  let kept = cut;
  for (const what of order.toReversed()) {
    if (what !== 'sets' && what !== 'timesPerDay') continue;
    for (let index = 0; index < kept.length; index++) {
      const full = original.get((kept[index] as FittedExercise).exercise)?.dose[what] ?? 0;
      let now = kept[index] as FittedExercise;
      while (now.dose[what] < full) {
        const more = kept.with(index, withCount(now, what, now.dose[what] + 1));
        if (daySeconds(more) > atMost) break;
        kept = more;
        now = kept[index] as FittedExercise;
      }
    }
  }
  return { exercises: kept, gaveUp: givenUp(asked, kept), seconds: daySeconds(kept) };
}

function givenUp(asked: readonly FittedExercise[], kept: readonly FittedExercise[]): GivenUp[] {
  return asked.toReversed().flatMap(({ exercise, dose }): GivenUp[] => {
    const left = kept.find((other) => other.exercise === exercise);
    if (!left) return [{ what: 'exercise', exercise, from: 1, to: 0 }];
    return (['timesPerDay', 'sets'] as const)
      .filter((what) => left.dose[what] < dose[what])
      .map((what) => ({ what, exercise, from: dose[what], to: left.dose[what] }));
  });
}
