/** What goes by mail and calendar: the part of a programme that leaves the house on its own. */
import type { CalendarEvent } from '../decisions/terms/calendarEvent.ts';
import type { IsoDate } from '../units/date.ts';
import type { MessageWords } from '../messages/en/patient/post.ts';

export interface Post {
  /** By day; with what earlier revisions planned and this one does not. */
  readonly events: readonly TitledEvent[];
  /** Minutes before an event; null for no reminder. */
  readonly alarmMinutes: number | null;
  /** Null where the clinic gives no mail address: then there is no message to send. */
  readonly from: { readonly name: string; readonly address: string } | null;
  readonly attach: Readonly<Record<'pdf' | 'page' | 'calendar', boolean>>;
  readonly message: MessageWords;
  /** The day from which it is in use no longer on the web; null where none is set. */
  readonly withdrawOn: IsoDate | null;
  /** Whether a sealed leaflet asks for five words too. */
  readonly words: boolean;
  /** Whether the one-page sheet is made too. */
  readonly fridge: boolean;
}

export interface TitledEvent extends CalendarEvent {
  readonly title: string;
}
