/** `message.eml`: the message as a draft (RFC 5322, 2045 to 2047), without anybody it goes to. */
import { createHash } from 'node:crypto';
import { Mailbox, MIMEMessage } from 'mail-mime-builder';
import type { Posted } from '../../programme/programme.ts';
import { oneLineText } from '../../units/oneLineText.ts';
import { ATTACHED, type Attachment } from './attachment.ts';
import { base64Lines } from './base64Lines.ts';
import { messageText, type Link } from './messageText.ts';
import { shortenedTo } from './shortenedTo.ts';

// RFC 2047, 2: an encoded word has 75 characters at most, of which base64 gives three octets for four.
const OCTETS_PER_ENCODED_WORD = 45;

/**
 * Null where the clinic gives no mail address, since every message must say whom it is from. `X-Unsent` lets mail programs
 * that know it open the file as a draft; the date is the consult's. Same programme, same bytes.
 */
export function messageEml(
  programme: Posted,
  attachments: readonly Attachment[],
  link: Link | null,
): string | null {
  const { from, message } = programme.post;
  if (from === null) return null;
  const mail = new MIMEMessage();
  const seal = sealOf(programme);
  // A hyphen stands in no line of base64, and every part is written in that.
  mail.boundaries = { mixed: `loadleaf-${seal}`, alt: `loadleaf-a-${seal}`, related: `loadleaf-r-${seal}` };
  mail.setHeader('Date', dateText(programme.seenOn));
  mail.setHeader('Message-ID', `<${seal}@${from.address.split('@')[1]}>`);
  mail.setHeader('X-Unsent', '1');
  if (programme.mark !== undefined) mail.setHeader('X-Loadleaf-Mark', programme.mark);
  const name = shortenedTo(OCTETS_PER_ENCODED_WORD, oneLineText(from.name));
  mail.setHeader('From', new Mailbox({ name, addr: from.address, type: 'From' }));
  mail.setSubject(shortenedTo(OCTETS_PER_ENCODED_WORD, oneLineText(message.subject)));
  const text = messageText(
    programme,
    attachments.map(({ kind }) => kind),
    link,
  );
  mail.addMessage({
    contentType: 'text/plain',
    encoding: 'base64',
    data: base64Lines(new TextEncoder().encode(text.replaceAll('\n', '\r\n'))),
  });
  for (const { kind, bytes } of attachments)
    mail.addAttachment({
      filename: ATTACHED[kind].name,
      contentType: ATTACHED[kind].type,
      encoding: 'base64',
      data: base64Lines(bytes),
    });
  return `${mail.asRaw()}\r\n`;
}

/** By which this message is known, and its parts are parted. */
function sealOf({ alias, revision, mark = '' }: Posted): string {
  return createHash('sha256')
    .update(`loadleaf message\0${alias}\0${revision}\0${mark}`)
    .digest('hex')
    .slice(0, 24);
}

/** @example dateText('2026-03-02') // => 'Mon, 02 Mar 2026 12:00:00 +0000' */
function dateText(date: string): string {
  return new Date(`${date}T12:00:00Z`).toUTCString().replace('GMT', '+0000');
}
