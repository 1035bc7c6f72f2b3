/** The dated plan of whole people: races, new stresses, what was done before, rungs by weeks, growth in turns. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { addDays, daysBetween } from '../../src/units/date.ts';
import { sectionLines } from './leafletText.ts';
import { day, person, RUNNER } from './person.ts';
import { programmeOf, workshop } from './shipped.ts';

const text = ({ running }: Programme) => sectionLines(running).join('\n');
const on = ({ plan }: Programme, date: string) => {
  const entry = plan.find((one) => one.on === date);
  if (entry === undefined) throw new Error(`${date} is no day of the plan`);
  return entry;
};
const race = (date: string, km = 10, decision?: string) => ({
  on: day(date),
  km,
  ...(decision === undefined ? {} : { decision }),
});
const runner = (races: ReturnType<typeof race>[], more: Partial<Consult> = {}) =>
  programmeOf(person({ running: { ...RUNNER, races }, ...more }));

const STRONG: Partial<Consult> = {
  protocol: 'runner-strength',
  usualMorningPain: 0,
  tests: [{ test: 'split-squat', pain: 0 }],
};

describe('walking into running beside a race', () => {
  const days = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
  it.each(days.map((_, index) => addDays(day('2026-12-04'), index)))(
    'leaves a day between, the race on %s counted',
    (date) => {
      const running: Consult['running'] = {
        ...RUNNER,
        decision: 'walk-run',
        races: [race(date, 5, 'R. Sample, 23 November')],
      };
      const programme = programmeOf(person({ running }));
      const out = programme.plan.filter(({ runs, races }) => runs.length + races.length > 0);
      const gaps = out.slice(1).map((entry, index) => daysBetween(day(out[index]?.on ?? ''), day(entry.on)));
      expect(out.some(({ races }) => races.length > 0)).toBe(true);
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(2);
    },
  );

  it('names the outing that it takes', () => {
    const running: Consult['running'] = {
      ...RUNNER,
      decision: 'walk-run',
      races: [race('2026-12-06', 5, 'R. Sample, 23 November')],
    };
    const { plan, record } = programmeOf(person({ running }));
    expect(plan.find(({ on }) => on === '2026-12-05')?.runs).toEqual([]);
    expect(record.week.gaveUp).toContain(
      'No walk and run on 5 December, so that a day lies between: before the race of 6 December.',
    );
  });
});

describe('a race in the period', () => {
  const programme = runner([race('2026-12-06')]);

  it('is run on its date, and nothing else is', () => {
    expect(on(programme, '2026-12-06')).toMatchObject({
      races: [{ km: 10 }],
      runs: [],
      sessions: [],
      between: [],
    });
  });

  it('takes the sessions of the four days before, and light holds take their place', () => {
    for (const date of ['2026-12-02', '2026-12-04']) {
      expect(on(programme, date).sessions).toEqual([]);
      expect(on(programme, date).between.length).toBeGreaterThan(0);
    }
    expect(programme.record.week.gaveUp).toContain(
      'The holds in place of the session on 2 December and 4 December: before the race of 6 December.',
    );
  });

  it('is followed by days without a run: a fifth of the easy days, and the record says so', () => {
    const long = runner([race('2026-12-06', 42.2, 'R. Sample: entered long ago')], {
      reviewOn: day('2026-12-29'),
    });
    const runs = (date: string) => on(long, date).runs.length;
    expect(['2026-12-07', '2026-12-08', '2026-12-09', '2026-12-10'].map(runs)).toEqual([0, 0, 0, 0]);
    expect(
      long.plan.filter(({ on: date, runs: some }) => date > '2026-12-10' && some.length > 0),
    ).not.toEqual([]);
    expect(long.record.week.gaveUp.join(' ')).toMatch(
      /No run on [\w ]+: in the easy days after the race of 6 December/,
    );
    expect(text(long)).toContain(
      'After it: no run before 11 December, and easy days until 27 December, with nothing heavy and nothing fast in them.',
    );
  });

  it('halves the runs of the seven days before', () => {
    expect(on(programme, '2026-12-01').runs.map(({ km }) => km)).toEqual([4.5]);
    expect(on(programme, '2026-11-28').runs.map(({ km }) => km)).toEqual([7.5]);
  });

  it('makes no run of the easy days longer than the shorter ones of a usual week', () => {
    expect(on(programme, '2026-11-24').runs).toMatchObject([{ kind: 'longer', km: 9 }]);
    expect(on(programme, '2026-12-08').runs).toMatchObject([{ kind: 'easy', km: 7.5 }]);
  });

  it('turns the hard runs near it into easy ones, and names them', () => {
    const fast = runner([race('2026-12-06')], {
      ...STRONG,
      running: { ...RUNNER, hills: true, speed: true, races: [race('2026-12-06')] },
    });
    const hard = fast.plan.filter(({ runs }) =>
      runs.some(({ kind }) => ['hills-or-strides', 'fast'].includes(kind)),
    );
    expect(hard.map((one) => one.on)).toEqual(['2026-11-26', '2026-11-30', '2026-12-14']);
    expect(fast.record.week.gaveUp.join(' ')).toMatch(
      /An easy run instead of the hills or strides run on 3 December: before the race of 6 December/,
    );
  });

  it('is followed by seven easy days, in which light holds take the place of the sessions', () => {
    const easy = programme.plan.filter(({ easyAfterRace }) => easyAfterRace);
    expect(easy.flatMap(({ sessions }) => sessions)).toEqual([]);
    expect(on(programme, '2026-12-09').between.length).toBeGreaterThan(0);
    expect(on(programme, '2026-12-14').sessions).toHaveLength(1);
    expect(easy.map((one) => one.on)).toEqual([
      '2026-12-07',
      '2026-12-08',
      '2026-12-09',
      '2026-12-10',
      '2026-12-11',
      '2026-12-12',
      '2026-12-13',
    ]);
  });
});

describe('a race that comes too early', () => {
  it('is told to the patient with the day from which it fits, the earliest end of the stages', () => {
    const programme = runner([race('2026-12-06')], { goals: [{ what: 'the race', on: day('2026-12-06') }] });
    expect(text(programme)).toContain(
      'This race comes before your tendon is ready for it; talk with us before you decide. It would fit from 16 February 2027.',
    );
    const short = programme.record.remarks.join(' ').match(/comes (\d+) days before the earliest end/)?.[1];
    expect(short).toBe('72');
  });

  it.each([
    ['irritable', { irritability: 'high' as const }],
    ['usual pain of 4', { usualMorningPain: 4 }],
  ])('is not in the plan of someone %s, unless it was decided', (_, more) => {
    expect(runner([race('2026-12-06')], more).plan.flatMap(({ races }) => races)).toEqual([]);
    expect(text(runner([race('2026-12-06')], more))).toContain('It is not in this plan.');
    const decided = runner([race('2026-12-06', 10, 'R. Sample: run as a jog')], more);
    expect(on(decided, '2026-12-06').races).toEqual([{ km: 10 }]);
    expect(text(decided)).toContain('It was decided that you run it');
    expect(text(decided)).not.toContain('before you decide');
    expect(decided.record.remarks.join(' ')).toContain('recorded decision: R. Sample: run as a jog');
  });

  it("is not in the plan of someone irritable who runs by the clinician's own entry", () => {
    const own = runner([race('2026-12-06')], {
      irritability: 'high',
      overrides: [{ path: 'running.decision', value: 'keep', reason: 'diary' }],
    });
    expect(own.plan.flatMap(({ runs }) => runs.map(({ kind }) => kind))).toContain('easy');
    expect(own.plan.flatMap(({ races }) => races)).toEqual([]);
  });

  it('is none at the end of treatment: a race fits then', () => {
    const done = runner([race('2026-12-06')], {
      stage: 'keepGoing',
      usualMorningPain: 0,
      tests: [{ test: 'hip-hinge', pain: 0 }],
      running: { ...RUNNER, hills: true, speed: true, longestIn30DaysKm: 12, races: [race('2026-12-06')] },
    });
    expect(text(done)).toContain('Race on Sunday 6 December, 10 km. Your plan makes room for it.');
  });

  it('is not in the plan of somebody on walk-run by a recorded choice', () => {
    const running = { ...RUNNER, decision: 'walk-run' as const, races: [race('2026-12-06')] };
    expect(programmeOf(person({ running })).plan.flatMap(({ races }) => races)).toEqual([]);
  });

  it('is no decision over the screen', () => {
    const programme = runner([race('2026-12-06', 10, 'R. Sample: yes')], {
      screen: { ...person().screen, hopPain: 'yes' },
    });
    expect(programme.plan.flatMap(({ races }) => races)).toEqual([]);
    expect(text(programme)).toContain(
      'talk with us before you decide. It would fit from 16 February 2027. It is not in this plan.',
    );
  });
});

describe('a race on the review day', () => {
  const programme = runner([race('2026-12-15', 21.1, 'R. Sample: the distance is known')], STRONG);

  it('is the last day of the plan, and holds nothing but the race', () => {
    expect(programme.plan.at(-1)).toMatchObject({
      on: '2026-12-15',
      races: [{ km: 21.1 }],
      sessions: [],
      runs: [],
    });
    expect(programme.log.days.at(-1)?.planned).toBe('Race, 21.1 km');
    expect(text(programme)).toContain('15 December | the race | 21.1 km, the race | 21.1 km');
  });

  it('on any other day after the review is none of this plan, though its days before are', () => {
    const later = runner([race('2026-12-17', 21.1, 'R. Sample: the distance is known')], STRONG);
    expect(later.plan.at(-1)?.on).toBe('2026-12-14');
    expect(on(later, '2026-12-14').sessions).toEqual([]);
    expect(on(later, '2026-12-07').sessions).toHaveLength(1);
  });

  it('before the start leaves its easy days in the plan', () => {
    const before = runner([race('2026-11-22', 10)], STRONG);
    expect(before.plan.filter(({ easyAfterRace }) => easyAfterRace).map((one) => one.on)).toEqual(
      ['24', '25', '26', '27', '28', '29'].map((date) => `2026-11-${date}`),
    );
  });
});

const SPORT: Partial<Consult> = {
  stage: 4,
  usualMorningPain: 1,
  irritability: 'low',
  tests: [{ test: 'single-leg-hinge', pain: 1 }],
  reviewOn: day('2026-12-29'),
  running: { ...RUNNER, hills: true, speed: true },
};

describe('the first weeks of stage 4', () => {
  const programme = programmeOf(person(SPORT));
  const drills = ({ plan }: Programme, card: string) =>
    plan.find(({ sessions }) => sessions.some(({ exercises }) => exercises.some((one) => one.card === card)))
      ?.on;

  it('open one new stress a week: hops, strides, hills, fast', () => {
    expect(programme.growth.map(({ begins }) => begins)).toEqual([
      'springs',
      'strides',
      'hills-or-strides',
      'fast',
      null,
    ]);
    expect(drills(programme, 'pogo-hops')).toBe('2026-11-26');
    expect(drills(programme, 'strides')).toBe('2026-12-03');
    expect(on(programme, '2026-11-30').runs.map(({ kind }) => kind)).toEqual(['steady']);
    expect(on(programme, '2026-12-14').runs.map(({ kind }) => kind)).toEqual(['hills-or-strides']);
    expect(on(programme, '2026-12-21').runs.map(({ kind }) => kind)).toEqual(['fast']);
  });

  it('do not let strides begin twice', () => {
    expect(text(programme)).toContain('From Monday 14 December: hills, or strides within a run as well, if');
    expect(text(programme)).not.toContain('From Monday 14 December: hills or strides');
  });

  it('say so wherever the exercise stands', () => {
    const strides = programme.exercises.find(({ card }) => card === 'strides');
    expect(strides?.between).toEqual({ label: 'Begins', text: 'Thursday 3 December' });
    expect(strides?.cells.find(({ cell }) => cell === 'days')?.text).toContain(', from Thursday 3 December');
    expect(programme.steps[0]?.prescriptions.find(({ card }) => card === 'strides')?.cells).toEqual(
      strides?.cells,
    );
    expect(programme.log.days.find((one) => one.on === '2026-11-26')?.planned).toContain('without Strides');
    expect(programme.log.days.find((one) => one.on === '2026-12-03')?.planned).toContain('new: Strides');
    expect(sectionLines(programme.week).join('\n')).toContain('Exercises without Strides on the flat');
    expect(sectionLines(programme.easier).join('\n')).toContain(
      'Strides on the flat, from Thursday 3 December',
    );
  });

  it('leave out what would begin only after the review', () => {
    const short = programmeOf(person({ ...SPORT, reviewOn: day('2026-12-01') }));
    expect(short.exercises.map(({ card }) => card)).toContain('pogo-hops');
    expect(short.exercises.map(({ card }) => card)).not.toContain('strides');
    expect(short.record.passedOver).toContainEqual(
      expect.objectContaining({ card: 'strides', limit: 'newStress' }),
    );
  });

  it('do not begin again what the revision before has done', () => {
    const again = assembleProgramme(
      person({
        ...SPORT,
        revision: 2,
        startOn: day('2026-12-29'),
        seenOn: day('2026-12-29'),
        reviewOn: day('2027-01-19'),
      }),
      programme,
      workshop,
    );
    if ('refusals' in again) throw new Error(JSON.stringify(again.refusals));
    expect(again.programme.growth.map(({ begins }) => begins)).toEqual([null, null, null]);
    const [first] = again.programme.plan.filter(({ sessions }) => sessions.length > 0);
    expect(first?.sessions[0]?.exercises.map(({ card }) => card)).toEqual(
      expect.arrayContaining(['pogo-hops', 'strides']),
    );
  });

  it('have no session in the easy days after a race, and name it', () => {
    const [before] = [programme];
    const raced = assembleProgramme(
      person({
        ...SPORT,
        startOn: day('2026-12-29'),
        seenOn: day('2026-12-29'),
        reviewOn: day('2027-01-19'),
        running: { ...SPORT.running, races: [race('2027-01-03')] } as Consult['running'],
      }),
      before,
      workshop,
    );
    if ('refusals' in raced) throw new Error(JSON.stringify(raced.refusals));
    const easy = raced.programme.plan.filter(({ easyAfterRace }) => easyAfterRace);
    expect(easy.map(({ on: date }) => date)).toEqual(
      ['04', '05', '06', '07', '08', '09', '10'].map((date) => `2027-01-${date}`),
    );
    expect(easy.flatMap(({ sessions }) => sessions)).toEqual([]);
    expect(raced.programme.record.week.gaveUp.join(' ')).toMatch(/No session on .* in the easy days after/);
    expect(text(raced.programme)).toContain(
      'easy days until 10 January, with nothing heavy and nothing fast in them.',
    );
  });

  it('are nothing new to a runner whom nothing hurts', () => {
    const healthy = programmeOf(person({ ...STRONG, running: { ...RUNNER, hills: true, speed: true } }));
    expect(healthy.growth.map(({ begins }) => begins)).toEqual([null, null, null]);
    expect(
      healthy.plan.filter(({ week }) => week === 1).flatMap(({ runs }) => runs.map(({ kind }) => kind)),
    ).toContain('fast');
  });
});

describe('a protocol that goes by weeks', () => {
  const outerHip = (stage: 1 | 2 | 3, reviewOn: string) =>
    programmeOf(
      person({
        protocol: 'gluteal-tendon',
        stage,
        reviewOn: day(reviewOn),
        tests: [{ test: 'single-leg-stand', pain: 4 }],
      }),
    );

  it('prints the following rungs with their dates, and the log follows', () => {
    const programme = outerHip(1, '2026-12-22');
    expect(programme.steps.map(({ heading }) => heading)).toEqual([
      'Step 1: now',
      'Step 2: from Tuesday 1 December',
      'Step 3: from Tuesday 8 December',
      'Step 4: from Tuesday 15 December',
    ]);
    const steps = (date: string) => on(programme, date).step;
    expect([steps('2026-11-30'), steps('2026-12-01'), steps('2026-12-08'), steps('2026-12-21')]).toEqual([
      1, 2, 3, 4,
    ]);
    expect(programme.log.days.find((one) => one.on === '2026-12-02')?.planned).toBe('Exercises of step 2');
  });

  it('shows every exercise of a later rung with its figure and the day it begins', () => {
    const programme = outerHip(1, '2026-12-22');
    const named = programme.steps.flatMap(({ prescriptions }) => prescriptions.map(({ card }) => card));
    expect(new Set(programme.exercises.map(({ card }) => card))).toEqual(new Set(named));
    expect(programme.exercises.find(({ card }) => card === 'band-side-slide')?.between).toEqual({
      label: 'Begins',
      text: 'Tuesday 8 December',
    });
  });

  it('tells each cell of each step apart', () => {
    const keys = outerHip(1, '2026-12-22').steps.flatMap(({ prescriptions }) =>
      prescriptions.flatMap(({ cells }) =>
        cells.map(({ step, slot, card, cell }) => `${step} ${slot} ${card} ${cell}`),
      ),
    );
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('prints only as many as the plan reaches', () => {
    expect(outerHip(1, '2026-12-01').steps.map(({ step }) => step)).toEqual([1]);
    expect(outerHip(1, '2026-12-02').steps.map(({ step }) => step)).toEqual([1, 2]);
    expect(outerHip(3, '2026-12-01').plan.every(({ step }) => step === 1)).toBe(true);
    expect(outerHip(3, '2026-12-22').plan.at(-1)?.step).toBe(4);
  });
});

describe('one thing grows a week', () => {
  it('walking into running, sitting and steps each in a week of their own', () => {
    const programme = programmeOf(
      person({
        usualMorningPain: 4,
        running: { ...RUNNER, overStriding: 'yes', stepsPerMin: 158 },
        reviewOn: day('2026-12-29'),
        sitting: { toleranceMinutes: 30, goalMinutes: 60 },
      }),
    );
    expect(programme.growth.map(({ grows }) => grows)).toEqual([
      'exercises',
      'exercises',
      'stepRate',
      'running',
      'sitting',
    ]);
    const rungs = programme.plan.flatMap(({ week, runs }) =>
      runs.map(({ walkRun }) => [week, walkRun?.runMinutes]),
    );
    expect([...new Set(rungs.map(String))]).toEqual(['1,1', '2,1', '3,1', '4,2', '5,2']);
    expect(sectionLines(programme.sitting).join('\n')).toContain(
      'From Tuesday 22 December, if your mornings are settled: up to 25 minutes upright. On a hard seat, or leaning forward: up to 12 minutes.',
    );
    expect(text(programme)).toContain(
      'From Tuesday 8 December, if your mornings are settled: take slightly quicker steps',
    );
    expect(programme.steps[1]?.goOnWhen.at(-1)).toBe(
      'the week from Tuesday 1 December has come. If you are ready only later, wait for the review',
    );
  });

  it('what has grown is held until its next turn', () => {
    const programme = programmeOf(
      person({
        stage: 2,
        usualMorningPain: 1,
        running: RUNNER,
        reviewOn: day('2027-01-05'),
        sitting: { toleranceMinutes: 30, goalMinutes: 60 },
      }),
    );
    const longest = programme.growth.map(({ week }) =>
      Math.max(
        ...programme.plan
          .filter((one) => one.week === week)
          .flatMap(({ runs }) => runs.map(({ km }) => km ?? 0)),
      ),
    );
    expect(longest).toEqual([9, 9, 9.9, 9.9, 9.9, 10.8]);
  });
});
