import { describe, expect, it } from 'vitest';
import { activityRule, judgeActivities } from '../../src/week/activities.ts';

const table = [
  { what: 'cycling', fromStage: 2, hard: false },
  { what: 'drop-bar cycling', fromStage: 3, hard: false },
  { what: 'football', fromStage: 4, hard: true },
  { what: 'rowing', fromStage: 3, hard: false },
];

describe('what a person does besides', () => {
  it('is kept, left until its stage, or asked about; only what is kept takes room in the week', () => {
    const does = [
      { what: ' Cycling', timesPerWeek: 2 },
      { what: 'football', timesPerWeek: 1.5 },
      { what: 'fencing', timesPerWeek: 1 },
    ];
    const verdicts = (stage: number) =>
      judgeActivities(does, table, stage).map(({ verdict, fromStage, hardDaysPerWeek }) => [
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
    ['Cycling to work', 'cycling'],
    ['drop-bar cycling, weekends', 'drop-bar cycling'],
    ['five-a-side football', 'football'],
    ['growing tomatoes', undefined],
  ])('finds the row for %s: %s', (what, row) => {
    expect(activityRule(what, table)?.what).toBe(row);
  });
});
