/** What a person does besides: keep, leave until a stage, or ask (house rules 8); and what is hard too often for the clock. */
import { type Reason, reason } from './reason.ts';
import type { HardDays } from './recovery.ts';

/** A row of the protocol's table. */
export interface ActivityRule {
  readonly what: string;
  /** Welcome from this stage (from 1) on. */
  readonly fromStage: number;
  /** Counts on the recovery clock like a hard session. */
  readonly hard: boolean;
}

export interface Activity {
  readonly what: string;
  readonly timesPerWeek: number;
}

export interface JudgedActivity extends Activity {
  /** `keep`: welcome now, as the protocol says how · `leave`: until `fromStage` · `ask`: the protocol does not know it, so it waits for an answer. */
  readonly verdict: 'keep' | 'leave' | 'ask';
  readonly fromStage: number | null;
  /** Hard days a week to find room for; 0 where it is easy, everyday load, left or asked about. */
  readonly hardDaysPerWeek: number;
  /** Why something hard holds no day on the recovery clock; null for everything else. */
  readonly everydayLoad: Reason<'everyday-load'> | null;
}

/**
 * Each activity judged for a stage (from 1). Hard days that can never lie far enough apart, alone or beside those of
 * what is named before, are everyday load: the clock cannot help there, only less of it can [choice].
 */
export function judgeActivities(
  doesNow: readonly Activity[],
  table: readonly ActivityRule[],
  stage: number,
  { most, hoursApart }: HardDays,
): JudgedActivity[] {
  let taken = 0;
  return doesNow.map((activity) => {
    const rule = activityRule(activity.what, table);
    const verdict = rule === null ? 'ask' : stage >= rule.fromStage ? 'keep' : 'leave';
    const hard = verdict === 'keep' && rule?.hard === true;
    const days = hard ? Math.min(7, Math.ceil(activity.timesPerWeek)) : 0;
    const judged = { ...activity, verdict, fromStage: rule?.fromStage ?? null } as const;
    if (taken + days > most) {
      const inputs = { days, besideDays: taken, mostDays: most, hoursApart };
      return { ...judged, hardDaysPerWeek: 0, everydayLoad: reason('everyday-load', inputs) };
    }
    taken += days;
    return { ...judged, hardDaysPerWeek: days, everydayLoad: null };
  });
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
