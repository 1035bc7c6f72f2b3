/** Two readers of calendars that are not ours: ical.js, and Debian's python3-icalendar where it is installed. */
import { spawnSync } from 'node:child_process';
import ICAL from 'ical.js';

export interface ReadEvent {
  readonly uid: string;
  readonly sequence: number;
  /** Local time without a zone, `YYYY-MM-DDTHH:MM:SS`. */
  readonly start: string;
  readonly end: string;
  readonly title: string;
  readonly status: string;
  /** Minutes before the start. */
  readonly alarms: readonly number[];
}

export function readByIcalJs(text: string): ReadEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as never);
  return calendar.getAllSubcomponents('vevent').map((one) => {
    const event = new ICAL.Event(one);
    const { startDate, endDate } = event;
    if (startDate.zone !== ICAL.Timezone.localTimezone) throw new Error(`zone ${startDate.zone.tzid}`);
    return {
      uid: event.uid,
      sequence: Number(event.sequence),
      start: startDate.toString(),
      end: endDate.toString(),
      title: event.summary,
      status: String(one.getFirstPropertyValue('status')),
      alarms: one
        .getAllSubcomponents('valarm')
        .map((alarm) => 0 - (alarm.getFirstPropertyValue('trigger') as ICAL.Duration).toSeconds() / 60),
    };
  });
}

/** Debian's own Python first: its package is not seen by another one. */
const PYTHON = ['/usr/bin/python3', 'python3'].find(
  (program) => spawnSync(program, ['-c', 'import icalendar']).status === 0,
);

export const hasPython = PYTHON !== undefined;

export function readByPython(texts: readonly string[]): ReadEvent[][] {
  const { status, stdout, stderr } = spawnSync(PYTHON ?? '', ['tests/outputs/calendar/readIcs.py'], {
    input: JSON.stringify(texts),
    encoding: 'utf8',
    maxBuffer: 1e9,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as ReadEvent[][];
}
