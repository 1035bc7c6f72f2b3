/** Which cards a slot could hold, and what stands against the others. */
import type { Slot } from '../../content/library.ts';
import type { Decided } from '../../decisions/decide.ts';
import { candidateFrom, isCardLimit } from '../../decisions/candidates/candidate.ts';
import { isHouseCap } from '../../decisions/candidates/ownChoices.ts';
import { isOfKind, ownCardOf } from '../../decisions/person/ownStage.ts';
import { cardOf, type Person } from '../../decisions/person/person.ts';
import { cardLimitWords } from '../../messages/en/clinician/cardLimits.ts';
import type { Offer, SlotOffer } from '../talk.ts';
import type { Made } from './make.ts';

/** Of every slot of the present stage the cards it could hold, and those it could not. */
export function offersOf({ decided }: Extract<Made, { decided: unknown }>): readonly SlotOffer[] {
  const { bounds, person } = decided;
  const inPlan = new Map(
    decided.shown[0].prescriptions.map(({ card, exercise }) => [exercise.slot.name, card]),
  );
  const taken = new Set([...inPlan.values()].map(({ id }) => id));
  return bounds.stage.slots.map((slot) => {
    const now = inPlan.get(slot.name) ?? null;
    const offers = cardsFor(slot, person)
      .filter((id) => id !== now?.id && !taken.has(id))
      .map((id) => offerOf(id, slot, decided));
    return {
      slot: slot.name,
      needed: slot.needed,
      isOwn: ownCardOf(slot, person.consult) !== null,
      card: now?.id ?? null,
      title: now?.title ?? null,
      fits: offers.filter(({ may }) => may === 'now'),
      others: offers.filter(({ may }) => may !== 'now'),
    };
  });
}

/** Those of the protocol first, then those next to them, easier and harder. Any other card is chosen by its name in the form. */
function cardsFor(slot: Slot, { library: { exercises } }: Person): readonly string[] {
  const near = slot.cards.flatMap((id) => {
    const card = exercises.get(id);
    return [card?.easier, card?.harder].flatMap((one) =>
      one === null || one === undefined ? [] : [exercises.get(one)],
    );
  });
  const ofKind = near.flatMap((card) => (card !== undefined && isOfKind(card, slot) ? [card.id] : []));
  return [...new Set([...slot.cards, ...ofKind])];
}

/** Looked at as it would be without anything chosen, so that taking a choice back is an offer like others. */
function offerOf(id: string, slot: Slot, { person, bounds, stage }: Decided): Offer {
  const card = cardOf(person, id);
  const unchosen = { ...person, consult: { ...person.consult, chosen: [], added: [], leftOut: [] } };
  const answer = candidateFrom(card, slot, unchosen, bounds);
  if (!isCardLimit(answer)) return { card: id, title: card.title, limit: '', because: '', may: 'now' };
  const isIrritableStart = stage.chosen === 1 && person.consult.irritability === 'high';
  return {
    card: id,
    title: card.title,
    limit: answer.limit,
    because: cardLimitWords(answer.why),
    may: isHouseCap(answer) && !isIrritableStart ? 'beyond' : 'never',
  };
}
