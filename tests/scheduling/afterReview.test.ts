/** What a review of running leaves of the next runs, and what the clinician's own entry changes of it (house rules 5 and 7). */
import { describe, expect, it } from 'vitest';
import { mostAfterReview, type RunLedTo } from '../../src/scheduling/afterReview.ts';
import { runDecision, type RunChoice } from '../../src/scheduling/runDecision.ts';
import type { RunKind } from '../../src/scheduling/run.ts';
import { running } from './houseRules.ts';

const decided = (move: RunLedTo, clinicianOwn: RunChoice | null = null, mostBefore: RunKind | null = null) =>
  runDecision(
    {
      runs: true,
      recorded: 'keep',
      clinicianOwn,
      irritability: 'low',
      usualPain: 1,
      worstTestPain: 1,
    },
    {
      noRunning: [],
      stageMost: 'fast',
      stageTensionBw: null,
      review: { revision: 1, move, mostBefore },
    },
    running,
  );

describe('after a review', () => {
  it.each<[RunLedTo, RunKind | null, RunKind]>([
    // move, hardest run before, hardest run now
    ['stay', null, 'fast'],
    ['stay', 'easy', 'easy'],
    ['stay', 'walk-run', 'walk-run'],
    ['easeBack', 'fast', 'longer'],
    ['easeBack', 'walk-run', 'walk-run'],
    ['startAgain', 'fast', 'walk-run'],
    ['beSeen', 'fast', 'none'],
  ])('%s, with %s before: %s', (move, before, most) => {
    expect(mostAfterReview(move, before)).toBe(most);
    expect(decided(move, null, before).most).toBe(most);
    expect(decided(move, null, before).because.map(({ code }) => code)).toContain('review-of-running');
  });

  it.each<[RunLedTo, RunKind, boolean]>([
    // the clinician's own entry, keep: hardest run, over the rules
    ['stay', 'fast', false],
    ['easeBack', 'fast', false],
    ['startAgain', 'easy', true],
    ['beSeen', 'easy', true],
  ])('%s, decided otherwise: %s', (move, most, overRules) => {
    expect(decided(move, 'keep', 'easy')).toMatchObject({ most, overRules });
  });
});
