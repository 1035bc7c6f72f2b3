/** Which leaflets in use must go because of what a person wrote in the log: yes to a question of the screen. */
import type { Clinic, Consult } from '../../content/library.ts';
import type { Alarm, Log } from '../../content/log/log.ts';
import { answeredYes } from '../../content/readScreen.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { IsoDate } from '../../units/date.ts';
import type { Refusal } from '../terms/refusal.ts';
import { stopsWith } from './screen.ts';

export interface LogAlarm {
  readonly alias: string;
  /** The log, and where in it. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly item: ScreenItem | null;
  readonly date: IsoDate | null;
  /** What an answer of yes in the consult would be refused with; null for one that stops no programme by itself. */
  readonly refusal: Refusal | null;
}

/** Of the revisions in use: whoever was seen since has been asked again. A clearance speaks of an earlier yes and lifts none. */
export function logAlarms(
  logs: ReadonlyMap<string, Log>,
  inUse: readonly Consult[],
  clinic: Clinic | null,
): LogAlarm[] {
  return inUse.flatMap((consult) =>
    [...logs.values()]
      .filter(({ alias, revision }) => alias === consult.alias && revision >= consult.revision)
      .flatMap((log) => log.alarms.map((alarm) => logAlarm(alarm, log, consult, clinic))),
  );
}

function logAlarm(
  { item, date, line, column }: Alarm,
  { alias, file }: Log,
  { id, ageYears, country }: Consult,
  clinic: Clinic | null,
): LogAlarm {
  const yes = item === null ? [] : [item];
  const screen = answeredYes(id, { yes, screen: null, clearances: [], cannotDo: [], ageYears, country });
  return {
    alias,
    file,
    line,
    column,
    item,
    date,
    refusal: item === null ? null : stopsWith(item, screen, clinic),
  };
}
