/** What stood against a card, in sentences for the clinician. */
import type { CapReason, LimitReason } from '../../../decisions/terms/cardLimit.ts';
import type { PassedOver } from '../../../decisions/terms/passedOver.ts';
import { ANGLE_WORDS } from '../angle.ts';
import { testedText } from './tested.ts';

type Words = {
  readonly [Member in LimitReason as Member['reason']]: (why: Member) => string;
};

/** @example cardLimitWords({ reason: 'cannot-do', need: 'kneel' }) // => 'it asks for what cannot be done (kneel)' */
export function cardLimitWords(why: LimitReason): string {
  return WORDS[why.reason](why as never);
}

/** A card that was passed over, with the sentence that says why. */
export function passedOverText({
  why,
  ...passed
}: PassedOver): Omit<PassedOver, 'why'> & { because: string } {
  return { ...passed, because: cardLimitWords(why) };
}

const PLACES = {
  session: 'a session day',
  daily: 'the work of every day',
  between: 'the days between',
} as const;

const WORDS: Words = {
  position: ({ position }) => `its position (${position}) is not one of the stage`,
  'light-holds-only': () => 'the screen allows light holds only',
  'no-spring-by-screen': () => 'the screen allows nothing fast or springy',
  'no-spring-by-maternity': () =>
    'nothing fast or springy in pregnancy, or in the first weeks after birth without a clearance',
  'cannot-do': ({ need }) => `it asks for what cannot be done (${need})`,
  'no-thing': ({ thing }) => `there is no ${thing} in the house`,
  'stated-bend': ({ statedDeg, capDeg }) => `it bends the hip to ${statedDeg}°, ${capDeg}° at most`,
  'bend-not-known': ({ angle, capDeg }) => `its ${ANGLE_WORDS[angle].bend} is not known, ${capDeg}° at most`,
  hurt: ({ pain }) => `it hurt ${pain} of 10 when it was tried`,
  'hurt-without-weight': () => 'a set without a weight hurt too much when it was tested',
  'no-step': () => 'there is no step of a height that the card can use and the caps admit',
  'no-pose': () => 'the pose cannot be held by this body',
  cap: (why) =>
    `${why.where === 'lift' ? 'lifting the weight into place is not admitted' : 'too little of it is admitted'} (${capText(why)})`,
  'hold-too-short': ({ testedSeconds }) => `it was held for ${testedSeconds} s, too short to take a share of`,
  'tested-too-much': ({ tested }) => testedText(tested),
  'harder-than': ({ card, than }) => `it is harder than ${card}: ${cardLimitWords(than)}`,
  'known-goes-first': () =>
    'another card of this slot was tested with a weight or for its seconds, or done before',
  'nothing-like-it': () => 'none of its slot or ladder was tested or done before',
  'more-than-shown': () => 'even its gentlest version is more than was tested or done last',
  'in-session-already': () => 'it is already in the session',
  'half-cap': ({ cardsAtMost }) => `the session already has ${cardsAtMost} cards above half the squeeze cap`,
  'slot-full': ({ exercisesAtMost, where }) =>
    `there ${exercisesAtMost === 1 ? 'is already 1 exercise' : `are already ${exercisesAtMost} exercises`} for ${PLACES[where]}`,
  'left-out': ({ because }) => `left out by the clinician: ${because}`,
  'other-chosen': () => 'the clinician chose another card for this slot',
  'other-kind': () => 'a hold does not go into a slot of repetitions, nor repetitions into one of holds',
  'waits-for-review': () => 'begins after the review: one new stress a week',
  'no-minutes': ({ minutes }) => `left out, to fit ${minutes} minutes`,
  'no-day': () => 'left out: no day between the sessions has time for it',
  'makes-way': () => 'left out: it makes way for what else the week holds',
};

function capText({ cap, most, byProvokedAngle }: CapReason): string {
  switch (cap) {
    case 'hipFlexion':
    case 'kneeFlexion':
    case 'ankleDorsiflexion':
      return `${ANGLE_WORDS[cap].bend} at most ${most}°${byProvokedAngle ? ', below what hurt' : ''}`;
    case 'compression':
      return `squeeze at most ${most} body weights`;
    case 'tension':
      return `pull at most ${most} body weights`;
    case 'demand':
      return `strength asked for at most ${most}`;
  }
}
