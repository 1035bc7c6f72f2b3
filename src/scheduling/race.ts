/** Races: easy days after one (house rules 7), whether it comes too early, and whether it stands in the plan (11.7). */
import { addDays, type IsoDate } from '../units/date.ts';
import type { Mark } from '../units/source.ts';
import { type Reason, reason } from '../units/reason.ts';
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
  /** Who decided that it is run although the rules say wait, and on what ground. */
  readonly decision?: string | undefined;
}

/** Where the person stands when a race is judged. */
export interface RaceFacts {
  /** The hardest kind of run there may be now. */
  readonly most: RunKind;
  /** The longest run there may be by distance, km; null when there is none yet. */
  readonly longestKm: number | null;
  /** The first day on which the stages allow a race; null when they do already. */
  readonly fitsFrom: IsoDate | null;
  /** High irritability, or as much usual pain as stops running without a break. */
  readonly irritable: boolean;
  /** Nobody's decision lifts it: the screen stops running, or the person does not run. */
  readonly barred: boolean;
  readonly table: readonly RaceRow[];
  /** The share of the easy days, from the first, that holds no run, 0 to 1. */
  readonly restShare: number;
  /** Times the longest run there may be: a longer race needs a decision. */
  readonly overLongest: number;
}

/** Why a race is not in the plan without a recorded decision. */
export type RaceDoubt = 'irritable' | 'walk-run' | 'far-beyond-longest' | 'after-another';

export interface JudgedRace extends Race {
  readonly easyDays: EasyDays | null;
  /** The last of the easy days, the longer count being taken; the race day itself when the table is empty. */
  readonly easyUntil: IsoDate;
  /** The last day after it without a run; the race day itself where there is none. */
  readonly restUntil: IsoDate;
  /** Comes before the stages allow it: from this day on it would fit. Null where it is not too early. */
  readonly fitsFrom: IsoDate | null;
  readonly doubts: readonly RaceDoubt[];
  readonly inPlan: boolean;
  readonly notes: readonly Reason<RaceNote>[];
}

export type RaceNote =
  'race-before-ready' | 'race-beyond-longest' | 'race-in-doubt' | 'race-decided' | 'race-barred';

/**
 * Every race in the order of the dates. A race in doubt stands in the plan only by a recorded decision; one that is
 * merely early or long stands, and both are told.
 */
export function judgedRaces(races: readonly Race[], facts: RaceFacts): JudgedRace[] {
  const judged: JudgedRace[] = [];
  for (const race of [...races].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.km - b.km))) {
    const close = judged.some(({ inPlan, easyUntil }) => inPlan && race.on <= easyUntil);
    judged.push(judgedRace(race, facts, close));
  }
  return judged;
}

/** One race; `close`: it lies within the easy days of another that stands. */
function judgedRace(race: Race, facts: RaceFacts, close: boolean): JudgedRace {
  const { fitsFrom, barred } = facts;
  const easyDays = easyDaysAfterRace(race.km, facts.table);
  const early = fitsFrom !== null && race.on < fitsFrom;
  const doubts: RaceDoubt[] = [
    ...(facts.irritable ? (['irritable'] as const) : []),
    ...(order(facts.most) <= order('walk-run') ? (['walk-run'] as const) : []),
    ...(isFar(race, facts) ? (['far-beyond-longest'] as const) : []),
    ...(close ? (['after-another'] as const) : []),
  ];
  const decided = race.decision !== undefined;
  return {
    ...race,
    easyDays,
    easyUntil: addDays(race.on, easyDays?.to ?? 0),
    restUntil: addDays(race.on, Math.floor((easyDays?.to ?? 0) * facts.restShare)),
    fitsFrom: early ? fitsFrom : null,
    doubts,
    inPlan: !barred && (doubts.length === 0 || decided),
    notes: notesOf(race, facts, early, doubts),
  };
}

// Nobody knows yet how far it may be: then no race is near.
function isFar({ km }: Race, { longestKm, overLongest }: RaceFacts): boolean {
  return longestKm === null || km > overLongest * longestKm;
}

function notesOf(
  { km, decision }: Race,
  { most, longestKm, fitsFrom, barred }: RaceFacts,
  early: boolean,
  doubts: readonly RaceDoubt[],
): Reason<RaceNote>[] {
  const beyond = longestKm === null || km > longestKm;
  const open = !barred && decision === undefined && doubts.length > 0;
  return [
    ...(early ? [reason('race-before-ready', { most, raceKm: km, fitsFrom })] : []),
    ...(beyond ? [reason('race-beyond-longest', { longestKm, raceKm: km })] : []),
    ...(barred ? [reason('race-barred', { raceKm: km })] : []),
    ...(open ? [reason('race-in-doubt', { raceKm: km, doubts })] : []),
    ...(decision === undefined || barred ? [] : [reason('race-decided', { raceKm: km, decision })]),
  ];
}
