/** What a person is sent, told before it is made: for note and message. */
import type { Made } from '../messages/en/clinician/made.ts';
import type { Programme } from '../programme/programme.ts';

export type Sent = Pick<Made, 'calendar' | 'message' | 'attached'>;

export function sentOf({ post }: Pick<Programme, 'post'>): Sent {
  const hasCalendar = post.events.length > 0;
  return {
    calendar: hasCalendar ? countedEvents(post) : null,
    message: post.from !== null,
    attached: (['pdf', 'page', 'calendar'] as const).filter(
      (kind) => post.attach[kind] && (kind !== 'calendar' || hasCalendar),
    ),
  };
}

function countedEvents({ events }: Programme['post']): Made['calendar'] {
  const cancelled = events.filter(({ isCancelled }) => isCancelled).length;
  return { planned: events.length - cancelled, cancelled };
}
