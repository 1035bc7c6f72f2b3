/** What a line of the log holds. Imports nothing: the leaflet's script in the browser writes the same lines. */

/** In the order in which they are written. */
export const LOG_COLUMNS = [
  'date',
  'occasion',
  'kind',
  'card',
  'side',
  'edit',
  'done',
  'sets',
  'repetitions',
  'seconds',
  'loadKg',
  'painDuring',
  'morning',
  'minutes',
  'km',
  'note',
] as const;
export type LogColumn = (typeof LOG_COLUMNS)[number];

export const LOG_KINDS = ['session', 'between', 'run', 'sitting', 'morning', 'other', 'alarm'] as const;
export type LogKind = (typeof LOG_KINDS)[number];

export const LOG_SIDES = ['left', 'right', 'both'] as const;
export type LogSide = (typeof LOG_SIDES)[number];

export const LOG_DONE = ['yes', 'part', 'no'] as const;
export type LogDone = (typeof LOG_DONE)[number];

/** One line. Null stands for an empty cell: nobody wrote it down, which is not nought. */
export interface LogRow {
  /** ISO 8601, `2026-03-02`. */
  readonly date: string;
  /** Counts from 1 within a day. */
  readonly occasion: number;
  readonly kind: LogKind;
  /** Id of the exercise; of an alarm the item of the screen; empty for a run, a morning and sitting. */
  readonly card: string;
  readonly side: LogSide | null;
  /** Of the lines with one date, occasion, kind, card and side the highest holds; counts from 0. */
  readonly edit: number;
  readonly done: LogDone | null;
  readonly sets: number | null;
  /** In a set. */
  readonly repetitions: number | null;
  /** Of a hold. */
  readonly seconds: number | null;
  readonly loadKg: number | null;
  /** 0 to 10. */
  readonly painDuring: number | null;
  /** Score of the morning check, 0 to 10. */
  readonly morning: number | null;
  /** Of a run or of sitting. */
  readonly minutes: number | null;
  readonly km: number | null;
  readonly note: string;
}

/** What says which entry a line is about: a later line with the same key corrects it. */
export function logKey({ date, occasion, kind, card, side }: LogRow): string {
  return [date, occasion, kind, card, side ?? ''].join(',');
}
