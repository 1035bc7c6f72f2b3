/** What the desk says of itself. */

export const DESK_WORDS = {
  title: 'Desk',
  lead: 'Everything is worked out in this browser; nothing is sent. Until it is saved, the draft is kept in this tab and nowhere else.',
  toLeaflet: 'To the leaflet',
  fromDisk:
    'The desk cannot work when its page is opened straight from a disk: browsers forbid it to read what lies beside it. Open it by "loadleaf serve", or from a site with HTTPS.',
  draftIsBack: 'The draft of this tab lies on the desk again.',
} as const;

export function notBegunText(fault: string): string {
  return `The desk could not begin: ${fault}`;
}
