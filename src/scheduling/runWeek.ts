/** The runs of each week by distance: what each kind of run comes to, one new stress at a time. */
import { roundDown } from '../units/round.ts';
import { type GrowthRules, grownKm, growFastOrClimb, type HardDose } from './growth.ts';
import type { PlannedRun } from './plannedRun.ts';
import { order, type RunKind } from './run.ts';
import type { HillsAndFast } from './wish.ts';

export interface DistanceBase extends HardDose {
  readonly weeklyKm: number;
  readonly longestKm: number;
  readonly runsPerWeek: number;
}

// Four weeks back is 28 days: the run of the same weekday still counts among the last 30.
const WEEKS_REMEMBERED = 4;

/** What a week allows its runs. */
export interface RunWeekRule {
  /** All runs alike and easy: a race, or the easy days after one. */
  readonly keptEasy: boolean;
  /** It is the runs' turn to grow. */
  readonly grows: boolean;
  /** The hardest kind that has begun by then. */
  readonly opens: RunKind;
}

/**
 * Runs of each week, kilometres rounded down to 0.1. Up to `easy` all runs are alike; from `longer` on the first keeps
 * the longest distance and the others share the rest; only the hardest kind admitted is the new stress, so the
 * longest run grows only where `longer` is the hardest.
 */
export function runsByDistance(
  weeks: readonly RunWeekRule[],
  base: DistanceBase,
  most: RunKind,
  rule: HillsAndFast,
  rules: GrowthRules,
): PlannedRun[][] {
  const share = shareOut(base, most);
  const longest: number[] = [base.longestKm];
  let hard: HardDose = base;
  let [fullWeeks, held] = [0, 0];
  return weeks.map(({ keptEasy: easyWeek, grows: turn, opens }) => {
    const open = order(opens) < order(most) ? opens : most;
    const kinds = easyWeek ? [] : specialKinds(open, fullWeeks, share.runs, rule);
    const grows = most === 'longer' && turn;
    if (turn && !easyWeek) hard = grownHard(hard, most, kinds, rules);
    // Hills and fast runs take turns by the weeks since both are open.
    if (!easyWeek && open === most) fullWeeks += 1;
    const lastKm = Math.max(...longest.slice(-WEEKS_REMEMBERED));
    const longKm =
      easyWeek || !share.hasLong
        ? share.evenKm
        : grows
          ? grownKm(lastKm, rules)
          : // What has grown is held until the runs' next turn.
            Math.max(held, Math.min(share.longKm, lastKm));
    if (!easyWeek) held = Math.max(held, most === 'longer' ? longKm : 0);
    longest.push(longKm);
    return runsOfWeek(share, longKm, easyWeek, kinds, hard);
  });
}

interface Share {
  readonly runs: number;
  readonly evenKm: number;
  readonly hasLong: boolean;
  readonly longKm: number;
  readonly otherKm: number;
}

/** Weekly distance over the runs; as many runs as it takes to keep each within the longest, seven at most. */
function shareOut({ weeklyKm, longestKm, runsPerWeek }: DistanceBase, most: RunKind): Share {
  const needed = Math.ceil(weeklyKm / longestKm - 1e-9);
  const runs = Math.min(7, Math.max(1, needed, runsPerWeek));
  const evenKm = Math.min(longestKm, roundDown(weeklyKm / runs, 0.1));
  const otherKm = runs === 1 ? 0 : Math.min(longestKm, roundDown((weeklyKm - longestKm) / (runs - 1), 0.1));
  const hasLong = order(most) >= order('longer') && (runs === 1 || otherKm > 0);
  return { runs, evenKm, hasLong, longKm: runs === 1 ? evenKm : longestKm, otherKm };
}

/** The runs that are not easy: from the second run on, so that the longest one stays easy. */
function specialKinds(most: RunKind, week: number, runs: number, rule: HillsAndFast): RunKind[] {
  if (runs < 2) return [];
  if (most === 'steady' || most === 'hills-or-strides') return [most];
  if (most !== 'fast') return [];
  if (rule === 'never-one-week') return [week % 2 === 0 ? 'fast' : 'hills-or-strides'];
  return runs < 3 ? ['fast'] : ['fast', 'hills-or-strides'];
}

// Where fast running is the newest, its minutes grow and the climb stays; where hills are, the climb grows.
function grownHard(hard: HardDose, most: RunKind, kinds: readonly RunKind[], rules: GrowthRules): HardDose {
  if (most === 'fast' && kinds.includes('fast')) return growFastOrClimb(hard, 'fastMinutes', rules);
  if (most === 'hills-or-strides' && kinds.includes(most)) return growFastOrClimb(hard, 'climbM', rules);
  return hard;
}

function runsOfWeek(
  share: Share,
  longKm: number,
  easyWeek: boolean,
  kinds: readonly RunKind[],
  hard: HardDose,
): PlannedRun[] {
  const hasLong = share.hasLong && !easyWeek;
  return Array.from({ length: share.runs }, (_, index) => {
    const special = index === 0 ? undefined : kinds[index - 1];
    const kind = special ?? (index === 0 && hasLong ? 'longer' : 'easy');
    return {
      id: `run-${index + 1}`,
      kind,
      km: index === 0 && hasLong ? longKm : hasLong ? share.otherKm : share.evenKm,
      minutes: null,
      walkRun: null,
      fastMinutes: kind === 'fast' ? hard.fastMinutes : null,
      climbM: kind === 'hills-or-strides' ? hard.climbM : null,
    };
  });
}
