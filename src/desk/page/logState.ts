/** The log of the consult on the desk: its lines, what stands against them, and the file they were read from. */
import { computed, effect, signal } from '@preact/signals';
import { readLogHead, type LogHead } from '../../content/log/format.ts';
import { LOG_NEEDS, logNotOpenedText, logOpenedText } from '../../messages/en/desk/log.ts';
import { EMPTY, isEmpty, joined, openEnded, type LogLine } from '../log/lines.ts';
import type { WrittenLog } from '../worker/logSheet.ts';
import { laidTimes, logName, others, ownLog, said, value, view } from './state.ts';
import { openLog, writeLog } from './thread.ts';

const KEY = 'loadleaf-desk-log';
const NOTHING: readonly LogLine[] = [EMPTY];

export const lines = signal(NOTHING);
export const logProblems = signal<WrittenLog['problems']>([]);
/** As they stand in a file. */
const savedLines = signal(NOTHING);
/** The text of that file; null where there is none yet. */
export const knownLog = signal<string | null>(null);
export const isLogChanged = computed(() => lines.value !== savedLines.value);

/** What the tab kept of a log when the page began. */
let kept = sessionStorage.getItem(KEY);

const isLibraryRead = computed(() => view.value !== null);

const past: { readonly lines: readonly LogLine[]; readonly cell: string }[] = [];

/** `cell`: where it is typed; letter by letter is one thing to undo. */
export function changeLines(next: readonly LogLine[], cell = ''): void {
  if (cell === '' || past.at(-1)?.cell !== cell) past.push({ lines: lines.value, cell });
  lines.value = next;
}

export function undoLines(): void {
  const last = past.pop();
  if (last !== undefined) lines.value = last.lines;
}

export const whose = computed((): LogHead | null => {
  const { alias, revision } = value.value;
  return logName.value === null ? null : { alias: String(alias), revision: Number(revision) };
});

export function savedAs(text: string): void {
  knownLog.value = text;
  savedLines.value = lines.value;
}

/** Puts a log into the grid, or that of an earlier revision beside the consult. */
export async function takeLog(name: string, bytes: Uint8Array): Promise<void> {
  const own = whose.value;
  if (own === null) {
    said.value = LOG_NEEDS;
    return;
  }
  const text = new TextDecoder().decode(bytes);
  const head = headOf(name, text);
  if (head !== null && head.alias === own.alias && head.revision < own.revision) {
    const file = `consults/${head.alias}-r${head.revision}.log.csv`;
    others.value = [...others.value.filter((one) => one.file !== file), { file, text }];
    said.value = logOpenedText(name, text.trimEnd().split('\n').length - 1);
    return;
  }
  await addLines(name, text, bytes, head !== null && head.alias !== own.alias ? null : own);
}

async function addLines(name: string, text: string, bytes: Uint8Array, own: LogHead | null): Promise<void> {
  const head = own ?? whose.value;
  if (head === null) return;
  const { lines: found, problems } = await openLog(name, bytes, head);
  const [first] = problems;
  if (first !== undefined) {
    said.value = logNotOpenedText(name, first.found, first.expected, first.fix);
    return;
  }
  const isFirst = lines.value.every(isEmpty);
  changeLines(joined(lines.value, found));
  if (name === logName.value) {
    // Its lines are among these.
    if (isFirst) savedAs(text);
    else knownLog.value = text;
  }
  said.value = logOpenedText(name, found.length);
}

/** By its first line, else by its name. */
function headOf(name: string, text: string): LogHead | null {
  const first = readLogHead(text.slice(0, text.indexOf('\n') + 1 || undefined));
  if (typeof first === 'object') return first;
  const [, alias, revision] = /^([a-z0-9][a-z0-9-]{0,63})-r([1-9]\d{0,2})\.log\.csv$/.exec(name) ?? [];
  return alias === undefined ? null : { alias, revision: Number(revision) };
}

interface Kept {
  readonly of: string | null;
  readonly lines: readonly LogLine[];
  readonly known: string | null;
}

/** After the draft of the consult lies on the desk again. */
export function takeLogDraft(): void {
  if (kept === null) return;
  const draft = kept;
  kept = null;
  try {
    const { of, lines: found, known } = JSON.parse(draft) as Kept;
    if (of !== logName.value) return;
    lines.value = openEnded(found);
    knownLog.value = known;
  } catch {
    sessionStorage.removeItem(KEY);
  }
}

/** From here on the lines follow the consult, the worker looks at them, and the tab keeps them. */
export function followLog(): void {
  let times = laidTimes.peek();
  effect(() => {
    if (laidTimes.value === times) return;
    times = laidTimes.value;
    past.length = 0;
    [lines.value, savedLines.value, knownLog.value] = [NOTHING, NOTHING, null];
    const own = others.peek().find(({ file }) => file === `consults/${logName.peek() ?? ''}`);
    if (own !== undefined) void takeLog(logName.peek() ?? '', new TextEncoder().encode(own.text ?? ''));
  });
  effect(() => {
    const now: Kept = { of: logName.value, lines: lines.value, known: knownLog.value };
    if (isLogChanged.value) sessionStorage.setItem(KEY, JSON.stringify(now));
    else sessionStorage.removeItem(KEY);
  });
  effect(() => {
    const [now, own] = [lines.value, whose.value];
    // The worker knows the cards only once it has read the library.
    if (!isLibraryRead.value || own === null) return;
    if (now.every(isEmpty)) [ownLog.value, logProblems.value] = ['', []];
    else void look(now, own);
  });
}

let isLooking = false;
let next: { readonly now: readonly LogLine[]; readonly own: LogHead } | null = null;

/** Typing goes on meanwhile. */
async function look(now: readonly LogLine[], own: LogHead): Promise<void> {
  next = { now, own };
  if (isLooking) return;
  isLooking = true;
  try {
    while (next !== null) {
      const { now: these, own: of }: NonNullable<typeof next> = next;
      next = null;
      const { text, problems } = await writeLog(these, of);
      if (next === null) [ownLog.value, logProblems.value] = [text, problems];
    }
  } finally {
    isLooking = false;
  }
}

/** The file as it is to be saved now. */
export async function logNow(): Promise<string | null> {
  return whose.value === null ? null : (await writeLog(lines.value, whose.value)).text;
}
