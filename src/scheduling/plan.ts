/** One week that repeats: sessions, runs and other hard things on days, by one recovery clock (house rules 6). */
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import { takenDays } from './arrange.ts';
import { ahead, count, type DayMask, daysIn, gaps, has, longestRow, maskOf, weekdaysIn } from './circle.ts';
import { firstDay, lateDays, solveWeek, type Placement, type WeekProblem } from './weekSolver.ts';
import { clockOf, weekProblemOf, type SortedWish, sortWish, type WeekRules } from './weekProblem.ts';
import { type Reason, reason } from '../units/reason.ts';
import type { Recoverer, Recovery } from './recovery.ts';
import { leftOutInputs, type SportDays, sportDays } from './sport.ts';
import type { WeekWish, WishedRun } from './wish.ts';

export interface WeekPlan {
  readonly fits: true;
  /** Seven, Monday first. */
  readonly days: readonly DayPlan[];
  readonly liftRecovery: Recovery;
  readonly easyRunRecovery: Recovery;
  /** Calendar days from a session to the next at the earliest. */
  readonly liftGapDays: number;
  /** Calendar days from a session to the next run or sport at the earliest. */
  readonly liftToOthersDays: number;
  /** Days with time that suit a session beside the hard runs and fixed points; a late session moves to one of these. */
  readonly openDays: readonly Weekday[];
  /** Hours between the two nearest hard days, a week when there are fewer than two. */
  readonly nearestHardHours: number;
  readonly gaveUp: readonly Reason<GaveUpCode>[];
  /** Fixed points nearer to each other than the clock allows; the plan cannot move them. */
  readonly tightFixed: readonly Reason<'fixed-points-too-near'>[];
  /** What is hard besides sessions and runs, thing by thing. */
  readonly sport: readonly SportDays[];
  /** Clear days between a session and sport that may wait; null where there is none in the week or nothing disturbs the sessions. */
  readonly clearOfSport: { readonly before: number; readonly after: number } | null;
}

export interface DayPlan {
  readonly weekday: Weekday;
  readonly session: boolean;
  /** The session follows a hard run on the same day. */
  readonly afterRun: boolean;
  /** The session follows another hard thing on the same day. */
  readonly afterOther: boolean;
  readonly between: boolean;
  readonly daily: boolean;
  /** Share of the longest run that is left of it where it has to stand beside other hard things; null: all of it. */
  readonly longestShare: number | null;
  /** Ids of runs and of other hard things, as they were wished. */
  readonly runs: readonly string[];
  readonly other: readonly string[];
  /** Those of `other` that are not hard. */
  readonly easyOther: readonly string[];
}

export type GaveUpCode =
  | 'one-session-a-day'
  | 'lift-after-run'
  | 'lift-after-other'
  | 'fewer-lifts'
  | 'hard-run'
  | 'left-out'
  | 'easy-runs'
  | 'shorter-longest'
  | 'run-row'
  | 'late-first'
  | 'plain-session';

/** Not even one session fits. */
export interface NoWeek {
  readonly fits: false;
  readonly because: readonly Reason<NoWeekCode>[];
}

export type NoWeekCode = 'no-day-with-time' | 'spacing-over-a-week' | 'fixed-points-fill-the-week';

/**
 * The best week for the wish, or why there is none. What does not fit is given up in the order of house rules 6: a
 * lift is paired with a hard run, then lifts go down to two, then a hard run goes, then lifts go down to one, and last
 * of all sport that may wait; easy runs take the days left. Lifts share the days of hard things that cannot wait only
 * where none finds a day of its own [choice].
 */
export function planWeek(wish: WeekWish, person: Recoverer, rules: WeekRules): WeekPlan | NoWeek {
  const sorted = sortWish(wish);
  const clock = clockOf(wish, person, rules);
  const problem = weekProblemOf(wish, sorted, clock, person, rules);
  const placement = solveWeek(problem);
  if (placement === null) return { fits: false, because: whyNothingFits(wish, problem) };
  const sport = sportDays(sorted, placement);
  return {
    fits: true,
    days: WEEKDAYS.map((_, day) => dayPlan(day, wish, sorted, placement, rules.besideHardShare.value)),
    liftRecovery: clock.lift,
    easyRunRecovery: clock.easyRun,
    liftGapDays: clock.liftGapDays,
    liftToOthersDays: clock.liftToOthersDays,
    openDays: weekdaysIn(placement.openLiftDays),
    nearestHardHours: 24 * Math.min(7, ...gaps(hardDays(placement, problem))),
    gaveUp: gaveUp(wish, sorted, problem, placement, sport, rules.besideHardShare.value),
    tightFixed: tightFixed(sorted, problem, placement),
    sport,
    clearOfSport: clearOfSport(problem, placement),
  };
}

function dayPlan(
  day: number,
  wish: WeekWish,
  sorted: SortedWish,
  placement: Placement,
  besideHardShare: number,
): DayPlan {
  const { fixed, hardRuns } = sorted;
  const weekday = WEEKDAYS[day] as Weekday;
  const session = has(placement.lifts, day);
  const onDay = (index: number) => placement.events[index] === day;
  const easyRun = easyRunOn(day, wish, sorted, placement);
  const easyOther = (wish.easyFixed ?? []).filter((point) => point.day === weekday).map(({ id }) => id);
  return {
    weekday,
    session,
    afterRun: has(placement.pairs, day),
    afterOther: has(placement.shared, day),
    between: !session && wish.betweenDays.includes(weekday),
    daily: wish.daily,
    longestShare: placement.longest?.day === day && placement.longest.besideOther ? besideHardShare : null,
    runs: [
      ...hardRuns.filter((_, index) => onDay(fixed.length + index)).map(({ id }) => id),
      ...(easyRun === undefined ? [] : [easyRun.id]),
    ],
    other: [...fixed.filter((_, index) => onDay(index)).map(({ id }) => id), ...easyOther],
    easyOther,
  };
}

/** The longest run on the day found for it, the others in their order on the days left. */
function easyRunOn(
  day: number,
  { longestRun }: WeekWish,
  { easyRuns }: SortedWish,
  { easyRuns: days, longest }: Placement,
): WishedRun | undefined {
  if (longest === null) return easyRuns[daysIn(days).indexOf(day)];
  if (longest.day === day) return easyRuns.find(({ id }) => id === longestRun);
  const rest = easyRuns.filter(({ id }) => id !== longestRun);
  return rest[daysIn(days & ~(1 << longest.day)).indexOf(day)];
}

function hardDays({ events, lifts }: Placement, problem: WeekProblem): DayMask {
  const start = problem.lifts.onClock ? lifts : 0;
  return events.reduce<DayMask>((mask, day) => (day === null ? mask : mask | (1 << day)), start);
}

function gaveUp(
  wish: WeekWish,
  { fixed, hardRuns, easyRuns }: SortedWish,
  problem: WeekProblem,
  placement: Placement,
  sport: readonly SportDays[],
  share: number,
): Reason<GaveUpCode>[] {
  const wished = Math.min(7, wish.lifts.perWeek);
  const planned = count(placement.lifts);
  const plannedEasy = count(placement.easyRuns);
  const dropped = hardRuns.flatMap(({ id, kind }, index) => {
    const event = fixed.length + index;
    return placement.events[event] === null
      ? [{ id, kind, because: whyDropped(event, problem, placement) }]
      : [];
  });
  return [
    ...(wish.lifts.perWeek > 7
      ? [reason('one-session-a-day', { wished: wish.lifts.perWeek, planned: wished } as const)]
      : []),
    ...(placement.pairs === 0 ? [] : [reason('lift-after-run', { days: weekdaysIn(placement.pairs) })]),
    ...sharedDays(fixed, placement),
    ...(planned < wished ? [reason('fewer-lifts', { wished, planned })] : []),
    ...dropped.map((run) => reason('hard-run', run)),
    ...sport.filter(({ leftTimes }) => leftTimes > 0).map((one) => reason('left-out', leftOutInputs(one))),
    ...(plannedEasy < easyRuns.length
      ? [reason('easy-runs', { wished: easyRuns.length, planned: plannedEasy })]
      : []),
    ...runsGiveUp(wish, problem, placement, share),
    ...lateFirst(problem, placement),
  ];
}

/** The first session later than it should be: none of the first days has time, or what is hard leaves none of them. */
function lateFirst({ start, lifts: { days } }: WeekProblem, { lifts }: Placement): Reason<'late-first'>[] {
  if (start === null || lateDays({ start }, lifts) === 0) return [];
  const because = firstDay(start.day, days) > start.withinDays ? 'no-day-with-time' : 'clock';
  return [
    reason('late-first', {
      onDay: firstDay(start.day, lifts),
      withinDays: start.withinDays,
      because,
    } as const),
  ];
}

/** A longest run that is shorter where it stands, and more run days in a row than there should be. */
function runsGiveUp(
  { runRow }: WeekWish,
  { events }: WeekProblem,
  { easyRuns, events: days, longest }: Placement,
  share: number,
): Reason<GaveUpCode>[] {
  const runs = easyRuns | takenDays(events, days).runs;
  const row = longestRow(runs);
  return [
    ...(longest?.besideOther === true
      ? [reason('shorter-longest', { day: WEEKDAYS[longest.day] as Weekday, share } as const)]
      : []),
    ...(runRow !== null && runRow !== undefined && row > runRow.most
      ? [reason('run-row', { row, most: runRow.most, runs: count(runs) } as const)]
      : []),
  ];
}

function clearOfSport({ lifts, events }: WeekProblem, placement: Placement): WeekPlan['clearOfSport'] {
  const recoveryDays = events.flatMap((event, index) =>
    event.hold === 'waits' && placement.events[index] !== null ? [event.recoveryDays] : [],
  );
  if (!lifts.onClock || recoveryDays.length === 0) return null;
  return { before: lifts.toOthersDays - 1, after: Math.max(...recoveryDays) - 1 };
}

function sharedDays(fixed: SortedWish['fixed'], { shared, events }: Placement): Reason<'lift-after-other'>[] {
  if (shared === 0) return [];
  const others = fixed.filter((_, index) => has(shared, events[index] ?? -1)).map(({ id }) => id);
  return [
    reason('lift-after-other', {
      others: [...new Set(others)],
      days: weekdaysIn(shared),
    }),
  ];
}

// Hills beside fast running in one week is a rule of its own; everything else is the clock.
function whyDropped(
  event: number,
  { events }: WeekProblem,
  placement: Placement,
): 'hills-and-fast' | 'clock' {
  const family = events[event]?.family ?? null;
  const meetsOther = events.some(
    (other, index) =>
      placement.events[index] !== null && other.family !== null && other.family.name !== family?.name,
  );
  return family !== null && family.daysApart > 7 && meetsOther ? 'hills-and-fast' : 'clock';
}

function tightFixed(
  { fixed }: SortedWish,
  { events }: WeekProblem,
  placement: Placement,
): Reason<'fixed-points-too-near'>[] {
  const pinned = fixed.flatMap(({ id, day }, index) =>
    day === null || placement.events[index] === null
      ? []
      : [{ id, day: WEEKDAYS.indexOf(day), days: events[index]?.recoveryDays ?? 0 }],
  );
  return pinned.flatMap((one) =>
    pinned
      .filter((other) => other !== one && ahead(one.day, other.day) % 7 < one.days)
      .map((other) =>
        reason('fixed-points-too-near', {
          first: one.id,
          second: other.id,
          daysBetween: ahead(one.day, other.day) % 7,
          daysNeeded: one.days,
        }),
      ),
  );
}

function whyNothingFits(wish: WeekWish, { lifts }: WeekProblem): Reason<NoWeekCode>[] {
  if (wish.lifts.days.length === 0) return [reason('no-day-with-time')];
  if (lifts.gapDays > 7) return [reason('spacing-over-a-week', { hoursBetween: wish.lifts.hoursBetween })];
  return [
    reason('fixed-points-fill-the-week', {
      fixed: wish.fixed.map(({ id, day }) => (day === null ? id : `${id} ${day}`)),
      daysWithTime: weekdaysIn(maskOf(wish.lifts.days)),
      daysBetween: lifts.gapDays,
    }),
  ];
}
