/** Pain gates, spacing and sitting against what trials and models print, with the mark in the title. */
import { describe, expect, it } from 'vitest';
import { morningDecision, painGate } from '../../src/scheduling/morning.ts';
import { notBefore, recoveryHours } from '../../src/scheduling/recovery.ts';
import type { Mark } from '../../src/units/source.ts';
import { shipped } from '../programme/shipped.ts';
import { calm, clock, morning, pain, rested } from '../scheduling/houseRules.ts';

type Groups = Readonly<
  Record<string, Readonly<Record<string, { value?: unknown; mark?: string; cite?: string } | undefined>>>
>;

describe('pain gate on a fixed test task, physiotherapy page on the hamstring tendon [secondary]', () => {
  it.each([
    // pain  tolerated
    [0, true],
    [3, true],
    [4, false],
    [10, false],
  ])('pain %d: tolerated %s', (during, allowed) => {
    expect(painGate(during, calm(0), pain).allowed).toBe(allowed);
  });
});

describe('pain-monitoring model, Silbernagel 2007, Am J Sports Med 35(6):897-906 [memory]', () => {
  const model = { ...pain, duringAtMost: { value: 5, mark: 'memory' } } as const;

  it('5 during is allowed, and carried on when the next morning is back to base', () => {
    expect(painGate(5, calm(2), model).allowed).toBe(true);
    expect(morningDecision(2, 2, [2], morning).answer).toBe('carry-on');
  });

  it('6 is not allowed, during or the next morning', () => {
    expect(painGate(6, calm(2), model)).toMatchObject({ allowed: false, stop: true });
    expect(morningDecision(6, 2, [2], morning).answer).toBe('ease-back');
  });
});

describe('48 h between heavy sessions, LOADIT trial doi 10.1186/s40814-020-00639-5 and NCT06774547 [read]', () => {
  it('after Monday 08:00 the next is not before Wednesday 08:00', () => {
    const mondayEight = 8;
    const { hours } = recoveryHours('heavy', rested, clock);
    expect(hours).toBe(48);
    expect(notBefore(mondayEight, hours)).toBe(2 * 24 + 8);
  });

  it('after Sunday 08:00 it is Tuesday 08:00, round the end of the week', () => {
    expect(notBefore(6 * 24 + 8, 48)).toBe(24 + 8);
  });
});

/** Every threshold that a review decides by, as the shipped protocol sets it: the number, its mark, and where it was found. */
const THRESHOLDS: readonly [path: string, value: number, unit: string, mark: Mark, source: RegExp | null][] =
  [
    // during the exercise
    ['painRule.duringAtMost', 3, 'of 10', 'secondary', /0 to 3 on a fixed daily task, on a secondary page/],
    ['painRule.neverAbove', 5, 'of 10', 'memory', /Silbernagel 2007, Am J Sports Med 35\(6\):897-906/],
    ['painRule.overUsualAtMost', 1, 'over usual', 'choice', null],
    ['painRule.usualOnlyFrom', 4, 'of 10, usual', 'choice', null],
    ['painRule.decisionFrom', 7, 'of 10, usual', 'choice', null],
    // the morning after
    [
      'morningCheck.repetitions',
      3,
      'times',
      'secondary',
      /three times as the first daily task, on a secondary page/,
    ],
    ['morningCheck.carryOnOver', 1, 'over usual', 'choice', null],
    ['morningCheck.sameAgainOver', 2, 'over usual', 'choice', null],
    ['morningCheck.easeBackAt', 6, 'of 10', 'choice', null],
    ['morningCheck.contactAfterDays', 7, 'days', 'choice', null],
    ['morningCheck.contactWhenRisingDays', 14, 'days', 'choice', null],
    // less work
    ['easeBack.setsFactor', 0.5, 'of the sets', 'choice', null],
    ['easeBack.loadFactor', 0.8, 'of the load', 'choice', null],
    ['easeBack.rangeLessDeg', 15, 'degrees', 'choice', null],
    // days missed
    ['missedDays.sameStepUnder', 7, 'days', 'choice', null],
    ['missedDays.oneBackUpTo', 14, 'days', 'choice', null],
    // going on
    ['goingOn.doneSessions', 2, 'sessions', 'choice', null],
    ['goingOn.checkOverUsual', 1, 'over usual', 'choice', null],
    ['goingOn.checkDays', 7, 'mornings', 'choice', null],
    ['goingOn.unwrittenCheckAs', 10, 'of 10', 'choice', null],
    ['goingOn.sessionsDoneShare', 0.7, 'of those planned', 'choice', null],
    ['goingOn.leastSessions', 3, 'sessions', 'choice', null],
    ['goingOn.leastDays', 7, 'days', 'choice', null],
    // the least change that matters
    ['minimalChange.morningPainPoints', 2, 'of 10', 'read', /Salaffi 2004, PubMed 15207508: 2 points of 10/],
    ['minimalChange.visaHPoints', 22, 'points', 'memory', /Cacchio 2014.*looked for and not found/],
    ['minimalChange.activityPoints', 3, 'of 10', 'memory', /Patient-specific functional scale/],
  ];

describe('thresholds of the shipped protocol, each with its source; where there is none it is a choice of the house', () => {
  const protocol = shipped.protocols.get('proximal-hamstring') as unknown as Groups;

  it.each(THRESHOLDS)('%s: %d %s [%s]', (path, value, _, mark, source) => {
    const [group = '', name = ''] = path.split('.');
    const setting = protocol[group]?.[name];
    expect(setting).toMatchObject({ value, mark });
    if (source === null) expect(setting?.cite).toBeUndefined();
    else expect(setting?.cite).toMatch(source);
  });

  it('no other stands beside them', () => {
    const groups = [...new Set(THRESHOLDS.map(([path]) => path.split('.')[0] as string))];
    const all = groups.flatMap((group) =>
      Object.entries(protocol[group] ?? {}).flatMap(([name, setting]) =>
        typeof setting?.value === 'number' ? [`${group}.${name}`] : [],
      ),
    );
    expect(all.toSorted()).toEqual(THRESHOLDS.map(([path]) => path).toSorted());
  });

  it('the flare plan is of our own choice throughout', () => {
    expect(protocol['flare']).toMatchObject({ holdsOnlyDays: { from: 2, to: 3 }, mark: 'choice' });
  });
});

describe('important change of a pain score of 10, Salaffi 2004, PubMed 15207508 [read]', () => {
  it('6 to 4 is 2 points, a third: much better', () => {
    const value = shipped.protocols.get('proximal-hamstring')!.minimalChange?.morningPainPoints?.value ?? 0;
    expect(6 - 4).toBe(value);
    expect((6 - 4) / 6).toBeCloseTo(0.333, 3);
  });
});

describe('a task at 4 or more of 10 the day after: less, page on the hamstring tendon [secondary]', () => {
  // The house rule reads it against usual: from usual 2 on, 4 once is the same again, and twice running is less.
  it.each([
    // usual, morning, before, answer
    [0, 4, [0], 'ease-back'],
    [1, 4, [1], 'ease-back'],
    [2, 4, [2], 'same-again'],
    [2, 4, [2, 4], 'ease-back'],
    [3, 4, [3], 'carry-on'],
  ] as const)('usual %d, the morning %d: %j before: %s', (usual, today, before, answer) => {
    expect(morningDecision(today, usual, before, morning).answer).toBe(answer);
  });
});
