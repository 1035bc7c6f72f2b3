/** How long it usually takes, the earliest day of each stage, and whether a dated goal can be reached by then. */
import { earliestStageDates, goalReachable, type StageDate } from '../../scheduling/stageDates.ts';
import { numberedStages } from '../../content/keepStage.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';
import type { IsoDate } from '../../units/date.ts';
import type { Person } from '../person/person.ts';
import { needsFastWork } from '../screen/fastWork.ts';
import type { StageName } from '../terms/stageName.ts';

/** What no plan can date: how long a medicine holds back, and what comes after a birth. */
export type OpenEnd = 'medicine' | 'birth';

export interface Outlook {
  /** Why nobody can say yet how long it takes; the dates are then no more than how the stages would follow. */
  readonly openEnd: OpenEnd | null;
  readonly dates: readonly StageDate[];
  /** From the usual weeks of all stages, whole months, one at least. */
  readonly usualMonths: Months;
  /** Goals with a date that comes before the earliest end; for the clinician, never a squeezed plan. */
  readonly tooSoon: readonly { readonly what: string; readonly on: string; readonly daysShort: number }[];
}

export interface Months {
  readonly from: number;
  readonly to: number;
}

const WEEKS_PER_MONTH = 365.25 / 12 / 7;

/** The earliest dates take the present step to its end in each stage: a stage is left by its test, not by its last step. */
export function outlookOf(person: Person, name: StageName, plan: WeekPlan): Outlook {
  const { consult, protocol } = person;
  const numbered = numberedStages(protocol.stages).slice(name === 'keepGoing' ? Infinity : name - 1);
  // A stage that only some sport needs is not waited for by those who do none.
  const fast = needsFastWork(consult, protocol);
  const ahead = numbered.filter(({ enter }, index) => index === 0 || !enter.sport || fast);
  // In the present stage as many as the week has room for, in the later ones as many as the protocol asks for.
  const planned = plan.days.filter(({ session }) => session).length;
  const stages = ahead.map(({ name: title, usualWeeks, exit, sessionsPerWeek }, index) => ({
    name: title,
    usualWeeks,
    steps: 1,
    leastSessions: exit.sessions,
    sessionsPerWeek: index === 0 ? Math.min(planned, sessionsPerWeek) : sessionsPerWeek,
  }));
  const dates = earliestStageDates(stages, consult.startOn, 0, protocol.goingOn).map(notBefore);
  const end = dates.at(-1)?.earliestOn ?? consult.startOn;
  // In all it is the whole way, as it is published: sport or no sport.
  const weeks = (bound: 'from' | 'to') =>
    numbered.reduce((sum, { usualWeeks }) => sum + usualWeeks[bound], 0);
  return {
    openEnd: openEndOf(person),
    dates,
    usualMonths: { from: monthsIn(weeks('from')), to: monthsIn(weeks('to')) },
    tooSoon: consult.goals.flatMap(({ what, on }) => {
      if (on === undefined) return [];
      const { reachable, daysToSpare } = goalReachable(on, end);
      return reachable ? [] : [{ what, on, daysShort: -daysToSpare }];
    }),
  };
}

function openEndOf({ effects, maternity }: Person): OpenEnd | null {
  if (effects.lightHolds.length > 0) return 'medicine';
  return maternity === null || maternity.kind === 'after-birth' ? null : 'birth';
}

/** What usually is cannot come before what is possible at the earliest. */
function notBefore(date: StageDate): StageDate {
  const later = (on: IsoDate) => (on < date.earliestOn ? date.earliestOn : on);
  return { ...date, usuallyFrom: later(date.usuallyFrom), usuallyTo: later(date.usuallyTo) };
}

function monthsIn(weeks: number): number {
  return Math.max(1, Math.round(weeks / WEEKS_PER_MONTH));
}
