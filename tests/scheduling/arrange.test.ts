/** Every way to put hard things on a week that repeats: what may stand together, and no week twice (house rules 6 and 7). */
import { describe, expect, it } from 'vitest';
import { arrangements, takenDays, type HardEvent } from '../../src/scheduling/arrange.ts';
import { maskOf } from '../../src/scheduling/circle.ts';
import { WEEKDAYS, type Weekday } from '../../src/units/weekday.ts';

const event = (
  allowed: readonly Weekday[],
  recoveryDays: number,
  more: Partial<HardEvent> = {},
): HardEvent => ({
  recoveryDays,
  allowed: maskOf(allowed),
  hold: 'run',
  pinned: false,
  family: null,
  ...more,
});
const NONE = { waits: 0, run: 0 };
const ways = (events: readonly HardEvent[], givenUp = NONE) =>
  arrangements(events, givenUp).map((days) =>
    days.map((day) => (day === null ? '-' : WEEKDAYS[day])).join(' '),
  );
const family = (name: string, daysApart: number) => ({ family: { name, daysApart } });

describe('two hard things', () => {
  it.each<[string, readonly HardEvent[], readonly string[]]>([
    ['never share a day', [event(['mon'], 1), event(['mon', 'tue'], 1, { hold: 'waits' })], ['mon tue']],
    [
      'stand as far apart as the first asks',
      [event(['mon'], 3), event(['wed', 'thu'], 1, { hold: 'waits' })],
      ['mon thu'],
    ],
    [
      'and the second, to the next week too',
      [event(['mon'], 1), event(['thu', 'fri'], 4, { hold: 'waits' })],
      ['mon thu'],
    ],
    ['are not there where one needs more than a week', [event(['mon'], 8)], []],
    ['but of a week just', [event(['mon'], 7)], ['mon']],
    [
      'on a named day that stands nobody asks how long',
      [event(['mon'], 9, { hold: 'stands', pinned: true })],
      ['mon'],
    ],
    ['named alone is not enough', [event(['mon'], 9, { pinned: true })], []],
    ['nor standing alone', [event(['mon'], 9, { hold: 'stands' })], []],
    [
      'that stand on named days are not judged among themselves',
      [
        event(['mon'], 3, { hold: 'stands', pinned: true }),
        event(['mon'], 2, { hold: 'stands', pinned: true }),
      ],
      ['mon mon'],
    ],
    [
      'of two families keep apart, by the further of the two',
      [event(['mon'], 1, family('hills', 2)), event(['tue', 'wed', 'thu'], 1, family('fast', 3))],
      ['mon thu'],
    ],
    [
      'either way about',
      [event(['mon'], 1, family('hills', 3)), event(['tue', 'wed', 'thu'], 1, family('fast', 2))],
      ['mon thu'],
    ],
    [
      'of one family do not',
      [event(['mon'], 1, family('hills', 3)), event(['tue'], 2, family('hills', 3))],
      ['mon tue'],
    ],
    ['without a family do not', [event(['mon'], 1, family('hills', 3)), event(['tue'], 1)], ['mon tue']],
    [
      'counted to the next week too',
      [event(['mon'], 1, family('hills', 2)), event(['sat', 'sun'], 1, family('fast', 2))],
      ['mon sat'],
    ],
  ])('%s', (_, events, expected) => {
    expect(ways(events)).toEqual(expected);
  });

  it.each<[string, Partial<HardEvent>, Partial<HardEvent>, readonly string[]]>([
    ['alike: one order', {}, {}, ['mon thu']],
    ['of other recovery: both', {}, { recoveryDays: 2 }, ['mon thu', 'thu mon']],
    ['of another hold: both', {}, { hold: 'waits' }, ['mon thu', 'thu mon']],
    ['of another family: both', family('hills', 1), family('fast', 1), ['mon thu', 'thu mon']],
    ['of one family: one', family('hills', 1), family('hills', 1), ['mon thu']],
  ])('%s', (_, one, other, expected) => {
    expect(ways([event(['mon', 'thu'], 1, one), event(['mon', 'thu'], 1, other)])).toEqual(expected);
  });

  it('with other days are not alike', () => {
    expect(ways([event(['mon', 'thu'], 1), event(['mon', 'thu', 'sat'], 1)])).toEqual([
      'mon thu', 'mon sat', 'thu mon', 'thu sat',
    ]); // prettier-ignore
  });
});

describe('what is given up', () => {
  const two = [event(['mon'], 1), event(['tue'], 1, { hold: 'waits' })];
  it.each<[string, { waits: number; run: number }, readonly string[]]>([
    ['nothing', NONE, ['mon tue']],
    ['a run', { waits: 0, run: 1 }, ['- tue']],
    ['what waits', { waits: 1, run: 0 }, ['mon -']],
    ['both', { waits: 1, run: 1 }, ['- -']],
    ['no more than there is', { waits: 0, run: 2 }, []],
    ['nor of what waits', { waits: 2, run: 0 }, []],
  ])('%s', (_, givenUp, expected) => {
    expect(ways(two, givenUp)).toEqual(expected);
  });

  it('is never what stands', () => {
    expect(ways([event(['mon'], 1, { hold: 'stands' })], { waits: 0, run: 1 })).toEqual([]);
  });

  it('of two alike is the last', () => {
    expect(ways([event(['mon'], 1), event(['mon'], 1)], { waits: 0, run: 1 })).toEqual(['mon -']);
  });
});

it('tells the days of runs and those of others, and none of what is given up', () => {
  const events = [event(['mon'], 1), event(['wed'], 1), event(['fri'], 1, { hold: 'waits' })];
  expect(takenDays(events, [0, null, 4])).toEqual({ runs: maskOf(['mon']), others: maskOf(['fri']) });
  expect(takenDays(events, [null, null, null])).toEqual({ runs: 0, others: 0 });
});
