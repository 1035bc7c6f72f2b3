/** The card of the morning check and the hold of a flare: both by the first stage, so that they stay the same all the way. */
import { numberedStages } from '../../content/keepStage.ts';
import type { ExerciseCard, Slot, Stage } from '../../content/library.ts';

import { candidateFrom, isCardLimit, type Candidate } from './candidate.ts';
import { boundsOf, cardOf, type Person } from '../person/person.ts';

/**
 * The protocol's own task; where it cannot be done (a cannot-do word, what hurt), the first hold of the gentlest stage
 * that can; null when there is none.
 */
export function morningTask(person: Person): ExerciseCard | null {
  const stage = firstStage(person);
  if (stage === undefined) return null;
  const candidates = [person.protocol.morningCheck.card, ...holdSlots(stage).flatMap(({ cards }) => cards)];
  return candidates.map((id) => cardOf(person, id)).find((card) => isDone(card, stage, person)) ?? null;
}

/** The first hold of the gentlest stage that this person can do, with its slot; null when there is none. */
export function firstHold(person: Person): { readonly slot: Slot; readonly card: ExerciseCard } | null {
  const stage = firstStage(person);
  if (stage === undefined) return null;
  const holds = holdSlots(stage).flatMap((slot) =>
    slot.cards.map((id) => ({ slot, card: cardOf(person, id) })),
  );
  return holds.find(({ card }) => isDone(card, stage, person)) ?? null;
}

function firstStage({ protocol: { stages } }: Person): Stage | undefined {
  return numberedStages(stages)[0] ?? stages[0];
}

function holdSlots({ slots }: Stage): readonly Slot[] {
  return slots.filter(({ dose }) => dose.kind === 'hold');
}

function isDone(card: ExerciseCard, stage: Stage, person: Person): boolean {
  return fitIn(card, stage, person) !== null;
}

/** How a card is done without a weight in the gentlest stage; null where it is not. */
export function gentlyDone(card: ExerciseCard, person: Person): Candidate | null {
  const stage = firstStage(person);
  return stage === undefined ? null : fitIn(card, stage, person);
}

function fitIn(card: ExerciseCard, stage: Stage, person: Person): Candidate | null {
  const [slot] = stage.slots;
  if (slot === undefined) return null;
  const answer = candidateFrom(card, unloaded(slot), person, boundsOf(person, 1, stage, false));
  return isCardLimit(answer) ? null : answer;
}

// A few repetitions without a weight: what was tested with a weight says nothing of them.
function unloaded(slot: Slot): Slot {
  return { ...slot, dose: { ...slot.dose, kind: 'mobility', repetitions: null, holdSeconds: null } };
}
