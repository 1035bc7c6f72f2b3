/** The language of one person's programme. */
import type { Clinic, Consult } from './library.ts';
import { LANGUAGES, type Language } from './schema/words.ts';

/** That of the consult; where it names none the clinic's first one. */
export function languageOf(
  { language }: Pick<Consult, 'language'>,
  clinic: Pick<Clinic, 'languages'>,
): Language {
  return language ?? firstLanguage(clinic);
}

/** That of the public pages, too. */
export function firstLanguage({ languages: [first = LANGUAGES[0]] }: Pick<Clinic, 'languages'>): Language {
  return first;
}
