/** What the log does not say, or says twice: it bars moving on, and is a question for the review. */
import { addDays, daysBetween } from '../units/date.ts';
import { breaksOf } from './away.ts';
import { silentBetween } from './exercise.ts';
import type { Period } from './facts.ts';
import type { Work } from './goingOn.ts';
import { silentRuns } from './running.ts';
import { isSittingUnwritten } from './sitting.ts';
import type { Ask, Because, ExerciseReview, RuleCode } from './terms.ts';

/** Grounds to stay. */
export function unknownOf(period: Period): Because[] {
  const { log, entries, outside } = period;
  return [
    ...(entries.length === 0 ? [ground('nothing-written', {}, [])] : []),
    ...(log.contradicted.length > 0
      ? [ground('contradiction', { days: log.contradicted.join(' ') }, [])]
      : []),
    ...(log.unread > 0 ? [ground('unread', { lines: log.unread }, [])] : []),
    ...(outside.length > 0 ? [ground('outside', { lines: outside.length }, outside)] : []),
    ...(daysSince(period) >= period.protocol.missedDays.sameStepUnder.value
      ? [ground('since-log', { days: daysSince(period) }, [])]
      : []),
  ];
}

function ground(rule: RuleCode, inputs: Because['inputs'], entries: Because['entries']): Because {
  return { rule, move: 'stay', inputs, source: { cite: 'house rules 4', mark: 'choice' }, entries };
}

/** Days between the end of what is judged and a review that comes later. */
function daysSince({ until, seenOn }: Period): number {
  return Math.max(0, daysBetween(until, seenOn));
}

/** Every question, in the order in which it is put. */
export function asksOf(
  work: Work,
  exercises: readonly ExerciseReview[],
  grounds: readonly Because[],
  period: Period,
): readonly Ask[] {
  const { log, entries, outside, until } = period;
  if (entries.length === 0) return [ask('nothing-written'), ...ofFile(period)];
  const missing = missingMornings(work, grounds, period);
  const unwritten = daysOf('session-not-written', grounds);
  // Where less is asked for, nobody waits for what would let it go on.
  const waits = grounds.every(({ move }) => move === 'moveOn' || move === 'stay');
  const between = waits ? silentBetween(period) : [];
  const runs = waits ? silentRuns(period) : [];
  const silent = exercises.filter(({ because }) => because.some(({ rule }) => rule === 'pain-not-written'));
  const breaks = work.sessions.some((one) => one.entries.length > 0) ? breaksOf(work.sessions, period) : [];
  return [
    ...(log.alarms.length > 0 ? [ask('contact')] : []),
    ...ofFile(period),
    ...breaks.map(({ from, to, days, start }) =>
      ask(start === 'stage-start' ? 'contact' : 'away', [from, addDays(to, -1)], { days }),
    ),
    ...(missing.length > 0 ? [ask('mornings', missing, { days: missing.length })] : []),
    ...(unwritten.length > 0 ? [ask('sessions', unwritten, { days: unwritten.length })] : []),
    ...(between.length > 0 ? [ask('between', between, { days: between.length })] : []),
    ...(runs.length > 0 ? [ask('runs', runs, { days: runs.length })] : []),
    ...(isSittingUnwritten(period) ? [ask('sitting')] : []),
    ...(silent.length > 0 ? [ask('pain', [], { cards: silent.map(({ card }) => card).join(' ') })] : []),
    ...(outside.length > 0 ? [ask('outside', [...new Set(outside.map(({ date }) => date))])] : []),
    ...(daysSince(period) >= period.protocol.missedDays.sameStepUnder.value
      ? [ask('since-log', [until], { days: daysSince(period) })]
      : []),
    ...(isTodayOpen(work, missing, period) ? [ask('today', [until])] : []),
  ];
}

function ofFile({ log }: Period): Ask[] {
  return [
    ...(log.contradicted.length > 0 ? [ask('contradiction', log.contradicted)] : []),
    ...(log.unread > 0 ? [ask('unread', [], { lines: log.unread })] : []),
  ];
}

export function ask(code: Ask['code'], days: Ask['days'] = [], inputs: Ask['inputs'] = {}): Ask {
  return { code, days, inputs };
}

// Those of the last days; all of them where nothing but they stands against going on.
function missingMornings({ mornings }: Work, grounds: readonly Because[], { protocol }: Period): Ask['days'] {
  const barring = daysOf('morning-not-written', grounds);
  if (barring.length > 0) return barring;
  return mornings
    .slice(-protocol.goingOn.checkDays.value)
    .flatMap(({ on, score }) => (score === null ? [on] : []));
}

function isTodayOpen({ mornings }: Work, asked: Ask['days'], { until, seenOn }: Period): boolean {
  return seenOn === until && mornings.at(-1)?.on !== until && !asked.includes(until);
}

/** The days that grounds of a rule name, each once, in order. */
function daysOf(rule: RuleCode, grounds: readonly Because[]): Ask['days'] {
  const days = grounds.flatMap((one) => (one.rule === rule ? (one.inputs['days'] as Ask['days']) : []));
  return [...new Set(days)].sort();
}
