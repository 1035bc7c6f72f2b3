/** What the person does besides: keep, change how, or leave until later. */
import type { ActivityHow, ActivityNow } from '../../../decisions/days/activities.ts';
import type { JudgedActivity } from '../../../scheduling/activities.ts';
import { keptText, NO_ROOM } from './sport.ts';
import { type Section, paragraph, section, table } from '../../shapes.ts';
import { capital, countText } from '../plain.ts';

type Verdict = ActivityNow['verdict'];

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

/** Keep, change how, or leave until which part. */
export function activitiesText(activities: readonly ActivityNow[]): Section {
  const parts =
    activities.length === 0
      ? [paragraph('Daily walking and light moving are welcome.')]
      : [
          table(
            'What else you do',
            ['Activity', 'For now', 'How'],
            activities.map(({ what, verdict, how, until }) => [
              capital(what),
              until === null ? VERDICT_WORDS[verdict] : `${UNTIL_WORDS[verdict]} until the part “${until}”`,
              howText(how),
            ]),
          ),
        ];
  return section('activities', 'What else you do', parts);
}

function howText(how: ActivityHow): string {
  switch (how.how) {
    case 'not-planned-for':
      return 'We have not planned for this one. Ask before you go on with it.';
    case 'no-jumps':
      return 'Leave out jumping, sprinting and hard effort for now. Ask us before you go on with it.';
    case 'no-room':
      return NO_ROOM;
    // Where the way back lies behind, or there was none.
    case 'as-now':
      return 'Go on as you do now.';
    case 'own':
      return how.ownWords;
    case 'lighter':
      return `${how.ownWords} ${LIGHTER}`;
    case 'kept-days':
      return `${how.ownWords} ${capital(keptText(how.sport))}.`;
  }
}

/** Follows the protocol's own words on something that is hard on too many days. */
const LIGHTER = 'Make it lighter where you can, most of all on the days of your exercises.';

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
