/** The log of one revision, read: what was written down, settled, and what of it nobody can tell. */
import type { IsoDate } from '../../units/date.ts';
import type { ScreenItem } from '../schema/consult.ts';
import type { LogRow } from './columns.ts';

export interface LogEntry extends LogRow {
  readonly date: IsoDate;
}

export interface Log {
  readonly alias: string;
  readonly revision: number;
  readonly file: string;
  /** One for each key, the last correction; by date, occasion, kind, card and side. */
  readonly entries: readonly LogEntry[];
  /** Days on which two lines of one edit say different things; neither is among the entries. */
  readonly contradicted: readonly IsoDate[];
  /** Lines that could not be read, or the header. */
  readonly unread: number;
  /** Answers of yes to a question of the screen. */
  readonly alarms: readonly Alarm[];
}

/** `item` and `date` null where the line says alarm and no more of it can be read. */
export interface Alarm {
  readonly item: ScreenItem | null;
  readonly date: IsoDate | null;
  readonly line: number;
  readonly column: number;
}
