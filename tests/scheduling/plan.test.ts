import { describe, expect, it } from 'vitest';
import { WEEKDAYS, type Weekday } from '../../src/units/weekday.ts';
import { planWeek, type WeekPlan } from '../../src/scheduling/plan.ts';
import type { RunKind } from '../../src/scheduling/run.ts';
import type { WeekWish } from '../../src/scheduling/wish.ts';
import { clock, rested } from './houseRules.ts';

const runs = (...kinds: RunKind[]) => kinds.map((kind, i) => ({ id: `run-${i + 1}`, kind, features: [] }));

const wish = (
  change: Partial<Omit<WeekWish, 'lifts'>> & { lifts?: Partial<WeekWish['lifts']> } = {},
): WeekWish => ({
  runs: [],
  runDays: WEEKDAYS,
  hillsAndFast: 'never-one-week',
  fixed: [],
  betweenDays: [],
  daily: false,
  ...change,
  lifts: { perWeek: 3, kind: 'heavy', hoursBetween: 48, days: WEEKDAYS, ...change.lifts },
});

function planned(input: WeekWish, person = rested): WeekPlan {
  const plan = planWeek(input, person, clock);
  if (!plan.fits) throw new Error(`expected a week, found ${JSON.stringify(plan.because)}`);
  return plan;
}

const sessionDays = (plan: WeekPlan) =>
  plan.days.filter(({ session }) => session).map(({ weekday }) => weekday);
const runDays = (plan: WeekPlan) =>
  Object.fromEntries(plan.days.flatMap(({ weekday, runs: ids }) => ids.map((id) => [id, weekday])));

describe('a week of sessions', () => {
  it('puts three heavy sessions as early and as evenly as seven days allow', () => {
    const plan = planned(wish());
    expect(sessionDays(plan)).toEqual(['mon', 'wed', 'fri']);
    expect(plan.nearestHardHours).toBe(48);
    expect(plan.gaveUp).toEqual([]);
    expect(plan.liftGapDays).toBe(2);
  });

  it('counts Sunday to Monday: Monday, Wednesday and Sunday are two sessions', () => {
    const plan = planned(wish({ lifts: { days: ['mon', 'wed', 'sun'] } }));
    expect(sessionDays(plan)).toHaveLength(2);
    expect(plan.gaveUp).toEqual([{ code: 'fewer-lifts', inputs: { wished: 3, planned: 2 }, mark: 'choice' }]);
  });

  it('spreads two sessions best, not earliest', () => {
    expect(sessionDays(planned(wish({ lifts: { perWeek: 2, days: ['mon', 'wed', 'thu'] } })))).toEqual([
      'mon',
      'thu',
    ]);
  });

  it('gives a tired person three days between', () => {
    const plan = planned(wish(), { ...rested, tired: true });
    expect(sessionDays(plan)).toEqual(['mon', 'thu']);
    expect(plan.liftRecovery).toMatchObject({ hours: 72, slower: ['tired'] });
  });

  it('holds every day when the stage allows it, whatever slows the person', () => {
    const plan = planned(wish({ lifts: { perWeek: 7, kind: 'light', hoursBetween: 24 } }), {
      ...rested,
      tired: true,
    });
    expect(sessionDays(plan)).toEqual([...WEEKDAYS]);
  });

  it('says so when more than one session a day is wished', () => {
    const plan = planned(wish({ lifts: { perWeek: 14, kind: 'light', hoursBetween: 12 } }));
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['one-session-a-day']);
  });

  it('puts the work between on the days between that have room for it', () => {
    const plan = planned(wish({ betweenDays: ['mon', 'tue', 'sat'], daily: true }));
    expect(plan.days.filter(({ between }) => between).map(({ weekday }) => weekday)).toEqual(['tue', 'sat']);
    expect(plan.days.every(({ daily }) => daily)).toBe(true);
  });
});

describe('sessions and runs on one clock', () => {
  it('leaves one clear day between lifts and a hard run where the week has room', () => {
    const plan = planned(wish({ lifts: { perWeek: 2 }, runs: runs('steady') }));
    expect(plan.gaveUp).toEqual([]);
    expect(plan.nearestHardHours).toBe(48);
  });

  it('first pairs a lift with a hard run: three lifts and two hard runs do not fit 168 h', () => {
    const plan = planned(wish({ runs: runs('steady', 'steady') }));
    expect(sessionDays(plan)).toHaveLength(3);
    expect(Object.keys(runDays(plan))).toHaveLength(2);
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['lift-after-run']);
    expect(
      plan.days
        .filter(({ afterRun }) => afterRun)
        .every(({ session, runs: ids }) => session && ids.length > 0),
    ).toBe(true);
  });

  it('then has two lifts instead of three', () => {
    const plan = planned(wish({ hillsAndFast: 'never-neighbours', runs: runs('fast', 'hills-or-strides') }));
    expect(sessionDays(plan)).toHaveLength(2);
    expect(Object.keys(runDays(plan))).toHaveLength(2);
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['lift-after-run', 'fewer-lifts']);
  });

  it('then drops the hard run named last', () => {
    const plan = planned(wish({ runs: runs('steady', 'steady', 'steady', 'steady') }));
    expect(plan.gaveUp.map(({ code, inputs }) => [code, inputs.id])).toEqual([
      ['lift-after-run', undefined],
      ['hard-run', 'run-4'],
    ]);
    expect(sessionDays(plan)).toHaveLength(3);
  });

  it('goes down to one lift only when no hard run is left to drop', () => {
    const plan = planned(wish({ lifts: { days: ['mon', 'tue'] }, runDays: ['tue'], runs: runs('steady') }));
    expect(sessionDays(plan)).toEqual(['tue']);
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['lift-after-run', 'fewer-lifts']);
  });

  it('never has hills and fast running in one week while they must stay apart, and says why one went', () => {
    const plan = planned(wish({ lifts: { perWeek: 1 }, runs: runs('hills-or-strides', 'fast') }));
    expect(runDays(plan)).toHaveProperty('run-1');
    expect(runDays(plan)).not.toHaveProperty('run-2');
    expect(plan.gaveUp).toEqual([
      { code: 'hard-run', inputs: { id: 'run-2', kind: 'fast', because: 'hills-and-fast' }, mark: 'choice' },
    ]);
  });

  it.each([
    // features of an easy run beside a fast one and beside a hilly one: kept apart from it?
    ['hilly-route', true, false],
    ['stairs', true, false],
    ['race', false, true],
    ['high-knee-drills', false, false],
  ] as const)('counts a run with %s as hills: %s, as fast: %s', (feature, hills, fast) => {
    const beside = (kind: RunKind) => {
      const run = { id: 'other', kind: 'easy', features: [feature] } as const;
      const plan = planned(wish({ lifts: { perWeek: 1 }, runs: [...runs(kind), run] }));
      return plan.gaveUp.some(({ inputs }) => inputs.because === 'hills-and-fast');
    };
    expect([beside('fast'), beside('hills-or-strides')]).toEqual([hills, fast]);
  });

  it('blames the clock, not hills and fast running, for a run that neither keeps out', () => {
    const because = (...kinds: RunKind[]) =>
      planned(wish({ lifts: { perWeek: 2 }, runs: runs(...kinds) }))
        .gaveUp.filter(({ code }) => code === 'hard-run')
        .map(({ inputs }) => inputs.because);
    expect(because('fast', 'fast', 'fast')).toEqual(['clock']);
    expect(because('hills-or-strides', 'steady', 'steady', 'steady')).toContain('clock');
    expect(because('hills-or-strides', 'steady', 'steady', 'steady')).not.toContain('hills-and-fast');
    expect(because('fast', 'hills-or-strides', 'steady', 'steady', 'steady')[0]).toBe('hills-and-fast');
    expect(because('fast', 'hills-or-strides', 'steady', 'steady', 'steady').at(-1)).toBe('clock');
  });

  it('keeps hills and fast running off neighbouring days even where the clinic sets a short clock', () => {
    const short = { ...clock, energyStorageHours: { value: 24, mark: 'choice' } as const };
    const input = wish({
      lifts: { perWeek: 1 },
      hillsAndFast: 'never-neighbours',
      runDays: ['mon', 'tue'],
      runs: runs('hills-or-strides', 'fast'),
    });
    const plan = planWeek(input, rested, short);
    expect(plan.fits && Object.keys(runDays(plan))).toEqual(['run-1']);
  });

  it('counts an easy run on a hilly route as a hard one', () => {
    const plan = planned(
      wish({ lifts: { perWeek: 3 }, runs: [{ id: 'home-hill', kind: 'easy', features: ['hilly-route'] }] }),
    );
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['lift-after-run']);
  });

  it('puts easy runs on the days left and says when there are not enough', () => {
    const plan = planned(wish({ runs: runs('easy', 'easy', 'easy', 'easy', 'easy') }));
    expect(Object.keys(runDays(plan))).toHaveLength(4);
    expect(sessionDays(plan).some((day) => Object.values(runDays(plan)).includes(day))).toBe(false);
    expect(plan.gaveUp).toEqual([{ code: 'easy-runs', inputs: { wished: 5, planned: 4 }, mark: 'choice' }]);
  });

  it('lets light holds share any day with any run', () => {
    const plan = planned(
      wish({
        lifts: { perWeek: 7, kind: 'light', hoursBetween: 24 },
        runs: runs('walk-run', 'walk-run', 'walk-run'),
      }),
    );
    expect(sessionDays(plan)).toHaveLength(7);
    expect(runDays(plan)).toEqual({ 'run-1': 'mon', 'run-2': 'wed', 'run-3': 'fri' });
    expect(plan.gaveUp).toEqual([]);
  });
});

describe('what the week holds anyway', () => {
  const football = (day: Weekday | null, id = 'football') =>
    ({ id, day, recovery: 'energy-storage' }) as const;

  it('keeps lifts clear of a fixed hard day on both sides', () => {
    const plan = planned(wish({ lifts: { perWeek: 2 }, fixed: [football('wed')] }));
    expect(plan.days[2]?.other).toEqual(['football']);
    // Wednesday and 72 h: not before Saturday; then 48 h before Wednesday again.
    expect(sessionDays(plan)).toEqual(['mon', 'sat']);
  });

  it('finds a day for a hard thing without one', () => {
    const plan = planned(wish({ lifts: { perWeek: 2, days: ['mon', 'fri'] }, fixed: [football(null)] }));
    expect(plan.gaveUp.map(({ code }) => code)).toEqual(['fewer-lifts']);
    expect(plan.days.filter(({ other }) => other.includes('football'))).toHaveLength(1);
    expect(plan.days.some(({ session, other }) => session && other.length > 0)).toBe(false);
  });

  it('lets a lift follow it on its day only where no day of its own is left', () => {
    const plan = planned(wish({ fixed: [football('mon'), football('thu')] }));
    expect(plan.days.filter(({ afterOther }) => afterOther).map(({ weekday }) => weekday)).toEqual([
      'mon',
      'thu',
    ]);
    expect(plan.gaveUp).toEqual([
      { code: 'lift-after-other', inputs: { others: ['football'], days: ['mon', 'thu'] }, mark: 'choice' },
      { code: 'fewer-lifts', inputs: { wished: 3, planned: 2 }, mark: 'choice' },
    ]);
  });

  it('drops a hard run before a lift shares the day of anything else', () => {
    const plan = planned(
      wish({ fixed: [{ id: 'rowing', day: 'mon', recovery: 'heavy' }], runs: runs('fast') }),
    );
    expect(plan.gaveUp.map(({ code }) => code)).not.toContain('lift-after-other');
  });

  it('has two lifts beside three days of another hard thing, each after it, and a clear day after each', () => {
    const rowing = { id: 'rowing', day: null, recovery: 'heavy' } as const;
    const plan = planned(wish({ fixed: [rowing, rowing, rowing] }));
    expect(plan.days.filter(({ session }) => session).every(({ afterOther }) => afterOther)).toBe(true);
    expect(sessionDays(plan)).toHaveLength(2);
    expect(plan.nearestHardHours).toBe(48);
    expect(plan.openDays).toEqual(sessionDays(plan));
  });

  // Energy storage recovers in 72 h (house rules 6): three days apart are enough, and the week is a circle of seven.
  it.each([
    ['mon', 'wed', 2],
    ['mon', 'thu', null],
    ['mon', 'fri', null],
    ['mon', 'sat', 2],
  ] as const)(
    'fixed points on %s and %s: days between where that is too near: %s',
    (first, second, daysBetween) => {
      const plan = planned(
        wish({ lifts: { perWeek: 1 }, fixed: [football(first, 'match'), football(second, 'training')] }),
      );
      expect(plan.tightFixed.map(({ inputs }) => inputs.daysBetween)).toEqual(
        daysBetween === null ? [] : [daysBetween],
      );
    },
  );

  it('does not move fixed points that stand too near each other, and says so', () => {
    const plan = planned(
      wish({ lifts: { perWeek: 1 }, fixed: [football('tue', 'match'), football('wed', 'training')] }),
    );
    expect(plan.tightFixed).toEqual([
      {
        code: 'fixed-points-too-near',
        inputs: { first: 'match', second: 'training', daysBetween: 1, daysNeeded: 3 },
        mark: 'choice',
      },
    ]);
    expect(sessionDays(plan)).toEqual(['sat']);
  });

  it('calls fixed points that keep the clock exactly not too near', () => {
    const rowing = (day: Weekday) => ({ id: `rowing ${day}`, day, recovery: 'heavy' }) as const;
    expect(planned(wish({ fixed: [rowing('mon'), rowing('wed')] })).tightFixed).toEqual([]);
    expect(planned(wish({ fixed: [rowing('sun'), rowing('mon')] })).tightFixed).toHaveLength(1);
  });

  it('is in the week on its days without taking anything where it is easy', () => {
    const easyFixed = [
      { id: 'yoga', day: 'mon' },
      { id: 'yoga', day: 'wed' },
    ] as const;
    const [bare, plan] = [planned(wish()), planned(wish({ easyFixed }))];
    expect(sessionDays(plan)).toEqual(sessionDays(bare));
    expect(plan.gaveUp).toEqual([]);
    expect(plan.days.map(({ other }) => other.join())).toEqual(['yoga', '', 'yoga', '', '', '', '']);
    expect(plan.days[0]).toMatchObject({ session: true, afterOther: false, easyOther: ['yoga'] });
  });

  it('refuses only when not one session fits, and says what fills the week', () => {
    const matches = (['mon', 'wed', 'fri', 'sun'] as const).map((day) => football(day));
    const plan = planWeek(wish({ fixed: matches }), rested, clock);
    expect(plan).toEqual({
      fits: false,
      because: [
        {
          code: 'fixed-points-fill-the-week',
          inputs: {
            fixed: ['football mon', 'football wed', 'football fri', 'football sun'],
            daysWithTime: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'],
            daysBetween: 2,
          },
          mark: 'choice',
        },
      ],
    });
  });

  it('fits beside all seven days busy only where nothing is on the clock', () => {
    const fixed = WEEKDAYS.map((day) => ({ id: 'lifting', day, recovery: 'heavy' }) as const);
    expect(planWeek(wish({ fixed }), rested, clock).fits).toBe(false);
    const light = planned(wish({ fixed, lifts: { kind: 'light', hoursBetween: 24, perWeek: 7 } }));
    expect(sessionDays(light)).toEqual([...WEEKDAYS]);
  });

  it('blames what fills the week where a session a week would still fit', () => {
    const fixed = WEEKDAYS.map((day) => ({ id: 'lifting', day, recovery: 'heavy' }) as const);
    expect(planWeek(wish({ fixed, lifts: { hoursBetween: 168 } }), rested, clock)).toMatchObject({
      because: [{ code: 'fixed-points-fill-the-week' }],
    });
  });

  it('refuses without a day that has time, and with a spacing longer than a week', () => {
    expect(planWeek(wish({ lifts: { days: [] } }), rested, clock)).toMatchObject({
      because: [{ code: 'no-day-with-time' }],
    });
    expect(planWeek(wish({ lifts: { hoursBetween: 168 } }), { ...rested, tired: true }, clock)).toMatchObject(
      { because: [{ code: 'spacing-over-a-week' }] },
    );
  });
});

describe('sport that may wait', () => {
  const match = (day: Weekday | null, id = 'football') =>
    ({ id, day, recovery: 'heavy', mayWait: true }) as const;
  const tired = { ...rested, tired: true };
  const twoLifts = { perWeek: 2, hoursBetween: 72 } as const;
  const codes = (plan: WeekPlan) => plan.gaveUp.map(({ code }) => code);

  it('carries no session and no run on its day', () => {
    const plan = planned(
      wish({ fixed: [match('tue'), match('sat')], runs: runs('steady', 'easy', 'easy', 'easy', 'easy') }),
    );
    for (const weekday of [1, 5])
      expect(plan.days[weekday]).toMatchObject({ other: ['football'], session: false, runs: [] });
    expect(plan.openDays).not.toContain('tue');
    expect(plan.clearOfSport).toEqual({ before: 1, after: 1 });
  });

  it.each([
    // what there is no room for goes in this order: lifts down to two, the hard run, lifts down to one, sport
    ['two lifts, one match', { lifts: { perWeek: 2 }, fixed: [match('sun')] }, []],
    [
      'and a hard run',
      { lifts: { perWeek: 2 }, fixed: [match('sun')], runs: runs('steady') },
      ['lift-after-run'],
    ],
    ['three lifts, one match', { fixed: [match('sun')] }, ['fewer-lifts']],
    ['and a hard run', { fixed: [match('sun')], runs: runs('steady') }, ['lift-after-run', 'fewer-lifts']],
    ['two matches', { fixed: [match('wed'), match('sun')] }, ['fewer-lifts']],
    [
      'and a fast run',
      { fixed: [match('wed'), match('sun')], runs: runs('fast') },
      ['fewer-lifts', 'hard-run'],
    ],
    ['three', { fixed: [match('mon'), match('wed'), match('fri')] }, ['fewer-lifts', 'left-out']],
  ] as const)('is given up last: %s', (_, change, given) => {
    expect(codes(planned(wish(change as Parameters<typeof wish>[0])))).toEqual(given);
  });

  it('twice a week leaves a tired person one session and one match', () => {
    const plan = planned(
      wish({ lifts: { ...twoLifts, clearOfOthers: 'clock' }, fixed: [match('tue'), match('sat')] }),
      tired,
    );
    expect(sessionDays(plan)).toHaveLength(1);
    expect(plan.gaveUp).toEqual([
      { code: 'fewer-lifts', inputs: { wished: 2, planned: 1 }, mark: 'choice' },
      {
        code: 'left-out',
        inputs: { id: 'football', keptTimes: 1, keptDays: ['tue'], leftTimes: 1, leftDays: ['sat'] },
        mark: 'choice',
      },
    ]);
  });

  it('keeps what is named first, and a named day before any other', () => {
    const kept = (...fixed: WeekWish['fixed'][number][]) =>
      planned(wish({ lifts: { perWeek: 1 }, fixed }), tired)
        .sport.filter(({ leftTimes }) => leftTimes === 0)
        .map(({ id }) => id);
    expect(kept(match(null, 'rowing'), match(null, 'football'), match(null, 'tennis'))).toEqual(['rowing']);
    expect(kept(match(null, 'rowing'), match('sat', 'football'))).toEqual(['football']);
    expect(kept(match('sat', 'football'), match('sun', 'rowing'))).toEqual(['football']);
  });

  it('is all left out where the only day with time is its own', () => {
    const plan = planned(wish({ lifts: { perWeek: 2, days: ['sun'] }, fixed: [match('sun')] }));
    expect(sessionDays(plan)).toEqual(['sun']);
    expect(plan.sport).toEqual([
      { id: 'football', mayWait: true, namedDays: [], chosenDays: [], leftDays: ['sun'], leftTimes: 1 },
    ]);
    expect(plan.clearOfSport).toBeNull();
  });

  it('is left out on the later of two named days nearer than the clock allows, which is nothing the plan may print', () => {
    const plan = planned(wish({ lifts: { perWeek: 1 }, fixed: [match('sat'), match('sun')] }));
    expect(plan.sport[0]).toMatchObject({ namedDays: ['sat'], leftDays: ['sun'] });
    expect(plan.tightFixed).toEqual([]);
  });

  it('makes room for what cannot wait, and a session shares no day with either while there is another', () => {
    const work = { id: 'lifting at work', day: 'mon', recovery: 'heavy' } as const;
    const plan = planned(wish({ fixed: [match('tue'), work] }));
    expect(plan.sport).toEqual([
      { id: 'football', mayWait: true, namedDays: [], chosenDays: [], leftDays: ['tue'], leftTimes: 1 },
      {
        id: 'lifting at work',
        mayWait: false,
        namedDays: ['mon'],
        chosenDays: [],
        leftDays: [],
        leftTimes: 0,
      },
    ]);
    expect(sessionDays(plan)).toEqual(['wed', 'sat']);
  });

  it('is nearer to a session by the clock than by the spacing of the stage where the wish says so', () => {
    const fixed = [match('sun')];
    const [byStage, byClock] = (['stage', 'clock'] as const).map((clearOfOthers) =>
      planned(wish({ lifts: { ...twoLifts, clearOfOthers }, fixed }), tired),
    );
    expect(byStage?.sport[0]?.leftTimes).toBe(1);
    expect(byClock?.sport[0]?.leftTimes).toBe(0);
    expect([byClock?.liftGapDays, byClock?.liftToOthersDays]).toEqual([5, 3]);
    expect(sessionDays(byClock!)).toEqual(['wed']);
  });

  it('asks for the clear days of the hardest of it, whatever runs there are', () => {
    const energy = { ...match('thu', 'hurdles'), recovery: 'energy-storage' } as const;
    const clear = (fixed: WeekWish['fixed'], ...kinds: RunKind[]) =>
      planned(wish({ lifts: { perWeek: 1 }, fixed, runs: runs(...kinds) })).clearOfSport;
    expect(clear([match('sun')], 'fast')).toEqual({ before: 1, after: 1 });
    expect(clear([match('sun'), energy])).toEqual({ before: 1, after: 2 });
    expect(clear([energy, match('sun')])).toEqual({ before: 1, after: 2 });
    expect(clear([], 'fast')).toBeNull();
  });

  it('is left out, and a hard run dropped, where a clinic lets it rest for more than a week', () => {
    const slow = { ...clock, energyStorageHours: { value: 168, mark: 'choice' } as const };
    const asked = wish({
      lifts: { perWeek: 1 },
      fixed: [{ ...match('sun'), recovery: 'energy-storage' }],
      runs: runs('fast'),
    });
    expect(planWeek(asked, tired, slow)).toMatchObject({
      sport: [{ leftDays: ['sun'] }],
      gaveUp: [{ code: 'hard-run' }, { code: 'left-out' }],
    });
  });

  it('may share its day with light holds, but not with a run', () => {
    const plan = planned(
      wish({
        lifts: { perWeek: 7, kind: 'light', hoursBetween: 24 },
        fixed: [match('sat')],
        runs: runs('easy', 'easy', 'easy', 'easy', 'easy', 'easy', 'easy'),
      }),
    );
    expect(plan.days[5]).toMatchObject({ session: true, afterOther: false, runs: [], other: ['football'] });
    expect(plan.clearOfSport).toBeNull();
  });
});

describe('the first session', () => {
  const first = (plan: WeekPlan, startDay: Weekday) =>
    Math.min(...sessionDays(plan).map((day) => (WEEKDAYS.indexOf(day) - WEEKDAYS.indexOf(startDay) + 7) % 7));

  it.each([
    // days with time, start: days waited, and the week that would be the evenest
    [['mon', 'thu'], 'mon', 0],
    [['mon', 'fri'], 'tue', 3],
    [['mon', 'tue', 'wed'], 'tue', 1],
    [['mon', 'wed', 'fri'], 'sat', 2],
    [[...WEEKDAYS], 'fri', 0],
    [['tue'], 'wed', 6],
  ] as const)('with time on %j, started on %s, comes after %i days', (days, startDay, waited) => {
    const plan = planned(wish({ lifts: { perWeek: 2, days }, startDay }));
    expect(first(plan, startDay)).toBe(waited);
  });

  it('comes on one of the first three days before a hard run is kept or a third session', () => {
    for (const startDay of WEEKDAYS) {
      const plan = planned(
        wish({ lifts: { perWeek: 2, hoursBetween: 72 }, runs: runs('fast', 'fast'), startDay }),
      );
      expect(first(plan, startDay)).toBeLessThanOrEqual(2);
    }
  });

  it('waits for the clock after sport on the day of the start', () => {
    const football = { id: 'football', day: 'mon', recovery: 'energy-storage', mayWait: true } as const;
    const plan = planned(wish({ lifts: { perWeek: 1 }, fixed: [football], startDay: 'mon' }));
    expect(sessionDays(plan)).toEqual(['thu']);
    expect(plan.sport[0]?.leftTimes).toBe(0);
  });

  const late = ({ gaveUp }: WeekPlan) =>
    gaveUp.flatMap(({ code, inputs }) => (code === 'late-first' ? [inputs] : []));

  it.each([
    ['no day of the first three has time', ['sat', 'sun'], [], 'tue', 5, 'no-day-with-time'],
    ['sport leaves none of them', [...WEEKDAYS], ['mon'], 'mon', 4, 'clock'],
  ] as const)('is named where it comes late: %s', (_, days, sport, startDay, onDay, because) => {
    const fixed = sport.map(
      (on) => ({ id: 'football', day: on, recovery: 'energy-storage', mayWait: true }) as const,
    );
    const plan = planned(wish({ lifts: { perWeek: 1, days }, fixed, startDay }));
    expect(late(plan)).toEqual([{ onDay, withinDays: 3, because }]);
  });

  it('is not named where it comes in time', () => {
    expect(late(planned(wish({ lifts: { perWeek: 2 }, startDay: 'tue' })))).toEqual([]);
  });
});

describe('the longest run', () => {
  const far = {
    runs: runs('longer', 'easy', 'easy'),
    longestRun: 'run-1',
    lifts: { kind: 'light' as const },
  };
  const fixed = (...days: Weekday[]) =>
    days.map((day, i) => ({ id: `sport-${i + 1}`, day, recovery: 'heavy' as const, mayWait: false }));
  const cut = (plan: WeekPlan) =>
    plan.days.flatMap(({ weekday, longestShare }) =>
      longestShare === null ? [] : [[weekday, longestShare]],
    );

  it.each([
    // other hard days, the day of the longest run
    [[], 'mon'],
    [['sun'], 'wed'],
    [['sun', 'tue'], 'fri'],
    [['sun', 'wed'], 'fri'],
  ] as const)('is not on the day before or after %j', (days, expected) => {
    const plan = planned(wish({ ...far, fixed: fixed(...days) }));
    expect(runDays(plan)['run-1']).toBe(expected);
    expect(cut(plan)).toEqual([]);
  });

  it('is cut where every day for it lies beside something hard, and that is said', () => {
    const plan = planned(wish({ ...far, fixed: fixed('mon', 'wed', 'fri') }));
    expect(cut(plan)).toEqual([[runDays(plan)['run-1'], 0.5]]);
    expect(plan.gaveUp).toContainEqual({
      code: 'shorter-longest',
      inputs: { day: runDays(plan)['run-1'], share: 0.5 },
      mark: 'choice',
    });
  });

  it('keeps clear of hard runs and sessions where it can', () => {
    const plan = planned(
      wish({
        runs: runs('longer', 'fast', 'easy', 'easy', 'easy', 'easy'),
        longestRun: 'run-1',
        lifts: { perWeek: 1, days: ['tue'] },
      }),
    );
    const hard = plan.days.filter(({ session, runs: ids }) => session || ids.includes('run-2'));
    expect(hard.map(({ weekday }) => weekday)).toEqual(['tue', 'fri']);
    expect(runDays(plan)['run-1']).toBe('sun');
  });
});

describe('run days in a row', () => {
  const rowOf = (plan: WeekPlan) => {
    const on = [...plan.days, ...plan.days].map(({ runs: ids }) => (ids.length > 0 ? 'x' : ' ')).join('');
    return Math.max(...on.split(' ').map(({ length }) => length));
  };
  const easy = (count: number, ownRuns: number) =>
    wish({
      runs: runs(...Array.from({ length: count }, () => 'easy' as const)),
      runRow: { most: 2, ownRuns },
      lifts: { kind: 'light' },
    });

  it.each([
    // runs wished, the person's own habit: runs placed, most in a row
    [4, 0, 4, 2],
    [5, 0, 4, 2],
    [5, 4, 4, 2],
    [5, 5, 5, 3],
    [6, 6, 6, 6],
  ])('%i runs, %i of them a habit: %i stand, %i in a row', (count, own, placed, row) => {
    const plan = planned(easy(count, own));
    expect([Object.keys(runDays(plan)).length, rowOf(plan)]).toEqual([placed, row]);
    expect(plan.gaveUp.some(({ code }) => code === 'run-row')).toBe(row > 2);
  });
});
