/** The earliest day of each stage and of a goal (house rules 4): a guide for the clinician, never a promise. */
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

/** One stage of the way, as the ladder and the week give it. */
export interface StageOnTheWay {
  readonly name: string;
  readonly usualWeeks: { readonly from: number; readonly to: number };
  /** Steps still to be done in it, the present one counted. */
  readonly steps: number;
  /** Sessions that must be done before leaving it. */
  readonly leastSessions: number;
  /** Sessions a week as planned. */
  readonly sessionsPerWeek: number;
}

export interface StepTimeRules {
  readonly leastSessions: Setting;
  readonly leastDays: Setting;
  readonly checkDays: Setting;
}

export interface StageDate {
  readonly name: string;
  /** First possible day in the stage. */
  readonly earliestOn: IsoDate;
  /** Where it usually begins, counted from the same start; the first stage begins at the start. */
  readonly usuallyFrom: IsoDate;
  readonly usuallyTo: IsoDate;
  /** What took longest in the stage before; null for the first. */
  readonly because: Reason<StageTimeCode> | null;
}

export type StageTimeCode = 'usual-weeks' | 'steps' | 'sessions';

/**
 * The earliest start of every stage from the present one on, and last the day after the final one (named `end`). A stage
 * takes the longest of its usual weeks, its steps and its sessions. `daysInStage`: days already spent in the present
 * stage, which shorten its usual weeks only.
 */
export function earliestStageDates(
  stages: readonly StageOnTheWay[],
  startOn: IsoDate,
  daysInStage: number,
  rules: StepTimeRules,
): StageDate[] {
  const dates: StageDate[] = [];
  let here: StageDate = {
    name: '',
    earliestOn: startOn,
    usuallyFrom: startOn,
    usuallyTo: startOn,
    because: null,
  };
  for (const [index, stage] of stages.entries()) {
    dates.push({ ...here, name: stage.name });
    const spent = index === 0 ? daysInStage : 0;
    const longest = longestTime(stage, spent, rules);
    here = {
      name: 'end',
      earliestOn: addDays(here.earliestOn, longest.days),
      usuallyFrom: addDays(here.usuallyFrom, weekDays(stage.usualWeeks.from, spent)),
      usuallyTo: addDays(here.usuallyTo, weekDays(stage.usualWeeks.to, spent)),
      because: longest.because,
    };
  }
  return [...dates, here];
}

export interface GoalReach {
  readonly reachable: boolean;
  /** Days from the earliest date to the goal; negative when the goal comes too soon. */
  readonly daysToSpare: number;
}

/** Is the goal's day not before the earliest one? If it is, that is a note to the clinician and never a squeezed plan. */
export function goalReachable(goalOn: IsoDate, earliestOn: IsoDate): GoalReach {
  const daysToSpare = daysBetween(earliestOn, goalOn);
  return { reachable: daysToSpare >= 0, daysToSpare };
}

function longestTime(
  stage: StageOnTheWay,
  daysSpent: number,
  rules: StepTimeRules,
): { days: number; because: Reason<StageTimeCode> } {
  const sessionDays = (sessions: number) => Math.ceil((sessions * 7) / stage.sessionsPerWeek);
  const stepDays = Math.max(
    rules.leastDays.value,
    rules.checkDays.value,
    sessionDays(rules.leastSessions.value),
  );
  const { usualWeeks, steps, leastSessions } = stage;
  const times: [StageTimeCode, number, Reason['inputs']][] = [
    ['usual-weeks', weekDays(usualWeeks.from, daysSpent), { weeks: usualWeeks.from, daysSpent }],
    ['steps', steps * stepDays, { steps, daysAStep: stepDays }],
    [
      'sessions',
      sessionDays(leastSessions),
      { sessions: leastSessions, sessionsPerWeek: stage.sessionsPerWeek },
    ],
  ];
  const [code, days, inputs] = times.reduce((longest, time) => (time[1] > longest[1] ? time : longest));
  return { days, because: reason(code, { ...inputs, days }, rules.leastDays.mark) };
}

function weekDays(weeks: number, daysSpent: number): number {
  return Math.max(0, weeks * 7 - daysSpent);
}
