/** What the person does besides: keep, change how, or leave until later. */
import type { Section } from '../programme.ts';
import { capital, paragraph, section, table } from './plain.ts';

export type Verdict = 'keep' | 'change' | 'leave' | 'ask';

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  keep: 'Keep',
  change: 'Change how',
  leave: 'Leave for now',
  ask: 'Ask us first',
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
              until === null ? VERDICT_WORDS[verdict] : `Leave until the part “${until}”`,
              how,
            ]),
          ),
        ];
  return section('activities', 'What else you do', parts);
}

export const ASK_FIRST = 'We have not planned for this one. Ask before you go on with it.';
