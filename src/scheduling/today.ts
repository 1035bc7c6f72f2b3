/** What one day asks for, from the dated plan and what was done: the log decides where it tells more than the plan. */
import { addDays, daysBetween, type IsoDate, weekdayOf } from '../units/date.ts';
import type { Weekday } from '../units/weekday.ts';

/** What is planned on one day. */
export interface PlannedDay {
  readonly on: IsoDate;
  readonly session: boolean;
  /** Exercises of the days between the sessions, or of every day. */
  readonly between: boolean;
  readonly run: boolean;
  readonly race: boolean;
  readonly easyAfterRace: boolean;
}

export interface Spacing {
  /** From one session to the next at least. */
  readonly gapDays: number;
  /** On which a session that is late may be done. */
  readonly openDays: readonly Weekday[];
  /** Before a race, without heavy work. */
  readonly noHeavyDays: number;
}

export type TodayKind = 'before' | 'session' | 'between' | 'run' | 'free' | 'after';

export interface Today {
  readonly on: IsoDate;
  readonly kind: TodayKind;
  /**
   * `waits`: planned today, but the last session is too near · `moved`: one that waited is done today · `late`: one before
   * today was left out, and today has room for it.
   */
  readonly moved: 'waits' | 'moved' | 'late' | null;
  /** Whether today's session is done already. */
  readonly done: boolean;
  /** The last session done before today. */
  readonly lastDoneOn: IsoDate | null;
  /** When it was planned; only with `moved` and `late`. */
  readonly missedOn: IsoDate | null;
  /** The next session after today; null when there is none before the review. */
  readonly nextOn: IsoDate | null;
  /** The same should the one left out be done today; null as well where none was left out. */
  readonly nextIfDoneOn: IsoDate | null;
}

/**
 * Today by the plan (`days` without gaps, in order) and the dates of sessions that were done. A session is never put
 * nearer to the last one than the recovery clock allows, and nothing is caught up: of sessions left out only the last
 * may be done late.
 */
export function todayOf(
  on: IsoDate,
  days: readonly PlannedDay[],
  doneOn: readonly IsoDate[],
  spacing: Spacing,
): Today {
  const [first, last] = [days[0], days[days.length - 1]];
  const today = {
    on,
    moved: null,
    done: doneOn.includes(on),
    lastDoneOn: lastBefore(on, doneOn),
    missedOn: null,
    nextIfDoneOn: null,
  };
  if (first === undefined || last === undefined || on > last.on)
    return { ...today, kind: 'after', nextOn: null };
  if (on < first.on) return { ...today, kind: 'before', nextOn: nextSession(on, null, days, spacing) };
  const planned = days[daysBetween(first.on, on)] as PlannedDay;
  const { lastDoneOn } = today;
  const session = { ...today, kind: 'session' as const, nextOn: nextSession(on, on, days, spacing) };
  if (today.done) return session;
  const rested = isRested(on, lastDoneOn, spacing);
  if (planned.session && rested) return session;
  const open = rested && isOpen(planned, days, spacing);
  const waited = waiting(on, lastDoneOn, days, spacing);
  if (open && waited !== null) return { ...session, moved: 'moved', missedOn: waited };
  const missedOn = open && waited === null ? leftOut(on, days, doneOn) : null;
  return {
    ...today,
    kind: kindWithoutSession(planned),
    moved: planned.session ? 'waits' : missedOn === null ? null : 'late',
    missedOn,
    nextOn: nextSession(on, lastDoneOn, days, spacing),
    nextIfDoneOn: missedOn === null ? null : nextSession(on, on, days, spacing),
  };
}

function kindWithoutSession({ run, race, between }: PlannedDay): TodayKind {
  if (run || race) return 'run';
  return between ? 'between' : 'free';
}

function lastBefore(on: IsoDate, dates: readonly IsoDate[]): IsoDate | null {
  return dates.reduce<IsoDate | null>(
    (last, date) => (date < on && (last === null || date > last) ? date : last),
    null,
  );
}

function isRested(on: IsoDate, lastDoneOn: IsoDate | null, { gapDays }: Spacing): boolean {
  return lastDoneOn === null || daysBetween(lastDoneOn, on) >= gapDays;
}

/**
 * The first day after `on` with a session: as planned where the last one is far enough back by then; otherwise the first
 * open day that is, for a late session moves the next.
 */
function nextSession(
  on: IsoDate,
  lastDoneOn: IsoDate | null,
  days: readonly PlannedDay[],
  spacing: Spacing,
): IsoDate | null {
  const coming = days.filter((day) => day.on > on);
  const planned = coming.find(({ session }) => session);
  const waits = waiting(on, lastDoneOn, days, spacing) !== null;
  if (planned === undefined && !waits) return null;
  if (!waits && planned !== undefined && isRested(planned.on, lastDoneOn, spacing)) return planned.on;
  const open = coming.find(
    (day) => isRested(day.on, lastDoneOn, spacing) && (day.session || isOpen(day, days, spacing)),
  );
  return open?.on ?? null;
}

/** Whether a session may be put on this day though none was planned: nothing hard is taken up before or after a race. */
function isOpen(day: PlannedDay, days: readonly PlannedDay[], { openDays, noHeavyDays }: Spacing): boolean {
  const nearRace = days.some(
    ({ on, race }) => race && on >= day.on && daysBetween(day.on, on) <= noHeavyDays,
  );
  return openDays.includes(weekdayOf(day.on)) && !day.race && !day.easyAfterRace && !nearRace;
}

/** The last session planned up to this day that came too soon after the one that was done, and has waited since. */
function waiting(
  on: IsoDate,
  lastDoneOn: IsoDate | null,
  days: readonly PlannedDay[],
  spacing: Spacing,
): IsoDate | null {
  const planned = lastPlanned(on, days);
  if (planned === null || lastDoneOn === null || planned <= lastDoneOn) return null;
  return isRested(planned, lastDoneOn, spacing) ? null : planned;
}

/**
 * The last session planned before this day, where none was done since. Who has written nothing down may write nothing
 * down: then only the very first is asked about, until the second is planned.
 */
function leftOut(on: IsoDate, days: readonly PlannedDay[], doneOn: readonly IsoDate[]): IsoDate | null {
  const planned = lastPlanned(on, days);
  if (planned === null) return null;
  if (doneOn.length === 0) return planned === days.find(({ session }) => session)?.on ? planned : null;
  return doneOn.some((done) => done >= planned) ? null : planned;
}

function lastPlanned(on: IsoDate, days: readonly PlannedDay[]): IsoDate | null {
  const planned = days.filter((day) => day.session && day.on <= on);
  return planned[planned.length - 1]?.on ?? null;
}

/** The seven days of the plan's week that holds this day; before the plan the first of them, after it the last. */
export function weekAround<Day extends PlannedDay>(on: IsoDate, days: readonly Day[]): readonly Day[] {
  const [first, last] = [days[0], days[days.length - 1]];
  if (first === undefined || last === undefined) return [];
  const within = on < first.on ? first.on : on > last.on ? last.on : on;
  const start = addDays(first.on, 7 * Math.floor(daysBetween(first.on, within) / 7));
  return days.filter((day) => day.on >= start && daysBetween(start, day.on) < 7);
}
