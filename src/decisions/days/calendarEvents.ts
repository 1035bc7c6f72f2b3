/** The dated plan as entries of a calendar, and what an earlier revision planned that is planned no longer. */
import type { PostSettings } from '../../content/schema/post.ts';
import type { IsoDate } from '../../units/date.ts';
import type { CalendarEvent, EventKind } from '../terms/calendarEvent.ts';
import type { PlanEntry } from '../terms/planEntry.ts';

export type CalendarSettings = PostSettings['calendar'];

/** Of this plan, by day: exercises and holds of a day are one entry, its runs another, a race a third. */
export function plannedEvents(
  plan: readonly PlanEntry[],
  sessionMinutes: number,
  settings: CalendarSettings,
): CalendarEvent[] {
  const at = {
    exercises: settings.exercisesAt.value,
    run: settings.runsAt.value,
    race: settings.runsAt.value,
  };
  return plan.flatMap((day) =>
    Object.entries(minutesByKind(day, sessionMinutes, settings)).flatMap(([name, minutes]) => {
      const kind = name as EventKind;
      return minutes === null ? [] : [{ on: day.on, kind, at: at[kind], minutes, isCancelled: false }];
    }),
  );
}

/**
 * With what `before` (the events of the revision before, cancelled ones too) held from the day of this consult on and
 * this plan does not: a phone that was given any earlier file forgets it.
 */
export function withCancelled(
  planned: readonly CalendarEvent[],
  before: readonly CalendarEvent[],
  seenOn: IsoDate,
): CalendarEvent[] {
  const now = new Set(planned.map(nameOf));
  const gone = before
    .filter((event) => event.on >= seenOn && !now.has(nameOf(event)))
    .map((event) => ({ ...event, isCancelled: true }));
  return [...planned, ...gone].sort((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
}

/** @example nameOf({ on: '2026-03-03', kind: 'run', ... }) // => '2026-03-03 run' */
function nameOf({ on, kind }: CalendarEvent): string {
  return `${on} ${kind}`;
}

/** Null where the day has nothing of a kind. */
function minutesByKind(
  { sessions, between, runs, races }: PlanEntry,
  sessionMinutes: number,
  { holdsMinutes, runMinutes }: CalendarSettings,
): Readonly<Record<EventKind, number | null>> {
  const run = runs.reduce((sum, { minutes }) => sum + (minutes ?? runMinutes.value), 0);
  return {
    exercises: sessions.length > 0 ? sessionMinutes : between.length > 0 ? holdsMinutes.value : null,
    run: runs.length > 0 ? Math.max(1, Math.round(run)) : null,
    race: races.length > 0 ? runMinutes.value : null,
  };
}
