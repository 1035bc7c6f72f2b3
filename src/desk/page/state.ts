/** What is on the desk: one consult's text, the texts before and after it, and what the worker made of it. */
import { computed, signal } from '@preact/signals';
import type { DeskCatalogue } from '../catalogue.ts';
import { isEditable, valueOf, withBody, withValue } from '../consult/consultText.ts';
import { pathOf, valueIn } from '../consult/path.ts';
import type { DeskFile } from '../deskData.ts';
import type { Ready, SheetText, Stopped, View } from '../talk.ts';

/** Where the text came from, to be written back there and never over something else. */
export interface Origin {
  readonly name: string;
  /** As it was read or last written; null for one that was begun here. */
  readonly text: string | null;
  readonly handle: FileSystemFileHandle | null;
  /** Through the door of `serve`. */
  readonly isInFolder: boolean;
}

export const catalogue = signal<DeskCatalogue | null>(null);
export const text = signal('');
export const origin = signal<Origin>({ name: '', text: null, handle: null, isInFolder: false });
export const others = signal<readonly DeskFile[]>([]);
export const view = signal<View | null>(null);
/** Shown on while what is written now makes none. */
export const lastGood = signal<Ready | null>(null);
export const fault = signal<string | null>(null);
export const said = signal('');
/** How often another consult was put on the desk. */
export const laidTimes = signal(0);
/** The log of this revision, as its file is written; empty where there is none. */
export const ownLog = signal('');
export const firstName = signal('');

export const value = computed(() => valueOf(text.value));
export const canEdit = computed(() => isEditable(text.value));
export const isChanged = computed(() => text.value !== (origin.value.text ?? startText()));
export const stopped = computed((): Stopped | null =>
  view.value === null || view.value.state === 'ready' ? null : view.value,
);
export const state = computed(() => (fault.value !== null ? 'refused' : (view.value?.state ?? 'loading')));

interface Before {
  readonly text: string;
  readonly name: string;
}

const past = signal<readonly Before[]>([]);
const future = signal<readonly Before[]>([]);
export const canUndo = computed(() => past.value.length > 0);
export const canRedo = computed(() => future.value.length > 0);

/** A text typed letter by letter is one thing to undo. */
function change(next: string, name: string): void {
  if (next === text.value) return;
  const last = past.value.at(-1);
  if (last?.name !== name || name === '') past.value = [...past.value, { text: text.value, name }];
  future.value = [];
  text.value = next;
}

export function undo(): void {
  const last = past.value.at(-1);
  if (last === undefined) return;
  past.value = past.value.slice(0, -1);
  future.value = [...future.value, { text: text.value, name: '' }];
  text.value = last.text;
}

export function redo(): void {
  const next = future.value.at(-1);
  if (next === undefined) return;
  future.value = future.value.slice(0, -1);
  past.value = [...past.value, { text: text.value, name: '' }];
  text.value = next.text;
}

function order(): readonly string[] {
  return Object.keys(catalogue.value?.fields ?? {});
}

export function at(name: string): unknown {
  return valueIn(value.value, pathOf(name));
}

/** Undefined takes the key out. */
export function set(name: string, next: unknown, isTyped = false): void {
  change(withValue(text.value, name, next, order()), isTyped ? name : '');
}

/** Several keys as one thing to undo. */
export function setAll(entries: readonly (readonly [name: string, value: unknown])[]): void {
  change(
    entries.reduce((so, [name, next]) => withValue(so, name, next, order()), text.value),
    '',
  );
}

export function setBody(body: string): void {
  change(withBody(text.value, body), 'body');
}

export function listAt(name: string): readonly unknown[] {
  const list = at(name);
  return Array.isArray(list) ? list : [];
}

/** Puts another consult on the desk. */
export function lay(next: string, from: Origin, beside: readonly DeskFile[] = []): void {
  past.value = [];
  future.value = [];
  lastGood.value = null;
  view.value = null;
  firstName.value = '';
  others.value = beside;
  ownLog.value = '';
  origin.value = from;
  text.value = next;
  laidTimes.value += 1;
}

export function startText(): string {
  const country = catalogue.value?.starts.country;
  return `---\nrevision: 1\n${country === null || country === undefined ? '' : `country: ${country}\n`}---\n`;
}

export function startAnew(): void {
  lay(startText(), { name: '', text: null, handle: null, isInFolder: false });
}

/** Alias and revision, as the names of files have them; null while they are not written. */
const named = computed(() => {
  const { alias, revision } = value.value;
  const isAlias = typeof alias === 'string' && /^[a-z0-9][a-z0-9-]{0,63}$/.test(alias);
  return isAlias && typeof revision === 'number' ? `${alias}-r${revision}` : null;
});

/** The file's own name, by alias and revision as the folder has them; of one that cannot be read, the one it came by. */
export const fileName = computed(() => {
  const cameBy = canEdit.value ? '' : origin.value.name;
  return named.value === null && cameBy !== '' ? cameBy : `${named.value ?? 'consult-r1'}.md`;
});
export const logName = computed(() => (named.value === null ? null : `${named.value}.log.csv`));

/** What the worker is given to look at and to make from. */
export function sheetNow(): SheetText {
  const log = `consults/${logName.value ?? ''}`;
  const beside = others.value.filter(({ file }) => file !== log);
  const own = ownLog.value === '' ? [] : [{ file: log, text: ownLog.value }];
  return { name: fileName.value, text: text.value, others: [...beside, ...own] };
}
