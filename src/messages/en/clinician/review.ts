/** A review in words, for the clinician: the move, its grounds with their sources, and what to ask. */
import type { LogEntry } from '../../../content/log/log.ts';
import type { Ask, Because, Move, Review, RuleCode } from '../../../review/terms.ts';
import type { Source } from '../../../units/source.ts';
import type { Table } from '../../shapes.ts';
import { countText, dayText, listText, numberText } from '../plain.ts';
import { SCREEN_WORDS } from './screen.ts';
import { stageWord } from './stage.ts';
import type { ScreenItem } from '../../../content/schema/consult.ts';

export const MOVE_WORDS: Readonly<Record<Move, string>> = {
  moveOn: 'move on',
  stay: 'stay',
  easeBack: 'ease back',
  startAgain: 'start again one step back',
  beSeen: 'stop and be seen',
};

type Inputs = Because['inputs'];
const n = (inputs: Inputs, name: string) => numberText(Number(inputs[name] ?? 0));
const percent = (value: unknown) => `${Math.round(Number(value) * 100)} %`;

const RULES: Readonly<Record<RuleCode, (inputs: Inputs) => string>> = {
  alarm: ({ items }) => `The log says yes to a question of the screen: ${itemsText(String(items))}.`,
  'within-usual': (i) => `The last morning was ${n(i, 'today')}, within the usual.`,
  'over-usual-once': (i) =>
    `The last morning was ${n(i, 'today')}, over the usual ${n(i, 'usual')}: the same again.`,
  'over-usual-twice': (i) =>
    `${countText(Number(i['unsettledDays']), 'morning')} running over the usual ${n(i, 'usual')}, the last ${n(i, 'today')}.`,
  'far-over-usual': (i) => `The last morning was ${n(i, 'today')}, far over the usual ${n(i, 'usual')}.`,
  'pain-too-high': (i) => `The last morning was ${n(i, 'today')}; from ${n(i, 'from')} on less is done.`,
  'not-settled': (i) =>
    `Not settled for ${countText(Number(i['unsettledDays']), 'morning')}; the usual is ${n(i, 'usual')}.`,
  rising: (i) =>
    `Mornings have been rising for ${countText(Number(i['days']), 'day')}; the usual is ${n(i, 'usual')}.`,
  'above-usual': (i) =>
    `The last ${countText(Number(i['days']), 'morning')} lie above the usual ${n(i, 'usual')}, the later half by ${n(i, 'over')} or more.`,
  'not-done-since': ({ badUntil, doneInFull }) =>
    `Bad mornings up to ${badUntil}; whole dose done ${timesText(Number(doneInFull))} since, so the step is not earned again.`,
  away: (i) =>
    `Away for ${countText(Number(i['days']), 'day')}, ${i['from']} to ${i['to']}: from ${n(i, 'sameStepUnder')} days on one step back.`,
  'long-away': (i) =>
    `Away for ${countText(Number(i['days']), 'day')}, ${i['from']} to ${i['to']}: over ${n(i, 'oneBackUpTo')} days, so the start of the stage, and contact.`,
  'pain-small': (i) => `Pain ${n(i, 'during')} during the exercise is all right.`,
  'pain-near-usual': (i) => `Pain ${n(i, 'during')} during the exercise: nothing is added.`,
  'pain-over-limit': (i) =>
    `Pain ${n(i, 'during')} during the exercise, over ${n(i, 'nearUsualTo')}: nothing is added.`,
  'pain-over-ceiling': (i) =>
    `Pain ${n(i, 'during')} during the exercise, over ${n(i, 'ceiling')}: less is done.`,
  'pain-as-usual': (i) => `Pain ${n(i, 'during')} during the exercise, no more than usual.`,
  'pain-over-usual': (i) =>
    `Pain ${n(i, 'during')} during the exercise, more than the usual ${n(i, 'usual')}: less is done.`,
  'pain-not-written': () => 'Pain during the exercise was not written down.',
  'session-not-written': ({ days }) =>
    `Of ${daysText(days as readonly string[])} no line says whether the session was done and how it felt.`,
  'between-not-written': ({ days }) =>
    `Of ${daysText(days as readonly string[])} no line says whether the work between the sessions was done and how it felt.`,
  'run-not-written': ({ days }) =>
    `Of ${daysText(days as readonly string[])} no line says whether the run was done and how it felt.`,
  'morning-not-written': ({ days }) =>
    `All is there but the mornings of ${daysText(days as readonly string[])}: each may have been a bad one.`,
  'missing-doneSessions': (i) =>
    `Whole dose done ${timesText(Number(i['have']))}; ${n(i, 'need')} times are needed.`,
  'missing-leastSessions': (i) =>
    `${countText(Number(i['have']), 'session')} done; ${n(i, 'need')} are needed.`,
  'missing-leastDays': (i) =>
    `${countText(Number(i['have']), 'day')} on the step; ${n(i, 'need')} are needed.`,
  'missing-sessionsDoneShare': (i) =>
    `${percent(i['have'])} of the planned sessions done; ${percent(i['need'])} are needed.`,
  'missing-checkDays': (i) => `Of the last ${n(i, 'need')} mornings ${n(i, 'have')} are written down.`,
  'missing-checkOverUsual': (i) =>
    `A morning of the last days lies ${n(i, 'have')} over the usual; at most ${n(i, 'need')} is all right.`,
  'all-met': (i) =>
    `All that going on asks for is there: ${n(i, 'sessionsDone')} of ${n(i, 'sessionsPlanned')} sessions, ${n(i, 'doneInFull')} with the whole dose.`,
  'nothing-written': () => 'Nothing was written down.',
  contradiction: ({ days }) =>
    `Two lines of one edit say different things: ${String(days).replaceAll(' ', ', ')}.`,
  unread: (i) => `${countText(Number(i['lines']), 'line')} of the log cannot be read.`,
  outside: (i) => `${countText(Number(i['lines']), 'line')} lie before the start or after the review.`,
  'since-log': (i) => `The review comes ${countText(Number(i['days']), 'day')} after what was written down.`,
  'stage-met': ({ stage }) => `The last step of the stage is done: ${stageText(String(stage))} by its tests.`,
  'last-stage': () => 'The last step of the last stage: nothing follows but the end of the treatment.',
  'exercise-holds': () => 'An exercise that hurt, or of which the pain is not known, holds the step.',
  'runs-done': (i) => `${n(i, 'have')} of ${n(i, 'planned')} planned run days done.`,
  'runs-few': (i) =>
    `${n(i, 'have')} of ${n(i, 'planned')} planned run days done; ${percent(i['share'])} are needed.`,
  'runs-none': () => 'No run was written down.',
  'sitting-reached': (i) =>
    `${n(i, 'toleranceMinutes')} minutes or more were sat ${timesText(Number(i['have']))} with pain that is all right.`,
  'sitting-short': (i) =>
    `${n(i, 'toleranceMinutes')} minutes were sat ${timesText(Number(i['have']))} with pain that is all right; ${n(i, 'need')} are needed.`,
  'sitting-none': () => 'No minutes of sitting were written down.',
};

function timesText(count: number): string {
  return ['not once', 'once', 'twice'][count] ?? `${numberText(count)} times`;
}

function stageText(stage: string): string {
  return stageWord(stage === 'keepGoing' ? stage : (Number(stage) as 1));
}

function itemsText(items: string): string {
  const names = items.split(' ').map((item) => SCREEN_WORDS[item as ScreenItem] ?? 'one that cannot be read');
  return listText([...new Set(names)]);
}

/** One ground in a sentence. @example 'Of the last 7 mornings 5 are written down.' */
export function groundText({ rule, inputs }: Pick<Because, 'rule' | 'inputs'>): string {
  const since = inputs['since'];
  return `${since === undefined ? '' : `Since ${since}: `}${RULES[rule](inputs)}`;
}

/** @example 'house rules 4 (choice)' */
export function sourceText({ cite, mark }: Source): string {
  return `${cite} (${mark})`;
}

/** Days that decided, shortened in the middle. @example '2 Mar, 4 Mar and 3 more' */
function entriesText(entries: readonly LogEntry[]): string {
  const days = [...new Set(entries.map(({ date }) => date))];
  const shown = days.slice(-3).map(dayText);
  const more = days.length - shown.length;
  if (shown.length === 0) return '-';
  return more === 0 ? listText(shown) : `${listText(shown)}, and ${more} before`;
}

/** The move in a line. @example 'Move on: from stage 2 step 1 to stage 2 step 2.' */
export function decisionText({ decision, before, stage, step }: Review): string {
  const move = MOVE_WORDS[decision];
  const place = (at: Review['before']) => `${stageWord(at.stage)} step ${at.step}`;
  const to = place({ stage, step });
  const from = place(before);
  const isBack = decision === 'startAgain' || decision === 'easeBack';
  const stays = isBack ? `${to}, which has none before it` : `${to} as it is`;
  return `${move.charAt(0).toUpperCase()}${move.slice(1)}: ${from === to ? stays : `from ${from} to ${to}`}.`;
}

const ASKS: Readonly<Record<Ask['code'], (one: Ask) => string>> = {
  'nothing-written': () => 'What has been done, and how were the mornings? Nothing was written down.',
  mornings: ({ days }) => `How were the mornings of ${daysText(days)}?`,
  today: () => 'How was this morning? The log ends before it.',
  sessions: ({ days }) => `Was the session of ${daysText(days)} done, and how much did it hurt?`,
  between: ({ days }) =>
    `Was the work between the sessions done on ${daysText(days)}, and how much did it hurt?`,
  pain: ({ inputs }, titleOf: (card: string) => string = (card) => card) =>
    `How much did it hurt during ${listText(String(inputs['cards']).split(' ').map(titleOf))}?`,
  contradiction: ({ days }) => `What is right of ${daysText(days)}? The log says two things.`,
  unread: ({ inputs }) =>
    `What do the ${countText(Number(inputs['lines']), 'line')} say that cannot be read?`,
  outside: ({ days }) => `Which day was meant by ${daysText(days)}? It lies outside the programme.`,
  away: ({ days }) =>
    `Was nothing done from ${days[0]} to ${days[1]}, or not written down? Was there a fever?`,
  contact: ({ days }) =>
    days.length === 0
      ? 'The person is to be spoken to today, and the whole screen asked again.'
      : `Get in touch: nothing was done from ${days[0]} to ${days[1]}. Was there a fever, or something else?`,
  'since-log': ({ days, inputs }) =>
    `What has been done in the ${countText(Number(inputs['days']), 'day')} since ${days[0]}?`,
  tests: ({ inputs }) => `The tests into ${stageText(String(inputs['stage']))}: do they let it open?`,
  runs: ({ days }) => `Were the runs of ${daysText(days)} done, how far, and how much did they hurt?`,
  sitting: () => 'How long was sat without more pain? No minutes were written down.',
};

function daysText(days: readonly string[]): string {
  return days.length <= 4 ? listText(days) : `${listText(days.slice(0, 3))} and ${days.length - 3} more`;
}

/** One question. `titleOf`: the title of a card. */
export function askText(one: Ask, titleOf: (card: string) => string = (card) => card): string {
  return (ASKS[one.code] as (one: Ask, titleOf: (card: string) => string) => string)(one, titleOf);
}

/** Every ground of the step, of each exercise, of running and sitting, a row each. */
export function reviewTable(review: Review, titleOf: (card: string) => string): Table {
  const rows = (what: string, move: Move, because: readonly Because[]) =>
    because.map((one) => [
      what,
      MOVE_WORDS[move],
      groundText(one),
      entriesText(one.entries),
      sourceText(one.source),
    ]);
  const own = ({ decision, because }: Review['exercises'][number]) =>
    because.length > 0 ? because : [noGround(decision)];
  return {
    caption: `What the log of revision ${review.revision} says, ${review.from} to ${review.until}`,
    columns: ['What', 'Move', 'Because', 'Entries', 'Rule'],
    rows: [
      ...rows('Step', review.decision, review.because),
      ...review.exercises.flatMap((one) => rows(titleOf(one.card), one.decision, own(one)).slice(0, 2)),
      ...(review.running === null ? [] : rows('Running', review.running.decision, review.running.because)),
      ...(review.sitting === null ? [] : rows('Sitting', review.sitting.decision, review.sitting.because)),
      ...review.goals.map(({ what, doneTimes, neededTimes }) => [
        `Goal: ${what}`,
        '-',
        doneTimes === null
          ? 'How often it was done is not recorded.'
          : `Done ${timesText(doneTimes)}; ${neededTimes} times are needed.`,
        '-',
        'house rules 10 (choice)',
      ]),
    ],
  };
}

function noGround(decision: Move): Because {
  const source = { cite: 'house rules 4 and 5', mark: 'choice' } as const;
  return { rule: 'nothing-written', move: decision, inputs: {}, source, entries: [] };
}

/** For the note to paste. @example 'Review of revision 1: move on, 8 of 9 sessions, mornings 2 at most.' */
export function reviewLine({ revision, decision, counts }: Review): string {
  const mornings =
    counts.worstMorning === null ? 'no mornings written' : `mornings ${counts.worstMorning} at most`;
  return `Review of revision ${revision}: ${MOVE_WORDS[decision]}, ${counts.sessionsDone} of ${counts.sessionsPlanned} sessions, ${mornings}.`;
}

/** Where the clinician wrote another stage or step than the review led to. */
export function otherThanReviewText(review: Review, now: Review['before']): string | null {
  if (review.stage === now.stage && review.step === now.step) return null;
  return `The review led to ${stageWord(review.stage)} step ${review.step}; ${stageWord(now.stage)} step ${now.step} is the clinician's own, or what tests and caps allow.`;
}

/** Planned and done, a row a week. No share and no score: what was done is told as it is. */
export function weeksTable({ weeks }: Review, titleOf: (card: string) => string): Table {
  return {
    caption: 'Planned and done, week by week',
    columns: ['Week', 'Sessions', 'Mornings', 'Runs', 'Sitting', 'Weights'],
    rows: weeks.map(({ from, to, sessions, mornings, runDays, km, sittingMinutes, loads }) => [
      `${dayText(from)} to ${dayText(to)}`,
      `${sessions.done} of ${sessions.planned}`,
      mornings === null
        ? 'not written'
        : `${spanText(mornings.least, mornings.most)} (${mornings.written} written)`,
      runDays.planned + runDays.done === 0
        ? '-'
        : `${runDays.done} of ${runDays.planned} days${km === null ? '' : `, ${numberText(km)} km`}`,
      sittingMinutes === null ? '-' : `up to ${numberText(sittingMinutes)} min`,
      loads
        .filter(({ mostKg }) => mostKg > 0)
        .map(({ card, leastKg, mostKg }) => `${titleOf(card)} ${spanText(leastKg, mostKg)} kg`)
        .join('; ') || '-',
    ]),
  };
}

function spanText(least: number, most: number): string {
  return least === most ? numberText(least) : `${numberText(least)} to ${numberText(most)}`;
}

/** Heads the review in the record. */
export function reviewHeading(revision: number): string {
  return `Review of revision ${revision}`;
}

export const ASKS_HEADING = 'To ask';
