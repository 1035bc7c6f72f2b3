/** A wish in trade words turned into days and gaps for the search. */
import { WEEKDAYS } from '../units/weekday.ts';
import type { HardEvent } from './arrange.ts';
import { EVERY_DAY, maskOf } from './circle.ts';
import { runLoad } from './hardRun.ts';
import type { WeekProblem } from './weekSolver.ts';
import type { Setting } from '../units/reason.ts';
import {
  calendarDays,
  liftRecovery,
  type Recoverer,
  type Recovery,
  recoveryHours,
  type RecoveryRules,
} from './recovery.ts';
import type { FixedPoint, HillsAndFast, WeekWish, WishedRun } from './wish.ts';

/** The clock, how many sessions a week are kept before a hard run is dropped, and how soon the first one comes. */
export interface WeekRules extends RecoveryRules {
  readonly leastLifts: Setting;
  readonly firstSessionDays: Setting;
  /** Of the longest run so much is left on a day beside other hard things. */
  readonly besideHardShare: Setting;
}

const DAYS_APART: Readonly<Record<HillsAndFast, number>> = { 'never-one-week': 8, 'never-neighbours': 2 };

/** The wish sorted as the search takes it: its events are the fixed points and then the hard runs, in this order. */
export interface SortedWish {
  readonly fixed: readonly FixedPoint[];
  readonly hardRuns: readonly WishedRun[];
  readonly easyRuns: readonly WishedRun[];
}

export interface Clock {
  readonly lift: Recovery;
  readonly easyRun: Recovery;
  readonly liftGapDays: number;
  /** Calendar days from a session to the next run or sport at the earliest. */
  readonly liftToOthersDays: number;
}

/** Fixed points with a day first, so that the search meets what cannot move before what can. */
export function sortWish({ fixed, runs }: WeekWish): SortedWish {
  const isHard = ({ kind, features }: WishedRun) => runLoad(kind, features).hard;
  return {
    fixed: [...fixed.filter(({ day }) => day !== null), ...fixed.filter(({ day }) => day === null)],
    hardRuns: runs.filter(isHard),
    easyRuns: runs.filter((run) => run.kind !== 'none' && !isHard(run)),
  };
}

/** The recovery of lifts and easy runs for this person, and the lift's in calendar days, one at least. */
export function clockOf({ lifts }: WeekWish, person: Recoverer, rules: RecoveryRules): Clock {
  const lift =
    lifts.kind === 'light'
      ? lightRecovery(lifts.hoursBetween)
      : liftRecovery(lifts.kind, lifts.hoursBetween, person, rules);
  const toOthers =
    lifts.kind !== 'light' && lifts.clearOfOthers === 'clock'
      ? recoveryHours(lifts.kind, person, rules)
      : lift;
  return {
    lift,
    easyRun: recoveryHours('easy-run', person, rules),
    liftGapDays: Math.max(1, calendarDays(lift.hours)),
    liftToOthersDays: Math.max(1, calendarDays(toOthers.hours)),
  };
}

/** The search's input: at most one session a day, days and gaps instead of hours. */
export function weekProblemOf(
  wish: WeekWish,
  { fixed, hardRuns, easyRuns }: SortedWish,
  clock: Clock,
  person: Recoverer,
  rules: WeekRules,
): WeekProblem {
  const days = (kind: FixedPoint['recovery'] | 'easy-run') =>
    calendarDays(recoveryHours(kind, person, rules).hours);
  const runDays = maskOf(wish.runDays);
  const fixedEvent = ({ day, recovery, mayWait }: FixedPoint): HardEvent => ({
    recoveryDays: days(recovery),
    allowed: day === null ? EVERY_DAY : maskOf([day]),
    hold: mayWait === true ? 'waits' : 'stands',
    pinned: day !== null,
    family: null,
  });
  const runEvent = (run: WishedRun): HardEvent => ({
    recoveryDays: days(runLoad(run.kind, run.features).recovery),
    allowed: runDays,
    hold: 'run',
    pinned: false,
    family: familyOf(run, wish.hillsAndFast),
  });
  return {
    lifts: {
      perWeek: Math.min(7, wish.lifts.perWeek),
      least: rules.leastLifts.value,
      days: maskOf(wish.lifts.days),
      gapDays: clock.liftGapDays,
      toOthersDays: clock.liftToOthersDays,
      onClock: wish.lifts.kind !== 'light',
    },
    events: [...fixed.map(fixedEvent), ...hardRuns.map(runEvent)],
    easyRuns: {
      perWeek: easyRuns.length,
      days: runDays,
      gapDays: Math.max(1, calendarDays(clock.easyRun.hours)),
      hasLongest: easyRuns.some(({ id }) => id === wish.longestRun),
      row: wish.runRow ?? null,
    },
    start:
      wish.startDay === undefined
        ? null
        : { day: WEEKDAYS.indexOf(wish.startDay), withinDays: rules.firstSessionDays.value },
  };
}

// Light holds keep the stage's own spacing; nothing about the person lengthens it.
function lightRecovery(hours: number): Recovery {
  return { hours, baseHours: hours, factor: 1, slower: [], notRecorded: [] };
}

function familyOf({ kind, features }: WishedRun, rule: HillsAndFast): HardEvent['family'] {
  const hills =
    kind === 'hills-or-strides' ||
    features.some((feature) => feature !== 'race' && feature !== 'high-knee-drills');
  const fast = kind === 'fast' || features.includes('race');
  if (!hills && !fast) return null;
  const name = hills && fast ? 'hills and fast' : hills ? 'hills' : 'fast';
  return { name, daysApart: DAYS_APART[rule] };
}
