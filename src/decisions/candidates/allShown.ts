/** What was shown with anything at all: where nothing of a family was tried, it still says how much was tolerated. */
import type { Candidate } from './candidate.ts';
import { isMeasured } from './entry.ts';
import { growthFloorOf } from './growthFloor.ts';
import { burdenOf, shownBurden, shownWith } from './shown.ts';
import type { Bounds, Person } from '../person/person.ts';

/**
 * Whether squeeze and pull of a card are at most a step above the largest that was shown with any card, and above what is
 * small; true where the model cannot tell [choice].
 */
export function isAStepFromShown(
  { card, rangeDeg, load, first }: Candidate,
  person: Person,
  bounds: Bounds,
): boolean {
  if (!isMeasured(card, person, bounds)) return true;
  const asked = burdenOf(card, { rangeDeg, loadKg: load.load.loadKg, dose: first.dose }, person);
  if (asked === null) return true;
  const shown = shownCards(person).flatMap((id) =>
    shownWith(id, person, bounds).flatMap((one) => shownBurden(one, first.dose, person) ?? []),
  );
  const floor = growthFloorOf(person);
  return (['compressionBw', 'tensionBw'] as const).every((quantity) => {
    const most = Math.max(floor[quantity], ...shown.map((burden) => burden[quantity]));
    return asked[quantity] <= person.protocol.limits.stepGrowth.value * most;
  });
}

function shownCards({ consult, lastDone, library }: Person): readonly string[] {
  const named = [
    ...consult.tests.map(({ test }) => test),
    ...consult.testedSets.map(({ card }) => card),
    ...lastDone.map(({ card }) => card),
  ];
  return [...new Set(named)].filter((id) => library.exercises.has(id));
}
