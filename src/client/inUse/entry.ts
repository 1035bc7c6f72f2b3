/** The fields of one entry of the log. Each is kept as it is written, and pain and morning scores are answered at once. */
import { LOG_DONE } from '../../content/log/columns.ts';
import { IN_USE, noNumberText, ofLegText } from '../../messages/en/patient/inUse.ts';
import type { SheetInUse } from '../../programme/sheetInUse.ts';
import { isoDate, type IsoDate } from '../../units/date.ts';
import { answerTo, type Answer } from './answers.ts';
import { element, spoken } from './element.ts';
import type { EntryField, EntryKey, LogStore } from './store.ts';

type Field = EntryField;

/** Above these a number is a slip of the finger; within what the review reads. */
const MOST: Readonly<Partial<Record<Field, number>>> = {
  sets: 20,
  repetitions: 200,
  seconds: 600,
  loadKg: 400,
  minutes: 1440,
  km: 200,
};
const WHOLE: readonly Field[] = ['sets', 'repetitions'];

export interface Book {
  readonly store: LogStore;
  readonly sheet: SheetInUse;
}

/** What one group of fields is about. */
export interface EntryForm {
  readonly name: string;
  /** One entry, or one for each leg, the one that is done first before the other. */
  readonly keys: readonly EntryKey[];
  /** Asked of each entry. */
  readonly fields: readonly Field[];
  /** Asked once, and written into every entry; a note only into the first. */
  readonly shared?: readonly Field[];
  readonly labels?: Readonly<Partial<Record<Field, string>>>;
  /** What stands in an empty field as a hint. */
  readonly planned?: Readonly<Partial<Record<Field, string>>>;
}

let count = 0;

/** The entries of a form as a group of fields, with the answer to them. */
export function entryForm(book: Book, form: EntryForm): HTMLElement {
  const { name, keys, fields, shared = [] } = form;
  const group = element('div', {
    class: keys.length > 1 ? 'entry legs on-screen' : 'entry on-screen',
    role: 'group',
    'aria-label': name,
    'data-fields': [...fields, ...shared].join(' '),
  });
  const answer = spoken({ class: 'answer' });
  const answerNow = () => say(answer, answerOf(book, keys));
  const refresh: (() => void)[] = [];
  const put = (place: HTMLElement, field: Field, own: readonly EntryKey[]) => {
    const { line, read } = fieldOf(book, form, field, own, (fault) =>
      fault
        ? say(answer, { words: noNumberText(mostOf(field), WHOLE.includes(field)), easier: false })
        : answerNow(),
    );
    refresh.push(read);
    place.append(line);
  };
  for (const key of keys) {
    const place = keys.length > 1 ? legGroup(name, key) : group;
    fields.forEach((field) => put(place, field, [key]));
    if (place !== group) group.append(place);
  }
  shared.forEach((field) => put(group, field, field === 'note' ? keys.slice(0, 1) : keys));
  answerNow();
  group.append(answer);
  book.store.onChange(() => {
    if (!group.isConnected) return;
    refresh.forEach((read) => read());
    if (!group.contains(document.activeElement)) answerNow();
  });
  return group;
}

/** Named with its exercise, for a page has legs of many. */
function legGroup(name: string, { side }: EntryKey): HTMLElement {
  const words = side === 'left' ? IN_USE.leftLeg : IN_USE.rightLeg;
  return element(
    'div',
    { class: 'leg', role: 'group', 'aria-label': ofLegText(name, side) },
    element('span', { class: 'which', 'aria-hidden': 'true' }, words),
  );
}

/** One field with its label; `told` hears of each change, and whether it could not be kept. */
function fieldOf(
  book: Book,
  form: EntryForm,
  field: Field,
  keys: readonly EntryKey[],
  told: (fault: boolean) => void,
): { readonly line: HTMLElement; readonly read: () => void } {
  const { labels = {}, planned = {} } = form;
  const control = controlOf(field, planned[field] ?? '');
  const id = `entry-${(count += 1)}`;
  control.id = id;
  const [first] = keys as readonly [EntryKey];
  for (const [hook, value] of Object.entries(hooksOf(first, field))) control.setAttribute(hook, value);
  const read = () => {
    const value = book.store.entry(first)?.[field] ?? '';
    if (document.activeElement !== control || control.value === '') control.value = String(value);
  };
  const take = () => {
    const value = valueOf(field, control.value);
    control.toggleAttribute('aria-invalid', value === undefined);
    if (value !== undefined) keys.forEach((key) => write(book.store, key, field, value));
    told(value === undefined);
  };
  control.addEventListener('input', take);
  control.addEventListener('change', take);
  read();
  const words = labels[field] ?? labelOf(field);
  const label = element('label', { for: id }, words);
  // Under the second leg the labels are not seen: the field is named by itself, with its leg.
  if (form.keys.length > 1 && form.fields.includes(field))
    control.setAttribute('aria-label', ofLegText(words, first.side));
  return { line: element('p', { class: `field ${field}` }, label, control), read };
}

function answerOf({ store, sheet }: Book, keys: readonly EntryKey[]): Answer {
  return answerTo(
    keys.flatMap((key) => store.entry(key) ?? []),
    store.rows(),
    sheet,
  );
}

/** The answer, and the way to the easier numbers where it speaks of them. */
function say(place: HTMLElement, answer: Answer): void {
  if (place.dataset['says'] === answer.words) return;
  place.dataset['says'] = answer.words;
  place.textContent = answer.words;
  if (answer.easier && document.getElementById('easier') !== null)
    place.append(' ', element('a', { href: '#easier' }, IN_USE.seeEasier));
}

function hooksOf({ date, occasion, kind, card, side }: EntryKey, field: Field): Record<string, string> {
  return {
    'data-log': date,
    'data-log-occasion': String(occasion),
    'data-log-kind': kind,
    'data-log-card': card,
    ...(side === null ? {} : { 'data-log-side': side }),
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
  if (WHOLE.includes(field) && !Number.isInteger(value)) return undefined;
  return value <= mostOf(field) ? value : undefined;
}

/** Scores go from 0 to 10. */
function mostOf(field: Field): number {
  return MOST[field] ?? 10;
}

/** Sets and whether it was done must not say two things: what was written last decides. */
function write(store: LogStore, key: EntryKey, field: Field, value: string | number | null): void {
  store.write(key, field, value);
  const entry = store.entry(key);
  if (entry === null) return;
  const { done, sets } = entry;
  if (field === 'done' && ((done === 'no' && (sets ?? 0) > 0) || (done === 'yes' && sets === 0)))
    store.write(key, 'sets', null);
  if (field === 'sets' && done === 'no' && (sets ?? 0) > 0) store.write(key, 'done', 'part');
  if (field === 'sets' && done === 'yes' && sets === 0) store.write(key, 'done', 'no');
}

/** A date of a row as a date. */
export function dateOf(text: string): IsoDate {
  const date = isoDate(text);
  if (date === null) throw new RangeError(`no date: ${text}`);
  return date;
}
