/** The fields of one entry of the log. Each is kept as it is written, and pain and morning scores are answered at once. */
import { LOG_DONE } from '../../content/log/columns.ts';
import { IN_USE, morningAnswer, painAnswer } from '../../messages/en/patient/inUse.ts';
import type { RulesInUse } from '../../programme/sheetInUse.ts';
import { morningDecision, painGate } from '../../scheduling/morning.ts';
import { addDays, isoDate, type IsoDate } from '../../units/date.ts';
import { element, spoken } from './element.ts';
import type { EntryField, EntryKey, LogStore } from './store.ts';

type Field = Exclude<EntryField, 'sets'> | 'sets';

/** Above these a number is a slip of the finger. */
const MOST: Readonly<Partial<Record<Field, number>>> = {
  sets: 20,
  repetitions: 200,
  seconds: 600,
  loadKg: 500,
  minutes: 1440,
  km: 200,
};

export interface Book {
  readonly store: LogStore;
  readonly rules: RulesInUse;
  readonly startOn: IsoDate;
}

let count = 0;

/** One entry as a group of fields, named by `name`. `planned`: what stands in an empty field as a hint. */
export function entryForm(
  book: Book,
  key: EntryKey,
  name: string,
  fields: readonly Field[],
  labels: Readonly<Partial<Record<Field, string>>> = {},
  planned: Readonly<Partial<Record<Field, string>>> = {},
): HTMLElement {
  const group = element('div', {
    class: 'entry on-screen',
    role: 'group',
    'aria-label': name,
    'data-fields': fields.join(' '),
  });
  const answer = spoken({ class: 'answer' });
  const refresh: (() => void)[] = [];
  for (const field of fields) {
    const control = controlOf(field, planned[field] ?? '');
    const id = `entry-${(count += 1)}`;
    control.id = id;
    for (const [hook, value] of Object.entries(hooksOf(key, field))) control.setAttribute(hook, value);
    const read = () => {
      const entry = book.store.entry(key);
      const value = entry === null ? null : entry[field];
      if (document.activeElement !== control || control.value === '') control.value = String(value ?? '');
    };
    const take = () => {
      const value = valueOf(field, control.value);
      control.toggleAttribute('aria-invalid', value === undefined);
      if (value === undefined) return say(answer, { words: IN_USE.noNumber, easier: false });
      book.store.write(key, field, value);
      say(answer, answerTo(book, key));
    };
    control.addEventListener('input', take);
    control.addEventListener('change', take);
    refresh.push(read);
    read();
    group.append(
      element(
        'p',
        { class: `field ${field}` },
        element('label', { for: id }, labels[field] ?? labelOf(field)),
        control,
      ),
    );
  }
  say(answer, answerTo(book, key));
  group.append(answer);
  book.store.onChange(() => {
    if (!group.isConnected) return;
    refresh.forEach((read) => read());
    if (!group.contains(document.activeElement)) say(answer, answerTo(book, key));
  });
  return group;
}

/** The answer, and the way to the easier numbers where it speaks of them. */
function say(place: HTMLElement, answer: Answer): void {
  if (place.dataset['says'] === answer.words) return;
  place.dataset['says'] = answer.words;
  place.textContent = answer.words;
  if (answer.easier && document.getElementById('easier') !== null)
    place.append(' ', element('a', { href: '#easier' }, IN_USE.seeEasier));
}

interface Answer {
  readonly words: string;
  /** It sends to the easier numbers. */
  readonly easier: boolean;
}

const NO_ANSWER: Answer = { words: '', easier: false };

function hooksOf({ date, occasion, kind, card }: EntryKey, field: Field): Record<string, string> {
  return {
    'data-log': date,
    'data-log-occasion': String(occasion),
    'data-log-kind': kind,
    'data-log-card': card,
    'data-entry': field,
  };
}

function controlOf(field: Field, hint: string): HTMLInputElement | HTMLSelectElement {
  if (field === 'done') return choice(LOG_DONE.map((code) => [code, IN_USE.doneWords[code]]));
  if (field === 'painDuring' || field === 'morning')
    return choice(Array.from({ length: 11 }, (_, score) => [String(score), String(score)]));
  if (field === 'note') return element('input', { type: 'text', maxlength: '300', autocomplete: 'off' });
  return element('input', {
    type: 'text',
    inputmode: 'decimal',
    autocomplete: 'off',
    placeholder: hint,
    size: '4',
  });
}

function choice(options: readonly (readonly [value: string, words: string])[]): HTMLSelectElement {
  const none = element('option', { value: '' }, '–');
  return element('select', {}, none, ...options.map(([value, words]) => element('option', { value }, words)));
}

function labelOf(field: Field): string {
  return field === 'morning' ? IN_USE.morningScore : IN_USE[field];
}

/** The value of a field, null for an empty one; undefined for what is no number a person can mean. */
export function valueOf(field: Field, text: string): string | number | null | undefined {
  const plain = text.trim();
  if (field === 'note') return plain;
  if (plain === '') return null;
  if (field === 'done') return plain;
  const value = /^\d+(?:[.,]\d+)?$/.test(plain) ? Number(plain.replace(',', '.')) : NaN;
  return value <= (MOST[field] ?? 10) ? value : undefined;
}

/** What the leaflet's own rule says to what was written; empty where it says nothing. */
function answerTo({ store, rules, startOn }: Book, key: EntryKey): Answer {
  const entry = store.entry(key);
  if (entry === null) return NO_ANSWER;
  if (entry.painDuring !== null) {
    const gate = painGate(entry.painDuring, rules.person, rules.pain);
    return { words: painAnswer(entry.painDuring, gate), easier: gate.next === 'ease-back' };
  }
  if (entry.morning === null) return NO_ANSWER;
  const before = morningsBefore(store, startOn, entry.date);
  const decision = morningDecision(entry.morning, rules.person.usualPain, before, rules.morning);
  const easier = decision.answer === 'ease-back' || decision.answer === 'contact';
  return { words: morningAnswer(entry.morning, decision), easier };
}

/** The scores from the start to the day before, null where there is none. */
function morningsBefore(store: LogStore, startOn: IsoDate, date: string): (number | null)[] {
  const scores = new Map(store.rows().map((row) => [row.kind === 'morning' ? row.date : '', row.morning]));
  const mornings: (number | null)[] = [];
  for (let on = startOn; on < date; on = addDays(on, 1)) mornings.push(scores.get(on) ?? null);
  return mornings;
}

/** A date of a row as a date. */
export function dateOf(text: string): IsoDate {
  const date = isoDate(text);
  if (date === null) throw new RangeError(`no date: ${text}`);
  return date;
}
