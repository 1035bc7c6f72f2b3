/** What a race takes from the week: named, so that nobody misses it (house rules 11.7). */
import type { IsoDate } from '../units/date.ts';

export type LostWhat = 'session' | 'hard-run' | 'outing' | 'run' | 'other';

export interface Lost {
  readonly on: IsoDate;
  readonly what: LostWhat;
  /** The other hard thing by its name, the kind of run, `holds` where light holds take a session's place, or empty. */
  readonly name: string;
  readonly because: 'before-race' | 'race-day' | 'after-race';
  readonly raceOn: IsoDate;
}
