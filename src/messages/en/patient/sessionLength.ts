/** To what length a session was cut, in words. */
import type { SessionLength } from '../../../decisions/terms/sessionLength.ts';

/** @example fittedTo({ minutes: 25, exercisesAtMost: 4, decidedBy: 'usual' }) // => 'to keep to the usual 25 minutes of a session' */
export function fittedTo({ minutes, decidedBy }: SessionLength): string {
  return decidedBy === 'usual'
    ? `to keep to the usual ${minutes} minutes of a session`
    : `to fit the ${minutes} minutes there are`;
}
