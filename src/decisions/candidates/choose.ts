/** Fills the slots of a stage: of each the card that this person can do under the caps and enter with, and why not the others. */
import type { Slot } from '../../content/library.ts';
import { marginOf, type Caps } from '../../mechanics/cap.ts';
import { isAStepFromShown } from './allShown.ts';
import { enter, gentlestVersion } from './entry.ts';
import { easierChain } from './family.ts';
import { candidateFrom, isCardLimit, type Candidate } from './candidate.ts';
import { NOTHING } from './load.ts';
import { isPosed } from '../person/model.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import { boundsFor, isBeyond, isOfKind, ownCardOf } from '../person/ownStage.ts';
import { cardOf, type Bounds, type Person } from '../person/person.ts';
import type { PassedOver } from '../terms/passedOver.ts';
import { sessionLength } from '../person/sessionLength.ts';
import { isHoldTested, isKnown } from './shown.ts';

export interface Choice {
  readonly slot: Slot;
  readonly fit: Candidate;
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
  person: Person,
  bounds: Bounds,
): CardLimit | null {
  const { exercisesAtMost } = sessionLength(person, bounds);
  const count = (...kinds: readonly Slot['when'][]) =>
    before.filter(({ slot }) => kinds.includes(slot.when)).length;
  const most = person.protocol.limits.besideSession.value;
  if (when !== 'between' && count('session', 'daily') >= exercisesAtMost)
    return slotFull(exercisesAtMost, 'session');
  if (when !== 'session' && count(when) >= most) return slotFull(most, when);
  return null;
}

interface Filled {
  readonly fit: Candidate | null;
  readonly passedOver: readonly PassedOver[];
}

/**
 * What was tested with a weight or done before goes first, then the protocol's order: the first card that enters within
 * what was shown. Where none does, the gentlest of the slot's chain in its gentlest version (house rules 11.2).
 */
function fill(slot: Slot, before: readonly Choice[], person: Person, bounds: Bounds): Filled {
  const own = bounds.ahead ? null : ownCardOf(slot, person.consult);
  if (own !== null) return fillWith(own, slot, before, person, bounds);
  const passedOver: PassedOver[] = [];
  const left: { readonly fit: Candidate; readonly because: CardLimit }[] = [];
  const over = (id: string, cardLimit: CardLimit) =>
    passedOver.push(passed(person, id, slot, bounds, cardLimit));
  for (const id of inOrder(slot, person, bounds)) {
    const answer = tried(id, slot, before, person, bounds);
    if (isCardLimit(answer)) {
      over(id, answer);
      continue;
    }
    const entered = enter(answer, slot, person, bounds);
    if (entered !== null && (isGentlestFirst(slot) || isEntry(entered, left.length))) {
      left.forEach(({ fit, because }) => over(fit.card.id, because));
      return {
        fit: entered,
        passedOver: [...passedOver, ...knownFirst(id, slot, passedOver, person, bounds)],
      };
    }
    left.push({ fit: answer, because: entered === null ? TOO_MUCH : NOTHING_LIKE_IT });
  }
  const fits = left.map(({ fit }) => fit);
  const gentlest = gentlestOf(fits, slot, person, bounds);
  for (const { fit, because } of left) {
    if (fit.card === gentlest?.card) break;
    over(fit.card.id, because);
  }
  return { fit: gentlest, passedOver };
}

/**
 * With the clinician's own card, or with none. It enters as any other would; above a cap of the house it begins in its
 * gentlest version, for nobody has said how far above.
 */
function fillWith(
  id: string,
  slot: Slot,
  before: readonly Choice[],
  person: Person,
  stageBounds: Bounds,
): Filled {
  const bounds = boundsFor(id, person, stageBounds);
  const others = slot.cards
    .filter((one) => one !== id)
    .map((one) => passed(person, one, slot, bounds, OTHER_CHOSEN));
  const over = (cardLimit: CardLimit) => ({
    fit: null,
    passedOver: [passed(person, id, slot, bounds, cardLimit), ...others],
  });
  if (!isOfKind(cardOf(person, id), slot)) return over(OTHER_KIND);
  const answer = tried(id, slot, before, person, bounds);
  if (isCardLimit(answer)) return over(answer);
  const entered = isBeyond(id, person.consult) ? null : enter(answer, slot, person, bounds);
  const fit = entered ?? gentlestVersion(answer, slot, person, bounds);
  return fit === null ? over(TOO_MUCH) : { fit, passedOver: others };
}

const OTHER_CHOSEN: CardLimit = { limit: 'clinician', value: null, why: { reason: 'other-chosen' } };
const OTHER_KIND: CardLimit = { limit: 'kind', value: null, why: { reason: 'other-kind' } };

// What squeezes too little to matter goes in its turn only: not before a card that would have to begin gently.
function isEntry({ entry }: Candidate, leftBefore: number): boolean {
  if (entry?.basis === 'own' || entry?.basis === 'family') return true;
  return entry?.basis !== 'nothing' && leftBefore === 0;
}

function isGentlestFirst({ when, dose }: Slot): boolean {
  return when === 'between' && dose.kind === 'hold';
}

function inOrder(slot: Slot, person: Person, bounds: Bounds): readonly string[] {
  const { cards } = slot;
  if (isGentlestFirst(slot)) return gentlestHolds(cards, person, bounds);
  const known = knownOf(slot, person, bounds);
  return [...known, ...cards.filter((id) => !known.includes(id))];
}

const BARE = { rule: 'bare-between' } as const;

// Between sessions the gentlest of the slot is held, and a weight would make it another one.
function withoutWeight(fit: Candidate): Candidate {
  if (fit.load.load.loadKg === 0) return fit;
  const load = { ...fit.load, load: NOTHING, byFeel: false, rule: BARE, decidedBy: 'dose' } as const;
  return { ...fit, load, loads: [NOTHING] };
}

/** Cards with a load or a hold that may be gone on with at home, by a test or from the stage before. */
function knownOf(slot: Slot, person: Person, bounds: Bounds): readonly string[] {
  if (bounds.ahead) return [];
  return slot.cards.filter((id) => {
    if (!isKnown(id, person, bounds)) return false;
    const answer = candidateFrom(cardOf(person, id), slot, person, bounds);
    const done = person.lastDone.some(({ card }) => card === id);
    if (isCardLimit(answer)) return false;
    const { byTest, load } = answer.load;
    return done || isHoldTested(id, person) || (byTest && load.loadKg > 0);
  });
}

/** Holds between sessions: those with a pose by their pull, the least first; the protocol's order for what has none. */
function gentlestHolds(cards: readonly string[], person: Person, bounds: Bounds): readonly string[] {
  const pullBw = (id: string) => {
    const card = cardOf(person, id);
    if (!isPosed(card)) return Infinity;
    return person.model.sweepTo(card, null, 0, card.tempo)?.peak.tensionBw ?? Infinity;
  };
  return bounds.ahead ? cards : cards.toSorted((a, b) => pullBw(a) - pullBw(b));
}

/** Cards that the protocol names before the chosen one, and that make way for what is known. */
function knownFirst(
  id: string,
  slot: Slot,
  already: readonly PassedOver[],
  person: Person,
  bounds: Bounds,
): PassedOver[] {
  if (isGentlestFirst(slot) || !knownOf(slot, person, bounds).includes(id)) return [];
  return slot.cards
    .slice(0, slot.cards.indexOf(id))
    .filter((one) => !already.some(({ card }) => card === one))
    .map((one) => passed(person, one, slot, bounds, UNTESTED));
}

/**
 * From the first card that can be done down its easier ones to the last of the slot that can; another one where that is
 * too much, or where it is more than a step above anything that was shown and another is not.
 */
function gentlestOf(
  fits: readonly Candidate[],
  slot: Slot,
  person: Person,
  bounds: Bounds,
): Candidate | null {
  const [first] = fits;
  if (first === undefined) return null;
  const chain = easierChain(first.card.id, person.library.exercises);
  const onChain = chain.flatMap((id) => fits.filter(({ card }) => card.id === id)).toReversed();
  const others = fits.filter((fit) => !onChain.includes(fit));
  const versions = [...onChain, ...others].flatMap((fit) => gentlestVersion(fit, slot, person, bounds) ?? []);
  return versions.find((version) => isAStepFromShown(version, person, bounds)) ?? versions[0] ?? null;
}

const UNTESTED: CardLimit = {
  limit: 'testedSet',
  value: null,
  why: { reason: 'known-goes-first' },
};

const NOTHING_LIKE_IT: CardLimit = {
  limit: 'entry',
  value: null,
  why: { reason: 'nothing-like-it' },
};

const TOO_MUCH: CardLimit = {
  limit: 'entry',
  value: null,
  why: { reason: 'more-than-shown' },
};

/** The card fitted, or what stands against it in this session. */
function tried(
  id: string,
  slot: Slot,
  before: readonly Choice[],
  person: Person,
  bounds: Bounds,
): Candidate | CardLimit {
  if (before.some(({ fit }) => fit.card.id === id))
    return { limit: 'slotFull', value: null, why: { reason: 'in-session-already' } };
  const answer = candidateFrom(cardOf(person, id), slot, person, bounds);
  if (isCardLimit(answer)) return answer;
  const fit = isGentlestFirst(slot) ? withoutWeight(answer) : answer;
  return tooMuchSqueeze(fit, before, person, bounds) ?? fit;
}

/** House rules 4: so many cards above half the squeeze cap in a session, no more. */
function tooMuchSqueeze(
  fit: Candidate,
  before: readonly Choice[],
  person: Person,
  { caps }: Bounds,
): CardLimit | null {
  const cap = caps.compressionBw;
  if (cap === null) return null;
  const above = (one: Candidate) => squeezeBw(one, person, caps) > cap / 2;
  const most = person.protocol.limits.cardsAboveHalfCap.value;
  if (!above(fit) || before.filter((choice) => above(choice.fit)).length < most) return null;
  return {
    limit: 'compression',
    value: cap,
    why: { reason: 'half-cap', cardsAtMost: most },
  };
}

/** Squeeze held against the cap, margin included; 0 where the model has none to say. */
function squeezeBw({ card, first, load, rangeDeg }: Candidate, { model }: Person, caps: Caps): number {
  if (!isPosed(card)) return 0;
  const swept = model.sweepTo(card, rangeDeg, load.load.loadKg, first.dose.tempo);
  return marginOf(card.movement, caps) * (swept?.peak.compressionBw ?? 0);
}

function slotFull(exercisesAtMost: number, where: Slot['when']): CardLimit {
  return { limit: 'slotFull', value: exercisesAtMost, why: { reason: 'slot-full', exercisesAtMost, where } };
}

/** A card that was passed over, with what stood against it. */
export function passed(
  person: Person,
  id: string,
  slot: Slot,
  { name }: Bounds,
  cardLimit: CardLimit,
): PassedOver {
  return { card: id, title: cardOf(person, id).title, slot: slot.name, stage: name, ...cardLimit };
}
