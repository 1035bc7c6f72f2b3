/** Steps and what comes next, in a patient's words. */
import type { ChangeKind } from '../../../dosing/dose.ts';
import type { Amount, StepChange, Prescribed, Rung } from '../../../dosing/rung.ts';
import type { Protocol } from '../../../content/library.ts';
import type { IsoDate } from '../../../units/date.ts';
import { type Counted, setKind } from '../../../decisions/session/counted.ts';
import { countText, listText, numberText, secondsText, weekdayAndDay } from '../plain.ts';
import type { GoOnPain } from '../../../decisions/screen/goOnPain.ts';

const CHANGE_WORDS: Readonly<Record<Exclude<ChangeKind, 'sets'>, string>> = {
  range: 'a little further',
  load: 'a little heavier',
  repetitions: 'more repetitions',
  hold: 'longer holds',
  tempo: 'a new pace',
  days: 'more days',
  lever: 'a harder version',
};

type Eased = StepChange['eased'][number];

/** What a rung calls its exercises: the title of a slot, and what is counted in a set of a card. */
export interface RungWords {
  readonly titleOf: (slot: string) => string;
  readonly countedOf: (card: string) => Counted;
  /** The title of a card, where an exercise goes by it; null where it goes by its slot, which a harder version leaves as it is. */
  readonly cardTitleOf: ((card: string) => string) | null;
}

/** What is new on a rung, and what is less so that the step stays small. @example 'New: longer holds for Side push. Side push then has 3 holds instead of 4. That keeps the step small. All else stays.' */
export function changeText(rung: Rung, words: RungWords): string {
  if (rung.change === null) return '';
  const less = rung.changed.flatMap(({ exercise, eased }) => {
    const at = rung.exercises.find((one) => one.exercise === exercise);
    const texts = eased.flatMap((one) => easedText(one, at, words));
    return texts.length === 0 ? [] : [`${words.titleOf(exercise)} then has ${listText(texts)}.`];
  });
  return [
    `New: ${newsText(rung, rung.change, words)}.`,
    ...less,
    ...(less.length === 0 ? [] : ['That keeps the step small.']),
    'All else stays.',
  ].join(' ');
}

/** @example 'one more set for Hops, and one more stride for Strides' */
function newsText({ changed, exercises }: Rung, change: ChangeKind, words: RungWords): string {
  const { cardTitleOf } = words;
  if (change === 'lever' && cardTitleOf !== null)
    return changed.map((one) => swapText(one, words, cardTitleOf)).join(', and ');
  const whatOf = (slot: string) =>
    change === 'sets'
      ? `one more ${setWordOf(
          exercises.find(({ exercise }) => exercise === slot),
          words,
        )}`
      : CHANGE_WORDS[change];
  const slots = changed.map(({ exercise }) => exercise);
  return [...new Set(slots.map(whatOf))]
    .map(
      (what) =>
        `${what} for ${listText(slots.filter((slot) => whatOf(slot) === what).map((slot) => words.titleOf(slot)))}`,
    )
    .join(', and ');
}

/** @example 'Bounding in place of Small hops, a harder version' */
function swapText(
  { exercise, from }: StepChange,
  { titleOf }: RungWords,
  cardTitleOf: (card: string) => string,
): string {
  return `${titleOf(exercise)} in place of ${cardTitleOf(String(from))}, a harder version`;
}

function setWordOf(at: Prescribed | undefined, { countedOf }: RungWords): string {
  return at === undefined ? 'set' : setKind(at.dose, countedOf(at.card));
}

/** What was taken down, beside what it was; a harder version says for itself how far it goes. */
function easedText({ change, from, to }: Eased, at: Prescribed | undefined, words: RungWords): string[] {
  if (to === null) return [];
  const before = from === null ? '' : ` instead of ${amountText(from)}`;
  switch (change) {
    case 'sets':
      return [`${countText(Number(to), setWordOf(at, words))}${before}`];
    case 'repetitions':
      return [
        `${countText(Number(to), at === undefined ? 'repetition' : words.countedOf(at.card))}${before}`,
      ];
    case 'hold':
      return [`holds of ${secondsText(Number(to))}${before}`];
    case 'load':
      return ['less weight'];
    case 'range':
      return from === null ? [] : ['a shorter way'];
    case 'tempo':
      return ['a new pace'];
    case 'days':
      return [`${countText(Number(to), 'day')} a week${before}`];
    case 'lever':
      return [];
  }
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
    `you have done most of the sessions (${Math.ceil(goingOn.sessionsDoneShare.value * 10)} in every 10)`,
    `you have been on this step for at least ${countText(goingOn.leastDays.value, 'day')} and ${countText(goingOn.leastSessions.value, 'session')}`,
  ];
}

/** The exercises have weeks of their own to grow in; without any before the review, it comes first. */
export function turnText(from: readonly IsoDate[]): string {
  return from.length === 0
    ? 'we have met for the review'
    : `the week from ${listText(from.map(weekdayAndDay), 'or')} has come. If you are ready only later, wait for the review`;
}

/** @example 'Step 2: from Tuesday 1 December' */
export function datedStepHeading(step: number, from: IsoDate): string {
  return `Step ${step}: from ${weekdayAndDay(from)}`;
}

/** A rung of a protocol that goes by weeks; `what`: its sentences. */
export function partText(what: string, step: number): string {
  return `${what} If it is not settled by then, stay on step ${step - 1} and get in touch.`;
}

/** What must be true to go on to the next rung by its week; `checkAtMost` null where the mornings are not asked. */
export function partWhenTexts(when: {
  readonly sessions: number;
  readonly pain: GoOnPain;
  readonly checkAtMost: number | null;
  readonly checkDays: number;
}): string[] {
  return [
    `you have done at least ${countText(when.sessions, 'session')} of the step before`,
    painWhenText(when.pain),
    ...(when.checkAtMost === null
      ? []
      : [`the morning check has been ${when.checkAtMost} or less for ${countText(when.checkDays, 'day')}`]),
  ];
}

/** In the words of the pain rule. */
function painWhenText({ atMost, usualOnly }: GoOnPain): string {
  if (!usualOnly) return `the exercises of the step before hurt ${atMost} or less`;
  return atMost === 0
    ? 'the exercises of the step before did not hurt, and what came later had settled by the evening'
    : `the exercises of the step before hurt no more than is usual for you, ${atMost} out of 10, and it had settled by the evening`;
}

/** A table's caption and heading for one step. */
export function stepHeading(step: number, present: boolean): string {
  return present ? `Step ${step}: now` : `Step ${step}: later`;
}

/** Over a step's table. */
export function stepCaption(step: number, present: boolean): string {
  return present ? `Your exercises in step ${step}` : `How step ${step} would look`;
}
