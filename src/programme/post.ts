/** What of the programme goes by mail and calendar. */
import { plannedEvents, withCancelled } from '../decisions/days/calendarEvents.ts';
import { planEntries } from '../decisions/days/planEntries.ts';
import type { Decided } from '../decisions/decide.ts';
import type { CalendarEvent } from '../decisions/terms/calendarEvent.ts';
import { MAIL_ADDRESS } from '../content/schema/post.ts';
import type { Messages } from '../messages/messages.ts';
import type { Clinic } from '../content/library.ts';
import type { Post, TitledEvent } from './posted.ts';
import type { DatedSession } from './programme.ts';

/** `sessionMinutes`: of the next session. `before`: what the revision before sent, null for the first. */
export function postOf(
  say: Messages,
  decided: Decided,
  sessionMinutes: number,
  days: readonly DatedSession[],
  before: Post | null,
): Post {
  const { consult, clinic } = decided.person;
  const { post } = clinic;
  const alarm = post.calendar.alarmMinutes.value;
  const planned = plannedEvents(planEntries(decided), sessionMinutes, post.calendar);
  const titled = (event: CalendarEvent) => ({
    ...event,
    title: titleOf(say, event, post.calendar.titles, days, before?.events ?? []),
  });
  return {
    events: withCancelled(planned, before?.events ?? [], consult.seenOn).map(titled),
    alarmMinutes: alarm === 'none' ? null : alarm,
    from: senderOf(clinic),
    attach: { pdf: post.attachPdf, page: post.attachPage, calendar: post.attachCalendar },
    message: say.messageWords(clinic, consult.country, consult.clinician),
    withdrawOn: consult.withdrawOn ?? null,
    words: post.words,
    fridge: post.fridge,
  };
}

const KINDS: Readonly<Record<CalendarEvent['kind'], readonly DatedSession['kind'][]>> = {
  exercises: ['session', 'between'],
  run: ['run'],
  race: ['race'],
};

function titleOf(
  say: Messages,
  { on, kind, isCancelled }: CalendarEvent,
  titles: 'neutral' | 'telling',
  days: readonly DatedSession[],
  before: readonly TitledEvent[],
): string {
  if (titles === 'neutral') return say.neutralTitle(kind);
  if (isCancelled)
    return before.find((one) => one.on === on && one.kind === kind)?.title ?? say.neutralTitle(kind);
  const texts = days.filter((one) => one.on === on && KINDS[kind].includes(one.kind)).map(({ text }) => text);
  return say.capital(texts.join('; '));
}

/** The address the clinic gives for it, or else the first among its contact lines. */
function senderOf({ name, contact, post }: Clinic): Post['from'] {
  const address = post.from ?? contact.flatMap((line) => line.split(/[\s<>,;()]+/)).find(isAddress);
  return address === undefined ? null : { name, address };
}

function isAddress(word: string): boolean {
  return MAIL_ADDRESS.test(word);
}
