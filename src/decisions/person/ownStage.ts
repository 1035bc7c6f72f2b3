/** A stage with the clinician's own choices in it. */
import type { Consult, ExerciseCard, Library, Slot, Stage } from '../../content/library.ts';
import type { Bounds, Person } from './person.ts';

type Choices = Pick<Consult, 'chosen' | 'added'>;

/** Chosen cards come first in their slots, and added ones get slots of their own; both are needed, so that nothing drops them silently. */
export function ownStage(stage: Stage, { consult, library }: Pick<Person, 'consult' | 'library'>): Stage {
  const { chosen, added } = consult;
  if (chosen.length + added.length === 0) return stage;
  const slots = stage.slots.map((slot) => {
    const own = chosen.find((one) => one.slot === slot.name);
    return own === undefined
      ? slot
      : { ...slot, needed: true, cards: [own.card, ...slot.cards.filter((id) => id !== own.card)] };
  });
  return { ...stage, slots: added.reduce((so, one) => withAdded(so, one, library), slots) };
}

export function addedSlotName(card: string): string {
  return `Added: ${card}`;
}

function withAdded(
  slots: readonly Slot[],
  { card, afterSlot }: Consult['added'][number],
  { exercises }: Library,
): Slot[] {
  const model = modelSlot(slots, card, afterSlot, exercises.get(card));
  if (model === null) return [...slots];
  const own: Slot = { ...model, name: addedSlotName(card), needed: true, cards: [card] };
  const after = slots.findIndex(({ name }) => name === afterSlot);
  return after === -1 ? [...slots, own] : [...slots.slice(0, after + 1), own, ...slots.slice(after + 1)];
}

/** The slot whose dose it takes: one that has the card, else that after which it is done, else the first of its kind. */
function modelSlot(
  slots: readonly Slot[],
  card: string,
  afterSlot: string | undefined,
  exercise: ExerciseCard | undefined,
): Slot | null {
  if (exercise === undefined) return null;
  const suits = (slot: Slot) => isOfKind(exercise, slot);
  return (
    slots.find(({ cards }) => cards.includes(card)) ??
    slots.find((slot) => slot.name === afterSlot && suits(slot)) ??
    slots.find((slot) => slot.when === 'session' && suits(slot)) ??
    null
  );
}

/** What is held goes into a slot of holds, and nothing else does. */
export function isOfKind({ kind }: Pick<ExerciseCard, 'kind'>, { dose }: Pick<Slot, 'dose'>): boolean {
  return (kind === 'isometric') === (dose.kind === 'hold');
}

/** The clinician's own card for a slot; null where the protocol decides. */
export function ownCardOf({ name }: Pick<Slot, 'name'>, { chosen, added }: Choices): string | null {
  return (
    chosen.find(({ slot }) => slot === name)?.card ??
    added.find(({ card }) => addedSlotName(card) === name)?.card ??
    null
  );
}

/** Whether a recorded decision lets this card go above the caps of the house. */
export function isBeyond(card: string, { chosen, added }: Choices): boolean {
  return [...chosen, ...added].some((one) => one.card === card && one.beyondCap !== undefined);
}

/** The bounds for one card: without the caps of the house where that is decided; what hurt holds all the same. */
export function boundsFor(card: string, { consult, provokedDeg }: Person, bounds: Bounds): Bounds {
  if (bounds.ahead || !isBeyond(card, consult)) return bounds;
  const caps = { ...bounds.caps, angleDeg: provokedDeg, compressionBw: null, tensionBw: null, demand: null };
  return { ...bounds, caps, byProvokedAngle: provokedDeg !== null };
}
