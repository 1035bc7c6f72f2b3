/** What changed since the last leaflet, and why, in two or three sentences the patient recognises. */
import type { Because, Review, RuleCode } from '../../../review/terms.ts';
import { countText, listText, numberText } from '../plain.ts';

/** Exercises whose numbers went up, or down, by title. */
export interface ChangedWork {
  readonly more: readonly string[];
  readonly less: readonly string[];
  readonly fresh: readonly string[];
}

/** Running of the first week, kilometres; null where it is not told in them. */
export interface RunningChange {
  readonly beforeKm: number | null;
  readonly nowKm: number | null;
}

/** What the leaflet does, which may be less than the log alone would lead to. `titleOf`: the title of a card. */
export function changedTexts(
  review: Review,
  now: Review['before'],
  work: ChangedWork,
  running: RunningChange,
  titleOf: (card: string) => string,
): string[] {
  const why = whyText(review, titleOf);
  return [
    didText(review),
    ...(why === '' ? [] : [why]),
    `So: ${soText(directionOf(review, now), work)}${newsText(work)}${runningText(running, review)}`,
  ];
}

function didText({ counts, series }: Review): string {
  const { sessionsDone, sessionsPlanned, worstMorning, lastMorning } = counts;
  const done =
    sessionsDone === 0
      ? 'No session is written down'
      : `You did ${numberText(sessionsDone)} of ${countText(sessionsPlanned, 'session')}`;
  if (worstMorning === null) return `${done}, and no mornings are written down.`;
  if (worstMorning <= series.bands.carryOnTo)
    return `${done}, and your mornings stayed at ${numberText(worstMorning)} or less.`;
  return `${done}. Your worst morning was ${numberText(worstMorning)}, and the last one ${numberText(lastMorning ?? 0)}.`;
}

const NOT_WRITTEN = 'Some of it is not written down, so nobody can tell yet.';
const TOO_FEW = 'That is too little to go on from yet.';

/** Of the ground that decided; empty where the line before says it, or nothing stood against going on. */
const WHY: Readonly<Partial<Record<RuleCode, (inputs: Because['inputs']) => string>>> = {
  alarm: () => 'You wrote down a warning sign, and that was looked at first.',
  rising: () => 'Your mornings have been rising for two weeks.',
  'above-usual': () => 'Your mornings have been a little up for two weeks.',
  'not-settled': () => 'Your mornings have not settled for a week.',
  'not-done-since': () => 'Since the bad mornings you have not done it all again.',
  away: ({ days }) => `No exercises are written down for ${numberText(Number(days))} days.`,
  'long-away': ({ days }) => `No exercises are written down for ${numberText(Number(days))} days.`,
  'missing-doneSessions': () => TOO_FEW,
  'missing-leastSessions': () => TOO_FEW,
  'missing-leastDays': () => TOO_FEW,
  'missing-sessionsDoneShare': () => TOO_FEW,
  'missing-checkDays': () => 'Some of the last mornings are not written down.',
  'missing-checkOverUsual': () => 'One of the last mornings was still up.',
  'morning-not-written': () => 'Some of the mornings are not written down.',
  'session-not-written': () => NOT_WRITTEN,
  'between-not-written': () => NOT_WRITTEN,
  contradiction: () => 'Your notes say two things of one day.',
  unread: () => 'Part of your notes could not be read.',
  outside: () => 'Part of your notes has other dates.',
  'since-log': () => NOT_WRITTEN,
};

function whyText({ because, decision, exercises }: Review, titleOf: (card: string) => string): string {
  if (decision === 'moveOn') return '';
  const deciding = because.filter(({ move }) => move === decision);
  const hurting = exercises.filter((one) => one.because.some(hurts)).map(({ card }) => titleOf(card));
  const holds = deciding.some(({ rule }) => rule === 'exercise-holds');
  if (holds && hurting.length > 0) return `More pain than is all right came with ${namedText(hurting)}.`;
  const [first] = deciding.filter(({ rule }) => WHY[rule] !== undefined);
  if (first !== undefined) return WHY[first.rule]?.(first.inputs) ?? '';
  return holds ? NOT_WRITTEN : '';
}

function hurts({ rule, move }: Because): boolean {
  return move !== 'moveOn' && rule.startsWith('pain-') && rule !== 'pain-not-written';
}

type Direction = 'on' | 'same' | 'back';

function directionOf({ before }: Review, now: Review['before']): Direction {
  const rank = ({ stage, step }: Review['before']) => (stage === 'keepGoing' ? 100 : stage) * 100 + step;
  return rank(now) > rank(before) ? 'on' : rank(now) < rank(before) ? 'back' : 'same';
}

function soText(direction: Direction, { less }: ChangedWork): string {
  if (direction === 'on') return 'you go on.';
  if (direction === 'same')
    return less.length === 0
      ? 'the same again for now, until it sits well.'
      : 'you stay here for now, with less to do.';
  return 'one step back for a while. Ups and downs are part of the way, not a new start.';
}

// Less than this share of a week is no other week.
const SAME_WEEK = 0.05;

function runningText({ beforeKm, nowKm }: RunningChange, { runsDone, running }: Review): string {
  if (beforeKm === null || nowKm === null || Math.abs(nowKm - beforeKm) <= SAME_WEEK * beforeKm) return '';
  const [now, before] = [nowKm, beforeKm].map((km) => numberText(Math.round(km * 10) / 10));
  const from =
    runsDone === null || running?.decision === 'easeBack' ? '' : ', from the runs that you wrote down';
  return ` Running: ${now} km in the first week, before it was ${before} km${from}.`;
}

function newsText({ more, less, fresh }: ChangedWork): string {
  const parts = [
    ...(fresh.length === 0 ? [] : [`New: ${listText(fresh)}.`]),
    ...(more.length === 0 ? [] : [`A little more: ${namedText(more)}.`]),
    ...(less.length === 0 ? [] : [`A little less: ${namedText(less)}.`]),
  ];
  return parts.length === 0 ? '' : ` ${parts.join(' ')}`;
}

// Their numbers stand below; a long row of names is read by nobody.
const MOST_NAMES = 3;

function namedText(titles: readonly string[]): string {
  return titles.length <= MOST_NAMES ? listText(titles) : `${numberText(titles.length)} exercises`;
}
