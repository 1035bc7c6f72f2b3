/** Lines of a log, written short. */
import { LOG_COLUMNS, type LogRow } from '../../../src/content/log/columns.ts';
import { logFile } from '../../../src/content/log/format.ts';
import { readLog, type LogReading } from '../../../src/content/log/readLog.ts';
import type { SourceFile } from '../../../src/content/source.ts';

export const HEADER = LOG_COLUMNS.join(',');
export const FILE = 'consults/otter-r1.log.csv';
const WHOSE = { alias: 'otter', revision: 1 };

/** A line; what is not named is empty. */
export function row(date: string, kind: LogRow['kind'], more: Partial<LogRow> = {}): LogRow {
  return {
    date,
    occasion: 1,
    kind,
    card: '',
    side: null,
    edit: 0,
    done: null,
    sets: null,
    repetitions: null,
    seconds: null,
    loadKg: null,
    painDuring: null,
    morning: null,
    minutes: null,
    km: null,
    note: '',
    ...more,
  };
}

export function bytesFile(bytes: Uint8Array): SourceFile {
  return { file: FILE, bytes, link: 'no' };
}

export function readBytes(bytes: Uint8Array): LogReading {
  return readLog(bytesFile(bytes), WHOSE, null);
}

export function readText(text: string): LogReading {
  return readBytes(new TextEncoder().encode(text));
}

export function readRows(rows: readonly LogRow[]): LogReading {
  return readText(logFile(rows));
}
