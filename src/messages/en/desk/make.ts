/** What is said where files are made at the desk. */

/** By the name of the file that `build` writes. */
export const MADE_WORDS = {
  'leaflet.html': 'Leaflet',
  'leaflet.pdf': 'Leaflet, PDF',
  'record.json': 'Record, JSON',
  'record.html': 'Record',
  'note.txt': 'Note',
  'letter.txt': 'Letter',
  'message.eml': 'Message, draft',
  'message.txt': 'Message, text',
  'sessions.ics': 'Calendar',
  'fridge.pdf': 'Sheet for the fridge, PDF',
  sealed: 'Sealed leaflet, archive',
} as const;

export const MAKE_BAR = 'Make';
export const FIRST_NAME = 'First name, on the leaflet and in the message alone';
export const SECRET = 'Clinic secret, for sealed leaflets; read into memory alone';
export const SITE = 'Address of the site they are put on';
export const NO_LETTER = 'There is no letter before the treatment ends.';
export const FORGET_SECRET = 'Forget the secret';

export const SECRET_READ = 'The secret is in memory until the page is closed or it is forgotten.';
export const SECRET_FORGOTTEN = 'The secret is forgotten.';
export const NO_SECRET = 'Choose the file of the clinic secret first. There is none yet? loadleaf new secret';
export const NOT_A_SECRET =
  'That file is no secret of ours: one line that begins with loadleaf-secret-1. Nothing was read.';
export const NO_SITE =
  'Write the address of the site first, such as https://clinic.example/: without HTTPS no phone opens what is sealed.';
export const NOT_SECURE =
  'This page was opened without HTTPS, and browsers seal nothing then. Open it by "loadleaf serve", or from a site with HTTPS.';

export const SEALED_TITLE = 'Sealed leaflet';
export const SEALED_UNPACK =
  'Unpack the archive where the site lies: it holds the folder for/. Nobody can read the leaflet without this link:';
export const SEALED_WORDS =
  'The page asks for these five words as well. Tell them by telephone; they are shown once and written nowhere:';
export const SEALED_DONE = 'Take this off the page';

export function madeText(file: string): string {
  return `${file} was made.`;
}

/** @example notMadeText('leaflet.pdf', 'there is no programme') // => 'leaflet.pdf could not be made: there is no programme' */
export function notMadeText(file: string, why: string): string {
  return `${file} could not be made: ${why}`;
}

/** What there is not for this person. */
export function nothingText(file: string): string {
  return `There is no ${file} for this programme.`;
}
