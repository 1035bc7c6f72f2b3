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
  /** `keep`: welcome now, as the protocol says how · `leave`: until `fromStage` · `ask`: the protocol does not know it, so it waits for an answer. */
  readonly verdict: 'keep' | 'leave' | 'ask';
  readonly fromStage: number | null;
  /** Hard days a week to find room for; 0 where it is easy, left or asked about. */
  readonly hardDaysPerWeek: number;
}

/** Each activity judged for a stage (from 1). */
export function judgeActivities(
  doesNow: readonly Activity[],
  table: readonly ActivityRule[],
  stage: number,
): JudgedActivity[] {
  return doesNow.map((activity) => {
    const rule = activityRule(activity.what, table);
    const verdict = rule === null ? 'ask' : stage >= rule.fromStage ? 'keep' : 'leave';
    return {
      ...activity,
      verdict,
      fromStage: rule?.fromStage ?? null,
      hardDaysPerWeek: verdict === 'keep' && rule?.hard === true ? Math.ceil(activity.timesPerWeek) : 0,
    };
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
