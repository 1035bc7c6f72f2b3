/** The runs and the week they stand in, which ask for each other: how many runs there are, and how many days. */
import type { NoWeek, WeekPlan } from '../../scheduling/plan.ts';
import type { Choice } from '../candidates/choose.ts';
import type { Bounds, Person } from '../person/person.ts';
import { runningFacts, type RunningFacts } from './running.ts';
import { weekFacts, type WeekFacts } from './weekPlan.ts';

export interface RunsInWeek {
  /** As wished: what found no day is still among them. */
  readonly wished: RunningFacts;
  readonly week: WeekFacts | NoWeek;
}

/** Runs that nobody counted are shared out over the days that the week has for them; recorded ones stay as they are. */
export function runsInWeek(person: Person, bounds: Bounds, kept: readonly Choice[]): RunsInWeek {
  const onDays = (days?: number): RunsInWeek => {
    const wished = runningFacts(person, bounds.stage, days);
    return { wished, week: weekFacts(person, bounds.name, bounds.stage, kept, wished) };
  };
  const first = onDays();
  const { estimated } = first.wished.plan;
  if (estimated === null || 'fits' in first.week) return first;
  const dayless = easyRunsWithoutDay(first.week.plan);
  return dayless === 0 ? first : onDays(estimated.runs - dayless);
}

function easyRunsWithoutDay({ gaveUp }: WeekPlan): number {
  const left = gaveUp.find(({ code }) => code === 'easy-runs');
  return left === undefined ? 0 : Number(left.inputs['wished']) - Number(left.inputs['planned']);
}
