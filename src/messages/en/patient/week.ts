/** The week and the next session in plain words. */
import type { GivenUp } from '../../../dosing/minutes.ts';
import { WEEKDAYS } from '../../../units/weekday.ts';
import type { Lost } from '../../../scheduling/lost.ts';
import type { WeekPlan } from '../../../scheduling/plan.ts';
import { entriesOf, type Reason } from '../../../units/reason.ts';
import type { RunKind } from '../../../scheduling/run.ts';
import type { GroupDay, WeekGroup } from '../../../scheduling/weekGroups.ts';
import { type Part, type Section, paragraph, section, table } from '../../shapes.ts';
import type { SessionLength } from '../../../decisions/terms/sessionLength.ts';
import type { ShortSession } from '../../../decisions/session/shortSession.ts';
import {
  capital,
  clearDaysText,
  countText,
  dayText,
  listText,
  timesText,
  weekdayAndDay,
  weekdayText,
} from '../plain.ts';
import { type DayWords, dayLine } from './day.ts';
import { setCountText } from './dose.ts';
import { type FirstSession, lateFirstTexts } from './firstSession.ts';
import { fittedTo } from './sessionLength.ts';
import { RUN_WORDS } from './running.ts';
import { sportTexts } from './sport.ts';
import type { IsoDate } from '../../../units/date.ts';

export interface WeekWords extends DayWords {
  readonly groups: readonly WeekGroup[];
  /** Days from one session to the next at least. */
  readonly gapDays: number;
  /** A race stands in the plan, or lies near enough to change its days. */
  readonly race: boolean;
  /** The week as it was planned, for what it says of sport. */
  readonly sport: WeekPlan;
  /** Null where a race leaves none before the review. */
  readonly firstSession: FirstSession | null;
}

/** The weeks by their days, each kind of week once, and what may be moved. */
export function weekText(words: WeekWords): Section {
  const { groups, gapDays, race, sport, firstSession } = words;
  const amountsDiffer = groups.some(({ days }) => days.some(({ sameAmounts }) => !sameAmounts));
  const moved =
    gapDays <= 1
      ? 'The days may be moved. If a session is late, carry on from there the next day.'
      : `The days may be moved, as long as you leave ${clearDaysText(gapDays - 1)} between two sessions.`;
  return section('week', 'Your week', [
    ...weekTables(words),
    ...(amountsDiffer
      ? [paragraph('How far or how long you run in which week stands under “Running”.')]
      : []),
    ...lateFirstTexts(sport, firstSession).map((text) => paragraph(text)),
    paragraph(race ? `${moved} Only the days around the race stay as they are.` : moved),
    ...sportTexts(sport).map((text) => paragraph(text)),
    paragraph(
      'You need more rest when you sleep badly, wake tired, or stay sore for more than a day. Then leave one day more between.',
    ),
  ]);
}

/** A table for each group, but one for all that follow each other with the same days and another step of the exercises. */
function weekTables(words: WeekWords): Part[] {
  const { groups } = words;
  const sameDays = groups.map((group, index) => isNextStep(group, groups[index - 1], words));
  return groups.flatMap((group, index): Part[] => {
    if (sameDays[index] !== true) return [weekTable(group, groups[index - 1], words)];
    if (sameDays[index - 1] === true) return [];
    const ends = sameDays.indexOf(false, index);
    return [stepsTable(groups.slice(index, ends < 0 ? undefined : ends), words)];
  });
}

/** The same days as the group before, done with the exercises of another step. */
function isNextStep(group: WeekGroup, before: WeekGroup | undefined, words: WeekWords): boolean {
  const daysOf = ({ days }: WeekGroup) =>
    days.map((one) => rowKey(one, { ...words, stepOf: () => null })).join();
  return before !== undefined && stepIn(group, words) !== null && daysOf(group) === daysOf(before);
}

function stepIn({ days }: WeekGroup, { stepOf }: WeekWords): number | null {
  const day = days.find(({ day: { session } }) => session !== null)?.day;
  return day === undefined ? null : stepOf(day.part);
}

/** @example '1 December to 4 January: the same days, with the next steps' */
function stepsTable(groups: readonly WeekGroup[], words: WeekWords): Part {
  const [first, last] = [groups[0], groups.at(-1)] as [WeekGroup, WeekGroup];
  return table(
    `${spanText({ ...last, from: first.from })}: the same days, with the next ${groups.length === 1 ? 'step' : 'steps'}`,
    ['Days', 'Exercises'],
    groups.map((group) => [spanText(group), `Step ${stepIn(group, words)}`]),
  );
}

/** A group beside the one before it: all its days, or those that differ where they are few. */
function weekTable(group: WeekGroup, before: WeekGroup | undefined, words: WeekWords): Part {
  const alone = words.groups.length === 1;
  const days = alone
    ? [...group.days].sort((a, b) => WEEKDAYS.indexOf(a.weekday) - WEEKDAYS.indexOf(b.weekday))
    : group.days;
  const rows = days.map((one) => [weekdayText(one.weekday), groupDayText(one, words) || 'Free']);
  const same = new Set((before?.days ?? []).map((one) => rowKey(one, words)));
  const changed = days.flatMap((one, index) => (same.has(rowKey(one, words)) ? [] : [rows[index] ?? []]));
  const few = changed.length > 0 && changed.length <= MOST_CHANGED && days.length > MOST_CHANGED;
  const caption = alone ? 'A usual week' : spanText(group);
  return few
    ? table(`${caption}: what is different from the days before`, ['Day', 'Plan'], changed)
    : table(caption, ['Day', 'Plan'], everyDay(rows));
}

const MOST_CHANGED = 3;

function rowKey(one: GroupDay, words: WeekWords): string {
  return `${one.weekday} ${groupDayText(one, words)}`;
}

/** @example '24 November to 7 December' */
function spanText({ from, to }: WeekGroup): string {
  return from === to ? weekdayAndDay(from) : `${dayText(from)} to ${dayText(to)}`;
}

/** Seven days that are alike are one line. */
function everyDay(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const [first] = rows;
  const alike = rows.length === WEEKDAYS.length && rows.every(([, plan]) => plan === first?.[1]);
  return alike ? [['Every day', first?.[1] ?? '']] : rows;
}

function groupDayText({ day, sameAmounts }: GroupDay, words: WeekWords): string {
  return dayLine(withoutNews(day), words, sameAmounts ? 'full' : 'kinds');
}

// What is new on one date is not new on every such weekday.
function withoutNews(day: GroupDay['day']): GroupDay['day'] {
  return day.session === null ? day : { ...day, session: { ...day.session, begins: [] } };
}

/** Days of an exercise that begins later. @example 'Monday and Friday, from Monday 7 December' */
export function fromDayText(days: string, on: IsoDate): string {
  return `${days}, from ${weekdayAndDay(on)}`;
}

/** Label of an exercise that is no part of the next session yet. */
export const BEGINS = 'Begins';

export const NEXT_SESSION_HEADING = 'Your next session';

/** `Tuesday 24 November. After it, leave one clear day.` */
export function nextSessionText(on: IsoDate, clearDays: number): string {
  const after = clearDays === 0 ? '' : ` After it, leave ${clearDaysText(clearDays)}.`;
  return `${weekdayAndDay(on)}.${after}`;
}

/** @example minutesText(1450) // => 'About 25 minutes with the rests.' */
export function minutesText(seconds: number): string {
  const minutes = Math.ceil(seconds / 60);
  return `About ${countText(minutes, 'minute')} with the rests.`;
}

/** Where a race leaves no session before the review. */
export function noSessionText(reviewOn: IsoDate): string {
  return `There is no session before ${weekdayAndDay(reviewOn)}.`;
}

const DROPPED_WORDS: Readonly<Record<string, string>> = {
  clock: 'no room on the recovery clock',
  'hills-and-fast': 'hills and fast running share no week',
};

const GAVE_UP_WORDS: Readonly<Record<string, (inputs: Reason['inputs']) => string>> = {
  'one-session-a-day': ({ wished, planned }) => `${wished} sessions were wished; one a day gives ${planned}`,
  'lift-after-run': ({ days }) =>
    `a session follows a hard run on the same day (${entriesOf(days).join(', ')})`,
  'lift-after-other': ({ others, days }) =>
    `a session follows ${listText(entriesOf(others))} on the same day (${entriesOf(days).join(', ')})`,
  'fewer-lifts': ({ wished, planned }) => `${countText(Number(planned), 'session')} instead of ${wished}`,
  'hard-run': ({ kind, because }) =>
    `the ${String(kind).replaceAll('-', ' ')} run was dropped: ${DROPPED_WORDS[String(because)] ?? because}`,
  'left-out': ({ id, keptTimes, keptDays, leftTimes, leftDays }) =>
    `${id} ${timesText(Number(keptTimes))}${Number(keptTimes) === 0 ? '' : ' a week'} instead of ${timesText(Number(keptTimes) + Number(leftTimes))}${Number(keptTimes) === 0 ? ' a week' : ''}, for now${daysIn('kept', keptDays)}${daysIn('left out', leftDays)}`,
  'plain-session': ({ slots, daysToSport, daysBetween }) =>
    `to leave room for sport, ${entriesOf(slots).length === 0 ? '' : `the session goes without ${listText(entriesOf(slots))}, and `}sport follows a session after ${countText(Number(daysToSport), 'day')}, as the recovery clock allows, where the stage has ${daysBetween} between sessions`,
  'easy-runs': ({ wished, planned }) => `${countText(Number(planned), 'easy run')} instead of ${wished}`,
  'shorter-longest': ({ day, share }) =>
    `the longest run is cut to ${Math.round(Number(share) * 100)}\u00a0% on ${day}, or to the other runs of the week where they are longer than that: every day there is for it lies beside a match, a hard class or the like`,
  'run-row': ({ row, most, runs }) =>
    `${row} run days in a row, where ${most} are the limit: the consult itself counts ${countText(Number(runs), 'run')} a week, and they find no other days`,
  'late-first': ({ onDay, withinDays, because }) =>
    `the first session comes on day ${onDay} of the plan instead of within ${withinDays} days: ${because === 'clock' ? 'beside what is hard in the week no earlier day is left for it' : 'no earlier day has time'}`,
  'fixed-points-too-near': ({ first, second, daysBetween, daysNeeded }) =>
    `${first} and ${second} lie ${daysBetween} days apart; the clock asks for ${daysNeeded}`,
  'no-day-with-time': () => 'no day with time is recorded',
  'spacing-over-a-week': ({ hoursBetween }) => `${hoursBetween} hours between sessions are more than a week`,
  'fixed-points-fill-the-week': ({ fixed, daysWithTime, daysBetween }) =>
    `beside ${listText([...new Set(entriesOf(fixed))])} no day of ${entriesOf(daysWithTime).join(', ')} is left with ${countText(Number(daysBetween), 'day')} of recovery`,
};

function daysIn(word: string, days: Reason['inputs'][string] | undefined): string {
  const named = entriesOf(days);
  return named.length === 0 ? '' : `; ${word}: ${named.join(', ')}`;
}

/** A sentence of the record for what the week gave up. */
export function gaveUpText({ code, inputs }: Reason): string {
  const words = GAVE_UP_WORDS[code];
  return `${capital(words === undefined ? code : words(inputs))}.`;
}

/** What a session gave up and to what length, for the record: a sentence for each amount, with all it holds for. */
export function gaveWayTexts(gaveUp: readonly GivenUp[], length: SessionLength): string[] {
  const keyOf = ({ what, from, to }: GivenUp) => (what === 'exercise' ? what : `${what} ${from} ${to}`);
  return [...new Set(gaveUp.map(keyOf))].map((key) => {
    const alike = gaveUp.filter((one) => keyOf(one) === key);
    return `${gaveWayText(alike)}, ${fittedTo(length)}.`;
  });
}

function gaveWayText(alike: readonly GivenUp[]): string {
  const [{ what, from, to }] = alike as readonly [GivenUp, ...GivenUp[]];
  const names = listText(alike.map(({ exercise }) => exercise));
  if (what === 'exercise') return `${names} ${alike.length === 1 ? 'was' : 'were'} left out`;
  return `${names}: ${what === 'sets' ? countText(to, 'set') : `${timesText(to)} a day`} instead of ${what === 'sets' ? from : timesText(from)}`;
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
  const names = exercises.map(({ title, sets, setsInPlan, setKind }) =>
    sets === setsInPlan ? title : `${title} (${setCountText(sets, setKind)})`,
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

const LOST_BECAUSE: Readonly<Record<Lost['because'], string>> = {
  'before-race': 'before the race',
  'race-day': 'on the day of the race',
  'after-race': 'in the easy days after the race',
};

/** What a race took from the week, a sentence for each kind of thing and reason, for the record. */
export function lostTexts(lost: readonly Lost[]): string[] {
  const groups = new Map<string, Lost[]>();
  for (const one of lost) {
    const key = `${one.what} ${one.name} ${one.because} ${one.raceOn}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map(lostText);
}

function lostText(alike: readonly Lost[]): string {
  const [{ what, name, because, raceOn }] = alike as readonly [Lost, ...Lost[]];
  const days = listText(alike.map(({ on }) => dayText(on)));
  const words: Readonly<Record<Lost['what'], string>> = {
    session: name === 'holds' ? `the holds in place of the session on ${days}` : `no session on ${days}`,
    'hard-run': `an easy run instead of the ${(RUN_WORDS[name as RunKind] ?? name).replace(/ run$/, '')} run on ${days}`,
    outing: `no walk and run on ${days}, so that a day lies between`,
    run: `no run on ${days}`,
    other: `no ${name} on ${days}`,
  };
  return `${capital(words[what])}: ${LOST_BECAUSE[because]} of ${dayText(raceOn)}.`;
}
