/** The card of the morning check: the protocol's, as far as this person can do it under the first stage's limits. */
import { numberedStages } from '../content/keepStage.ts';
import type { ExerciseCard, Slot } from '../content/library.ts';
import { cardOf } from './choose.ts';
import { fitCard, isObstacle } from './fit.ts';
import { boundsOf, type Person } from './person.ts';

/**
 * The protocol's own task; where it cannot be done (a cannot-do word, what hurt), the first hold of the gentlest stage
 * that can; null when there is none. It is chosen by the first stage whatever the present one, so that it stays the same.
 */
export function morningTask(person: Person): ExerciseCard | null {
  const { protocol } = person;
  const stage = numberedStages(protocol.stages)[0] ?? protocol.stages[0];
  const [slot] = stage?.slots ?? [];
  if (stage === undefined || slot === undefined) return null;
  const bounds = boundsOf(person, 1, stage, false);
  const holds = stage.slots.filter(({ dose }) => dose.kind === 'hold').flatMap(({ cards }) => cards);
  return (
    [protocol.morningCheck.card, ...holds]
      .map((id) => cardOf(person, id))
      .find((card) => !isObstacle(fitCard(card, unloaded(slot), person, bounds))) ?? null
  );
}

// A few repetitions without a weight: what was tested with a weight says nothing of them.
function unloaded(slot: Slot): Slot {
  return { ...slot, dose: { ...slot.dose, kind: 'mobility', repetitions: null, holdSeconds: null } };
}
