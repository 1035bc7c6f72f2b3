/** How long a session is planned and how many exercises it has: the usual length, or all that the consult gives (house rules 11.9). */
import type { SessionLength } from '../terms/sessionLength.ts';
import type { Bounds, Person } from './person.ts';

/** From the second stage on a session has the usual length, unless the consult gives so many minutes that all are used. */
export function sessionLength({ consult, protocol }: Person, { name, stage }: Bounds): SessionLength {
  const { usualMinutes, usualExercises, longerFromMinutes } = protocol.session;
  const { minutesPerDay } = consult;
  if (name === 1 || minutesPerDay >= longerFromMinutes.value)
    return { minutes: minutesPerDay, exercisesAtMost: stage.maxExercises, decidedBy: 'consult' };
  return {
    minutes: Math.min(minutesPerDay, usualMinutes.value),
    exercisesAtMost: Math.min(stage.maxExercises, usualExercises.value),
    decidedBy: minutesPerDay <= usualMinutes.value ? 'consult' : 'usual',
  };
}
