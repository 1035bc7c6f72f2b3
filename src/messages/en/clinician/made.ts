/** What was really made of a programme, for the note. */
import { countText, listText } from '../plain.ts';

export interface Made {
  readonly pdf: boolean;
  readonly letter: boolean;
  readonly fridge: boolean;
  /** Entries of the calendar that stand and that are taken back; null where there is no calendar. */
  readonly calendar: { readonly planned: number; readonly cancelled: number } | null;
  readonly message: boolean;
  /** What is attached to the message. */
  readonly attached: readonly ('pdf' | 'page' | 'calendar')[];
  /** The sealed page; null where none was made. */
  readonly sealed: { readonly hasWords: boolean } | null;
}

const ATTACHED_WORDS = { pdf: 'PDF', page: 'page', calendar: 'calendar' } as const;

/** @example 'Made: page, PDF, calendar (12 entries), message as a draft with PDF and calendar attached.' */
export function madeText({ pdf, letter, fridge, calendar, message, attached, sealed }: Made): string {
  const things = [
    'page',
    ...(pdf ? ['PDF'] : []),
    ...(fridge ? ['sheet for the fridge'] : []),
    ...(letter ? ['letter'] : []),
    ...(calendar === null ? [] : [calendarText(calendar)]),
    ...(sealed === null ? [] : [`sealed page${sealed.hasWords ? ' with five words' : ''}`]),
    message ? `message as a draft with ${attachedText(attached)} attached` : 'message as text only',
  ];
  return `Made: ${listText(things)}.`;
}

function calendarText({ planned, cancelled }: NonNullable<Made['calendar']>): string {
  const taken = cancelled === 0 ? '' : `, ${cancelled} taken back`;
  return `calendar (${countText(planned, 'entry', 'entries')}${taken})`;
}

function attachedText(attached: Made['attached']): string {
  return attached.length === 0 ? 'nothing' : listText(attached.map((kind) => ATTACHED_WORDS[kind]));
}
