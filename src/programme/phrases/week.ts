/** The week and the next session in plain words. */
import type { GivenUp } from '../../dose/minutes.ts';
import type { DatedEntry } from '../../week/dates.ts';
import type { WeekPlan } from '../../week/plan.ts';
import type { PlannedRun } from '../../week/plannedRun.ts';
import type { Reason } from '../../week/reason.ts';
import type { Section } from '../programme.ts';
import type { SessionLength } from '../sessionLength.ts';
import type { ShortSession } from '../shortSession.ts';
import {
  capital,
  countText,
  listText,
  paragraph,
  section,
  table,
  weekdayAndDay,
  weekdayText,
} from './plain.ts';
import { runText, shortRunText } from './running.ts';
import { sportTexts } from './sport.ts';
import type { IsoDate } from '../../units/date.ts';

/** What a day holds, in the order in which it is done. */
export function dayEntries(
  day: WeekPlan['days'][number],
  runs: readonly PlannedRun[],
  words: SessionWords,
): string[] {
  const planned = day.runs.flatMap((id) => runs.filter((run) => run.id === id).map(runText));
  return [
    ...day.other,
    ...planned,
    ...(day.session ? [`${words.session}${afterText(day)}`] : []),
    ...(day.between ? [words.between] : []),
    ...(day.daily ? [words.daily] : []),
  ];
}

function afterText({ afterRun, afterOther, other, easyOther }: WeekPlan['days'][number]): string {
  if (afterRun) return ', after the run';
  return afterOther ? `, after ${listText(other.filter((id) => !easyOther.includes(id)))}` : '';
}

/** What the three kinds of work are called; a kind without exercises is never asked for. */
export interface SessionWords {
  readonly session: string;
  readonly between: string;
  readonly daily: string;
}

export const SESSION_WORDS: SessionWords = {
  session: 'Exercises',
  between: 'The holds',
  daily: 'Moving gently',
};

/** A usual week by its days, and what may be moved. */
export function weekText(plan: WeekPlan, runs: readonly PlannedRun[]): Section {
  const rows = plan.days.map((day) => [
    weekdayText(day.weekday),
    capital(dayEntries(day, runs, SESSION_WORDS).join('; ')) || 'Free',
  ]);
  const gap = plan.liftGapDays;
  return section('week', 'Your week', [
    table('A usual week', ['Day', 'Plan'], rows),
    paragraph(
      gap <= 1
        ? 'The days may be moved. If a session is late, carry on from there the next day.'
        : `The days may be moved, as long as you leave ${countText(gap - 1, 'clear day')} between two sessions.`,
    ),
    ...sportTexts(plan).map((text) => paragraph(text)),
    paragraph(
      'You need more rest when you sleep badly, wake tired, or stay sore for more than a day. Then leave one day more between.',
    ),
  ]);
}

/** `Tuesday 24 November. After it, leave one clear day.` */
export function nextSessionText(on: IsoDate, clearDays: number): string {
  const after =
    clearDays === 0
      ? ''
      : ` After it, leave ${clearDays === 1 ? 'one clear day' : `${clearDays} clear days`}.`;
  return `${weekdayAndDay(on)}.${after}`;
}

/** @example minutesText(1450) // => 'About 25 minutes with the rests.' */
export function minutesText(seconds: number): string {
  const minutes = Math.ceil(seconds / 60);
  return `About ${countText(minutes, 'minute')} with the rests.`;
}

/** One dated entry of the calendar; `short` for a narrow column. */
export function entryText(entry: DatedEntry, runs: readonly PlannedRun[], short = false): string {
  if (entry.kind === 'run')
    return (
      runs
        .filter(({ id }) => id === entry.id)
        .map(short ? shortRunText : runText)
        .join('') || 'run'
    );
  if (entry.kind === 'other') return entry.id;
  const words = SESSION_WORDS[entry.kind].toLowerCase();
  return short ? words.replace(/^the /, '') : words;
}

const DROPPED_WORDS: Readonly<Record<string, string>> = {
  clock: 'no room on the recovery clock',
  'hills-and-fast': 'hills and fast running share no week',
};

const GAVE_UP_WORDS: Readonly<Record<string, (inputs: Reason['inputs']) => string>> = {
  'one-session-a-day': ({ wished, planned }) => `${wished} sessions were wished; one a day gives ${planned}`,
  'lift-after-run': ({ days }) =>
    `a session follows a hard run on the same day (${String(days).replaceAll(' ', ', ')})`,
  'lift-after-other': ({ others, days }) =>
    `a session follows ${listText(String(others).split(', '))} on the same day (${String(days).replaceAll(' ', ', ')})`,
  'fewer-lifts': ({ wished, planned }) => `${countText(Number(planned), 'session')} instead of ${wished}`,
  'hard-run': ({ kind, because }) =>
    `the ${String(kind).replaceAll('-', ' ')} run was dropped: ${DROPPED_WORDS[String(because)] ?? because}`,
  'left-out': ({ id, keptTimes, keptDays, leftTimes, leftDays }) =>
    `${id} ${countText(Number(keptTimes), 'time')} a week instead of ${Number(keptTimes) + Number(leftTimes)}, for now${daysIn('kept', keptDays)}${daysIn('left out', leftDays)}`,
  'plain-session': ({ slots, daysToSport, daysBetween }) =>
    `to leave room for sport, ${slots === '' ? '' : `the session goes without ${listText(String(slots).split(', '))}, and `}sport follows a session after ${countText(Number(daysToSport), 'day')}, as the recovery clock allows, where the stage has ${daysBetween} between sessions`,
  'easy-runs': ({ wished, planned }) => `${countText(Number(planned), 'easy run')} instead of ${wished}`,
  'fixed-points-too-near': ({ first, second, daysBetween, daysNeeded }) =>
    `${first} and ${second} lie ${daysBetween} days apart; the clock asks for ${daysNeeded}`,
  'no-day-with-time': () => 'no day with time is recorded',
  'spacing-over-a-week': ({ hoursBetween }) => `${hoursBetween} hours between sessions are more than a week`,
  'fixed-points-fill-the-week': ({ fixed, daysWithTime, daysBetween }) =>
    `beside ${listText([...new Set(String(fixed).split(', '))])} no day of ${String(daysWithTime).replaceAll(' ', ', ')} is left with ${countText(Number(daysBetween), 'day')} of recovery`,
};

function daysIn(word: string, days: Reason['inputs'][string] | undefined): string {
  return days === '' ? '' : `; ${word}: ${String(days).replaceAll(' ', ', ')}`;
}

/** A sentence of the record for what the week gave up. */
export function gaveUpText({ code, inputs }: Reason): string {
  const words = GAVE_UP_WORDS[code];
  return `${capital(words === undefined ? code : words(inputs))}.`;
}

/** A sentence of the record for what a session gave up to fit the minutes. */
export function gaveWayText({ what, exercise, from, to }: GivenUp): string {
  if (what === 'exercise') return `${exercise} was left out, to fit the minutes.`;
  return `${exercise}: ${what === 'sets' ? countText(to, 'set') : `${countText(to, 'time')} a day`} instead of ${from}, to fit the minutes.`;
}

/** Why sessions stand as far apart as they do, for the record. */
export function recoveryText({
  hours,
  baseHours,
  factor,
  slower,
  notRecorded,
}: WeekPlan['liftRecovery']): string {
  const longer = slower.length === 0 ? '' : `, ${factor} times ${baseHours} h: ${listText(slower)}`;
  const open = notRecorded.length === 0 ? '' : `; not recorded: ${listText(notRecorded)}`;
  return `${hours} h between sessions${longer}${open}.`;
}

/** What to do on a day with little time. @example 'If you only have 15 minutes, do these two: Slow curl (2 sets) and Short bow.' */
export function shortSessionText({ minutes, exercises, wholeFits, isAll }: ShortSession): string {
  if (wholeFits && isAll) return `All of it fits in ${minutes} minutes.`;
  const names = exercises.map(({ title, sets, setsInPlan, held }) =>
    sets === setsInPlan ? title : `${title} (${countText(sets, held ? 'hold' : 'set')})`,
  );
  const few =
    names.length === 1
      ? `do this one: ${names[0]}`
      : `do these ${numberWord(names.length)}: ${listText(names)}`;
  return wholeFits
    ? `All of it fits in ${minutes} minutes. With less time than that, ${few}.`
    : `If you only have ${minutes} minutes, ${few}.`;
}

function numberWord(count: number): string {
  return ['no', 'one', 'two', 'three', 'four'][count] ?? String(count);
}

/** How long sessions are planned, for the record. */
export function sessionLengthText(
  { minutes, exercisesAtMost, decidedBy }: SessionLength,
  minutesPerDay: number,
): string {
  const most = countText(exercisesAtMost, 'exercise');
  return decidedBy === 'usual'
    ? `Session: the usual ${minutes} minutes and ${most} at most; the consult gives ${minutesPerDay} minutes, and more than the usual length is used only from the minutes the protocol names (session.longerFromMinutes).`
    : `Session: planned for the ${minutes} minutes the consult gives, ${most} at most.`;
}
