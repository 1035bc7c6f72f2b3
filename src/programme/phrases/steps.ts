/** Steps and what comes next, in a patient's words. */
import type { ChangeKind } from '../../dose/dose.ts';
import type { Amount, Rung } from '../../dose/rung.ts';
import type { Protocol } from '../../content/library.ts';
import { countText, listText, numberText } from './plain.ts';

const CHANGE_WORDS: Readonly<Record<ChangeKind, string>> = {
  range: 'a little further',
  load: 'a little heavier',
  repetitions: 'more repetitions',
  hold: 'longer holds',
  sets: 'one more set',
  tempo: 'a new pace',
  days: 'more days',
  lever: 'a harder version',
};

/** What is new on a rung. @example 'New: longer holds. Bridge hold with feet far away.' */
export function changeText(rung: Rung, titleOf: (slot: string) => string): string {
  if (rung.change === null) return '';
  return `New: ${CHANGE_WORDS[rung.change]} for ${listText(rung.changed.map(({ exercise }) => titleOf(exercise)))}. All else stays.`;
}

/** A value of the ladder: a card by its id, a number to a tenth. */
export function amountText(amount: Amount): string {
  return typeof amount === 'string' ? amount : numberText(Math.round(amount * 10) / 10);
}

/** What must be true to go on, each after `Go on when`. `checkAtMost`: the score up to which this person carries on. */
export function goOnTexts({ goingOn }: Protocol, checkAtMost: number): string[] {
  return [
    `you have done the whole dose in ${countText(goingOn.doneSessions.value, 'session')}`,
    `the morning check has been ${checkAtMost} or less for ${countText(goingOn.checkDays.value, 'day')}`,
    `you have done most of the sessions (${Math.ceil(goingOn.sessionsDoneShare.value * 10)} of 10)`,
    `you have been on this step for at least ${countText(goingOn.leastDays.value, 'day')} and ${countText(goingOn.leastSessions.value, 'session')}`,
  ];
}

/** A table's caption and heading for one step. */
export function stepHeading(step: number, present: boolean): string {
  return present ? `Step ${step}: now` : `Step ${step}: later`;
}

/** Over a step's table. */
export function stepCaption(step: number, present: boolean): string {
  return present ? `Your exercises in step ${step}` : `How step ${step} would look`;
}
