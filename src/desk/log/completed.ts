/** What a few letters or digits in a cell stand for, where they can stand for one thing alone. */
import { LOG_DONE, LOG_KINDS, LOG_SIDES, type LogColumn } from '../../content/log/columns.ts';

export interface CompletionFacts {
  /** First and last day of the programme, ISO 8601; empty where they are not known. */
  readonly from: string;
  readonly to: string;
  /** Of this programme first, then all others. */
  readonly cards: readonly (readonly string[])[];
  /** Items of the screen, for an alarm. */
  readonly items: readonly string[];
  readonly kind: string;
}

const WORDS: Partial<Readonly<Record<LogColumn, readonly string[]>>> = {
  kind: LOG_KINDS,
  side: LOG_SIDES,
  done: LOG_DONE,
};

/** The cell as it is meant; as it was typed where more than one thing, or none, could be. */
export function completed(column: LogColumn, typed: string, facts: CompletionFacts): string {
  const text = typed.trim();
  if (text === '') return text;
  if (column === 'date') return dayIn(text, facts) ?? text;
  if (column === 'card') return cardFor(text, facts) ?? text;
  return only(WORDS[column] ?? [], text) ?? text;
}

/** A day of the month, where the programme has one such day. */
function dayIn(text: string, { from, to }: CompletionFacts): string | null {
  if (!/^\d{1,2}$/.test(text)) return null;
  const ending = `-${text.padStart(2, '0')}`;
  const found = daysBetween(from, to).filter((day) => day.endsWith(ending));
  return found.length === 1 ? (found[0] ?? null) : null;
}

const DAY_MS = 24 * 60 * 60 * 1000;
const MOST_DAYS = 400;

function daysBetween(from: string, to: string): readonly string[] {
  const [first, last] = [from, to].map((day) => Date.parse(`${day}T00:00:00Z`));
  if (first === undefined || last === undefined || !(last >= first)) return [];
  const count = Math.min(MOST_DAYS, (last - first) / DAY_MS + 1);
  return Array.from({ length: count }, (_, index) =>
    new Date(first + index * DAY_MS).toISOString().slice(0, 10),
  );
}

function cardFor(text: string, { cards, items, kind }: CompletionFacts): string | null {
  if (kind === 'alarm') return only(items, text);
  for (const some of cards) {
    const found = only(some, text);
    if (found !== null) return found;
  }
  return null;
}

/** The one that is it, begins so, or else holds it. */
function only(words: readonly string[], text: string): string | null {
  const plain = text.toLowerCase();
  for (const fits of [
    (word: string) => word === plain,
    (word: string) => word.startsWith(plain),
    (word: string) => word.includes(plain),
  ]) {
    const found = words.filter((word) => fits(word.toLowerCase()));
    if (found.length === 1) return found[0] ?? null;
    if (found.length > 1) return null;
  }
  return null;
}
