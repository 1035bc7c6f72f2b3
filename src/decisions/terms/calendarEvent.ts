/** One entry of the patient's calendar, as a code with its numbers. */
import type { IsoDate } from '../../units/date.ts';

export type EventKind = 'exercises' | 'run' | 'race';

export interface CalendarEvent {
  readonly on: IsoDate;
  /** Of each kind there is at most one a day: day and kind name it for good. */
  readonly kind: EventKind;
  /** Local time wherever the phone is, `HH:MM`. */
  readonly at: string;
  readonly minutes: number;
  /** Planned by an earlier revision, and no longer. */
  readonly isCancelled: boolean;
}
