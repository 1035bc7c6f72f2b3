/** One run of a week, and a rung of the walk-run ladder. */
import type { RunKind } from './run.ts';

/** Exactly one of `km`, `minutes` and `walkRun` is set. */
export interface PlannedRun {
  /** `run-1`, `run-2` …: the same run has the same id every week, so that the week's plan holds for all of them. */
  readonly id: string;
  readonly kind: RunKind;
  readonly km: number | null;
  readonly minutes: number | null;
  readonly walkRun: WalkRunRung | null;
  /** Of a fast or hilly run, where somebody has set them. */
  readonly fastMinutes: number | null;
  readonly climbM: number | null;
}

/** Minutes a cycle, and in all. */
export interface WalkRunRung {
  /** From 1. */
  readonly rung: number;
  readonly cycles: number;
  readonly runMinutes: number;
  readonly walkMinutes: number;
  readonly totalRunMinutes: number;
  readonly totalWalkMinutes: number;
}

/** Id of the run that goes further than every other of the week; null where none does, or none goes by distance. */
export function longestOf(runs: readonly PlannedRun[]): string | null {
  const far = [...runs].sort((one, other) => (other.km ?? 0) - (one.km ?? 0));
  const [first, second] = far;
  return first !== undefined && (first.km ?? 0) > (second?.km ?? 0) ? first.id : null;
}
