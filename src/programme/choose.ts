/** Fills the slots of a stage: the first card of each that this person can do under the caps, and why not the others. */
import type { Slot } from '../content/library.ts';
import { fitCard, isObstacle, type Fit } from './fit.ts';
import type { Obstacle } from './obstacle.ts';
import { cardOf, type Bounds, type Person } from './person.ts';
import type { PassedOver } from './programme.ts';

export interface Choice {
  readonly slot: Slot;
  readonly fit: Fit;
}

export interface Chosen {
  readonly choices: readonly Choice[];
  readonly passedOver: readonly PassedOver[];
  /** Needed slots that no card fills. */
  readonly empty: readonly Slot[];
}

/** Needed slots are filled before the others, so that room goes to them; the session keeps the protocol's order. */
export function chooseCards(person: Person, bounds: Bounds): Chosen {
  const { slots } = bounds.stage;
  const choices: Choice[] = [];
  const passedOver: PassedOver[] = [];
  const empty: Slot[] = [];
  for (const slot of [...slots.filter(({ needed }) => needed), ...slots.filter(({ needed }) => !needed)]) {
    const full = noRoomFor(slot, choices, person, bounds);
    if (full !== null) {
      passedOver.push(...slot.cards.map((id) => passed(person, id, slot, bounds, full)));
      continue;
    }
    const filled = fill(slot, choices, person, bounds);
    passedOver.push(...filled.passedOver);
    if (filled.fit !== null) choices.push({ slot, fit: filled.fit });
    else if (slot.needed) empty.push(slot);
  }
  choices.sort((a, b) => slots.indexOf(a.slot) - slots.indexOf(b.slot));
  return { choices, passedOver, empty };
}

/** House rules 4: so many exercises on a session day, daily work counted. What is done beside sessions stays small on its own. */
function noRoomFor(
  { when }: Slot,
  before: readonly Choice[],
  { protocol }: Person,
  { stage }: Bounds,
): Obstacle | null {
  const count = (...kinds: readonly Slot['when'][]) =>
    before.filter(({ slot }) => kinds.includes(slot.when)).length;
  const most = protocol.limits.besideSession.value;
  if (when !== 'between' && count('session', 'daily') >= stage.maxExercises)
    return slotFull(stage.maxExercises, 'a session day');
  if (when !== 'session' && count(when) >= most)
    return slotFull(most, when === 'daily' ? 'the work of every day' : 'the days between');
  return null;
}

function fill(
  slot: Slot,
  before: readonly Choice[],
  person: Person,
  bounds: Bounds,
): { fit: Fit | null; passedOver: PassedOver[] } {
  const passedOver: PassedOver[] = [];
  for (const id of slot.cards) {
    const card = cardOf(person, id);
    if (before.some(({ fit }) => fit.card.id === id)) {
      passedOver.push(
        passed(person, id, slot, bounds, {
          limit: 'slotFull',
          value: null,
          because: 'it is already in the session',
        }),
      );
      continue;
    }
    const answer = fitCard(card, slot, person, bounds);
    const obstacle = isObstacle(answer) ? answer : tooMuchSqueeze(answer, before, person, bounds);
    if (obstacle === null) return { fit: answer as Fit, passedOver };
    passedOver.push(passed(person, id, slot, bounds, obstacle));
  }
  return { fit: null, passedOver };
}

/** House rules 4: so many cards above half the squeeze cap in a session, no more. */
function tooMuchSqueeze(
  fit: Fit,
  before: readonly Choice[],
  person: Person,
  { caps }: Bounds,
): Obstacle | null {
  const cap = caps.compressionBw;
  const above = (one: Fit) => cap !== null && (one.compressionBw ?? 0) > cap / 2;
  const most = person.protocol.limits.cardsAboveHalfCap.value;
  if (!above(fit) || before.filter((choice) => above(choice.fit)).length < most) return null;
  return {
    limit: 'compression',
    value: cap,
    because: `the session already has ${most} cards above half the squeeze cap`,
  };
}

function slotFull(most: number, where: string): Obstacle {
  const there = most === 1 ? 'is already 1 exercise' : `are already ${most} exercises`;
  return { limit: 'slotFull', value: most, because: `there ${there} for ${where}` };
}

/** A card that was passed over, with what stood against it. */
export function passed(
  person: Person,
  id: string,
  slot: Slot,
  { name }: Bounds,
  obstacle: Obstacle,
): PassedOver {
  return { card: id, title: cardOf(person, id).title, slot: slot.name, stage: name, ...obstacle };
}
