/** The step and the stage: what the log as a whole leads to, and on what grounds (house rules 4 and 5). */
import { numberedStages } from '../content/keepStage.ts';
import { addDays, type IsoDate } from '../units/date.ts';
import type { StageName } from '../decisions/terms/stageName.ts';
import { breaksOf, type Away } from './away.ts';
import { betweenBecause, silentBetween, silentSessions, sourceOf } from './exercise.ts';
import { standsApart } from './betweenWork.ts';
import type { Period } from './facts.ts';
import { missingBecause, missingForStage, missingForStep, stepLog, type Work } from './goingOn.ts';
import { morningEntries, morningsSaid } from './mornings.ts';
import { unknownOf } from './unknown.ts';
import { atWorst, unwrittenMornings } from './unwritten.ts';
import { gentlestOf, MOVES, type Because } from './terms.ts';

/** Every ground that holds, the gentlest move first. */
export function stepGrounds(work: Work, period: Period): readonly Because[] {
  const unknown = unknownOf(period);
  const alarms = alarmsOf(period);
  // Nothing written is nothing known: neither a break nor an earned step.
  if (period.entries.length === 0) return [...alarms, ...unknown];
  const said = morningsSaid(work.mornings, period);
  const breaks = work.sessions.some(({ entries }) => entries.length > 0)
    ? breaksOf(work.sessions, period)
    : [];
  const since = sinceOf(said.unsettledUntil, breaks, period);
  const missing = missingFor(since, work, period);
  const setback = setbackOf(since, said.badUntil, breaks, missing.length === 0, work, period);
  const found = [
    ...alarms,
    ...(said.now === null || said.now.move === 'moveOn' ? [] : [said.now]),
    ...setback,
    ...said.bars,
    ...unknown,
  ];
  // What is missing for going on is no matter where less is asked for.
  if (gentlestOf(found) === 'moveOn' || gentlestOf(found) === 'stay')
    found.push(
      ...missing,
      ...silentBecause(period),
      ...betweenBecause(
        silentBetween(period, (card) => !standsApart(card, work, period)),
        period,
      ),
      ...(missing.length === 0 ? unwrittenBecause(work, breaks, period) : []),
    );
  const all = found.length === 0 ? [allMet(work, period)] : found;
  return all.toSorted((a, b) => MOVES.indexOf(b.move) - MOVES.indexOf(a.move));
}

function silentBecause(period: Period): Because[] {
  const days = silentSessions(period);
  const source = sourceOf(period.protocol.goingOn.doneSessions, 'house rules 4 and 5');
  return days.length === 0
    ? []
    : [{ rule: 'session-not-written', move: 'stay', inputs: { days }, source, entries: [] }];
}

// Earned as it is written, but not whatever the unwritten mornings were.
function unwrittenBecause(work: Work, breaks: readonly Away[], period: Period): Because[] {
  const worst = atWorst(work, period);
  const said = morningsSaid(worst.mornings, period);
  const missing = missingFor(sinceOf(said.unsettledUntil, breaks, period), worst, period);
  if (missing.length === 0 && said.bars.length === 0) return [];
  const { unwrittenCheckAs } = period.protocol.goingOn;
  return [
    {
      rule: 'morning-not-written',
      move: 'stay',
      inputs: { days: unwrittenMornings(work, period) },
      source: sourceOf(unwrittenCheckAs, 'house rules 4 and 5'),
      entries: [],
    },
  ];
}

/** The step earned, the day after the last setback. */
function sinceOf(unsettledUntil: IsoDate | null, breaks: readonly Away[], { from }: Period): IsoDate {
  const days = [
    from,
    ...(unsettledUntil === null ? [] : [addDays(unsettledUntil, 1)]),
    ...breaks.map(({ to }) => to),
  ];
  return days.reduce((last, next) => (next > last ? next : last));
}

function missingFor(since: IsoDate, work: Work, period: Period): Because[] {
  const stage = nextStage(period);
  const missing =
    period.isLastStep && stage.leastSessions !== null
      ? missingForStage(since, work, period, stage.leastSessions)
      : missingForStep(since, work, period);
  return missing.map((one) => missingBecause(one, since, work, period));
}

/** The stage after this one, and the sessions this one asks for; null where none follows. */
export function nextStage({ earlier, protocol }: Period): {
  name: StageName | null;
  leastSessions: number | null;
} {
  const stages = numberedStages(protocol.stages);
  const now = earlier.stage === 'keepGoing' ? undefined : stages[earlier.stage - 1];
  if (now === undefined) return { name: null, leastSessions: null };
  const next = Number(earlier.stage) + 1;
  return {
    name: next <= stages.length ? (next as StageName) : null,
    leastSessions: now.exit.sessions,
  };
}

/**
 * After bad mornings or a break the step is one back until the whole dose was done again and borne; a break of more than
 * the protocol's limit goes back to the start of the stage, and never on in the same review.
 */
function setbackOf(
  since: IsoDate,
  badUntil: IsoDate | null,
  breaks: readonly Away[],
  isEarned: boolean,
  work: Work,
  period: Period,
): Because[] {
  const hasDone = stepLog(since, work, period).doneInFull > 0;
  const ofBreaks = breaks.flatMap((one) => breakBecause(one, { isEarned, hasDone }, work, period));
  if (badUntil === null || isEarned) return ofBreaks;
  const { sameAgainOver } = period.protocol.morningCheck;
  return [
    ...ofBreaks,
    {
      rule: 'not-done-since',
      move: hasDone ? 'stay' : 'startAgain',
      inputs: { badUntil, doneInFull: stepLog(since, work, period).doneInFull },
      source: sourceOf(sameAgainOver, 'house rules 5'),
      entries: morningEntries(period, badUntil, badUntil),
    },
  ];
}

function breakBecause(
  { from, to, days, start, isOver }: Away,
  { isEarned, hasDone }: { readonly isEarned: boolean; readonly hasDone: boolean },
  work: Work,
  { protocol }: Period,
): Because[] {
  const long = start === 'stage-start';
  if (isOver && isEarned && !long) return [];
  const { sameStepUnder, oneBackUpTo } = protocol.missedDays;
  return [
    {
      rule: long ? 'long-away' : 'away',
      move: isOver && (isEarned || hasDone) ? 'stay' : 'startAgain',
      inputs: { days, from, to, sameStepUnder: sameStepUnder.value, oneBackUpTo: oneBackUpTo.value },
      source: sourceOf(long ? oneBackUpTo : sameStepUnder, 'house rules 5'),
      entries: work.sessions.flatMap(({ on, entries }) => (on >= from && on <= to ? entries : [])),
    },
  ];
}

function alarmsOf({ log, entries }: Period): Because[] {
  if (log.alarms.length === 0) return [];
  return [
    {
      rule: 'alarm',
      move: 'beSeen',
      inputs: { items: log.alarms.map(({ item }) => item ?? 'unknown').join(' ') },
      source: { cite: 'house rules 2', mark: 'common-practice' },
      entries: entries.filter(({ kind, done }) => kind === 'alarm' && done !== 'no'),
    },
  ];
}

function allMet(work: Work, period: Period): Because {
  const { doneInFull, sessionsDone, sessionsPlanned } = stepLog(period.from, work, period);
  return {
    rule: 'all-met',
    move: 'moveOn',
    inputs: { doneInFull, sessionsDone, sessionsPlanned },
    source: sourceOf(period.protocol.goingOn.doneSessions, 'house rules 4'),
    entries: work.sessions.flatMap(({ inFull, entries }) => (inFull ? entries : [])),
  };
}
