/** What one person is sent: calendar, message and, where it is sealed, the link. */
import { sessionsIcs } from '../outputs/calendar/sessionsIcs.ts';
import type { Attachment } from '../outputs/mail/attachment.ts';
import { messageEml } from '../outputs/mail/messageEml.ts';
import { messageText, type Link } from '../outputs/mail/messageText.ts';
import type { Programme } from '../programme/programme.ts';
import { sentOf, type Sent } from './sent.ts';

export interface PostFile {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

export interface Posted {
  readonly files: readonly PostFile[];
  readonly made: Sent;
}

/** `page`: the leaflet's HTML; null where it was not made. `link`: null where nothing is sealed. */
export function postFiles(
  programme: Programme,
  pdf: Uint8Array,
  page: Uint8Array | string | null,
  link: Link | null,
): Posted {
  const made = sentOf(programme, page !== null, link);
  const calendar = sessionsIcs(programme);
  const there = { pdf, page, calendar };
  const attachments = made.attached.flatMap((kind): Attachment[] => {
    const content = there[kind];
    return content === null ? [] : [{ kind, bytes: bytesOf(content) }];
  });
  const eml = messageEml(programme, attachments, link);
  return {
    files: [
      ...(calendar === null ? [] : [{ name: 'sessions.ics', bytes: calendar }]),
      ...(eml === null ? [] : [{ name: 'message.eml', bytes: eml }]),
      { name: 'message.txt', bytes: messageText(programme, made.attached, link) },
      ...(link === null ? [] : [{ name: 'link.txt', bytes: `${link.address}\n` }]),
    ],
    made,
  };
}

function bytesOf(content: Uint8Array | string): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
