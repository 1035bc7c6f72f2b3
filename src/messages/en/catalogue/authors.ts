/** Words of the authors' reference. The sentences about keys are the schemas' own. */
import type { Kind } from '../../../content/kind.ts';

export const AUTHORS_TITLE = 'For authors: what a file holds';
export const AUTHORS_LEAD =
  'A library is a folder of Markdown files. Each begins with keys between two lines of three hyphens; under them stand a few fixed headings. The sentences below are those of the checks themselves.';

export const KIND_HEADINGS: Readonly<Record<Kind, string>> = {
  exercise: 'Exercise card',
  advice: 'Advice card',
  protocol: 'Staged protocol',
  clinic: 'Clinic file',
  consult: 'Consult file',
  page: 'Page of the clinic',
};

export const KIND_FILES: Readonly<Record<Kind, string>> = {
  exercise: 'exercises/<id>.md, for example exercises/hip-hinge.md',
  advice: 'advice/<id>.md',
  protocol: 'protocols/<id>.md',
  clinic: 'clinic.md',
  page: 'pages/<id>.md, of the clinic’s own folder',
  consult: 'consults/<alias>-r<revision>.md, outside the repository for real people',
};

export const KEY_COLUMNS = ['Key', 'What it is', 'What it may be', 'Needed'] as const;
export const NEEDED = { yes: 'yes', no: 'no' } as const;

export function keysCaption(kind: Kind): string {
  return `Keys of ${KIND_FILES[kind].replace(/,.*$/, '')}`;
}

export function headingsSentence(headings: readonly string[], required: boolean): string {
  if (headings.length === 0)
    return 'Text under the keys, with headings of your own (##) or without any. Paragraphs, lists of two levels, strong, emphasis and links may stand there, and nothing else.';
  return `Headings under the keys, in this order${required ? '' : ', each of which may be left out'}: ${headings.join(', ')}. Paragraphs, lists of two levels, strong, emphasis and links may stand under them, and nothing else.`;
}

export function defaultText(value: string): string {
  return `no, ${value} when left out`;
}

export const CONSULTS_HEADING = 'A consult and its revisions';
export const CONSULTS = [
  'A value that is not plausible for the person is an error. Where it is right all the same, add an entry under "confirmed" with its path, the value as it stands there, and how it was checked; the record and the note show it. An entry that confirms nothing is an error too.',
  '"loadleaf new consult <alias>" writes an empty consult. Of somebody who has one it writes the next revision as a draft: what lasts is taken over, what must be asked again is empty, every item of the screen reads notAsked. A file with "draft: yes" is checked and never built; a yes in its screen that stops every programme withdraws the leaflet in use.',
  'A sudden pop, and a sudden start under 18, are lifted only by a clearance with "imaging" (kind, on, result). The first programme after it is held to an early stage and light loads.',
] as const;
export const OVERLAY_HEADING = 'A clinic’s own folder';
export const OVERLAY = [
  'Write "over: shipped" in the clinic.md of a folder of your own, and name that folder with --content. It then lies over the library that comes with the program, and it may be a repository of its own.',
  'A file of the same name takes the place of the shipped one. A file with a new name is added. A file of the same name whose only key is "hide: yes" takes the shipped one away: protocols then pass over a hidden card, and it is an error when a slot that must be filled is left without a card.',
  'To change single values of a shipped protocol write protocols/<its id>.md with “extends: <its id>” and “values”, each with path, value, mark and cite; “addCards” (slot, card) adds a card to a slot, “hideCards” takes one out of every slot. A path is written as in stages[0].slots[0].dose.sets, with the name of a stage or slot in place of its number where you like. With “was” beside a value it is an error once the shipped value is another; “loadleaf check --against <the shipped library as it was>” tells of all that changed.',
  'A folder pages/ holds the clinic’s own pages, which stand in the menu; style.css comes after our style, layouts/page.liquid goes round the text of those pages: {{ content }}, and title, lead, clinic, menu and up. With “site” in clinic.md there is a sitemap.xml, and a feed.xml of what was reviewed and changed.',
  'The pages say which files are the clinic’s own.',
] as const;

/** Of a house number, which carries its mark. */
export function settingForm(form: string): string {
  return `${form}, ${FORM.setting}`;
}

/** Names of the forms a value may have. */
export const FORM = {
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  string: 'text',
  date: 'a date, YYYY-MM-DD',
  id: 'an id: small letters, digits, hyphens',
  group: 'a group of keys',
  any: 'anything',
  setting: 'with its mark, and cite where it stands',
} as const;

export function listForm(of: string): string {
  return `a list, each ${of}`;
}

export function spanForm(form: string, low: number | undefined, high: number | undefined): string {
  if (low !== undefined && high !== undefined) return `${form}, ${low} to ${high}`;
  if (low !== undefined) return `${form}, ${low} or more`;
  return high === undefined ? form : `${form}, at most ${high}`;
}

export function sameAs(key: string): string {
  return `the same keys as ${key}`;
}

export function mapForm(of: string): string {
  return `by name, each ${of}`;
}
