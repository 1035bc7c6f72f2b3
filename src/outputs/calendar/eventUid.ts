/** The name by which calendars know an event again. */
import { createHash } from 'node:crypto';
import type { CalendarEvent } from '../../decisions/terms/calendarEvent.ts';

/** A UUID of version 8 (RFC 9562, 5.8) from a hash of person, day and kind: it tells none of them (RFC 7986, 5.3). */
export function eventUid(alias: string, { on, kind }: Pick<CalendarEvent, 'on' | 'kind'>): string {
  const hex = createHash('sha256').update(`loadleaf event\0${alias}\0${on}\0${kind}`).digest('hex');
  const variant = '89ab'.charAt(Number.parseInt(hex.charAt(16), 16) % 4);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
