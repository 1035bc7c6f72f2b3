/** What the person does besides: keep, change how, or leave until later. */
import type { JudgedActivity } from '../../../scheduling/activities.ts';
import { type Section, paragraph, section, table } from '../../shapes.ts';
import { capital, countText } from '../plain.ts';

export type Verdict = 'keep' | 'change' | 'leave' | 'ask';

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  keep: 'Keep',
  change: 'Change how',
  leave: 'Leave for now',
  ask: 'Ask us first',
};

const UNTIL_WORDS: Readonly<Record<Verdict, string>> = {
  ...VERDICT_WORDS,
  leave: 'Leave',
};

export interface ActivityWords {
  readonly what: string;
  readonly verdict: Verdict;
  readonly how: string;
  /** The part of the way from which it is welcome again, by its name; null where it does not wait for one. */
  readonly until: string | null;
}

/** Keep, change how, or leave until which part. */
export function activitiesText(rows: readonly ActivityWords[]): Section {
  const parts =
    rows.length === 0
      ? [paragraph('Daily walking and light moving are welcome.')]
      : [
          table(
            'What else you do',
            ['Activity', 'For now', 'How'],
            rows.map(({ what, verdict, how, until }) => [
              capital(what),
              until === null ? VERDICT_WORDS[verdict] : `${UNTIL_WORDS[verdict]} until the part “${until}”`,
              how,
            ]),
          ),
        ];
  return section('activities', 'What else you do', parts);
}

/** Follows the protocol's own words on something that is hard on too many days. */
export const LIGHTER = 'Make it lighter where you can, most of all on the days of your exercises.';

/** Why something hard holds no day on the recovery clock, for the record. */
export function everydayLoadText(
  what: string,
  { code, inputs }: NonNullable<JudgedActivity['everydayLoad']>,
): string {
  const { days, besideDays, mostDays, hoursApart } = inputs;
  if (code === 'everyday-load-for-sessions')
    return `${capital(what)}: beside its ${countText(Number(days), 'hard day')} a week no session would find a day ${hoursApart} h apart from them. It counts as everyday load (house choice): it holds no day on the recovery clock, and the leaflet asks for less of it.`;
  const beside = besideDays === 0 ? '' : ` beside the ${besideDays} of what is named before`;
  return `${capital(what)}: ${countText(Number(days), 'hard day')} a week${beside} cannot lie ${hoursApart} h apart (${mostDays} can). It counts as everyday load (house choice): it holds no day on the recovery clock, and the leaflet asks for less of it.`;
}

export const NO_JUMPS =
  'Leave out jumping, sprinting and hard effort for now. Ask us before you go on with it.';

/** Where the way back lies behind, or there was none. */
export const AS_NOW = 'Go on as you do now.';

export const ASK_FIRST = 'We have not planned for this one. Ask before you go on with it.';
