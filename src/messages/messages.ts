/** What is said, by language: every language has a wording for everything, or it does not compile. */
import type { Language } from '../content/schema/words.ts';
import * as en from './en/index.ts';

/** Fixed words may be any text in another language; functions keep what they are asked. */
type Wording<Said> = Said extends string
  ? string
  : Said extends (...asked: never) => unknown
    ? Said
    : Said extends RegExp
      ? RegExp
      : { readonly [Name in keyof Said]: Wording<Said[Name]> };

export type Messages = { readonly [Name in keyof typeof en]: Wording<(typeof en)[Name]> };

const MESSAGES: Readonly<Record<Language, Messages>> = { en };

/** What is said in a language. */
export function messagesIn(language: Language): Messages {
  return MESSAGES[language];
}
