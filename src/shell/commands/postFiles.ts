/** What one person is sent: calendar, message and, where it is sealed, the link. */
import type { Made } from '../../messages/en/clinician/made.ts';
import type { Attachment } from '../../outputs/mail/attachment.ts';
import type { Link } from '../../outputs/mail/messageText.ts';
import type { Programme } from '../../programme/programme.ts';
import type { OutFile } from '../io/site.ts';

export interface Sent {
  readonly files: readonly OutFile[];
  readonly made: Pick<Made, 'calendar' | 'message' | 'attached' | 'sealed'>;
}

/** `page`: the leaflet's HTML; null where it was not made. `link`: null where nothing is sealed. */
export async function postFiles(
  programme: Programme,
  pdf: Uint8Array,
  page: Uint8Array | string | null,
  link: Link | null,
): Promise<Sent> {
  const [{ sessionsIcs }, { messageEml }, { messageText }] = await Promise.all([
    import('../../outputs/calendar/sessionsIcs.ts'),
    import('../../outputs/mail/messageEml.ts'),
    import('../../outputs/mail/messageText.ts'),
  ]);
  const calendar = sessionsIcs(programme);
  const there = { pdf, page, calendar };
  const attachments = (['pdf', 'page', 'calendar'] as const).flatMap((kind): Attachment[] => {
    const content = there[kind];
    return content === null || !programme.post.attach[kind] ? [] : [{ kind, bytes: bytesOf(content) }];
  });
  const attached = attachments.map(({ kind }) => kind);
  const eml = messageEml(programme, attachments, link);
  const folder = `private/${programme.alias}`;
  return {
    files: [
      ...(calendar === null ? [] : [{ path: `${folder}/sessions.ics`, bytes: calendar }]),
      ...(eml === null ? [] : [{ path: `${folder}/message.eml`, bytes: eml }]),
      { path: `${folder}/message.txt`, bytes: messageText(programme, attached, link) },
      ...(link === null ? [] : [{ path: `${folder}/link.txt`, bytes: `${link.address}\n` }]),
    ],
    made: {
      calendar: calendar === null ? null : countedEvents(programme),
      message: eml !== null,
      attached,
      sealed: link === null ? null : { hasWords: link.hasWords },
    },
  };
}

function countedEvents({ post: { events } }: Programme): Made['calendar'] {
  const cancelled = events.filter(({ isCancelled }) => isCancelled).length;
  return { planned: events.length - cancelled, cancelled };
}

function bytesOf(content: Uint8Array | string): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
