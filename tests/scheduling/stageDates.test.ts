import { describe, expect, it } from 'vitest';
import { type IsoDate, isoDate } from '../../src/units/date.ts';
import { earliestStageDates, goalReachable, type StageOnTheWay } from '../../src/scheduling/stageDates.ts';
import { goingOn } from './houseRules.ts';

const on = (text: string): IsoDate => isoDate(text)!;
const stage = (
  name: string,
  from: number,
  to: number,
  steps: number,
  sessionsPerWeek = 3,
): StageOnTheWay => ({
  name,
  usualWeeks: { from, to },
  steps,
  leastSessions: 6,
  sessionsPerWeek,
});

describe('the earliest day of each stage', () => {
  it('is set by whatever takes longest: usual weeks, steps or sessions', () => {
    const dates = earliestStageDates(
      [stage('hold', 2, 4, 1), stage('slow', 4, 6, 6), stage('more bend', 1, 8, 1, 1)],
      on('2026-03-02'),
      0,
      goingOn,
    );
    expect(dates.map(({ name, earliestOn, because }) => [name, earliestOn, because?.code])).toEqual([
      ['hold', '2026-03-02', undefined],
      ['slow', '2026-03-16', 'usual-weeks'],
      ['more bend', '2026-04-27', 'steps'],
      ['end', '2026-06-08', 'sessions'],
    ]);
    expect(dates.map(({ usuallyFrom, usuallyTo }) => [usuallyFrom, usuallyTo])[1]).toEqual([
      '2026-03-16',
      '2026-03-30',
    ]);
  });

  it('counts the days already spent against the usual weeks, not against the steps', () => {
    const after = (daysInStage: number, steps: number) =>
      earliestStageDates([stage('slow', 4, 6, steps)], on('2026-03-02'), daysInStage, goingOn)[1]?.earliestOn;
    expect(after(14, 1)).toBe('2026-03-16');
    expect(after(100, 3)).toBe('2026-03-23');
  });

  it('takes as long a step as the morning checks ask for', () => {
    const rules = { ...goingOn, checkDays: { value: 10, mark: 'choice' } } as const;
    expect(earliestStageDates([stage('slow', 1, 2, 2)], on('2026-03-02'), 0, rules)[1]?.earliestOn).toBe(
      '2026-03-22',
    );
  });

  it('tells how a goal lies to its earliest day', () => {
    expect(goalReachable(on('2026-06-08'), on('2026-06-08'))).toEqual({ reachable: true, daysToSpare: 0 });
    expect(goalReachable(on('2026-06-01'), on('2026-06-08'))).toEqual({ reachable: false, daysToSpare: -7 });
  });
});
