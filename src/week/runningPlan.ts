/** The weeks of running until the review, as data: how many runs, of what kind, how far or how long. */
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import { roundTo } from '../units/round.ts';
import { type GrowthRules, type LongestRun, longestAllowed } from './growth.ts';
import { runLoad } from './hardRun.ts';
import { hillsAndFast, type HillsAndFastDecision } from './hillsAndFast.ts';
import { judgedRace, type JudgedRace, type Race, type RaceRow } from './race.ts';
import type { PlannedRun } from './plannedRun.ts';
import { reason, type Setting } from './reason.ts';
import { order, type RunKind } from './run.ts';
import { estimatedRuns, type RunCount, type RunCountRules } from './runCount.ts';
import type { RunDecision } from './runDecision.ts';
import { runsByDistance } from './runWeek.ts';
import { runsByLadder, type RungRules, type WalkRunRules } from './walkRun.ts';

export interface RunningPlanRules extends GrowthRules, WalkRunRules, RunCountRules {
  readonly hillOrFastApartWeeks: Setting;
  readonly raceEasyDays: readonly RaceRow[];
}

/** Running as it is now; null for what the consult does not record. */
export interface RunHabit {
  readonly weeklyKm: number | null;
  readonly longestIn30DaysKm: number | null;
  readonly runsPerWeek: number | null;
  /** Days a week that have room for a run, 0 to 7: runs that nobody counted are estimated at no more. */
  readonly runDays: number;
  readonly weeksOff: number | null;
  readonly usedToHills: boolean;
  readonly usedToFast: boolean;
  readonly hillyRoutes: boolean;
  /** Weeks since hills and fast running both came back; null while one is held back or when nobody knows. */
  readonly weeksBack: number | null;
  /** The rung of the walk-run ladder reached so far, from 1; null before the first. */
  readonly walkRunRung: number | null;
  readonly fastMinutes: number | null;
  readonly climbM: number | null;
  readonly races: readonly Race[];
}

export interface RunWeek {
  /** From 1. */
  readonly week: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly runs: readonly PlannedRun[];
  /** Null where runs go by minutes, or there are none. */
  readonly longestKm: number | null;
  readonly weeklyKm: number | null;
  readonly hardRuns: number;
  /** After the first week: only when the morning checks allow going on. */
  readonly onlyWhenSettled: boolean;
  /** A race or the easy days after one keep this week easy. */
  readonly keptEasy: boolean;
}

export interface RunningPlan {
  readonly weeks: readonly RunWeek[];
  readonly longest: LongestRun;
  /** Runs a week as they were estimated; null where the number is recorded, or nothing is run by distance. */
  readonly estimated: RunCount | null;
  readonly hillsAndFast: HillsAndFastDecision;
  readonly heldBack: readonly HeldBack[];
  /** Easy runs leave the hilly everyday routes, which would count as hard. */
  readonly moveToFlat: boolean;
  readonly races: readonly JudgedRace[];
}

export interface HeldBack {
  readonly kind: RunKind;
  /** The first stage (from 1) that admits it; null when none does. */
  readonly untilStage: number | null;
}

/** Longer without running and nothing of the last 30 days is left, so the ladder comes first. */
const LOOK_BACK_DAYS = 30;

/**
 * The running of the weeks from `startOn` to the day before `reviewOn`: no weeks when running is off, otherwise the
 * walk-run ladder or runs by distance. `stageMost`: the hardest kind each stage admits, in the order of the stages.
 */
export function runningPlan(
  decision: RunDecision,
  habit: RunHabit,
  stageMost: readonly RunKind[],
  dates: { readonly startOn: IsoDate; readonly reviewOn: IsoDate },
  rules: RunningPlanRules,
  rungRules: RungRules,
): RunningPlan {
  const longest = longestNow(habit, rules);
  const rule = hillsAndFast(habit, rules);
  const races = habit.races.map((race) =>
    judgedRace(race, decision.most, longest.atMostKm, rules.raceEasyDays),
  );
  const frames = decision.decision === 'none' ? [] : weekFrames(dates, races);
  const keptEasy = frames.map((frame) => frame.keptEasy);
  const byLadder = decision.most === 'walk-run' || longest.atMostKm === null;
  const base = byLadder ? null : distanceBase(habit, rules);
  const runs =
    base === null
      ? runsByLadder(frames.length, habit, decision.decision === 'keep', rules, rungRules)
      : runsByDistance(keptEasy, base, decision.most, rule.rule, rules);
  return {
    weeks: frames.map((frame, index) => ({
      ...frame,
      ...sums(runs[index] ?? []),
      onlyWhenSettled: index > 0,
    })),
    longest,
    estimated: base?.estimated ?? null,
    hillsAndFast: rule,
    heldBack: decision.heldBack.map((kind) => ({ kind, untilStage: firstStage(kind, stageMost) })),
    moveToFlat: habit.hillyRoutes && decision.decision !== 'none',
    races,
  };
}

function longestNow(habit: RunHabit, rules: GrowthRules): LongestRun {
  const { weeklyKm, longestIn30DaysKm, weeksOff } = habit;
  // Under a kilometre a week there is nothing to share out.
  const stopped = (weeklyKm !== null && weeklyKm < 1) || (weeksOff ?? 0) * 7 > LOOK_BACK_DAYS;
  if (stopped && longestIn30DaysKm !== 0)
    return { atMostKm: null, because: reason('not-running-now', { weeklyKm, longestIn30DaysKm, weeksOff }) };
  return longestAllowed(weeklyKm === null ? null : longestIn30DaysKm, rules);
}

// Only asked where both are recorded and above zero: otherwise the ladder comes first.
function distanceBase(habit: RunHabit, rules: RunCountRules) {
  const km = { weeklyKm: habit.weeklyKm ?? 0, longestKm: habit.longestIn30DaysKm ?? 0 };
  if (habit.runsPerWeek !== null) return { ...habit, ...km, runsPerWeek: habit.runsPerWeek, estimated: null };
  const estimated = estimatedRuns(km.weeklyKm, km.longestKm, habit.runDays, rules);
  return { ...habit, ...km, runsPerWeek: estimated.runs, estimated };
}

function weekFrames(
  { startOn, reviewOn }: { readonly startOn: IsoDate; readonly reviewOn: IsoDate },
  races: readonly JudgedRace[],
): Pick<RunWeek, 'week' | 'from' | 'to' | 'keptEasy'>[] {
  const weeks = Math.max(0, Math.ceil(daysBetween(startOn, reviewOn) / 7));
  return Array.from({ length: weeks }, (_, index) => {
    const from = addDays(startOn, 7 * index);
    const sunday = addDays(from, 6);
    const to = sunday < reviewOn ? sunday : addDays(reviewOn, -1);
    const keptEasy = races.some(({ on, easyUntil }) => on <= to && easyUntil >= from);
    return { week: index + 1, from, to, keptEasy };
  });
}

function sums(runs: readonly PlannedRun[]): Pick<RunWeek, 'runs' | 'longestKm' | 'weeklyKm' | 'hardRuns'> {
  const kms = runs.flatMap(({ km }) => (km === null ? [] : [km]));
  return {
    runs,
    longestKm: kms.length === 0 ? null : Math.max(...kms),
    weeklyKm:
      kms.length === 0
        ? null
        : roundTo(
            kms.reduce((sum, km) => sum + km, 0),
            0.1,
          ),
    hardRuns: runs.filter(({ kind }) => runLoad(kind).hard).length,
  };
}

function firstStage(kind: RunKind, stageMost: readonly RunKind[]): number | null {
  const index = stageMost.findIndex((most) => order(most) >= order(kind));
  return index < 0 ? null : index + 1;
}
