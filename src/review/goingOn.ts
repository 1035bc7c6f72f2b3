/** Whether the present step has been earned since the last setback (house rules 4). */
import {
  missingToGoOn,
  missingToGoOnStage,
  type GoingOnRules,
  type Missing,
  type StepLog,
} from '../dosing/goingOn.ts';
import { daysBetween, type IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import type { Morning } from './mornings.ts';
import { sourceOf } from './exercise.ts';
import type { SessionDay } from './sessions.ts';
import type { Because } from './terms.ts';

export interface Work {
  readonly sessions: readonly SessionDay[];
  readonly mornings: readonly Morning[];
}

/** What the log says of the step from a day on. A session on another day than planned is one done all the same. */
export function stepLog(since: IsoDate, { sessions, mornings }: Work, period: Period): StepLog {
  const own = sessions.filter(({ on }) => on >= since);
  return {
    doneInFull: own.filter(({ inFull }) => inFull).length,
    sessionsDone: own.filter(({ done }) => done).length,
    sessionsPlanned: own.filter(({ planned }) => planned).length,
    daysOnStep: Math.max(0, daysBetween(since, period.until)),
    checksOverUsual: mornings.map(({ score }) =>
      score === null ? null : score - period.consult.usualMorningPain,
    ),
  };
}

/** What is missing for the next step. The share of the planned sessions counts from the start: a setback never makes it larger. */
export function missingForStep(since: IsoDate, work: Work, period: Period): readonly Missing[] {
  const rules = rulesOf(period);
  const isShare = ({ what }: Missing) => what === 'sessionsDoneShare';
  return [
    ...missingToGoOn(stepLog(since, work, period), rules).filter((one) => !isShare(one)),
    ...missingToGoOn(stepLog(period.from, work, period), rules).filter(isShare),
  ];
}

/** The same for the next stage, which asks for its own least number of sessions, those under earlier revisions included. */
export function missingForStage(
  since: IsoDate,
  work: Work,
  period: Period,
  stageLeastSessions: number,
): readonly Missing[] {
  const done = period.stageSessionsBefore + stepLog(period.from, work, period).sessionsDone;
  const ofStage = missingToGoOnStage(stepLog(since, work, period), rulesOf(period), done, stageLeastSessions);
  return [
    ...missingForStep(since, work, period),
    // That of the step stands there already.
    ...ofStage.filter(({ what }) => what === 'leastSessions'),
  ];
}

function rulesOf({ protocol }: Period): GoingOnRules {
  const { doneSessions, checkOverUsual, checkDays, sessionsDoneShare, leastSessions, leastDays } =
    protocol.goingOn;
  return {
    doneSessions: doneSessions.value,
    checkOverUsual: checkOverUsual.value,
    checkDays: checkDays.value,
    sessionsDoneShare: sessionsDoneShare.value,
    leastSessions: leastSessions.value,
    leastDays: leastDays.value,
  };
}

/** What is missing, as a ground to stay, with what there is of it. */
export function missingBecause(
  { what, have, need }: Missing,
  since: IsoDate,
  work: Work,
  period: Period,
): Because {
  const setting = period.protocol.goingOn[what];
  const mornings = what === 'checkDays' || what === 'checkOverUsual';
  return {
    rule: `missing-${what}`,
    move: 'stay',
    inputs: { have, need, ...(since === period.from ? {} : { since }) },
    source: sourceOf(setting, 'house rules 4'),
    entries: mornings ? lastMornings(work, period) : doneEntries(what, work),
  };
}

function lastMornings({ mornings }: Work, { entries, protocol }: Period): Because['entries'] {
  const first = mornings.slice(-protocol.goingOn.checkDays.value)[0]?.on;
  return first === undefined ? [] : entries.filter(({ kind, date }) => kind === 'morning' && date >= first);
}

function doneEntries(what: Missing['what'], { sessions }: Work): Because['entries'] {
  return sessions.flatMap(({ inFull, done, entries }) =>
    (what === 'doneSessions' ? inFull : done) ? entries : [],
  );
}
