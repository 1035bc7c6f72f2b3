/** The ladder from walking to running: cycles of a few minutes in which the run grows and the walk shrinks. */
import type { PlannedRun, WalkRunRung } from './plannedRun.ts';
import type { Setting } from '../units/reason.ts';

export interface WalkRunRules {
  readonly walkRunCycleMinutes: Setting;
  readonly walkRunCycles: Setting;
  readonly runsPerWeek: Setting;
}

/** What must be done on a rung before going on, as for the exercises. */
export interface RungRules {
  readonly leastSessions: Setting;
  readonly leastDays: Setting;
}

/**
 * The rungs from one minute of running a cycle to one minute of walking; after the last comes running without a break.
 * 30 minutes as 5 cycles of 6 is the trade's usual ladder [secondary, trade page].
 * @example walkRunLadder(rules).map((rung) => rung.totalRunMinutes) // => [5, 10, 15, 20, 25]
 */
export function walkRunLadder(rules: WalkRunRules): WalkRunRung[] {
  const cycleMinutes = rules.walkRunCycleMinutes.value;
  const cycles = rules.walkRunCycles.value;
  return Array.from({ length: cycleMinutes - 1 }, (_, index) => {
    const runMinutes = index + 1;
    const walkMinutes = cycleMinutes - runMinutes;
    return {
      rung: index + 1,
      cycles,
      runMinutes,
      walkMinutes,
      totalRunMinutes: cycles * runMinutes,
      totalWalkMinutes: cycles * walkMinutes,
    };
  });
}

/** Days on a rung of the ladder at least, with so many runs a week. */
export function rungDays(runs: number, { leastSessions, leastDays }: RungRules): number {
  return Math.max(leastDays.value, Math.ceil((leastSessions.value * 7) / runs));
}

/** Not more runs than the house's count a week (alternate days), nor than the person is used to. */
export function ladderRuns(runsPerWeek: number | null, rules: WalkRunRules): number {
  return Math.max(1, Math.min(7, rules.runsPerWeek.value, runsPerWeek ?? 7));
}

/**
 * The ladder on the weeks to come, a rung further in every week that `grows`. After the last rung runs
 * go without a break where running is kept, and stay on that rung where only walk-run is allowed.
 */
export function runsByLadder(
  weeks: readonly { readonly grows: boolean }[],
  { runsPerWeek, walkRunRung }: { readonly runsPerWeek: number | null; readonly walkRunRung: number | null },
  runningKept: boolean,
  rules: WalkRunRules,
): PlannedRun[][] {
  const ladder = walkRunLadder(rules);
  const wholeMinutes = rules.walkRunCycleMinutes.value * rules.walkRunCycles.value;
  const runs = ladderRuns(runsPerWeek, rules);
  let reached = (walkRunRung ?? 1) - 1;
  return weeks.map(({ grows }) => {
    if (grows) reached += 1;
    const rung = runningKept ? ladder[reached] : ladder[Math.min(reached, ladder.length - 1)];
    return Array.from({ length: runs }, (_, index) => ladderRun(index, rung ?? null, wholeMinutes));
  });
}

function ladderRun(index: number, walkRun: WalkRunRung | null, wholeMinutes: number): PlannedRun {
  return {
    id: `run-${index + 1}`,
    kind: walkRun === null ? 'easy' : 'walk-run',
    km: null,
    minutes: walkRun === null ? wholeMinutes : null,
    walkRun,
    fastMinutes: null,
    climbM: null,
  };
}
