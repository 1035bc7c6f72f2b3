/** What a review of running leaves of the next programme's runs (house rules 5 and 7). */
import { order, type RunKind } from './run.ts';

/** What a review may lead to, short of going on. */
export type RunLedTo = 'stay' | 'easeBack' | 'startAgain' | 'beSeen';

/** The hardest run there may be after it: eased runs hold nothing hard, after a flare running is walked into, and nobody runs before being seen [choice]. */
const MOST_AFTER: Readonly<Record<RunLedTo, RunKind>> = {
  stay: 'fast',
  easeBack: 'longer',
  startAgain: 'walk-run',
  beSeen: 'none',
};

/** Never harder than what was planned before, where anything was. */
export function mostAfterReview(move: RunLedTo, mostBefore: RunKind | null): RunKind {
  const most = MOST_AFTER[move];
  return mostBefore !== null && order(mostBefore) < order(most) ? mostBefore : most;
}
