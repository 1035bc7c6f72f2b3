/** What the leaflet prints of each day, read back from its own words: week tables, log, running table. */
import type { Programme } from '../../src/programme/programme.ts';
import type { PlanEntry } from '../../src/decisions/terms/planEntry.ts';
import type { Section } from '../../src/messages/shapes.ts';
import { dayText, shortDay, weekdayText } from '../../src/messages/en/plain.ts';
import { RUN_WORDS } from '../../src/messages/en/patient/running.ts';

/** The things of a day by kind; a run without a number where its amount is printed elsewhere. */
export interface ReadDay {
  readonly races: readonly number[];
  readonly runs: readonly { readonly kind: string; readonly km: number | null; readonly amount: string }[];
  readonly session: boolean;
  readonly between: boolean;
  readonly daily: boolean;
  readonly easy: boolean;
  readonly other: readonly string[];
}

const RUN_KINDS_BY_WORDS = Object.entries(RUN_WORDS)
  .map(([kind, words]) => [kind, words.replace(' on the flat', '')] as const)
  .sort(([, a], [, b]) => b.length - a.length);

/** A day's line, for example `Easy run 4.2 km; exercises without Strides on the flat; easy day`. */
export function readDay(line: string): ReadDay {
  const entries = line === '' || line === 'Free' ? [] : line.split('; ');
  const races: number[] = [];
  const runs: { kind: string; km: number | null; amount: string }[] = [];
  const other: string[] = [];
  let [session, between, daily, easy] = [false, false, false, false];
  for (const entry of entries) {
    const text = entry.charAt(0).toLowerCase() + entry.slice(1);
    const race = /^race, ([\d.]+) km$/.exec(text);
    const walkRun = /^(?:walk \d+, run \d+ min, \d+ times|\d+ times: walk \d+ min, run \d+ min)$/.exec(text);
    const run = runOf(text);
    if (race !== null) races.push(Number(race[1]));
    else if (walkRun !== null)
      runs.push({ kind: 'walk-run', km: null, amount: (text.match(/\d+/g) ?? []).sort().join(' ') });
    else if (run !== null) runs.push(run);
    else if (/^exercises( of step \d+)?( without .*)?(, new: .*)?(, after .*)?$/.test(text)) session = true;
    else if (/^(the )?holds$/.test(text)) between = true;
    else if (text === 'moving gently') daily = true;
    else if (text === 'easy day') easy = true;
    else other.push(text);
  }
  return { races, runs, session, between, daily, easy, other };
}

function runOf(text: string): ReadDay['runs'][number] | null {
  const found = RUN_KINDS_BY_WORDS.find(([, words]) => text.startsWith(words));
  if (found === undefined) return null;
  const km = /([\d.]+) km$/.exec(text);
  const minutes = /([\d.]+) minutes$/.exec(text);
  return {
    kind: found[0],
    km: km === null ? null : Number(km[1]),
    amount: km?.[1] ?? minutes?.[1] ?? '',
  };
}

/** The same of an entry of the plan. */
export function plannedDay(entry: PlanEntry): ReadDay {
  return {
    races: entry.races.map(({ km }) => km),
    runs: entry.runs.map(({ kind, km, minutes, walkRun }) => ({
      kind,
      km,
      amount:
        walkRun === null
          ? String(km ?? minutes ?? '')
          : [walkRun.cycles, walkRun.walkMinutes, walkRun.runMinutes].map(String).sort().join(' '),
    })),
    session: entry.sessions.length > 0,
    between: entry.between.length > 0,
    daily: entry.daily.length > 0,
    easy: entry.easyAfterRace,
    other: entry.other,
  };
}

/** The rows of the log by their dates. */
export function logRows({ log }: Programme): { readonly on: string; readonly day: ReadDay }[] {
  return log.days.map(({ on, label, planned }) => {
    if (label !== shortDay(on)) throw new Error(`${label} is not ${on}`);
    return { on, day: readDay(planned) };
  });
}

/** The week section on the dates of the plan, tables of what is different laid over those before them. */
export function weekRows(programme: Programme): { readonly on: string; readonly day: ReadDay }[] {
  const tables = programme.week.parts.flatMap((part) => (part.kind === 'table' ? [part.table] : []));
  let known = new Map<string, string>();
  let days = [...programme.plan];
  const rows: { on: string; day: ReadDay }[] = [];
  // Of weeks with the same days and another step only dates and steps are printed.
  interface OneTable {
    readonly caption: string;
    readonly step: string | null;
    readonly rows: readonly (readonly string[])[];
  }
  const single = tables.flatMap(({ caption, rows: lines }): OneTable[] =>
    caption.includes('the same days')
      ? lines.map(([span = '', step = '']) => ({ caption: span, step, rows: [] }))
      : [{ caption, step: null, rows: lines }],
  );
  single.forEach(({ caption, step, rows: lines }, index) => {
    const different = caption.includes('what is different');
    const own = new Map(
      lines.flatMap(([day = '', plan = '']) =>
        day === 'Every day' ? WEEK.map((name) => [name, plan] as const) : [[day, plan] as const],
      ),
    );
    if (step === null) known = different ? new Map([...known, ...own]) : own;
    const next = single[index + 1]?.caption;
    const until = next === undefined ? days.length : days.findIndex(({ on }) => startsWithDay(next, on));
    if (until < 0) throw new Error(`no day for ${next}`);
    for (const { on, weekday, step: planned, sessions } of days.slice(0, until)) {
      if (step !== null && sessions.length > 0 && step !== `Step ${planned}`)
        throw new Error(`${caption} says ${step}, planned is ${planned}`);
      const line = known.get(weekdayText(weekday));
      if (line === undefined) throw new Error(`${caption} says nothing of ${on}`);
      rows.push({ on, day: readDay(line) });
    }
    days = days.slice(until);
  });
  return rows;
}

const WEEK = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

function startsWithDay(caption: string, on: PlanEntry['on']): boolean {
  const day = dayText(on);
  return new RegExp(`^(\\w+day )?${day}( |:|$)`).test(caption);
}

/** Rows of the running table that goes by distance: kilometres in all, null where it says something else. */
export function runningTotals({ running }: Programme): (number | null)[] | null {
  const table = tableOf(running, 'The weeks to the review');
  return table === null
    ? null
    : table.map(([, , , inAll = '']) => (/ km$/.test(inAll) ? parseFloat(inAll) : null));
}

/** Outings and what each is, of the walk-run table. */
export function walkRunRows({ running }: Programme): readonly (readonly string[])[] | null {
  return tableOf(running, 'Walking into running');
}

function tableOf({ parts }: Section, caption: string): readonly (readonly string[])[] | null {
  const found = parts.flatMap((part) =>
    part.kind === 'table' && part.table.caption === caption ? [part.table.rows] : [],
  );
  return found[0] ?? null;
}
