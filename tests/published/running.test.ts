/** Running: published tables and trade ladders, the mark of each in its title. */
import { describe, expect, it } from 'vitest';
import { toDegrees, toRadians } from '../../src/units/angle.ts';
import { runJump } from '../../src/scheduling/growth.ts';
import { easyDaysAfterRace } from '../../src/scheduling/race.ts';
import { easyRunForceNPerKg, easyRunPullBw } from '../../src/scheduling/runPull.ts';
import { hipFlexionAt, raisedStepRate, stepLengthM } from '../../src/scheduling/stepRate.ts';
import { walkRunLadder } from '../../src/scheduling/walkRun.ts';
import { running } from '../scheduling/houseRules.ts';

describe('Frandsen 2025, Br J Sports Med 59(17):1203-1210 [read]: one run against the longest of 30 days', () => {
  it.each([
    // longest km   run km   band
    [10, 9, 'reference'],
    [10, 11, 'reference'],
    [10, 11.1, 'small'],
    [10, 13, 'small'],
    [10, 13.5, 'moderate'],
    [10, 20, 'moderate'],
    [10, 20.5, 'large'],
    [7.3, 8.03, 'reference'],
    [21.1, 27.43, 'small'],
  ])('longest %f km, now %f km: %s', (longestKm, runKm, band) => {
    expect(runJump(runKm, longestKm)?.band).toBe(band);
  });

  it('says nothing where there is no longest run', () => {
    expect(runJump(5, 0)).toBeNull();
  });
});

describe('Heiderscheit 2011, Med Sci Sports Exerc 43:296-302, Table 3 [read]: hip flexion by step rate', () => {
  it.each([
    // change, %   deg
    [-10, 30.7],
    [-5, 27.9],
    [0, 26.7],
    [5, 25.3],
    [10, 23.6],
  ])('%d %%: %f degrees', (changePct, deg) => {
    expect(hipFlexionAt(changePct)).toBe(deg);
  });

  it('falls by 3.1 degrees, 11.6 %, from the usual rate to 10 % more [derived, data read]', () => {
    const [usual, raised] = [hipFlexionAt(0)!, hipFlexionAt(10)!];
    expect(raised - usual).toBeCloseTo(-3.1, 1);
    expect((raised / usual - 1) * 100).toBeCloseTo(-11.6, 1);
  });

  it('gives no figure beyond what was measured', () => {
    expect(hipFlexionAt(10.1)).toBeNull();
    expect(hipFlexionAt(-11)).toBeNull();
  });

  it('raises 172 steps a minute to 180.6 and 189.2 [derived, conditions read]', () => {
    expect(raisedStepRate(172, 1.05)).toBeCloseTo(180.6, 5);
    expect(raisedStepRate(172, 1.1)).toBeCloseTo(189.2, 5);
  });

  it.each([
    [172, 1.0465],
    [180.6, 0.9967],
    [189.2, 0.9514],
  ])(
    'at 3.0 m/s and %f steps a minute a step is %f m [derived, speed = rate x length]',
    (stepsPerMin, metres) => {
      expect(Math.abs(stepLengthM(3, stepsPerMin) - metres)).toBeLessThanOrEqual(0.0005);
    },
  );
});

describe('Lenhart 2014, J Orthop Sports Phys Ther, PMC4296582 Table 1 [derived, data read]: BFLH and SM in late swing', () => {
  it('18.73 N/kg at the usual step rate is 1.909 body weights', () => {
    expect(easyRunForceNPerKg()).toBeCloseTo(18.73, 2);
    expect(Math.abs(easyRunPullBw() - 1.909)).toBeLessThanOrEqual(0.005);
  });

  it('19.23 N/kg at 110 %: 2.67 % more, so a faster step is no relief for the hamstrings', () => {
    expect(easyRunForceNPerKg(110)).toBeCloseTo(19.23, 2);
    expect(
      Math.abs((easyRunForceNPerKg(110) / easyRunForceNPerKg(100) - 1) * 100 - 2.67),
    ).toBeLessThanOrEqual(0.05);
    expect(easyRunForceNPerKg(90)).toBeCloseTo(4.69 + 12.12, 10);
  });
});

describe('slope [derived, trigonometry]', () => {
  it('a grade of 10 % is 5.711 degrees, 4 degrees is 6.993 %', () => {
    expect(toDegrees(Math.atan(0.1))).toBeCloseTo(5.711, 3);
    expect(100 * Math.tan(toRadians(4))).toBeCloseTo(6.993, 3);
  });
});

describe('walk-run ladder, 30 minutes as 5 cycles of 6, trade page [secondary]', () => {
  it.each([
    // rung  run a cycle  walk a cycle  run in all  walk in all
    [1, 1, 5, 5, 25],
    [2, 2, 4, 10, 20],
    [3, 3, 3, 15, 15],
    [4, 4, 2, 20, 10],
    [5, 5, 1, 25, 5],
  ])(
    'rung %d: run %d, walk %d, five times: %d and %d minutes',
    (rung, runMinutes, walkMinutes, totalRun, totalWalk) => {
      expect(walkRunLadder(running)[rung - 1]).toEqual({
        rung,
        cycles: 5,
        runMinutes,
        walkMinutes,
        totalRunMinutes: totalRun,
        totalWalkMinutes: totalWalk,
      });
      expect(walkRunLadder(running)).toHaveLength(5);
    },
  );
});

describe('easy days after a race [memory]', () => {
  it.each([
    // km       from  to   longer than the table
    [5, 5, 7, false],
    [10, 5, 7, false],
    [15, 7, 10, false],
    [21.0975, 7, 10, false],
    [30, 14, 21, false],
    [42.195, 14, 21, false],
    [100, 14, 21, true],
  ])('%f km: %d to %d days', (km, from, to, atLeast) => {
    expect(easyDaysAfterRace(km, running.raceEasyDays)).toEqual({ from, to, mark: 'memory', atLeast });
  });

  it('gives none where the protocol has no table', () => {
    expect(easyDaysAfterRace(10, [])).toBeNull();
  });
});
