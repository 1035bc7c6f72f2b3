/** Easy days after a race (house rules 7). */
import { addDays, type IsoDate } from '../units/date.ts';
import type { Mark } from '../units/source.ts';
import { type Reason, reason } from './reason.ts';
import { order, type RunKind } from './run.ts';

/** A row of the protocol's table: races up to this length, and how many easy days follow. */
export interface RaceRow {
  readonly upToKm: number;
  readonly from: number;
  readonly to: number;
  readonly mark: Mark;
}

export interface EasyDays {
  readonly from: number;
  readonly to: number;
  readonly mark: Mark;
  /** The race is longer than the table goes: at least so many days. */
  readonly atLeast: boolean;
}

/** Easy days after a race of this length: a race between two rows takes the longer one's. Null when the table is empty. */
export function easyDaysAfterRace(raceKm: number, table: readonly RaceRow[]): EasyDays | null {
  const rows = [...table].sort((one, other) => one.upToKm - other.upToKm);
  const row = rows.find(({ upToKm }) => raceKm <= upToKm);
  const used = row ?? rows.at(-1);
  if (used === undefined) return null;
  return { from: used.from, to: used.to, mark: used.mark, atLeast: row === undefined };
}

export interface Race {
  readonly on: IsoDate;
  readonly km: number;
}

export interface JudgedRace extends Race {
  readonly easyDays: EasyDays | null;
  /** The last of the easy days, the longer count being taken; the race day itself when the table is empty. */
  readonly easyUntil: IsoDate;
  readonly notes: readonly Reason<RaceNote>[];
}

export type RaceNote = 'race-before-ready' | 'race-beyond-longest';

/** A race beside what may be run now: `most` kind and `longestKm` (null: none yet). Notes are for the clinician; nothing is squeezed in. */
export function judgedRace(
  race: Race,
  most: RunKind,
  longestKm: number | null,
  table: readonly RaceRow[],
): JudgedRace {
  const easyDays = easyDaysAfterRace(race.km, table);
  const beyond = longestKm === null || race.km > longestKm;
  return {
    ...race,
    easyDays,
    easyUntil: addDays(race.on, easyDays?.to ?? 0),
    notes: [
      ...(order(most) < order('fast') ? [reason('race-before-ready', { most, raceKm: race.km })] : []),
      ...(beyond ? [reason('race-beyond-longest', { longestKm, raceKm: race.km })] : []),
    ],
  };
}
