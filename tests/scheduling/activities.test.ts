import { describe, expect, it } from 'vitest';
import type { Weekday } from '../../src/units/weekday.ts';
import {
  activityPoints,
  activityRule,
  asEverydayLoad,
  judgeActivities,
} from '../../src/scheduling/activities.ts';
import { hardDays } from '../../src/scheduling/recovery.ts';
import { clock, rested } from './houseRules.ts';

const table = [
  { what: 'yoga', fromStage: 3, hard: false, mayWait: true, meanwhile: 'change' as const },
  { what: 'exercise class', fromStage: 3, hard: true, mayWait: true, meanwhile: 'change' as const },
  ...[
    { what: 'cycling', fromStage: 2, hard: false, mayWait: true },
    { what: 'drop-bar cycling', fromStage: 3, hard: false, mayWait: true },
    { what: 'football', fromStage: 4, hard: true, mayWait: true },
    { what: 'rowing', fromStage: 3, hard: false, mayWait: true },
    { what: 'lifting at work', fromStage: 4, hard: true, mayWait: false },
    { what: 'stairs', fromStage: 4, hard: true, mayWait: false },
  ].map((row) => ({ ...row, meanwhile: 'leave' as const })),
];

const THREE_A_WEEK = { most: 3, hoursApart: 48 };
const often = (what: string, timesPerWeek: number, days: readonly Weekday[] = []) => ({
  what,
  timesPerWeek,
  days,
});

describe('what a person does besides', () => {
  it('is kept, left until its stage, or asked about; only what is kept takes room in the week', () => {
    const does = [often(' Cycling', 2), often('football', 1.5), often('fencing', 1)];
    const verdicts = (stage: number) =>
      judgeActivities(does, table, stage, THREE_A_WEEK).map(({ verdict, fromStage, hardDaysPerWeek }) => [
        verdict,
        fromStage,
        hardDaysPerWeek,
      ]);
    expect(verdicts(2)).toEqual([
      ['keep', 2, 0],
      ['leave', 4, 0],
      ['ask', null, 0],
    ]);
    expect(verdicts(4)[1]).toEqual(['keep', 4, 2]);
  });

  it('keeps its days, easy ones, where it goes on in a changed way until its stage', () => {
    const does = [
      often('yoga', 1, ['wed']),
      often('exercise class', 1, ['fri']),
      often('football', 1, ['sun']),
    ];
    const points = (stage: number) => {
      const { fixed, easyFixed } = activityPoints(judgeActivities(does, table, stage, THREE_A_WEEK));
      return [fixed.map(({ id }) => id), easyFixed.map(({ id, day }) => `${id} ${day}`)];
    };
    expect(points(2)).toEqual([[], ['yoga wed', 'exercise class fri']]);
    expect(points(3)).toEqual([['exercise class'], ['yoga wed']]);
  });

  it.each([
    // of a person, times a week: hard days that find room
    ['four times and more can never lie 48 h apart', rested, [['lifting at work', 4]], [0]],
    ['three times can', rested, [['lifting at work', 3]], [3]],
    ['three times cannot 72 h apart', { ...rested, tired: true }, [['lifting at work', 3]], [0]],
    ['two times can', { ...rested, tired: true }, [['lifting at work', 2]], [2]],
    ['twice a day, every day', rested, [['lifting at work', 14]], [0]],
    ['neighbouring days that are named cannot', rested, [['lifting at work', 2, ['sun', 'mon']]], [0]],
    [
      'what is named first keeps its days',
      rested,
      [
        ['lifting at work', 2],
        ['stairs', 2],
      ],
      [2, 0],
    ],
    [
      'everyday load takes none from what is named after it',
      rested,
      [
        ['lifting at work', 5],
        ['stairs', 2],
      ],
      [0, 2],
    ],
  ] as const)(
    'is everyday load where it cannot wait and its hard days cannot lie apart: %s',
    (_, person, does, days) => {
      const judged = judgeActivities(
        does.map(([what, times, named]) => often(what, times, named)),
        table,
        4,
        hardDays(person, clock),
      );
      expect(judged.map(({ hardDaysPerWeek }) => hardDaysPerWeek)).toEqual(days);
      expect(judged.map(({ everydayLoad }) => everydayLoad !== null)).toEqual(
        days.map((count) => count === 0),
      );
    },
  );

  it.each([
    // sport may wait: the week finds out what fits beside the sessions
    ['football', 2, [], 2],
    ['football', 5, [], 5],
    ['football', 1, ['tue', 'sat'], 2],
    ['football', 14, [], 7],
    ['cycling', 7, [], 0],
  ] as const)('looks for room for %s, %s times a week on %j: %s hard days', (what, times, named, days) => {
    const [judged] = judgeActivities([often(what, times, named)], table, 4, THREE_A_WEEK);
    expect(judged).toMatchObject({ hardDaysPerWeek: days, everydayLoad: null });
  });

  it('says how many hard days there are, how many could be, and what stands beside', () => {
    const does = [often('lifting at work', 2), often('stairs', 1.5)];
    expect(judgeActivities(does, table, 4, THREE_A_WEEK)[1]?.everydayLoad).toEqual({
      code: 'everyday-load',
      inputs: { days: 2, besideDays: 2, mostDays: 3, hoursApart: 48 },
      mark: 'choice',
    });
  });

  it('stands on its named days, and on any for the times beyond them', () => {
    const judged = judgeActivities(
      [often('football', 2, ['sat']), often('cycling', 3, ['mon']), often('fencing', 1, ['tue'])],
      table,
      4,
      THREE_A_WEEK,
    );
    expect(activityPoints(judged)).toEqual({
      fixed: [
        { id: 'football', day: 'sat', recovery: 'heavy', mayWait: true },
        { id: 'football', day: null, recovery: 'heavy', mayWait: true },
      ],
      easyFixed: [{ id: 'cycling', day: 'mon' }],
    });
  });

  it('is in no week before its stage', () => {
    const judged = judgeActivities(
      [often('football', 1, ['sat']), often('cycling', 1, ['mon'])],
      table,
      1,
      THREE_A_WEEK,
    );
    expect(activityPoints(judged)).toEqual({ fixed: [], easyFixed: [] });
  });

  it('is everyday load on its days where it would leave no session a day', () => {
    const judged = asEverydayLoad(
      judgeActivities(
        [often('lifting at work', 2, ['mon', 'thu']), often('football', 1)],
        table,
        4,
        THREE_A_WEEK,
      ),
      THREE_A_WEEK,
    );
    expect(judged.map(({ everydayLoad }) => everydayLoad?.code)).toEqual([
      'everyday-load-for-sessions',
      undefined,
    ]);
    expect(activityPoints(judged)).toEqual({
      fixed: [{ id: 'football', day: null, recovery: 'heavy', mayWait: true }],
      easyFixed: [
        { id: 'lifting at work', day: 'mon' },
        { id: 'lifting at work', day: 'thu' },
      ],
    });
  });

  it.each([
    ['Cycling to work', 'cycling'],
    ['drop-bar cycling, weekends', 'drop-bar cycling'],
    ['five-a-side football', 'football'],
    ['growing tomatoes', undefined],
  ])('finds the row for %s: %s', (what, row) => {
    expect(activityRule(what, table)?.what).toBe(row);
  });
});
