/** The calendar of a person's set. */
export { sessionsIcs } from './sessionsIcs.ts';
