import { describe, expect, it } from 'vitest';
import { growFastOrClimb, longestAllowed } from '../../src/scheduling/growth.ts';
import { HARD_FEATURES, runLoad } from '../../src/scheduling/hardRun.ts';
import { hillsAndFast } from '../../src/scheduling/hillsAndFast.ts';
import { stepRateTarget } from '../../src/scheduling/stepRate.ts';
import { running } from './houseRules.ts';

describe('what counts as a hard run', () => {
  it.each(HARD_FEATURES)('an easy run with %s does', (feature) => {
    expect(runLoad('easy', [feature])).toMatchObject({ hard: true, because: [feature] });
  });

  it('easy, longer and walk-run on the flat do not', () => {
    for (const kind of ['walk-run', 'easy', 'longer'] as const)
      expect(runLoad(kind)).toEqual({ recovery: 'easy-run', hard: false, because: [] });
  });

  it('takes the longest recovery of kind and features', () => {
    expect(runLoad('steady').recovery).toBe('heavy');
    expect(runLoad('steady', ['race'])).toEqual({
      recovery: 'energy-storage',
      hard: true,
      because: ['steady', 'race'],
    });
    expect(runLoad('fast').recovery).toBe('energy-storage');
  });
});

describe('hills and fast running', () => {
  const rule = (usedToHills: boolean, usedToFast: boolean, weeksBack: number | null) =>
    hillsAndFast({ usedToHills, usedToFast, weeksBack }, running);

  it.each([
    [false, true, 20, 'not-used-to-both'],
    [true, false, 20, 'not-used-to-both'],
    [true, true, null, 'not-back-long-enough'],
    [true, true, 5, 'not-back-long-enough'],
  ] as const)('never share a week: hills %s, fast %s, weeks back %s', (hills, fast, weeks, code) => {
    expect(rule(hills, fast, weeks)).toMatchObject({ rule: 'never-one-week', because: { code } });
  });

  it('may share one from six weeks on, off neighbouring days', () => {
    expect(rule(true, true, 6).rule).toBe('never-neighbours');
  });
});

describe('growth', () => {
  it('allows 1.1 times the longest of 30 days, rounded down', () => {
    expect(longestAllowed(10, running).atMostKm).toBe(11);
    expect(longestAllowed(7.5, running).atMostKm).toBe(8.2);
    expect(longestAllowed(0, running)).toMatchObject({
      atMostKm: null,
      because: { code: 'no-run-in-30-days' },
    });
    expect(longestAllowed(null, running).because.code).toBe('longest-not-recorded');
  });

  it('grows fast minutes or climb by a tenth while the other stays', () => {
    const last = { fastMinutes: 8, climbM: 95 };
    expect(growFastOrClimb(last, 'fastMinutes', running)).toEqual({ fastMinutes: 8.8, climbM: 95 });
    expect(growFastOrClimb(last, 'climbM', running)).toEqual({ fastMinutes: 8, climbM: 104 });
    expect(growFastOrClimb({ fastMinutes: null, climbM: 95 }, 'fastMinutes', running)).toEqual({
      fastMinutes: null,
      climbM: 95,
    });
  });
});

describe('step rate', () => {
  it('goes up 5 % with one cue when over-striding was seen and the rate is low', () => {
    expect(stepRateTarget({ stepsPerMin: 158, overStriding: 'yes' }, running)).toMatchObject({
      fromStepsPerMin: 158,
      toStepsPerMin: 165,
      cue: 'foot-lands-nearer',
      hipFlexionDeg: { usual: 26.7, raised: 25.3 },
    });
  });

  it.each([
    ['over-striding-not-seen', 150, 'notSeen'],
    ['no-over-striding', 150, 'no'],
    ['rate-not-recorded', null, 'yes'],
    ['rate-not-low', 165, 'yes'],
  ] as const)('has no target: %s', (code, stepsPerMin, overStriding) => {
    expect(stepRateTarget({ stepsPerMin, overStriding }, running)).toMatchObject({ code });
  });
});
