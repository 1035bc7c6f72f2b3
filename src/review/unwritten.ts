/**
 * What nobody wrote down bars moving on, as far as it could have been bad: leaving out a bad morning, or a session that
 * hurt, must never let a step go on sooner. It asks for less of nobody: that takes entries.
 */
import { addDays, type IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import type { Work } from './goingOn.ts';
import { worstMorningsOf } from './mornings.ts';

/** The work with every unwritten morning at its worst, and without a session whose next morning is not written down. */
export function atWorst({ sessions, mornings }: Work, period: Period): Work {
  const lastOn = addDays(period.until, -1);
  const isOpen = mornings.at(-1)?.on !== period.until;
  return {
    sessions: sessions.map((one) =>
      isOpen && one.on === lastOn ? { ...one, done: false, inFull: false } : one,
    ),
    mornings: worstMorningsOf(period),
  };
}

/** Mornings without a score, in order; that of the review where a session of the day before waits for it. */
export function unwrittenMornings({ sessions, mornings }: Work, { until }: Period): readonly IsoDate[] {
  const before = mornings.flatMap(({ on, score }) => (score === null ? [on] : []));
  const waits = sessions.some(({ on, done }) => done && on === addDays(until, -1));
  return waits && mornings.at(-1)?.on !== until ? [...before, until] : before;
}
