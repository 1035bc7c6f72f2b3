/** What the races that stand make of the days around them (house rules 11.7). */
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import type { JudgedRace } from './race.ts';
import type { Setting } from '../units/reason.ts';

export interface RaceDayRules {
  readonly raceNoHeavyDays: Setting;
  readonly raceTaperDays: Setting;
  readonly raceTaperShare: Setting;
}

/** One day beside the races that stand; each entry is the race it lies before or after. */
export interface RaceDay {
  readonly race: JudgedRace | null;
  /** No heavy and no fast work. */
  readonly before: JudgedRace | null;
  /** About half the running. */
  readonly taper: JudgedRace | null;
  /** Easy days. */
  readonly after: JudgedRace | null;
  /** No run yet: the first of the easy days. */
  readonly rests: boolean;
  /** Days since the race whose easy days these are; null outside them. */
  readonly daysAfter: number | null;
}

/** `races`: those that stand in the plan. */
export function raceDay(on: IsoDate, races: readonly JudgedRace[], rules: RaceDayRules): RaceDay {
  const ahead = (days: number) =>
    races.find((race) => race.on > on && daysBetween(on, race.on) <= days) ?? null;
  const after = races.filter((race) => race.on < on && on <= race.easyUntil).at(-1) ?? null;
  return {
    race: races.find((race) => race.on === on) ?? null,
    before: ahead(rules.raceNoHeavyDays.value),
    taper: ahead(rules.raceTaperDays.value),
    after,
    rests: after !== null && on <= after.restUntil,
    daysAfter: after === null ? null : daysBetween(after.on, on),
  };
}

/** Whether any day from `from` to `to` lies so many days before a race, on it, or in its easy days. */
export function touchesRace(
  { from, to }: { readonly from: IsoDate; readonly to: IsoDate },
  races: readonly JudgedRace[],
  daysBefore: number,
): boolean {
  return races.some(({ on, easyUntil }) => from <= easyUntil && to >= addDays(on, -daysBefore));
}
