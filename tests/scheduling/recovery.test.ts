import { describe, expect, it } from 'vitest';
import { calendarDays, liftRecovery, recoveryHours } from '../../src/scheduling/recovery.ts';
import { clock, rested } from './houseRules.ts';

describe('the recovery clock', () => {
  it.each([
    ['heavy', 48],
    ['energy-storage', 72],
    ['easy-run', 24],
  ] as const)('%s takes %d h', (kind, hours) => {
    expect(recoveryHours(kind, rested, clock)).toEqual({
      hours,
      baseHours: hours,
      factor: 1,
      slower: [],
      notRecorded: [],
    });
  });

  it.each([
    ['novice', { trainingYears: 0.5 }],
    ['away', { weeksAway: 4 }],
    ['tired', { tired: true }],
    ['short-of-sleep', { sleep: 'poor' }],
  ] as const)('is longer for %s, and says so', (slower, change) => {
    const recovery = recoveryHours('heavy', { ...rested, ...change }, clock);
    expect(recovery.hours).toBe(72);
    expect(recovery.slower).toEqual([slower]);
  });

  it('lengthens once, however many things slow', () => {
    const recovery = recoveryHours(
      'heavy',
      { trainingYears: 0, weeksAway: 9, tired: true, sleep: 'poor' },
      clock,
    );
    expect(recovery.hours).toBe(72);
    expect(recovery.slower).toEqual(['novice', 'away', 'tired', 'short-of-sleep']);
  });

  it('is not lengthened at the limits: a year of training, three weeks away, fair sleep', () => {
    expect(
      recoveryHours('heavy', { trainingYears: 1, weeksAway: 3, tired: false, sleep: 'fair' }, clock).factor,
    ).toBe(1);
  });

  it('says what was not recorded, and invents nothing from it', () => {
    const recovery = recoveryHours('heavy', { ...rested, trainingYears: null, weeksAway: null }, clock);
    expect(recovery.factor).toBe(1);
    expect(recovery.notRecorded).toEqual(['trainingYears', 'weeksAway']);
  });

  it('takes the longer of the stage and the clock for lifts', () => {
    expect(liftRecovery('heavy', 72, rested, clock).hours).toBe(72);
    expect(liftRecovery('heavy', 24, rested, clock).hours).toBe(48);
    expect(liftRecovery('energy-storage', 48, { ...rested, tired: true }, clock).hours).toBe(108);
  });

  it('rounds hours up, but not for binary dust', () => {
    const slow = (value: number) => ({ ...clock, slowFactor: { value, mark: 'choice' } as const });
    expect(recoveryHours('heavy', { ...rested, tired: true }, slow(1.3)).hours).toBe(63);
    expect(recoveryHours('heavy', { ...rested, tired: true }, slow(1.25)).hours).toBe(60);
    expect(recoveryHours('energy-storage', { ...rested, tired: true }, slow(1.1)).hours).toBe(80);
  });

  it('needs whole calendar days', () => {
    expect([0, 12, 24, 25, 48, 60, 72].map(calendarDays)).toEqual([0, 1, 1, 2, 2, 3, 3]);
  });
});
