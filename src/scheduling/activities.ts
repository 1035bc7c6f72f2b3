/** What a person does besides: keep, leave until a stage, or ask (house rules 8); and what stands on which days. */
import { type Reason, reason } from '../units/reason.ts';
import type { Weekday } from '../units/weekday.ts';
import { keepsApart, maskOf } from './circle.ts';
import { calendarDays, type HardDays } from './recovery.ts';
import type { EasyPoint, FixedPoint } from './wish.ts';

/** A row of the protocol's table. */
export interface ActivityRule {
  readonly what: string;
  /** Welcome from this stage (from 1) on. */
  readonly fromStage: number;
  /** Counts on the recovery clock like a hard session. */
  readonly hard: boolean;
  /** May it be left out for a while where the week has no room? Lifting at work may not. */
  readonly mayWait: boolean;
  /** What becomes of it before its stage: it goes on in a changed way, or is left. */
  readonly meanwhile: 'change' | 'leave';
}

export interface Activity {
  readonly what: string;
  readonly timesPerWeek: number;
  /** Its days, where they are fixed; fewer than its times: the rest may be on any day. */
  readonly days: readonly Weekday[];
}

export interface JudgedActivity extends Activity {
  /** `keep`: welcome now, as the protocol says how · `leave`: until `fromStage` · `ask`: the protocol does not know it, or it is hard and nothing hard may be done just now, so it waits for an answer. */
  readonly verdict: 'keep' | 'leave' | 'ask';
  readonly fromStage: number | null;
  readonly mayWait: boolean;
  /** It keeps its days: it is welcome, or goes on in a changed way that is not hard. */
  readonly goesOn: boolean;
  /** Hard days a week to find room for; 0 where it is easy, everyday load, left or asked about. */
  readonly hardDaysPerWeek: number;
  /** Why something hard holds no day on the recovery clock; null for everything else. */
  readonly everydayLoad: Reason<'everyday-load' | 'everyday-load-for-sessions'> | null;
}

/**
 * Each activity judged for a stage (from 1). Of what cannot wait, hard days that can never lie far enough apart, alone or
 * beside those of what is named before, are everyday load: the clock cannot help there, only less of it can [choice].
 * `hardWaits`: nothing hard goes on before it was asked about, as in pregnancy; no day is kept for it then.
 */
export function judgeActivities(
  doesNow: readonly Activity[],
  table: readonly ActivityRule[],
  stage: number,
  { most, hoursApart }: HardDays,
  hardWaits = false,
): JudgedActivity[] {
  let taken = 0;
  return doesNow.map((activity) => {
    const rule = activityRule(activity.what, table);
    const verdict =
      rule === null || (hardWaits && rule.hard) ? 'ask' : stage >= rule.fromStage ? 'keep' : 'leave';
    const hard = verdict === 'keep' && rule?.hard === true;
    const mayWait = rule?.mayWait ?? true;
    const days = hard ? Math.min(7, Math.max(Math.ceil(activity.timesPerWeek), activity.days.length)) : 0;
    const goesOn = verdict === 'keep' || (verdict === 'leave' && rule?.meanwhile === 'change');
    const judged = { ...activity, verdict, fromStage: rule?.fromStage ?? null, mayWait, goesOn } as const;
    if (mayWait) return { ...judged, hardDaysPerWeek: days, everydayLoad: null };
    if (taken + days > most || (hard && !lieApart(activity.days, hoursApart))) {
      const inputs = { days, besideDays: taken, mostDays: most, hoursApart };
      return { ...judged, hardDaysPerWeek: 0, everydayLoad: reason('everyday-load', inputs) };
    }
    taken += days;
    return { ...judged, hardDaysPerWeek: days, everydayLoad: null };
  });
}

/** Where each stands: hard days on the recovery clock, and what is not hard on its days. */
export function activityPoints(judged: readonly JudgedActivity[]): {
  readonly fixed: readonly FixedPoint[];
  readonly easyFixed: readonly EasyPoint[];
} {
  return {
    fixed: judged.flatMap(({ what, days, hardDaysPerWeek, mayWait }) =>
      Array.from({ length: hardDaysPerWeek }, (_, index) => ({
        id: what,
        day: days[index] ?? null,
        recovery: 'heavy',
        mayWait,
      })),
    ),
    easyFixed: judged
      .filter(({ goesOn, hardDaysPerWeek }) => goesOn && hardDaysPerWeek === 0)
      .flatMap(({ what, days }) => days.map((day) => ({ id: what, day }))),
  };
}

/** The same, with what cannot wait as everyday load: it leaves no session a day. */
export function asEverydayLoad(
  judged: readonly JudgedActivity[],
  { most, hoursApart }: HardDays,
): JudgedActivity[] {
  return judged.map((one) =>
    one.mayWait || one.hardDaysPerWeek === 0
      ? one
      : {
          ...one,
          hardDaysPerWeek: 0,
          everydayLoad: reason('everyday-load-for-sessions', {
            days: one.hardDaysPerWeek,
            besideDays: 0,
            mostDays: most,
            hoursApart,
          }),
        },
  );
}

function lieApart(days: readonly Weekday[], hoursApart: number): boolean {
  return keepsApart(maskOf(days), calendarDays(hoursApart));
}

/**
 * The table's row for an activity: the one with the longest name among those whose words stand in it, so that
 * `drop-bar cycling` is not taken for `cycling`; null when there is none. Case does not count.
 */
export function activityRule<Rule extends { readonly what: string }>(
  what: string,
  table: readonly Rule[],
): Rule | null {
  const words = ` ${plain(what)} `;
  return table
    .filter((rule) => words.includes(` ${plain(rule.what)} `))
    .reduce<Rule | null>(
      (best, rule) => (best === null || rule.what.length > best.what.length ? rule : best),
      null,
    );
}

function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s,;:.()]+/g, ' ');
}
