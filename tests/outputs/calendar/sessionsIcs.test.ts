/**
 * The calendar against RFC 5545 (read: the property rules of 3.6.1, lines of 3.1, text of 3.3.11, floating time of
 * 3.3.5) and against two readers that are not ours, over random plans around the days on which clocks change.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedEvents, withCancelled } from '../../../src/decisions/days/calendarEvents.ts';
import { post } from '../../../src/content/schema/post.ts';
import type { PlanEntry } from '../../../src/decisions/terms/planEntry.ts';
import { eventUid } from '../../../src/outputs/calendar/eventUid.ts';
import { sessionsIcs } from '../../../src/outputs/calendar/sessionsIcs.ts';
import type { Posted } from '../../../src/programme/programme.ts';
import type { TitledEvent } from '../../../src/programme/posted.ts';
import { addDays, weekdayOf, type IsoDate } from '../../../src/units/date.ts';
import { oneLineText } from '../../../src/units/oneLineText.ts';
import { otter } from '../../fixtures/programme.ts';
import { NAUGHTY } from '../../laws/naughty.ts';
import { day } from '../../programme/person.ts';
import { hasPython, readByIcalJs, readByPython, type ReadEvent } from './readers.ts';

const SEED = 20261130;
const { calendar: SETTINGS } = post.parse({});

/** Clocks change in the EU on the first two, in the United States on the next two, in New Zealand on the last. */
const CHANGES = ['2026-03-29', '2026-10-25', '2026-03-08', '2026-11-01', '2026-09-27'].map(day);

function entry(
  on: IsoDate,
  has: { session: boolean; holds: boolean; run: number | null; race: boolean },
): PlanEntry {
  const one = { slot: 'a', card: 'b' };
  return {
    on,
    weekday: weekdayOf(on),
    week: 1,
    step: 1,
    sessions: has.session ? [{ exercises: [one], begins: [], without: [] }] : [],
    between: has.holds ? [one] : [],
    daily: [],
    runs: has.run === null ? [] : [{ kind: 'easy', km: null, minutes: has.run, walkRun: null }],
    races: has.race ? [{ km: 10 }] : [],
    other: [],
    easyAfterRace: false,
    free: false,
  };
}

const dayOf = fc.record({
  session: fc.boolean(),
  holds: fc.boolean(),
  run: fc.option(fc.integer({ min: 10, max: 240 })),
  race: fc.boolean(),
});

const settings = fc.record({
  exercises: fc.integer({ min: 0, max: 1439 }),
  runs: fc.integer({ min: 0, max: 1439 }),
  minutes: fc.integer({ min: 1, max: 90 }),
  alarm: fc.option(fc.integer({ min: 0, max: 1440 })),
});

const plan = fc
  .tuple(fc.constantFrom(...CHANGES), fc.integer({ min: -20, max: 1 }), fc.array(dayOf, { maxLength: 28 }))
  .map(([change, from, days]) => days.map((has, at) => entry(addDays(change, from + at), has)));

const clock = (minute: number) =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

/** A programme that sends a random plan after a random one. */
const sent: fc.Arbitrary<Posted> = fc
  .tuple(plan, plan, settings, fc.integer({ min: 2, max: 9 }))
  .map(([before, now, { exercises, runs, minutes, alarm }, revision]) => {
    const wanted = {
      ...SETTINGS,
      exercisesAt: { ...SETTINGS.exercisesAt, value: clock(exercises) },
      runsAt: { ...SETTINGS.runsAt, value: clock(runs) },
    };
    const seenOn = now[0]?.on ?? day('2026-01-01');
    const events = withCancelled(
      plannedEvents(now, minutes, wanted),
      plannedEvents(before, minutes, wanted),
      seenOn,
    );
    const titled = events.map((one) => ({ ...one, title: one.kind }));
    return {
      ...otter,
      mark: '1a2b3c4d',
      revision,
      seenOn,
      post: { ...otter.post, events: titled, alarmMinutes: alarm },
    };
  });

/** What the readers must find, worked out by hand from the events. */
function ownList({ alias, revision, post: { events, alarmMinutes } }: Posted): ReadEvent[] {
  return events.map((event) => ({
    uid: eventUid(alias, event),
    sequence: revision - 1,
    start: `${event.on}T${event.at}:00`,
    end: later(event),
    title: event.title,
    status: event.isCancelled ? 'CANCELLED' : 'CONFIRMED',
    alarms: event.isCancelled || alarmMinutes === null ? [] : [alarmMinutes],
  }));
}

function later({ on, at, minutes }: TitledEvent): string {
  const [hour = 0, minute = 0] = at.split(':').map(Number);
  const end = hour * 60 + minute + minutes;
  return `${addDays(on, Math.floor(end / 1440))}T${clock(end % 1440)}:00`;
}

const MAY_STAND = [
  ...['BEGIN', 'END', 'VERSION', 'PRODID', 'UID', 'SEQUENCE', 'DTSTAMP', 'DTSTART', 'DTEND', 'SUMMARY'],
  ...['TRANSP', 'STATUS', 'CLASS', 'ACTION', 'TRIGGER', 'DESCRIPTION', 'X-LOADLEAF-MARK'],
];

/** Parsers are lenient; this one is not. */
function faultsOf(text: string): string[] {
  const physical = text.split('\r\n');
  const lines = text
    .replace(/\r\n[ \t]/g, '')
    .split('\r\n')
    .slice(0, -1);
  const names = lines.map((line) => line.split(/[:;]/)[0] ?? '');
  const events = text.split('BEGIN:VEVENT').slice(1);
  return [
    ...(physical.at(-1) === '' ? [] : ['no break at the end']),
    ...(/(?<!\r)\n|\r(?!\n)/.test(text) ? ['a bare break'] : []),
    ...physical.filter((line) => Buffer.byteLength(line) > 75).map((line) => `over 75 octets: ${line}`),

    ...(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(text) ? ['a control'] : []),
    ...names.filter((name) => !MAY_STAND.includes(name)).map((name) => `property ${name}`),
    ...events.flatMap((event) =>
      ['UID', 'DTSTAMP', 'DTSTART', 'SUMMARY', 'STATUS']
        .filter((name) => event.match(new RegExp(`^${name}[:;]`, 'gm'))?.length !== 1)
        .map((name) => `not one ${name}`),
    ),
    ...lines.filter((line) => /^DT(START|END)/.test(line) && !/^DT(START|END):\d{8}T\d{6}$/.test(line)),
    ...lines.filter((line) => line.startsWith('DTSTAMP') && !/^DTSTAMP:\d{8}T\d{6}Z$/.test(line)),
  ];
}

const SENT = fc.sample(sent, { seed: SEED, numRuns: 1000 });
const withEvents = SENT.filter(({ post: { events } }) => events.length > 0);
const texts = withEvents.map((one) => sessionsIcs(one) ?? '');

describe('1,000 random plans around changes of the clock', () => {
  it('are of every kind', () => {
    const all = SENT.flatMap(({ post: { events } }) => events);
    expect(withEvents.length).toBeGreaterThan(900);
    expect(all.filter(({ isCancelled }) => isCancelled).length).toBeGreaterThan(1000);
    for (const change of CHANGES) expect(all.filter(({ on }) => on === change).length).toBeGreaterThan(50);
    expect(all.filter(({ at, on }) => on === CHANGES[0] && at.startsWith('02:')).length).toBeGreaterThan(0);
  });

  it('ical.js reads the list that was sent', () => {
    expect(texts.map(readByIcalJs)).toEqual(withEvents.map(ownList));
  });

  it.runIf(hasPython)('another reads the same list (where python3-icalendar is installed)', () => {
    expect(readByPython(texts)).toEqual(withEvents.map(ownList));
  });

  it('are in order by RFC 5545, floating, in lines of 75 octets at most', () => {
    expect(texts.flatMap(faultsOf)).toEqual([]);
  });

  it('give the same bytes in every zone', () => {
    const zone = process.env['TZ'];
    for (const other of ['Pacific/Kiritimati', 'America/New_York', 'Europe/Vienna']) {
      process.env['TZ'] = other;
      expect(withEvents.slice(0, 50).map(sessionsIcs)).toEqual(texts.slice(0, 50));
    }
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  });

  it('nothing of an earlier plan is left over: from the consult on it is planned again or cancelled', () => {
    const before = plannedEvents(
      Array.from({ length: 20 }, (_, at) =>
        entry(addDays(day('2026-03-20'), at), { session: true, holds: false, run: null, race: false }),
      ),
      20,
      SETTINGS,
    );
    const now = plannedEvents(
      [entry(day('2026-03-27'), { session: true, holds: false, run: null, race: false })],
      20,
      SETTINGS,
    );
    const all = withCancelled(now, before, day('2026-03-26'));
    expect(all.map(({ on }) => on)).toEqual(
      Array.from({ length: 14 }, (_, at) => addDays(day('2026-03-26'), at)),
    );
    expect(all.filter(({ isCancelled }) => !isCancelled)).toEqual(now);
    // A phone that knows only the first file is put right by the third.
    const third = withCancelled([], all, day('2026-03-30'));
    expect(third.map(({ isCancelled }) => isCancelled)).toEqual(Array.from({ length: 10 }, () => true));
  });
});

describe('whatever a title says', () => {
  it.each(NAUGHTY.map((text, at) => [at, text] as const))(
    'string %i adds no property and reads as it is',
    (_, title) => {
      const [first] = otter.post.events;
      const text = sessionsIcs({ ...otter, post: { ...otter.post, events: [{ ...first!, title }] } })!;
      expect(faultsOf(text)).toEqual([]);
      expect(readByIcalJs(text).map((one) => one.title)).toEqual([oneLineText(title)]);
    },
  );

  it('no line can be slipped in', () => {
    const title = 'Run\r\nATTACH:http://elsewhere.example\r\nEND:VEVENT\u2028X:1';
    const [first] = otter.post.events;
    const text = sessionsIcs({ ...otter, post: { ...otter.post, events: [{ ...first!, title }] } })!;
    expect(text).not.toMatch(/^ATTACH/m);
    expect(readByIcalJs(text)).toHaveLength(1);
  });
});

describe('the name of an event', () => {
  it('is a UUID of version 8 that tells neither person nor day, and the same in every revision', () => {
    const [first] = otter.post.events;
    const name = eventUid('otter', first!);
    expect(name).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(readByIcalJs(sessionsIcs({ ...otter, revision: 9 })!)[0]?.uid).toBe(name);
    expect(eventUid('heron', first!)).not.toBe(name);
  });

  it('the file carries the mark of its set, which is no event', () => {
    const text = sessionsIcs({ ...otter, mark: '1a2b3c4d' }) ?? '';
    // Properties of the calendar stand before what is in it (RFC 5545, 3.6, from memory).
    expect(text.slice(0, text.indexOf('BEGIN:VEVENT'))).toMatch(/\r\nX-LOADLEAF-MARK:1a2b3c4d\r\n$/);
    expect(text.match(/X-LOADLEAF-MARK/g)).toHaveLength(1);
    expect(text.replace(/X-LOADLEAF-MARK:.*\r\n/, '')).toBe(sessionsIcs(otter));
  });

  it('no day, no file', () => {
    expect(sessionsIcs({ ...otter, post: { ...otter.post, events: [] } })).toBeNull();
  });
});
