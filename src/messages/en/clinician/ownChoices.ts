/** What is said of exercises of the clinician's own choice: why one is refused, and what stands of it on the record. */
import type { Consult } from '../../../content/library.ts';
import type { OwnChoiceFault } from '../../../decisions/terms/refusal.ts';
import { listText } from '../plain.ts';
import { cardLimitWords } from './cardLimits.ts';

interface Words {
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

type Of = {
  readonly [Member in OwnChoiceFault as Member['reason']]: (why: Member) => Words;
};

const BEYOND =
  'Choose another card; or record the decision to go above the cap of the house under beyondCap, with decidedBy and reason.';

export const OWN_CHOICE: Of = {
  'own-choice-barred': ({ card, why, isHouseCap }) => ({
    found: card,
    expected: `a card this person can do in this stage: ${cardLimitWords(why)}`,
    fix: isHouseCap ? BEYOND : 'Choose another card, or take the entry out; no reason lifts this.',
  }),
  'own-choice-no-slot': ({ card, slots }) => ({
    found: card,
    expected: `for a slot of the present stage: ${listText(slots)}`,
    fix: 'Write one of these slots, or take the entry out: the stage has changed.',
  }),
  'own-choice-no-room': ({ card }) => ({
    found: card,
    expected: 'a card for which the session has room',
    fix: 'Leave another exercise out, or take the entry out.',
  }),
  'beyond-cap-irritable': ({ card }) => ({
    found: card,
    expected: 'inside every cap: in stage 1 of an irritable tendon none is gone above',
    fix: 'Take beyondCap out, and choose a card that fits; no reason lifts this.',
  }),
  'beyond-cap-idle': ({ card }) => ({
    found: card,
    expected: 'without beyondCap: no cap of the house stands against it',
    fix: 'Take beyondCap out.',
  }),
};

/** A sentence each, for the record. `titleOf`: a card's title by its id. */
export function ownChoiceTexts(
  { chosen, leftOut, added }: Pick<Consult, 'chosen' | 'leftOut' | 'added'>,
  titleOf: (card: string) => string,
): string[] {
  return [
    ...chosen.map(
      ({ slot, card, reason, beyondCap }) =>
        `${titleOf(card)}: chosen by the clinician for "${slot}": ${ended(reason)}${aboveText(beyondCap)}`,
    ),
    ...added.map(
      ({ card, reason, beyondCap }) =>
        `${titleOf(card)}: added by the clinician: ${ended(reason)}${aboveText(beyondCap)}`,
    ),
    ...leftOut.map(({ card, reason }) => `${titleOf(card)}: left out by the clinician: ${ended(reason)}`),
  ];
}

function aboveText(beyondCap: Consult['chosen'][number]['beyondCap']): string {
  if (beyondCap === undefined) return '';
  return ` ABOVE A CAP OF THE HOUSE, decided by ${beyondCap.decidedBy}: ${ended(beyondCap.reason)} Its gentlest version, without growth before the review.`;
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
