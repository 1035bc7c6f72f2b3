/** What a person is sent, told before it is made: for the note. */
import type { Made } from '../messages/en/clinician/made.ts';
import type { Link } from '../outputs/mail/messageText.ts';
import type { Programme } from '../programme/programme.ts';

export type Sent = Pick<Made, 'calendar' | 'message' | 'attached' | 'sealed'>;

/** `hasPage`: whether the leaflet's page is made too. `link`: null where nothing is sealed. */
export function sentOf(
  { post }: Pick<Programme, 'post'>,
  hasPage: boolean,
  link: Pick<Link, 'hasWords'> | null,
): Sent {
  const isThere = { pdf: true, page: hasPage, calendar: post.events.length > 0 };
  return {
    calendar: isThere.calendar ? countedEvents(post) : null,
    message: post.from !== null,
    attached: (['pdf', 'page', 'calendar'] as const).filter((kind) => isThere[kind] && post.attach[kind]),
    sealed: link === null ? null : { hasWords: link.hasWords },
  };
}

function countedEvents({ events }: Programme['post']): Made['calendar'] {
  const cancelled = events.filter(({ isCancelled }) => isCancelled).length;
  return { planned: events.length - cancelled, cancelled };
}
