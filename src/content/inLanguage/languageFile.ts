/** Cards in a second language stand beside the first: `hip-hinge.nl.md` beside `hip-hinge.md`. */
import { FOLDERS } from '../kind.ts';

/** The kinds whose words may stand in files of their own. A consult names slots and activities of a protocol in its words. */
export const WORDED = ['exercise', 'advice'] as const;
export type WordedKind = (typeof WORDED)[number];

export interface LanguageFile {
  /** The card's file, of which this one has the words. */
  readonly base: string;
  readonly language: string;
}

const SUFFIX = /^(.+)\.([a-z]{2,3}(?:-[A-Z]{2})?)\.md$/;

/** Null for every other file. @example languageFile('advice/sleep.nl.md') // => { base: 'advice/sleep.md', language: 'nl' } */
export function languageFile(file: string): LanguageFile | null {
  if (!WORDED.some((kind) => file.startsWith(`${FOLDERS[kind]}/`))) return null;
  const [, stem, language] = SUFFIX.exec(file) ?? [];
  return stem === undefined || language === undefined ? null : { base: `${stem}.md`, language };
}
