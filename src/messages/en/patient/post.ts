/** What the message and the calendar say. Nothing clinical, and no name: both pass through many hands. */
import type { Clinic } from '../../../content/library.ts';
import type { EventKind } from '../../../decisions/terms/calendarEvent.ts';

const NEUTRAL: Readonly<Record<EventKind, string>> = { exercises: 'Exercises', run: 'Run', race: 'Race' };

/** The title of a calendar entry that tells nobody anything. */
export function neutralTitle(kind: EventKind): string {
  return NEUTRAL[kind];
}

const SUBJECT = 'Your home exercises';

/** Sentences of the message, each for the case in which its thing is really there. */
export interface MessageWords {
  readonly subject: string;
  readonly greeting: string;
  readonly attached: Readonly<Record<'intro' | 'pdf' | 'page' | 'calendar', string>>;
  /** Where nothing is attached and no link is given. */
  readonly bare: string;
  readonly link: Readonly<Record<'intro' | 'words' | 'after', string>>;
  /** Whom to ring, a line each. */
  readonly contact: readonly string[];
  readonly emergency: string;
  readonly closing: readonly string[];
}

/** @example greeting('Ada') // => 'Hello Ada,' */
export function greeting(firstName: string | null): string {
  return firstName === null ? 'Hello,' : `Hello ${firstName},`;
}

export function messageWords(clinic: Clinic, country: string, clinician: string): MessageWords {
  return {
    subject: clinic.post.subject ?? SUBJECT,
    greeting: greeting(null),
    attached: {
      intro: 'Attached to this message:',
      pdf: 'a PDF: your leaflet, to print or to read.',
      page: 'a page (HTML): the same for a screen. Save it, then open it in your browser.',
      calendar:
        'a calendar file (ICS): your days, for the calendar on your phone. When you get a newer one, open that too, and look whether the old days have gone.',
    },
    bare: 'Your leaflet comes by another way.',
    link: {
      intro: 'Your leaflet is here. The address is yours alone, so please keep it and do not pass it on:',
      words: 'The page asks for five words. We tell you them by telephone, never in a message.',
      after: 'Under this address you always find the newest one.',
    },
    contact: [
      'If anything is unclear, or something feels wrong, ring us before you go on:',
      clinic.name,
      ...clinic.contact,
    ],
    emergency: `In an emergency do not write: call ${clinic.emergency[country]?.emergencyNumber ?? ''}.`,
    closing: ['With kind regards', clinician],
  };
}
