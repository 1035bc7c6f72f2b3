/**
 * The log in the browser's storage, under the alias and the mark of the make. Storage is the truth: every entry reads it
 * anew, so that two tabs lose nothing; where there is none, or it is full, the entry stays in memory and the page says so.
 */
import {
  LOG_COLUMNS,
  LOG_DONE,
  LOG_KINDS,
  LOG_SIDES,
  logKey,
  type LogRow,
} from '../../content/log/columns.ts';
import type { Kept } from '../../messages/en/patient/inUse.ts';
import { isoDate } from '../../units/date.ts';

const PREFIX = 'loadleaf:log';

/** What says which entry is meant. */
export type EntryKey = Pick<LogRow, 'date' | 'occasion' | 'kind' | 'card' | 'side'>;
export type EntryField = Exclude<keyof LogRow, keyof EntryKey | 'edit'>;

export interface LogStore {
  /** The entries that hold, by date, then in the order they were first written. */
  rows(): readonly LogRow[];
  entry(key: EntryKey): LogRow | null;
  /** Writes one field; a field as it was is no entry. */
  write(key: EntryKey, field: EntryField, value: string | number | null): void;
  /** Deletes all, and gives what was there. */
  clear(): readonly LogRow[];
  restore(rows: readonly LogRow[]): void;
  kept(): Kept;
  /** Something kept could not be read and was laid aside. */
  damaged(): boolean;
  onChange(tell: () => void): void;
}

export function logStore(alias: string, mark: string): LogStore {
  const own = `${PREFIX}:${alias}:${mark}`;
  const listeners: (() => void)[] = [];
  let inMemory: readonly LogRow[] = [];
  /** What this page wrote itself, to see whether another tab wrote over it. */
  let written: readonly LogRow[] = [];
  /** The same, field by field, with what stood there before. */
  const fields = new Map<string, FieldWritten>();
  let kept: Kept = storage() === null ? 'denied' : location.protocol === 'file:' ? 'disk' : 'kept';
  let damaged = false;
  const changed = () => listeners.forEach((tell) => tell());

  const readAnew = (): readonly LogRow[] =>
    holding([...keysOf(alias).flatMap((key) => readRows(key, () => (damaged = true))), ...inMemory]);
  // A page asks for hundreds of entries in one go: what was read holds until that is over, or something is written.
  let read: readonly LogRow[] | null = null;
  const stored = (): readonly LogRow[] => {
    if (read === null) queueMicrotask(() => (read = null));
    return (read ??= readAnew());
  };
  const put = (rows: readonly LogRow[]): void => {
    read = null;
    try {
      const place = storage();
      if (place === null) throw new Error('no storage');
      place.setItem(own, JSON.stringify({ format: 1, rows }));
      inMemory = [];
      if (kept === 'full') kept = location.protocol === 'file:' ? 'disk' : 'kept';
    } catch {
      inMemory = holding([...inMemory, ...rows]);
      if (kept !== 'denied') kept = 'full';
    }
    changed();
  };

  // Two tabs that write within the same moment know nothing of each other: the one that was written over writes again.
  const writeAgain = (): void => {
    const rows = stored();
    const holds = (one: LogRow) => rows.some((row) => logKey(row) === logKey(one) && row.edit >= one.edit);
    const lost = written.filter((one) => !holds(one));
    const again = holding([...rows, ...lost]).map((row) => withLostFields(row, [...fields.values()]));
    if (lost.length > 0 || again.some((row, at) => row.edit !== rows[at]?.edit)) put(again);
  };

  const forget = (): void => {
    written = [];
    fields.clear();
  };

  addEventListener('storage', ({ key, newValue }) => {
    read = null;
    if (key === null || (key === own && newValue === null)) forget();
    else if (key === own) writeAgain();
    if (key === null || key.startsWith(`${PREFIX}:${alias}:`)) changed();
  });

  return {
    rows: stored,
    entry: (key) => stored().find((row) => logKey(row) === logKey(key as LogRow)) ?? null,
    write(key, field, value) {
      const rows = stored();
      const before = rows.find((row) => logKey(row) === logKey(key as LogRow)) ?? null;
      if ((before?.[field] ?? (field === 'note' ? '' : null)) === value) return;
      const row: LogRow = {
        ...(before ?? blank(key)),
        [field]: value,
        edit: before === null ? 0 : before.edit + 1,
      };
      written = holding([...written, row]);
      const name = logKey(row);
      fields.set(`${name} ${field}`, { name, field, before: before?.[field] ?? null, row });
      put(holding([...rows, row]));
      if (rows.length === 0) void navigator.storage?.persist?.().catch(() => false);
    },
    clear() {
      const rows = stored();
      inMemory = [];
      forget();
      read = null;
      damaged = false;
      for (const key of [...keysOf(alias), ...laidAside(alias)]) storage()?.removeItem(key);
      changed();
      return rows;
    },
    restore: (rows) => put(holding([...stored(), ...rows])),
    kept: () => kept,
    damaged: () => damaged || laidAside(alias).length > 0,
    onChange: (tell) => void listeners.push(tell),
  };
}

interface FieldWritten {
  readonly name: string;
  readonly field: EntryField;
  readonly before: LogRow[EntryField] | null;
  readonly row: LogRow;
}

// Another tab wrote the same entry at the same edit without having seen this field: what stood before stands there again.
function withLostFields(row: LogRow, fields: readonly FieldWritten[]): LogRow {
  const lost = fields.filter(
    (one) =>
      one.name === logKey(row) &&
      one.row.edit >= row.edit &&
      row[one.field] !== one.row[one.field] &&
      (row[one.field] || null) === (one.before || null),
  );
  if (lost.length === 0) return row;
  const own = Object.fromEntries(lost.map(({ field, row: mine }) => [field, mine[field]]));
  return { ...row, ...own, edit: Math.max(row.edit, ...lost.map((one) => one.row.edit)) + 1 };
}

/** The browser's storage, or null where it gives none: asking for it may throw. */
export function storage(): Storage | null {
  try {
    const place = globalThis.localStorage;
    place.getItem(PREFIX);
    return place;
  } catch {
    return null;
  }
}

// Of all makes of this person: a newer revision keeps what the one before it holds.
function keysOf(alias: string): readonly string[] {
  return allKeys(alias).filter((key) => !key.includes(LAID_ASIDE));
}

function laidAside(alias: string): readonly string[] {
  return allKeys(alias).filter((key) => key.includes(LAID_ASIDE));
}

const LAID_ASIDE = ':damaged:';

function allKeys(alias: string): readonly string[] {
  const place = storage();
  if (place === null) return [];
  const keys = Array.from({ length: place.length }, (_, at) => place.key(at) ?? '');
  return keys.filter((key) => key.startsWith(`${PREFIX}:${alias}:`)).sort();
}

function readRows(key: string, spoilt: () => void): readonly LogRow[] {
  const text = storage()?.getItem(key) ?? null;
  if (text === null) return [];
  const rows = parsed(text);
  const sound = rows?.filter(isRow) ?? [];
  if (rows === null || sound.length < rows.length) {
    spoilt();
    layAside(key, text, sound);
  }
  return sound;
}

function parsed(text: string): readonly unknown[] | null {
  try {
    const { format, rows } = JSON.parse(text) as { format?: unknown; rows?: unknown };
    return format === 1 && Array.isArray(rows) ? rows : null;
  } catch {
    return null;
  }
}

// What cannot be read is kept beside what can; only then is the place itself written anew.
function layAside(key: string, text: string, sound: readonly LogRow[]): void {
  const place = storage();
  if (place === null) return;
  let at = 1;
  while (place.getItem(`${key}${LAID_ASIDE}${at}`) !== null) at += 1;
  try {
    place.setItem(`${key}${LAID_ASIDE}${at}`, text);
    place.setItem(key, JSON.stringify({ format: 1, rows: sound }));
  } catch {
    // Full: the damaged text stays where it is, and is found again next time.
  }
}

function isRow(value: unknown): value is LogRow {
  if (typeof value !== 'object' || value === null) return false;
  const row = value as Record<string, unknown>;
  const numbers = ['sets', 'repetitions', 'seconds', 'loadKg', 'painDuring', 'morning', 'minutes', 'km'];
  const oneOf = (list: readonly unknown[], of: unknown) => list.includes(of);
  return (
    LOG_COLUMNS.every((column) => column in row) &&
    typeof row['date'] === 'string' &&
    isoDate(row['date']) !== null &&
    oneOf(LOG_KINDS, row['kind']) &&
    oneOf([...LOG_SIDES, null], row['side']) &&
    oneOf([...LOG_DONE, null], row['done']) &&
    typeof row['card'] === 'string' &&
    typeof row['note'] === 'string' &&
    [row['occasion'], row['edit']].every((count) => Number.isInteger(count) && Number(count) >= 0) &&
    numbers.every((name) => row[name] === null || (Number.isFinite(row[name]) && Number(row[name]) >= 0))
  );
}

/** Of each entry the highest edit; what was written first stays first within its day. */
function holding(rows: readonly LogRow[]): readonly LogRow[] {
  const held = new Map<string, LogRow>();
  for (const row of rows) {
    const before = held.get(logKey(row));
    if (before === undefined || row.edit >= before.edit) held.set(logKey(row), row);
  }
  return [...held.values()].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function blank(key: EntryKey): LogRow {
  return {
    ...key, edit: 0, done: null, sets: null, repetitions: null, seconds: null, loadKg: null, painDuring: null,
    morning: null, minutes: null, km: null, note: '',
  }; // prettier-ignore
}
