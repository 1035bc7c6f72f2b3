/** What a person does besides: keep, leave until a stage, or ask (house rules 8). */

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
  /** `keep`: welcome now, as the protocol says how · `leave`: until `fromStage` · `ask`: the protocol does not know it. */
  readonly verdict: 'keep' | 'leave' | 'ask';
  readonly fromStage: number | null;
  /** Hard days a week to find room for; 0 where it is left out or easy. What nobody knows counts as hard. */
  readonly hardDaysPerWeek: number;
}

/** Each activity judged for a stage (from 1); names are compared without regard to case and outer spaces. */
export function judgeActivities(
  doesNow: readonly Activity[],
  table: readonly ActivityRule[],
  stage: number,
): JudgedActivity[] {
  return doesNow.map((activity) => {
    const rule = table.find(({ what }) => same(what, activity.what));
    const verdict = rule === undefined ? 'ask' : stage >= rule.fromStage ? 'keep' : 'leave';
    const counts = verdict !== 'leave' && (rule?.hard ?? true);
    return {
      ...activity,
      verdict,
      fromStage: rule?.fromStage ?? null,
      hardDaysPerWeek: counts ? Math.ceil(activity.timesPerWeek) : 0,
    };
  });
}

function same(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
