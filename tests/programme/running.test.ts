/** What the programme makes of running: the decision, habits, dropped runs, races. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { caseMade } from './outcome.ts';
import { ALL_CLEAR, day, person, RUNNER } from './person.ts';
import { sectionLines } from './leafletText.ts';
import { programmeOf } from './shipped.ts';

const runner = (different: Partial<Consult['running']> = {}, more: Partial<Consult> = {}) =>
  programmeOf(person({ running: { ...RUNNER, ...different }, ...more }));
const text = (programme: ReturnType<typeof runner>) => sectionLines(programme.running).join('\n');

describe('the decision', () => {
  it('light holds at most leave no running, whatever is recorded', () => {
    const programme = runner(
      {},
      {
        screen: { ...ALL_CLEAR, recentInjection: 'yes' },
        clearances: [{ flag: 'recentInjection', by: 'doctor', on: person().seenOn, decision: 'light holds' }],
      },
    );
    expect(text(programme)).toContain('No running for now');
    expect(sectionLines(programme.flare).join(' ')).not.toContain('Walk instead of running');
  });

  it("the clinician's own entry goes over the rules, up to easy running, and is marked", () => {
    const hurting = { usualMorningPain: 5 };
    expect(text(runner({}, hurting))).toContain('Walk and run in turn');
    const overrides = [{ path: 'running.decision', value: 'keep', reason: 'diary' }];
    const own = runner({}, { ...hurting, overrides });
    expect(text(own)).toContain('Easy running may go on');
    expect(own.record.remarks.join(' ')).toContain("beyond the house rules by the clinician's own entry");
  });
});

describe('the longest run', () => {
  it.each([
    [1, 'let no run be longer than the table says.'],
    [2, 'it grows by a tenth at most'],
    [3, 'let no run be longer for now.'],
  ] as const)('is measured by the table where longer runs wait: stage %i', (stage, words) => {
    const programme = runner({}, { stage });
    const longest = Math.max(...programme.plan.flatMap(({ runs }) => runs.map(({ km }) => km ?? 0)));
    expect(longest < 9).toBe(stage === 1);
    expect(text(programme).toLowerCase()).toContain(words);
  });
});

describe('running as one likes', () => {
  it.each([
    ['nothing-hurts', 'at most 17.6 km, and only in the week from 1 December.'],
    ['race-on-the-review-day', 'at most 22 km, and only in the week from 1 December.'],
    ['tired-club-runner', 'Apart from the race, longer runs come after the review.'],
  ])('grows the longest run only in weeks that are named, none near a race: %s', (name, words) => {
    const made = caseMade(name);
    if ('printed' in made) throw new Error(made.printed);
    expect(text(made.programme)).toContain(words);
  });
});

describe('a longest run that stands beside hard work', () => {
  it('is not cut below the other runs of its week', () => {
    const made = caseMade('long-run-beside-work');
    if ('printed' in made) throw new Error(made.printed);
    const { plan, record } = made.programme;
    expect(record.week.gaveUp.join(' ')).toContain('or to the other runs of the week');
    const firstWeek = plan.filter(({ week }) => week === 1).flatMap(({ runs }) => runs.map(({ km }) => km));
    // 14 km cut to a half would be 7 km, beside two easy runs of 8.6 km.
    expect(firstWeek).toEqual([8.6, 8.6, 8.6]);
  });
});

describe('a hard run', () => {
  it.each([
    [3, 'On a steady run only a part is harder. Run the rest of the way easy.'],
    [4, 'On a steady, hilly or fast run only a part is harder.'],
  ] as const)('is so in part, by the kinds that are planned: stage %i', (stage, words) => {
    expect(text(runner({ hills: true, speed: true }, { stage }))).toContain(words);
  });

  it('is not spoken of where there is none', () => {
    expect(text(runner({}, { stage: 2 }))).not.toContain('only a part');
  });
});

describe('habits', () => {
  const stage4 = { stage: 4 } as const;
  const kinds = (programme: ReturnType<typeof runner>) => JSON.stringify(programme.week);

  it('nobody is sent to run fast or hills who never did', () => {
    const programme = runner({}, stage4);
    expect(kinds(programme)).not.toMatch(/fast run|hills or strides/i);
    expect(programme.record.remarks.join(' ')).toContain('no fast run is planned');
  });

  it('what there was comes back', () => {
    expect(kinds(runner({ hills: true, speed: true }, stage4))).toMatch(/fast run/i);
    expect(kinds(runner({ hills: true }, stage4))).toMatch(/hills or strides/i);
  });
});

describe('runs a week that nobody counted', () => {
  const uncounted: Consult['running'] = { ...RUNNER };
  delete uncounted.runsPerWeek;
  const far = { weeklyKm: 70, longestIn30DaysKm: 28 };
  const strong = (running: Consult['running']) =>
    programmeOf(
      person({
        running,
        protocol: 'runner-strength',
        usualMorningPain: 0,
        tests: [{ test: 'split-squat', pain: 0 }],
      }),
    );
  const kms = ({ week }: ReturnType<typeof strong>) =>
    [...JSON.stringify(week).matchAll(/([\d.]+) km/g)].map(([, km]) => Number(km)).sort((a, b) => b - a);

  it('are enough to keep the others to half of the longest, and the record says that it is an estimate', () => {
    const programme = strong({ ...uncounted, ...far });
    expect(kms(programme)).toEqual([28, 14, 14, 14]);
    expect(programme.record.remarks).toContain(
      'Running: the number of runs a week is not recorded; it is estimated at 4, with which the others are each at most 0.5 times the longest.',
    );
  });

  it('are no more than the week has days for, and then share its kilometres', () => {
    const programme = programmeOf(
      person({
        stage: 3,
        usualMorningPain: 0,
        tests: [{ test: 'hip-hinge', pain: 1 }],
        running: { ...uncounted, weeklyKm: 40, longestIn30DaysKm: 12 },
      }),
    );
    // Six would keep the others to 6 km; with no more than two run days in a row there are four.
    expect(programme.record.remarks.join()).toContain('it is estimated at 4, though the others');
    expect(kms(programme)).toEqual([12, 9.3, 9.3, 9.3]);
    expect(programme.record.week.gaveUp.join()).not.toContain('easy runs instead');
  });

  it('stay as recorded where somebody did', () => {
    const programme = strong({ ...RUNNER, ...far });
    expect(kms(programme)).toEqual([28, 21, 21]);
    expect(programme.record.remarks.join()).not.toContain('runs a week is not recorded');
  });
});

describe('a week without room for a run', () => {
  it('counts it no more, neither in runs nor in kilometres', () => {
    const programme = runner(
      { hills: true, speed: true, runsPerWeek: 5, weeklyKm: 45, longestIn30DaysKm: 15, trainingYears: 9 },
      {
        protocol: 'runner-strength',
        usualMorningPain: 0,
        tests: [{ test: 'split-squat', pain: 0 }],
        recovery: { sleep: 'poor', stress: 'high', tired: true },
      },
    );
    const dropped = programme.record.week.gaveUp.filter((gave) => gave.includes('was dropped'));
    expect(dropped.length).toBeGreaterThan(0);
    const planned = programme.calendar.filter(({ kind, on }) => kind === 'run' && on < day('2026-12-01'));
    const row = sectionLines(programme.running).find((line) => line.startsWith('24 November'));
    expect(row).toContain(`| ${planned.length} runs |`);
  });
});

describe('walking into running in the week before a race', () => {
  it('is said in the order of the days, not as a choice', () => {
    const made = caseMade('race-decided-on');
    if ('printed' in made) throw new Error(made.printed);
    expect(text(made.programme)).toContain('1 December to 7 December | 5 min | 1 min | 5, then 2 times');
  });
});

describe('a race', () => {
  it('is followed by easy days, and noted when it comes too soon', () => {
    const programme = runner({ races: [{ on: day('2026-12-06'), km: 13 }] });
    expect(text(programme)).toContain(
      'After it: no run before 9 December, and easy days until 16 December, with nothing heavy and nothing fast in them.',
    );
    expect(text(programme)).toContain(
      'This race comes before your tendon is ready for it; talk with us before you decide. It would fit from ',
    );
    expect(programme.record.remarks.join('\n')).toMatch(
      /Race on 2026-12-06: [\d.]+ km, before fast running is back/,
    );
    expect(text(programme)).not.toContain('before ready');
  });
});
