/** Work between the sessions, which grows with no step: when it is judged apart from the sessions (house rules 4 and 5). */
import type { Period } from './facts.ts';
import type { Work } from './goingOn.ts';

/**
 * An exercise of the days between alone bears on the step through the mornings, which tell what all work together did. Where
 * every session and every morning is written down and each morning was settled, it is held, eased or asked for by itself;
 * otherwise it bars the step, whether it hurt or nobody wrote it down. So no line left out lets a step go on sooner.
 */
export function standsApart(card: string, { sessions, mornings }: Work, { earlier }: Period): boolean {
  const inSessions = earlier.plan.some((day) =>
    day.sessions.some(({ exercises }) => exercises.some((one) => one.card === card)),
  );
  return (
    !inSessions &&
    sessions.every(({ planned, entries }) => !planned || entries.length > 0) &&
    mornings.every(({ decision }) => decision?.answer === 'carry-on')
  );
}
