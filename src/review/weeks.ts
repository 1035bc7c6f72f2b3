/** Week by week what was planned and done, for the record. */
import { isRun } from './running.ts';
import { isDone, type SessionDay } from './sessions.ts';
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import type { ReviewWeek } from './terms.ts';

/** Weeks of seven days from the start; the last may be shorter. */
export function weeksOf(sessions: readonly SessionDay[], period: Period): readonly ReviewWeek[] {
  const count = Math.ceil(daysBetween(period.from, period.until) / 7);
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const from = addDays(period.from, index * 7);
    const end = addDays(from, 7);
    return weekOf(from, end < period.until ? end : period.until, sessions, period);
  });
}

function weekOf(
  from: IsoDate,
  end: IsoDate,
  sessions: readonly SessionDay[],
  { entries, earlier }: Period,
): ReviewWeek {
  const within = (on: IsoDate) => on >= from && on < end;
  const own = entries.filter(({ date }) => within(date));
  const days = sessions.filter(({ on }) => within(on));
  const runs = own.filter((one) => one.kind === 'run' && isRun(one));
  const km = runs.flatMap((one) => one.km ?? []);
  const scores = own.flatMap(({ kind, morning }) =>
    kind === 'morning' && morning !== null ? [morning] : [],
  );
  const sat = own.flatMap(({ kind, minutes }) => (kind === 'sitting' && minutes !== null ? [minutes] : []));
  return {
    from,
    to: addDays(end, -1),
    sessions: {
      planned: days.filter(({ planned }) => planned).length,
      done: days.filter(({ done }) => done).length,
    },
    runDays: {
      planned: earlier.plan.filter((one) => within(one.on) && one.runs.length > 0).length,
      done: new Set(runs.map(({ date }) => date)).size,
    },
    km: km.length === 0 ? null : Math.round(km.reduce((sum, one) => sum + one, 0) * 10) / 10,
    mornings:
      scores.length === 0
        ? null
        : { least: Math.min(...scores), most: Math.max(...scores), written: scores.length },
    loads: earlier.exercises.flatMap(({ card }) => {
      const loads = own.flatMap((one) => (one.card === card && isDone(one) ? (one.loadKg ?? []) : []));
      return loads.length === 0 ? [] : [{ card, leastKg: Math.min(...loads), mostKg: Math.max(...loads) }];
    }),
    sittingMinutes: sat.length === 0 ? null : Math.max(...sat),
  };
}
