/** When the next step may be taken. */

/** What the log says of the present step. */
export interface StepLog {
  /** Sessions in which the whole dose was done. */
  readonly doneInFull: number;
  readonly sessionsDone: number;
  readonly sessionsPlanned: number;
  readonly daysOnStep: number;
  /** Morning check over the person's usual, day by day, the latest last; null where it was not written down. */
  readonly checksOverUsual: readonly (number | null)[];
}

/** The protocol's rule of going on. */
export interface GoingOnRules {
  readonly doneSessions: number;
  readonly checkOverUsual: number;
  readonly checkDays: number;
  readonly sessionsDoneShare: number;
  readonly leastSessions: number;
  readonly leastDays: number;
}

/** What is still missing; `have` and `need` in the unit of the name. */
export interface Missing {
  readonly what:
    'doneSessions' | 'leastSessions' | 'leastDays' | 'sessionsDoneShare' | 'checkDays' | 'checkOverUsual';
  readonly have: number;
  readonly need: number;
}

/**
 * What is missing before the next step, empty when it may be taken: the dose done in full often enough, the morning
 * check near usual on each of the last days (one not written down counts as missing), enough of the planned sessions,
 * and at least the least sessions and days on the step (rules 4, choice).
 */
export function missingToGoOn(log: StepLog, rules: GoingOnRules): readonly Missing[] {
  const last = log.checksOverUsual.slice(-rules.checkDays);
  const written = last.filter((check) => check !== null);
  const share = log.sessionsPlanned === 0 ? 0 : log.sessionsDone / log.sessionsPlanned;
  const least: readonly Missing[] = [
    { what: 'doneSessions', have: log.doneInFull, need: rules.doneSessions },
    { what: 'leastSessions', have: log.sessionsDone, need: rules.leastSessions },
    { what: 'leastDays', have: log.daysOnStep, need: rules.leastDays },
    { what: 'sessionsDoneShare', have: share, need: rules.sessionsDoneShare },
    { what: 'checkDays', have: written.length, need: rules.checkDays },
  ];
  const worst = Math.max(...written, -Infinity);
  return [
    ...least.filter(({ have, need }) => have < need),
    ...(worst > rules.checkOverUsual
      ? [{ what: 'checkOverUsual', have: worst, need: rules.checkOverUsual } as const]
      : []),
  ];
}

/** As `missingToGoOn`, for the next stage: the stage must also have had its least sessions, `stageSessionsDone` of them. */
export function missingToGoOnStage(
  log: StepLog,
  rules: GoingOnRules,
  stageSessionsDone: number,
  stageLeastSessions: number,
): readonly Missing[] {
  const missing = missingToGoOn(log, rules).filter(({ what }) => what !== 'leastSessions');
  return stageSessionsDone < stageLeastSessions
    ? [...missing, { what: 'leastSessions', have: stageSessionsDone, need: stageLeastSessions }]
    : missing;
}

/** Days a step lasts at least: its least days, or as long as its least sessions take at so many a week (1 or more). @example leastDaysOfStep(2, { leastSessions: 3, leastDays: 7 }) // => 11 */
export function leastDaysOfStep(
  sessionsPerWeek: number,
  rules: Pick<GoingOnRules, 'leastSessions' | 'leastDays'>,
): number {
  return Math.max(rules.leastDays, Math.ceil((rules.leastSessions * 7) / sessionsPerWeek));
}
