import { describe, expect, it } from 'vitest';
import { activityRule, judgeActivities } from '../../src/week/activities.ts';
import { hardDays } from '../../src/week/recovery.ts';
import { clock, rested } from './houseRules.ts';

const table = [
  { what: 'cycling', fromStage: 2, hard: false },
  { what: 'drop-bar cycling', fromStage: 3, hard: false },
  { what: 'football', fromStage: 4, hard: true },
  { what: 'rowing', fromStage: 3, hard: false },
  { what: 'tackling', fromStage: 4, hard: true },
];

const THREE_A_WEEK = { most: 3, hoursApart: 48 };

describe('what a person does besides', () => {
  it('is kept, left until its stage, or asked about; only what is kept takes room in the week', () => {
    const does = [
      { what: ' Cycling', timesPerWeek: 2 },
      { what: 'football', timesPerWeek: 1.5 },
      { what: 'fencing', timesPerWeek: 1 },
    ];
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

  it.each([
    // of a person, times a week: hard days that find room
    ['four times and more can never lie 48 h apart', rested, [['football', 4]], [0]],
    ['three times can', rested, [['football', 3]], [3]],
    ['three times cannot 72 h apart', { ...rested, tired: true }, [['football', 3]], [0]],
    ['two times can', { ...rested, tired: true }, [['football', 2]], [2]],
    ['twice a day, every day', rested, [['football', 14]], [0]],
    [
      'what is named first keeps its days',
      rested,
      [
        ['football', 2],
        ['tackling', 2],
      ],
      [2, 0],
    ],
    [
      'everyday load takes none from what is named after it',
      rested,
      [
        ['football', 5],
        ['tackling', 2],
      ],
      [0, 2],
    ],
    ['what is easy may be every day', rested, [['cycling', 7]], [0]],
  ] as const)('is everyday load where its hard days cannot lie apart: %s', (_, person, does, days) => {
    const judged = judgeActivities(
      does.map(([what, timesPerWeek]) => ({ what, timesPerWeek })),
      table,
      4,
      hardDays(person, clock),
    );
    expect(judged.map(({ hardDaysPerWeek }) => hardDaysPerWeek)).toEqual(days);
    expect(judged.map(({ everydayLoad }) => everydayLoad !== null)).toEqual(
      does.map(([what], index) => what !== 'cycling' && days[index] === 0),
    );
  });

  it('says how many hard days there are, how many could be, and what stands beside', () => {
    const does = [
      { what: 'football', timesPerWeek: 2 },
      { what: 'tackling', timesPerWeek: 1.5 },
    ];
    expect(judgeActivities(does, table, 4, THREE_A_WEEK)[1]?.everydayLoad).toEqual({
      code: 'everyday-load',
      inputs: { days: 2, besideDays: 2, mostDays: 3, hoursApart: 48 },
      mark: 'choice',
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
