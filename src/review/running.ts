/** Running, by its own rules: what was planned and done, and how it felt (house rules 5 and 7). */
import type { LogEntry } from '../content/log/log.ts';
import { painGate } from '../scheduling/morning.ts';
import { addDays, type IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import { sourceOf } from './exercise.ts';
import { unwrittenRuns } from './unwrittenWork.ts';
import { gentler, gentlestOf, type Because, type HabitReview } from './terms.ts';

const MOVE_OF = { 'carry-on': 'moveOn', 'same-again': 'stay', 'ease-back': 'easeBack' } as const;

/** Null for somebody of whom no run was planned or written down. `grounds`: those of the log as a whole; running never goes on beyond what they lead to. */
export function runningReview(period: Period, grounds: readonly Because[]): HabitReview | null {
  const { earlier, entries, from, until, protocol } = period;
  const planned = earlier.plan.filter(({ on, runs }) => on >= from && on < until && runs.length > 0).length;
  const runs = entries.filter(({ kind }) => kind === 'run');
  if (planned === 0 && runs.length === 0) return null;
  const done = runs.filter(isRun);
  const days = new Set(done.map(({ date }) => date)).size;
  const source = sourceOf(protocol.goingOn.sessionsDoneShare, 'house rules 4 and 7');
  const share = planned === 0 ? 1 : days / planned;
  const inputs = { have: days, planned, share: protocol.goingOn.sessionsDoneShare.value };
  const enough = share >= protocol.goingOn.sessionsDoneShare.value;
  const amount: Because = {
    rule: days === 0 ? 'runs-none' : enough ? 'runs-done' : 'runs-few',
    move: days > 0 && enough ? 'moveOn' : 'stay',
    inputs,
    source,
    entries: done,
  };
  const own = [...painOf(done, period), ...unwrittenBecause(silentRuns(period), period), amount];
  const ofWhole = grounds.map((one) => softened(one, done));
  const decision = gentler(gentlestOf(own), gentlestOf(ofWhole));
  // What decided stands first, where it is more than missing lines.
  const deciding = decision === 'moveOn' || decision === 'stay' ? [] : ofWhole;
  return { decision, because: [...deciding.filter(({ move }) => move === decision), ...own] };
}

// Who was away from the exercises but ran has shorter runs; after bad mornings runs start again like everything else.
function softened(ground: Because, done: readonly LogEntry[]): Because {
  const { rule, move, inputs } = ground;
  const ranOn = done.some(({ date }) => date > String(inputs['from']) && date < String(inputs['to']));
  const isBreak = rule === 'away' || rule === 'long-away';
  return isBreak && move === 'startAgain' && ranOn ? { ...ground, move: 'easeBack' } : ground;
}

export function isRun({ done, km, minutes }: LogEntry): boolean {
  return done === null ? (km ?? 0) > 0 || (minutes ?? 0) > 0 : done !== 'no';
}

function painOf(runs: readonly LogEntry[], period: Period): Because[] {
  const { consult, protocol } = period;
  const last = runs.slice(-protocol.goingOn.doneSessions.value);
  return last.flatMap((entry, index): Because[] => {
    if (entry.painDuring === null) return [painUnwritten(entry, period)];
    const { usualMorningPain: usualPain, irritability } = consult;
    const { next, because } = painGate(entry.painDuring, { usualPain, irritability }, protocol.painRule);
    if (next === 'carry-on') return [];
    const move = index === last.length - 1 ? MOVE_OF[next] : 'stay';
    const source = { cite: 'house rules 5', mark: because.mark };
    return [{ rule: because.code, move, inputs: because.inputs, source, entries: [entry] }];
  });
}

function painUnwritten(entry: LogEntry, { protocol }: Period): Because {
  const source = sourceOf(protocol.painRule.duringAtMost, 'house rules 5');
  return { rule: 'pain-not-written', move: 'stay', inputs: {}, source, entries: [entry] };
}

/** Planned run days of which no line speaks, in order: one may have been the last that hurt. */
export function silentRuns(period: Period): readonly IsoDate[] {
  const done = period.entries.filter((entry) => entry.kind === 'run' && isRun(entry));
  const days = [...new Set(done.map(({ date }) => date))];
  return unwrittenRuns(days, period.protocol.goingOn.doneSessions.value, period);
}

function unwrittenBecause(days: readonly IsoDate[], { protocol, entries }: Period): Because[] {
  const source = sourceOf(protocol.goingOn.doneSessions, 'house rules 4 and 7');
  // Where none was written at all, that is said already.
  return days.length === 0 || !entries.some(({ kind }) => kind === 'run')
    ? []
    : [{ rule: 'run-not-written', move: 'stay', inputs: { days }, source, entries: [] }];
}

/** Kilometres that were run, for the next consult: the longest of thirty days, and the mean of the weeks. Null where none were written. */
export function runsDone({ entries, until, from }: Pick<Period, 'entries' | 'until' | 'from'>): {
  readonly longestKm: number;
  readonly weeklyKm: number;
} | null {
  const runs = entries.filter((entry) => entry.kind === 'run' && isRun(entry) && entry.km !== null);
  if (runs.length === 0) return null;
  const lately = runs.filter(({ date }) => date >= addDays(until, -LONGEST_DAYS));
  const longestKm = Math.max(0, ...lately.map(({ km }) => km ?? 0));
  const weeks = Math.max(1, Math.round((Date.parse(until) - Date.parse(from)) / MS_PER_WEEK));
  const total = runs.reduce((sum, { km }) => sum + (km ?? 0), 0);
  return { longestKm, weeklyKm: Math.round((total / weeks) * 10) / 10 };
}

// The consult asks for the longest run of so many days.
export const LONGEST_DAYS = 30;
const MS_PER_WEEK = 7 * 86_400_000;
