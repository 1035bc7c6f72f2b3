/** An invented language: every text of the English one between two marks, so that what does not pass through it is seen. */
import { messagesIn, type Messages } from '../../src/messages/messages.ts';

export const OPEN = '⟦';
export const CLOSE = '⟧';

/** Codes and ids beside what is said: layouts choose by them. */
const CODES: readonly string[] = ['id', 'kind', 'weight', 'cell', 'on', 'country', 'remark', 'moves'];

function isCode(name: string, value: unknown): boolean {
  return CODES.includes(name) && !(typeof value === 'string' && value.includes(' '));
}

function marked(said: unknown): unknown {
  if (typeof said === 'string') return said === '' ? '' : `${OPEN}${said}${CLOSE}`;
  if (typeof said === 'function')
    return (...asked: readonly unknown[]) =>
      marked((said as (...all: readonly unknown[]) => unknown)(...asked));
  if (Array.isArray(said)) return said.map(marked);
  if (typeof said !== 'object' || said === null || said instanceof RegExp) return said;
  return Object.fromEntries(
    Object.entries(said).map(([name, value]) => [name, isCode(name, value) ? value : marked(value)]),
  );
}

export const PSEUDO = Object.fromEntries(
  Object.entries(messagesIn('en')).map(([name, said]) => [name, marked(said)]),
) as unknown as Messages;

// A language that lacks a wording does not compile; the types are checked with everything else.
type Whole<Language extends Messages> = Language;
// @ts-expect-error: without dayText it is no language.
export type Lacking = Whole<Omit<Messages, 'dayText'>>;
