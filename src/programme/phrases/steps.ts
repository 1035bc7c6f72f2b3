/** Steps and what comes next, in a patient's words. */
import type { ChangeKind } from '../../dose/dose.ts';
import type { Rung } from '../../dose/rung.ts';
import type { Protocol } from '../../content/library.ts';
import type { Section } from '../programme.ts';
import { countText, dayAndYear, list, listText, paragraph, section } from './plain.ts';
import type { IsoDate } from '../../units/date.ts';

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

export function goOnTexts({ goingOn }: Protocol, usual: number): string[] {
  const most = usual + goingOn.checkOverUsual.value;
  return [
    `you have done the whole dose in ${countText(goingOn.doneSessions.value, 'session')}`,
    `the morning check has been ${most} or less for ${countText(goingOn.checkDays.value, 'day')}`,
    `you have done most of the sessions (${Math.ceil(goingOn.sessionsDoneShare.value * 10)} of 10)`,
    `you have been on this step for at least ${countText(goingOn.leastDays.value, 'day')} and ${countText(goingOn.leastSessions.value, 'session')}`,
  ];
}

export interface NextWords {
  readonly stepsAhead: number;
  readonly months: string;
  readonly reviewOn: IsoDate;
  readonly goals: readonly { readonly what: string; readonly reachable: boolean | null }[];
}

export function whatComesNextText({ stepsAhead, months, reviewOn, goals }: NextWords): Section {
  return section('what-comes-next', 'What comes next', [
    paragraph(
      stepsAhead === 0
        ? 'This is the last step of this part. At the review we look together at what you can go on to.'
        : `After this step there are ${stepsAhead === 1 ? 'one more' : `up to ${stepsAhead} more`} in this part. Then we look together at what you can go on to.`,
    ),
    paragraph(
      `The whole way usually takes ${months}. Ups and downs are normal. Bending comes back, and so does speed.`,
    ),
    ...(goals.length === 0 ? [] : [list(goals.map(({ what }) => `Your goal: ${what}.`))]),
    paragraph(`We meet again on ${dayAndYear(reviewOn)}.`),
  ]);
}

/** A table's caption and heading for one step. */
export function stepHeading(step: number, present: boolean): string {
  return present ? `Step ${step}: now` : `Step ${step}: later`;
}

export function stepCaption(step: number, present: boolean): string {
  return present ? `Your exercises in step ${step}` : `How step ${step} would look`;
}
