/** What a review looks at: one revision, its plan, and what was written down of it. */
import type { Consult, Protocol } from '../content/library.ts';
import type { Log, LogEntry } from '../content/log/log.ts';
import type { Earlier } from '../decisions/terms/earlier.ts';
import { addDays, type IsoDate } from '../units/date.ts';

export interface ReviewFacts {
  /** Of the revision that is looked back on. */
  readonly consult: Consult;
  readonly earlier: Earlier;
  readonly protocol: Protocol;
  /** No step of the stage follows the present one. */
  readonly isLastStep: boolean;
  /** The leaflet gave minutes of sitting. */
  readonly countsSitting: boolean;
  /** Sessions done in this stage under the revisions before. */
  readonly stageSessionsBefore: number;
  readonly log: Log;
  /** Day of the review. */
  readonly seenOn: IsoDate;
}

/** The same with the days that are judged and the entries of these. */
export interface Period extends ReviewFacts {
  readonly from: IsoDate;
  readonly until: IsoDate;
  readonly entries: readonly LogEntry[];
  /** Before the start, or after the day of the review. */
  readonly outside: readonly LogEntry[];
}

/**
 * From the start to the day before the review. A review that comes late judges up to the day it was planned for, or as far
 * as the log goes: after it nothing was asked for. One dated before the start counts as on the planned day.
 */
export function periodOf(facts: ReviewFacts): Period {
  const { consult, log, seenOn } = facts;
  const { startOn: from, reviewOn } = consult;
  const seen = seenOn > from ? seenOn : reviewOn;
  const known = log.entries.filter(({ date }) => date >= from && date <= later(seen, reviewOn));
  const lastOn = known.at(-1)?.date ?? from;
  const until = seen <= reviewOn ? seen : later(reviewOn, earlierOf(seen, addDays(lastOn, 1)));
  return {
    ...facts,
    from,
    until,
    entries: known.filter(({ date }) => date <= until),
    outside: log.entries.filter(({ date }) => date < from || date > until),
  };
}

function later(a: IsoDate, b: IsoDate): IsoDate {
  return a > b ? a : b;
}

function earlierOf(a: IsoDate, b: IsoDate): IsoDate {
  return a < b ? a : b;
}
