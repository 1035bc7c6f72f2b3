/**
 * Fills the slots of a stage: the first card of each that this person can do under the caps, and why not the others. A
 * card whose weight would have to be felt for makes way for a later one of its slot that was tested with a weight [choice].
 */
import type { Slot } from '../content/library.ts';
import { marginOf, type Caps } from '../mechanics/cap.ts';
import { fitCard, isObstacle, type Fit } from './fit.ts';
import { isPosed } from './model.ts';
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

interface Filled {
  readonly fit: Fit | null;
  readonly passedOver: readonly PassedOver[];
}

function fill(slot: Slot, before: readonly Choice[], person: Person, bounds: Bounds): Filled {
  const passedOver: PassedOver[] = [];
  let felt: Filled | null = null;
  for (const id of slot.cards) {
    const answer = tried(id, slot, before, person, bounds);
    if (isObstacle(answer)) {
      passedOver.push(passed(person, id, slot, bounds, answer));
      continue;
    }
    const { byFeel, byTest } = answer.load;
    if (byTest || (felt === null && !byFeel)) return { fit: answer, passedOver };
    felt ??= { fit: answer, passedOver: [...passedOver] };
    passedOver.push(passed(person, id, slot, bounds, UNTESTED));
  }
  return felt ?? { fit: null, passedOver };
}

const UNTESTED: Obstacle = {
  limit: 'testedSet',
  value: null,
  because: 'another card of this slot was tested with a weight',
};

/** The card fitted, or what stands against it in this session. */
function tried(
  id: string,
  slot: Slot,
  before: readonly Choice[],
  person: Person,
  bounds: Bounds,
): Fit | Obstacle {
  if (before.some(({ fit }) => fit.card.id === id))
    return { limit: 'slotFull', value: null, because: 'it is already in the session' };
  const answer = fitCard(cardOf(person, id), slot, person, bounds);
  return isObstacle(answer) ? answer : (tooMuchSqueeze(answer, before, person, bounds) ?? answer);
}

/** House rules 4: so many cards above half the squeeze cap in a session, no more. */
function tooMuchSqueeze(
  fit: Fit,
  before: readonly Choice[],
  person: Person,
  { caps }: Bounds,
): Obstacle | null {
  const cap = caps.compressionBw;
  if (cap === null) return null;
  const above = (one: Fit) => squeezeBw(one, person, caps) > cap / 2;
  const most = person.protocol.limits.cardsAboveHalfCap.value;
  if (!above(fit) || before.filter((choice) => above(choice.fit)).length < most) return null;
  return {
    limit: 'compression',
    value: cap,
    because: `the session already has ${most} cards above half the squeeze cap`,
  };
}

/** Squeeze held against the cap, margin included; 0 where the model has none to say. */
function squeezeBw({ card, first, load, rangeDeg }: Fit, { model }: Person, caps: Caps): number {
  if (!isPosed(card)) return 0;
  const swept = model.sweepTo(card, rangeDeg, load.load.loadKg, first.dose.tempo);
  return marginOf(card.movement, caps) * (swept?.peak.compressionBw ?? 0);
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
