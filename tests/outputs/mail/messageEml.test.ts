/**
 * The message against RFC 5322 and RFC 2045 to 2047 (from memory, but for the parts that readers check), by two readers
 * that are not ours: mailparser and postal-mime.
 */
import fc from 'fast-check';
import { simpleParser } from 'mailparser';
import PostalMime from 'postal-mime';
import { describe, expect, it } from 'vitest';
import { MAIL_ADDRESS } from '../../../src/content/schema/post.ts';
import { sessionsIcs } from '../../../src/outputs/calendar/sessionsIcs.ts';
import { ATTACHED, type Attachment } from '../../../src/outputs/mail/attachment.ts';
import { messageEml } from '../../../src/outputs/mail/messageEml.ts';
import { messageText, type Link } from '../../../src/outputs/mail/messageText.ts';
import { shortenedTo } from '../../../src/outputs/mail/shortenedTo.ts';
import type { Posted } from '../../../src/programme/programme.ts';
import { addDays, type IsoDate } from '../../../src/units/date.ts';
import { oneLineText } from '../../../src/units/oneLineText.ts';
import { otter } from '../../fixtures/programme.ts';
import { NAUGHTY } from '../../laws/naughty.ts';
import { day } from '../../programme/person.ts';

const SEED = 20261130;
/** As a finished programme, with its mark. */
const MARK = '1a2b3c4d';
const CALENDAR = sessionsIcs(otter) ?? '';
const HEADERS = [
  'content-type',
  'date',
  'from',
  'message-id',
  'mime-version',
  'subject',
  'x-loadleaf-mark',
  'x-unsent',
];

const LINK: Link = { address: 'https://larkfield.example/for/abc/#key', hasWords: true };

interface Case {
  readonly programme: Posted;
  readonly attachments: readonly Attachment[];
  readonly link: Link | null;
}

/** What both readers agree on. */
interface ReadMail {
  readonly headers: readonly string[];
  readonly subject: string | undefined;
  readonly from: readonly (readonly [string, string | undefined])[];
  readonly others: number;
  readonly date: string | undefined;
  readonly unsent: string | undefined;
  readonly mark: string | undefined;
  readonly text: string;
  readonly attachments: readonly { readonly name: string; readonly type: string; readonly hex: string }[];
}

async function byMailparser(eml: string): Promise<ReadMail> {
  const mail = await simpleParser(eml, { skipTextToHtml: true, skipHtmlToText: true });
  return {
    headers: [...mail.headers.keys()].sort(),
    subject: mail.subject,
    from: (mail.from?.value ?? []).map(({ name, address }) => [name, address] as const),
    others: [mail.to, mail.cc, mail.bcc, mail.replyTo].filter((one) => one !== undefined).length,
    date: mail.date?.toISOString(),
    unsent: mail.headers.get('x-unsent') as string | undefined,
    mark: mail.headers.get('x-loadleaf-mark') as string | undefined,
    text: (mail.text ?? '').replaceAll('\r\n', '\n').trimEnd(),
    attachments: mail.attachments.map(({ filename = '', contentType, content }) => ({
      name: filename,
      type: contentType,
      hex: content.toString('hex'),
    })),
  };
}

// This reader gives calendars as text with line feeds alone; mailparser gives the octets.
function asSent(content: Buffer, type: string): Buffer {
  return type === 'text/calendar' ? Buffer.from(content.toString().replaceAll('\n', '\r\n')) : content;
}

async function byPostalMime(eml: string): Promise<ReadMail> {
  const mail = await PostalMime.parse(eml);
  return {
    headers: [...new Set(mail.headers.map(({ key }) => key))].sort(),
    subject: mail.subject,
    from: mail.from === undefined ? [] : [[mail.from.name ?? '', mail.from.address]],
    others: [mail.to, mail.cc, mail.bcc, mail.replyTo].filter((one) => one !== undefined).length,
    date: mail.date === undefined ? undefined : new Date(mail.date).toISOString(),
    unsent: mail.headers.find(({ key }) => key === 'x-unsent')?.value,
    mark: mail.headers.find(({ key }) => key === 'x-loadleaf-mark')?.value,
    text: (mail.text ?? '').replaceAll('\r\n', '\n').trimEnd(),
    attachments: mail.attachments.map(({ filename, mimeType, content }) => ({
      name: filename ?? '',
      type: mimeType,
      hex: asSent(Buffer.from(content as unknown as Uint8Array), mimeType).toString('hex'),
    })),
  };
}

function expected({ programme, attachments, link }: Case): ReadMail {
  const { from, message } = programme.post;
  const kinds = attachments.map(({ kind }) => kind);
  return {
    // A message of one part says there how it is written.
    headers: [...(attachments.length === 0 ? ['content-transfer-encoding'] : []), ...HEADERS],
    subject: shortenedTo(45, oneLineText(message.subject)),
    from: [[shortenedTo(45, oneLineText(from?.name ?? '')), from?.address]],
    others: 0,
    date: `${programme.seenOn}T12:00:00.000Z`,
    unsent: '1',
    mark: programme.mark,
    text: messageText(programme, kinds, link).trimEnd(),
    attachments: attachments.map(({ kind, bytes }) => ({
      name: ATTACHED[kind].name,
      type: ATTACHED[kind].type,
      hex: Buffer.from(bytes).toString('hex'),
    })),
  };
}

function bytesFaults(eml: string): string[] {
  const head = eml.slice(0, eml.indexOf('\r\n\r\n'));
  return [
    ...(/(?<!\r)\n|\r(?!\n)/.test(eml) ? ['a bare break'] : []),
    ...(/[^\t\r\n\x20-\x7e]/.test(eml) ? ['an octet that is no ASCII'] : []),
    ...(eml.endsWith('\r\n') ? [] : ['no break at the end']),
    ...eml.split('\r\n').filter((line) => line.length > 200),
    ...(head.match(/=\?[^?]*\?B\?[^?]*\?=/g) ?? []).filter((word) => word.length > 75),
    ...(/^(to|cc|bcc|resent-)/im.test(head) ? ['somebody it goes to'] : []),
  ];
}

const naughty = fc.oneof(
  fc.constantFrom(...NAUGHTY),
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc.constantFrom(
    'Bob\r\nBcc: evil@elsewhere.example',
    'a\nTo: evil@elsewhere.example\n\nbody',
    '=?utf-8?Q?evil=0D=0ABcc:_x@y.example?=',
    'x, evil@elsewhere.example',
    '"><script>alert(1)</script>',
    '--loadleaf-boundary\r\nContent-Type: text/html',
  ),
);

const someone: fc.Arbitrary<Case> = fc
  .record({
    texts: fc.array(naughty, { minLength: 12, maxLength: 12 }),
    contact: fc.array(naughty, { minLength: 1, maxLength: 4 }),
    days: fc.integer({ min: 0, max: 800 }),
    revision: fc.integer({ min: 1, max: 99 }),
    kinds: fc.subarray(['pdf', 'page', 'calendar'] as const),
    bytes: fc.array(fc.uint8Array({ maxLength: 400 }), { minLength: 3, maxLength: 3 }),
    link: fc.constantFrom(null, LINK, { ...LINK, hasWords: false }),
  })
  .map(({ texts, contact, days, revision, kinds, bytes, link }) => {
    const text = (at: number) => texts[at] ?? '';
    const seenOn: IsoDate = addDays(day('2026-01-01'), days);
    const message = {
      subject: `Your exercises ${text(0)}`,
      greeting: `Hello ${text(1)}`,
      attached: { intro: text(2), pdf: text(3), page: text(4), calendar: text(5) },
      bare: text(6),
      link: { intro: text(7), words: text(8), after: text(9) },
      contact,
      emergency: text(10),
      closing: [text(11), 'the end'],
    };
    const from = { name: `Clinic ${text(11)}`, address: 'desk@larkfield.example' };
    return {
      programme: { ...otter, mark: MARK, revision, seenOn, post: { ...otter.post, message, from } },
      attachments: kinds.map((kind, at) => ({
        kind,
        bytes: kind === 'calendar' ? new TextEncoder().encode(CALENDAR) : (bytes[at] ?? new Uint8Array()),
      })),
      link,
    };
  });

const CASES = fc.sample(someone, { seed: SEED, numRuns: 1000 });
const emlOf = ({ programme, attachments, link }: Case) => messageEml(programme, attachments, link) ?? '';
const EMLS = CASES.map(emlOf);

describe('1,000 messages with naughty words in every field', () => {
  it('are in order byte for byte, and go to nobody', () => {
    expect(EMLS.flatMap(bytesFaults)).toEqual([]);
  });

  it.each([
    ['mailparser', byMailparser],
    ['postal-mime', byPostalMime],
  ])('%s reads what was written: no header, no recipient, no part more', async (_, read) => {
    for (const [at, one] of CASES.entries()) {
      const found = await read(EMLS[at] ?? '');
      const wanted = expected(one);
      // Space at the ends and in a row is the readers' to keep or not.
      const plain = (text: string | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();
      expect(plain(found.text)).toBe(plain(wanted.text));
      expect(plain(found.subject)).toBe(plain(wanted.subject));
      expect(found.from.map(([name, address]) => [plain(name), address])).toEqual(
        wanted.from.map(([name, address]) => [plain(name), address]),
      );
      expect({ ...found, text: '', subject: '', from: [] }).toEqual({
        ...wanted,
        text: '',
        subject: '',
        from: [],
      });
    }
  });
});

describe('a message', () => {
  const one: Case = {
    programme: otter,
    attachments: [{ kind: 'pdf', bytes: new TextEncoder().encode('%PDF-1.7') }],
    link: null,
  };

  it('is the same bytes each time, and other bytes for another revision', () => {
    expect(emlOf(one)).toBe(emlOf(one));
    expect(emlOf({ ...one, programme: { ...otter, revision: 3 } })).not.toBe(emlOf(one));
  });

  it('is a draft from the clinic with the date of the consult', () => {
    expect(emlOf(one)).toMatch(/^X-Unsent: 1\r$/m);
    expect(emlOf(one)).toMatch(/^Date: Mon, 02 Mar 2026 12:00:00 \+0000\r$/m);
    expect(emlOf(one)).toMatch(/^From: .*<hello@harbour-lane\.example>\r$/m);
  });

  it('is none where the clinic has no address', () => {
    expect(messageEml({ ...otter, post: { ...otter.post, from: null } }, [], null)).toBeNull();
  });

  it('carries the mark of its set in a header and at the end of its text; without one, none', () => {
    const finished = { ...otter, mark: MARK };
    expect(emlOf({ ...one, programme: finished })).toMatch(/^X-Loadleaf-Mark: 1a2b3c4d\r$/m);
    expect(emlOf(one)).not.toContain('X-Loadleaf-Mark');
    expect(messageText(finished, [], null)).toBe(`${messageText(otter, [], null)}\nMark ${MARK}\n`);
  });

  it('says only what is there', () => {
    const bare = messageText(otter, [], null);
    expect(bare).toContain(otter.post.message.bare);
    expect(bare).not.toContain(otter.post.message.attached.intro);
    const linked = messageText(otter, ['pdf'], { ...LINK, hasWords: false });
    expect(linked).toContain(`\n${LINK.address}\n`);
    expect(linked).not.toContain(otter.post.message.link.words);
    expect(linked).toContain(otter.post.message.attached.pdf);
    expect(linked).not.toContain(otter.post.message.attached.page);
    expect(messageText(otter, ['pdf'], LINK)).toContain(otter.post.message.link.words);
  });
});

describe('an address', () => {
  it.each([
    ['desk@larkfield.example', true],
    ['a.b+c@x-y.example', true],
    ['desk@larkfield', false],
    ['desk@larkfield.example\r\nBcc: x@y.example', false],
    ['desk@larkfield.example, x@y.example', false],
    ['<desk@larkfield.example>', false],
    ['a..b@larkfield.example', false],
    ['dësk@larkfield.example', false],
  ])('%j: %s', (text, isOne) => {
    expect(MAIL_ADDRESS.test(text)).toBe(isOne);
  });
});
