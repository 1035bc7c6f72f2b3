/** `sessions.ics`: the patient's days as a calendar (RFC 5545), in local time wherever the phone is. */
import ical, { ICalAlarmType, ICalEventClass, ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { Posted } from '../../programme/programme.ts';
import type { TitledEvent } from '../../programme/posted.ts';
import { eventUid } from './eventUid.ts';
import { oneLineText } from '../../units/oneLineText.ts';

const SECONDS_PER_MINUTE = 60;
const MS_PER_MINUTE = 60_000;

/**
 * The text of the file, or null when there is no day in it. Same programme, same bytes. An event keeps its UID from
 * revision to revision, so that a newer file puts an older one right: its SEQUENCE is higher, and what is planned no
 * longer is cancelled.
 */
export function sessionsIcs(programme: Posted): string | null {
  const { events } = programme.post;
  if (events.length === 0) return null;
  const calendar = ical({ prodId: '//Loadleaf//Sessions//EN' });
  for (const event of events) calendar.createEvent(eventData(event, programme));
  return withMark(`${calendar.toString()}\r\n`, programme.mark);
}

// The library puts such a property behind the events, where RFC 5545, 3.6, has none.
function withMark(text: string, mark: string | undefined): string {
  return mark === undefined ? text : text.replace('BEGIN:VEVENT', `X-LOADLEAF-MARK:${mark}\r\nBEGIN:VEVENT`);
}

function eventData(event: TitledEvent, { alias, revision, seenOn, post }: Posted) {
  const { title, minutes, isCancelled } = event;
  const start = startOf(event);
  const summary = oneLineText(title);
  return {
    id: eventUid(alias, event),
    sequence: revision - 1,
    stamp: new Date(`${seenOn}T00:00:00Z`),
    // The parts of a local time, held in UTC: `floating` prints them as they are, without a zone.
    floating: true,
    start,
    end: new Date(start.getTime() + minutes * MS_PER_MINUTE),
    summary,
    status: isCancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
    // A reminder does not make anybody busy, and what it is about is nobody else's.
    transparency: ICalEventTransparency.TRANSPARENT,
    class: ICalEventClass.PRIVATE,
    alarms:
      isCancelled || post.alarmMinutes === null
        ? []
        : [
            {
              type: ICalAlarmType.display as const,
              trigger: post.alarmMinutes * SECONDS_PER_MINUTE,
              description: summary,
            },
          ],
  };
}

function startOf({ on, at }: TitledEvent): Date {
  return new Date(`${on}T${at}:00Z`);
}
