/** What stands against the exercises of the clinician's own choice; empty when nothing does. */
import { isJointAngle } from '../../mechanics/jointAngle.ts';
import { addedSlotName, isBeyond, ownCardOf } from '../person/ownStage.ts';
import { cardOf, type Bounds, type Person } from '../person/person.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import type { OwnChoiceFault, Refusal } from '../terms/refusal.ts';
import type { Chosen } from './choose.ts';
import { candidateFrom, isCardLimit } from './candidate.ts';

/** Entries for a slot that the present stage has not. */
export function slotRefusals({ consult }: Person, { stage }: Bounds): Refusal[] {
  const names = stage.slots.map(({ name }) => name);
  const own = consult.chosen.flatMap(({ slot, card }, index) =>
    names.includes(slot)
      ? []
      : [
          refusal(consult.id, ['chosen', index, 'slot'], {
            reason: 'own-choice-no-slot',
            card,
            slots: names,
          }),
        ],
  );
  const added = consult.added.flatMap(({ card }, index) =>
    names.includes(addedSlotName(card))
      ? []
      : [refusal(consult.id, ['added', index, 'card'], { reason: 'own-choice-no-slot', card, slots: names })],
  );
  return [...own, ...added];
}

/** Cards that were chosen and stand in no slot after all, and decisions to go above a cap that may not be, or need not. */
export function ownChoiceRefusals(
  person: Person,
  bounds: Bounds,
  { choices, passedOver }: Chosen,
): Refusal[] {
  const { consult } = person;
  return bounds.stage.slots.flatMap((slot) => {
    const card = ownCardOf(slot, consult);
    if (card === null) return [];
    const path = pathOf(card, person);
    const faultOf = (fault: OwnChoiceFault) => [refusal(consult.id, path, fault)];
    if (isBeyond(card, consult)) {
      if (bounds.name === 1 && consult.irritability === 'high')
        return faultOf({ reason: 'beyond-cap-irritable', card });
      if (!isHouseCap(fitInside(card, slot, person, bounds)))
        return faultOf({ reason: 'beyond-cap-idle', card });
    }
    if (choices.some((one) => one.slot.name === slot.name)) return [];
    const barred = passedOver.find((one) => one.slot === slot.name && one.card === card);
    return faultOf(
      barred === undefined
        ? { reason: 'own-choice-no-room', card }
        : { reason: 'own-choice-barred', card, why: barred.why, isHouseCap: isHouseCap(barred) },
    );
  });
}

/** As it would be without a decision; null where nothing stands against it. */
function fitInside(
  card: string,
  slot: Bounds['stage']['slots'][number],
  person: Person,
  bounds: Bounds,
): CardLimit | null {
  const undecided = { ...person, consult: { ...person.consult, chosen: [], added: [] } };
  const answer = candidateFrom(cardOf(person, card), slot, undecided, bounds);
  return isCardLimit(answer) ? answer : null;
}

/** Caps of our own choice; the angle that hurt, position, kit, cannot-do and screen are none. */
export function isHouseCap(cardLimit: Pick<CardLimit, 'limit'> | null): boolean {
  if (cardLimit === null) return false;
  const { limit } = cardLimit;
  return isJointAngle(limit as never) || ['compression', 'tension', 'demand'].includes(limit);
}

function pathOf(card: string, { consult }: Person): (string | number)[] {
  const chosen = consult.chosen.findIndex((one) => one.card === card);
  return chosen === -1
    ? ['added', consult.added.findIndex((one) => one.card === card), 'card']
    : ['chosen', chosen, 'card'];
}

function refusal(id: string, path: readonly (string | number)[], why: OwnChoiceFault): Refusal {
  return { code: 'does-not-fit', id, path, why };
}
