/** What grows in which week: one thing, one new stress, in the house's order (house rules 11.3). */
import { describe, expect, it } from 'vitest';
import { newStresses, type NewStress } from '../../src/scheduling/newStress.ts';
import { takeTurns, type Waiting, type WeekRoom } from '../../src/scheduling/turns.ts';

const usual: WeekRoom = { newRung: false, disturbed: false };
const race: WeekRoom = { newRung: false, disturbed: true };
const rung: WeekRoom = { newRung: true, disturbed: false };
const weeks = (count: number, room = usual) => Array.from({ length: count }, () => room);

const springs: NewStress = { stress: 'springs', exercises: ['Fast and springy'] };
const strides: NewStress = { stress: 'strides', exercises: ['Strides'] };
const hills: NewStress = { stress: 'hills-or-strides', exercises: [] };
const fast: NewStress = { stress: 'fast', exercises: [] };

const ever = (what: Waiting['what'], weeksApart = 1): Waiting => ({ what, times: Infinity, weeksApart });
const grows = (rooms: readonly WeekRoom[], begins: readonly NewStress[], waiting: readonly Waiting[]) =>
  takeTurns(rooms, begins, waiting).map((turn) => turn.grows);
const begins = (rooms: readonly WeekRoom[], stresses: readonly NewStress[]) =>
  takeTurns(rooms, stresses, []).map((turn) => turn.begins);

describe('the order of new stresses', () => {
  it('is springs, strides, hills or strides, fast, without what is known', () => {
    const there = [fast, hills, strides, springs];
    expect(newStresses(there, new Set()).map(({ stress }) => stress)).toEqual([
      'springs',
      'strides',
      'hills-or-strides',
      'fast',
    ]);
    expect(newStresses(there, new Set(['springs', 'hills-or-strides'] as const))).toEqual([strides, fast]);
  });

  it('puts two exercises of one stress together', () => {
    const other: NewStress = { stress: 'springs', exercises: ['Swings'] };
    expect(newStresses([springs, other], new Set())).toEqual([
      { stress: 'springs', exercises: ['Fast and springy', 'Swings'] },
    ]);
  });
});

describe('a week for each new stress', () => {
  it.each([
    [
      'all four, one a week',
      weeks(5),
      [springs, strides, hills, fast],
      ['springs', 'strides', 'hills-or-strides', 'fast', null],
    ],
    [
      'a run never in the first week, for then the exercises are new',
      weeks(3),
      [hills, fast],
      [null, 'hills-or-strides', 'fast'],
    ],
    [
      'none in the weeks of a race',
      [usual, race, race, usual],
      [springs, strides],
      ['springs', null, null, 'strides'],
    ],
    ['none at the start of a programme that begins with a race', [race, usual], [springs], [null, 'springs']],
    ['what finds no week does not begin', weeks(1), [springs, strides], ['springs']],
  ] as const)('%s', (_, rooms, stresses, expected) => {
    expect(begins(rooms, stresses)).toEqual(expected);
  });

  it('counts as growth of what it belongs to', () => {
    expect(grows(weeks(4), [springs, strides, hills, fast], [ever('sitting')])).toEqual([
      'exercises',
      'exercises',
      'running',
      'running',
    ]);
  });
});

describe('turns', () => {
  const all = [ever('exercises'), ever('running'), ever('sitting'), ever('stepRate')];

  it('go round, the exercises first, and begin after the first week', () => {
    expect(grows(weeks(6), [], all)).toEqual([
      'exercises',
      'exercises',
      'stepRate',
      'running',
      'sitting',
      'exercises',
    ]);
  });

  it('leave a week empty where nothing may grow', () => {
    expect(grows(weeks(2), [], [])).toEqual(['exercises', null]);
  });

  it('end when a thing has grown as often as it may', () => {
    expect(grows(weeks(4), [], [{ what: 'sitting', times: 2, weeksApart: 1 }])).toEqual([
      'exercises',
      'sitting',
      'sitting',
      null,
    ]);
  });

  it('wait as long as a thing must stay at one amount', () => {
    expect(grows(weeks(5), [], [ever('running', 2)])).toEqual([
      'exercises',
      null,
      'running',
      null,
      'running',
    ]);
  });

  it('let nothing but sitting grow around a race', () => {
    expect(grows([usual, race, race], [], all)).toEqual(['exercises', 'sitting', 'sitting']);
    expect(grows([usual, race], [], [ever('running'), ever('stepRate')])).toEqual(['exercises', null]);
  });

  it('give a new rung of a protocol by weeks its week', () => {
    expect(grows([usual, rung, rung, usual], [], [ever('sitting')])).toEqual([
      'exercises',
      'exercises',
      'exercises',
      'sitting',
    ]);
  });
});
