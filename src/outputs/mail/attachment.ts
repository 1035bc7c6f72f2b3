/** What goes along with the message. Names tell what it is, and nobody's name. */
export type AttachedKind = 'pdf' | 'page' | 'calendar';

export interface Attachment {
  readonly kind: AttachedKind;
  readonly bytes: Uint8Array;
}

/** File name and media type (RFC 2045), ASCII. */
export const ATTACHED: Readonly<Record<AttachedKind, { readonly name: string; readonly type: string }>> = {
  pdf: { name: 'home-exercises.pdf', type: 'application/pdf' },
  page: { name: 'home-exercises.html', type: 'text/html' },
  calendar: { name: 'sessions.ics', type: 'text/calendar' },
};
