/** The outputs of one person's set, a row each, for build and desk alike: a new one is its own folder and a row here. */
import type { AttachedKind } from '../outputs/mail/attachment.ts';
import type { Programme } from '../programme/programme.ts';
import type { Bytes, Making, Output } from './output.ts';
import { sentOf } from './sent.ts';

const ATTACHED: Readonly<Record<AttachedKind, string>> = {
  pdf: 'leaflet.pdf',
  page: 'leaflet.html',
  calendar: 'sessions.ics',
};

export const OUTPUTS = [
  {
    file: 'leaflet.html',
    room: 'html',
    isNamed: true,
    make: (programme, { rooms, assets }) => rooms.html.leafletHtml(programme, assets.pages),
  },
  {
    file: 'record.html',
    room: 'html',
    make: (programme, { rooms, assets }) => rooms.html.recordHtml(programme, assets.pages),
  },
  {
    file: 'leaflet.pdf',
    room: 'pdf',
    isNamed: true,
    make: (programme, { rooms, assets }) => rooms.pdf.leafletPdf(programme, assets.paper),
  },
  {
    file: 'fridge.pdf',
    room: 'pdf',
    isFor: ({ post }, { isFridgeAsked }) => post.fridge || isFridgeAsked,
    make: (programme, { rooms, assets }) => rooms.pdf.fridgePdf(programme, assets.paper),
  },
  { file: 'record.json', room: 'text', make: (programme, { rooms }) => rooms.text.recordJson(programme) },
  { file: 'note.txt', room: 'text', parts: ['fridge.pdf'], tellsLink: true, make: noteOf },
  {
    file: 'letter.txt',
    room: 'text',
    isFor: ({ letter }) => letter !== null,
    make: (programme, { rooms }) => programme.letter && rooms.text.letterText(programme.letter, programme),
  },
  {
    file: 'sessions.ics',
    room: 'calendar',
    isFor: ({ post }) => post.events.length > 0,
    make: (programme, { rooms }) => rooms.calendar.sessionsIcs(programme),
  },
  {
    file: 'message.eml',
    room: 'mail',
    parts: Object.values(ATTACHED),
    isNamed: true,
    tellsLink: true,
    isFor: ({ post }) => post.from !== null,
    make: messageOf,
  },
  {
    file: 'message.txt',
    room: 'mail',
    isNamed: true,
    tellsLink: true,
    make: async (programme, { rooms, link }) =>
      rooms.mail.messageText(programme, sentOf(programme).attached, await link()),
  },
  {
    file: 'link.txt',
    room: null,
    hasNoMark: true,
    isFor: (_, { isSealed }) => isSealed,
    make: async (_, { link }) => `${(await link())?.address ?? ''}\n`,
  },
] as const satisfies readonly Output[];

export type OutputFile = (typeof OUTPUTS)[number]['file'];

/** The row of a file. Throws where there is none. */
export function outputOf(file: string): Output {
  const output = OUTPUTS.find((one) => one.file === file);
  if (output === undefined) throw new Error(`no output is called ${file}`);
  return output;
}

/** It tells what is made beside it. */
async function noteOf(programme: Programme, { rooms, part, isSealed }: Making): Promise<string> {
  return rooms.text.noteText(programme, {
    ...sentOf(programme),
    pdf: true,
    fridge: (await part('fridge.pdf')) !== null,
    letter: programme.letter !== null,
    sealed: isSealed ? { hasWords: programme.post.words } : null,
  });
}

async function messageOf(programme: Programme, { rooms, part, link }: Making): Promise<string | null> {
  const attachments = [];
  for (const kind of sentOf(programme).attached) {
    const bytes = await part(ATTACHED[kind]);
    if (bytes !== null) attachments.push({ kind, bytes: bytesOf(bytes) });
  }
  return rooms.mail.messageEml(programme, attachments, await link());
}

function bytesOf(content: Bytes): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
