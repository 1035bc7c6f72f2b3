/** The weeks of running until the review, as data: how many runs, of what kind, how far or how long. */
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import { roundTo } from '../units/round.ts';
import { type GrowthRules, type LongestRun, longestAllowed } from './growth.ts';
import { runLoad } from './hardRun.ts';
import { hillsAndFast, type HillsAndFastDecision } from './hillsAndFast.ts';
import { easyDaysAfterRace, type Race, type RaceRow } from './race.ts';
import type { PlannedRun } from './plannedRun.ts';
import { reason, type Setting } from '../units/reason.ts';
import { order, type RunKind } from './run.ts';
import { estimatedRuns, type RunCount, type RunCountRules } from './runCount.ts';
import type { RunDecision } from './runDecision.ts';
import { runsByDistance, type RunWeekRule } from './runWeek.ts';
import { ladderRuns, rungDays, runsByLadder, type RungRules, type WalkRunRules } from './walkRun.ts';

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
  /** The review of the programme before lets nothing of the runs grow. */
  readonly held?: boolean;
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
  /** What would grow of the runs, were it their turn every time: nothing where they stay as they are. */
  readonly mayGrow: MayGrow;
}

export interface MayGrow {
  readonly what: 'nothing' | 'longest-run' | 'walk-run-ladder' | 'fast-or-climb';
  /** Weeks on one amount at least. */
  readonly weeksApart: number;
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
 * `weekRules`: what each week allows; left out, everything is open and grows whenever the rules for going on allow,
 * but for the weeks of a race and of the easy days after it.
 */
export function runningPlan(
  decision: RunDecision,
  habit: RunHabit,
  stageMost: readonly RunKind[],
  dates: { readonly startOn: IsoDate; readonly reviewOn: IsoDate },
  rules: RunningPlanRules,
  rungRules: RungRules,
  weekRules: readonly RunWeekRule[] | null = null,
): RunningPlan {
  const longest = longestNow(habit, rules);
  const rule = hillsAndFast(habit, rules);
  const byLadder = decision.most === 'walk-run' || longest.atMostKm === null;
  const mayGrow = mayGrowOf(decision, habit, byLadder, rules, rungRules);
  const frames = decision.decision === 'none' ? [] : weekFrames(dates);
  const weeks = weekRules ?? freeRules(frames, habit, rules, mayGrow);
  const used = weeks.slice(0, frames.length);
  const base = byLadder ? null : distanceBase(habit, rules);
  const runs =
    base === null
      ? runsByLadder(used, habit, decision.decision === 'keep', rules)
      : runsByDistance(used, base, decision.most, rule.rule, rules);
  return {
    weeks: frames.map((frame, index) => ({
      ...frame,
      ...sums(runs[index] ?? []),
      keptEasy: used[index]?.keptEasy ?? false,
      onlyWhenSettled: index > 0,
    })),
    longest,
    estimated: base?.estimated ?? null,
    hillsAndFast: rule,
    heldBack: decision.heldBack.map((kind) => ({ kind, untilStage: firstStage(kind, stageMost) })),
    moveToFlat: habit.hillyRoutes && decision.decision !== 'none',
    mayGrow,
  };
}

function mayGrowOf(
  { decision, most }: RunDecision,
  { runsPerWeek, fastMinutes, climbM, held }: RunHabit,
  byLadder: boolean,
  rules: RunningPlanRules,
  rungRules: RungRules,
): MayGrow {
  if (decision === 'none' || held === true) return { what: 'nothing', weeksApart: 1 };
  if (byLadder) {
    const weeksApart = Math.ceil(rungDays(ladderRuns(runsPerWeek, rules), rungRules) / 7);
    return { what: 'walk-run-ladder', weeksApart };
  }
  if (most === 'longer') return { what: 'longest-run', weeksApart: 1 };
  const dosed =
    (most === 'fast' && fastMinutes !== null) ||
    (order(most) >= order('hills-or-strides') && climbM !== null);
  return { what: dosed ? 'fast-or-climb' : 'nothing', weeksApart: 1 };
}

/** Without anybody's turns: grown as soon as the rules for going on allow. */
function freeRules(
  frames: readonly Frame[],
  { races }: RunHabit,
  { raceEasyDays }: RunningPlanRules,
  { what, weeksApart }: MayGrow,
): RunWeekRule[] {
  let full = 0;
  return frames.map(({ from, to }, index) => {
    const keptEasy = races.some(
      ({ on, km }) => on <= to && addDays(on, easyDaysAfterRace(km, raceEasyDays)?.to ?? 0) >= from,
    );
    const ready = weeksApart > 1 ? index > 0 && index % weeksApart === 0 : full > 0;
    if (!keptEasy) full += 1;
    return { keptEasy, grows: ready && what !== 'nothing', opens: 'fast' };
  });
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

type Frame = Pick<RunWeek, 'week' | 'from' | 'to'>;

/** Seven days each from the start; the last one ends on the day before `reviewOn`. */
export function weekFrames({
  startOn,
  reviewOn,
}: {
  readonly startOn: IsoDate;
  readonly reviewOn: IsoDate;
}): Frame[] {
  const weeks = Math.max(0, Math.ceil(daysBetween(startOn, reviewOn) / 7));
  return Array.from({ length: weeks }, (_, index) => {
    const from = addDays(startOn, 7 * index);
    const sunday = addDays(from, 6);
    const to = sunday < reviewOn ? sunday : addDays(reviewOn, -1);
    return { week: index + 1, from, to };
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
