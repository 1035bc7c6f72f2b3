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

export function activitiesText(rows: readonly { what: string; verdict: Verdict; how: string }[]): Section {
  const parts =
    rows.length === 0
      ? [paragraph('Daily walking and light moving are welcome.')]
      : [
          table(
            'What else you do',
            ['Activity', 'For now', 'How'],
            rows.map(({ what, verdict, how }) => [capital(what), VERDICT_WORDS[verdict], how]),
          ),
        ];
  return section('activities', 'What else you do', parts);
}

export const ASK_FIRST = 'We have not planned for this one. Ask before you go on with it.';
