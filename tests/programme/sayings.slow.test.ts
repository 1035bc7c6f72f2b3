/** What the leaflet says must agree with itself: no two numbers for one thing, no words of another tendon, nothing that is not so. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { Programme } from '../../src/programme/programme.ts';
import type { Section } from '../../src/messages/shapes.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';
import { ownLines } from './leafletText.ts';
import { ALL_CLEAR, day, FULL_KIT, NO_KIT, person, RUNNER, testedSet } from './person.ts';
import { programmeOf, refusalsOf, workshop } from './shipped.ts';

const made = (different: Partial<Consult> = {}) => programmeOf(person(different));
const said = ({ parts }: Section) => JSON.stringify(parts);
const exercise = ({ exercises }: Programme, card: string) => exercises.find((one) => one.card === card);

const GLUTEAL: Partial<Consult> = {
  protocol: 'gluteal-tendon',
  tests: [{ test: 'week-one-exercises', pain: 4 }],
};
const ENDED: Partial<Consult> = {
  stage: 'keepGoing',
  usualMorningPain: 0,
  tests: [{ test: 'hip-hinge', pain: 0 }],
};

describe('pain during exercise', () => {
  it.each([
    [2, 'pain up to 3 out of 10', 'At 4 or 5: finish the set'],
    [3, 'pain up to 4 out of 10', 'At 5: finish the set'],
  ])('usual pain %i: %s, then one thing at each number', (usualMorningPain, upTo, then) => {
    const text = said(
      made({ usualMorningPain, stage: 1, tests: [{ test: 'prone-curl-hold', pain: 3 }] }).painRule,
    );
    expect(text).toContain(upTo);
    expect(text).toContain(then);
    expect(text).not.toContain('do less');
  });
});

describe('pain during exercise where usual is high, or irritability', () => {
  it.each([
    [
      { usualMorningPain: 4 },
      'no more pain than is usual for you, 4 out of 10. It has settled by the evening',
    ],
    [
      { usualMorningPain: 6 },
      'no more pain than is usual for you, 6 out of 10. It has settled by the evening',
    ],
    [{ usualMorningPain: 2, irritability: 'high' }, 'than is usual for you, 2 out of 10'],
    [{ usualMorningPain: 0, irritability: 'high' }, 'no pain, as is usual for you'],
  ] as const)('%j', (different, words) => {
    const { painRule, morningCheck, record } = made({ ...different, stage: 1 });
    expect(said(painRule)).toContain(words);
    expect(said(painRule)).not.toMatch(/up to|At 5/);
    expect(said(morningCheck)).toContain('Use this table from day one');
    expect(said(morningCheck)).not.toContain('just write the score down');
    expect(record.remarks.join(' ')).toContain('no more than usual, and settled by the evening, for');
    expect(record.note.join(' ')).toContain('no more than usual');
  });

  it('of 7 or more needs the decision of the clinician, which the record names', () => {
    const high = person({ usualMorningPain: 7, stage: 1 });
    expect(refusalsOf(high)).toEqual(['does-not-fit usualMorningPain']);
    const decided = { path: 'pain.decision', value: 'goOn', reason: 'long known, seen by a doctor' };
    const { record, painRule } = programmeOf({ ...high, overrides: [decided] });
    expect(said(painRule)).toContain('7 out of 10');
    expect(record.remarks.join(' ')).toContain('own decision (long known, seen by a doctor)');
    expect(record.remarks.join(' ')).not.toContain('is not used');
  });
});

describe('the morning check', () => {
  it('says how it is done where its card is not in the plan', () => {
    expect(said(made().morningCheck)).toContain(
      'Small bridge from pillows. On your back, a firm pillow or two',
    );
  });

  it('says it in the words of the card that stands in for it', () => {
    const standing = made({ cannotDo: ['lie-supine', 'lie-prone', 'get-to-the-floor'], kit: NO_KIT });
    expect(said(standing.morningCheck)).toMatch(/a slow breath each: [^.]+\. [A-Z][^.]+\./);
  });

  it('says it once where the card is in the plan', () => {
    const sore = made({ protocol: 'gluteal-tendon', tests: [{ test: 'week-one-exercises', pain: 4 }] });
    expect(said(sore.morningCheck)).toContain('Standing side push into the wall. Score the pain');
  });
});

describe('when to get in touch about the night', () => {
  it('is said as it is with each tendon: lying on the sore side hurts with the gluteal one', () => {
    const { getHelp } = made(GLUTEAL);
    expect(said(getHelp)).toContain('wakes you in every position');
    expect(said(getHelp)).toContain('when you lie on the sore side is common with this tendon');
    expect(said(getHelp)).not.toContain('Pain wakes you at night, or');
    expect(said(made().getHelp)).toContain('Pain wakes you at night, or you have a fever.');
    expect(said(made().getHelp)).not.toContain('sore side');
  });
});

describe('a flare', () => {
  it('asks less than the present holds: rest first, then shorter, fewer, once a day', () => {
    const { flare, exercises } = made({ stage: 1, usualMorningPain: 3 });
    const [first] = exercises;
    expect(first?.dose).toBe('4 × 15 s');
    expect(said(flare)).toContain('First day: rest');
    expect(said(flare)).toContain(`once a day: ${first?.title}, 2 holds of 5 seconds`);
  });

  it('keeps two holds at most, and none of their weight', () => {
    const many = made({ stage: 1, usualMorningPain: 3 });
    const held = many.exercises.filter(({ dose }) => dose.endsWith(' s'));
    expect(held.length).toBeGreaterThan(2);
    expect(held.filter(({ title }) => said(many.flare).includes(title))).toHaveLength(2);
    const weighted = made({
      stage: 1,
      cannotDo: ['lie-supine'],
      testedSets: [testedSet('prone-curl-hold', 4, 1, 0)],
    });
    expect(
      exercise(weighted, 'prone-curl-hold')?.cells.find(({ cell }) => cell === 'loadKg')?.value,
    ).toBeGreaterThan(0);
    expect(said(weighted.flare)).toContain('seconds, no weight');
  });

  it('of someone without holds is a short hold from the beginning', () => {
    expect(said(made({ stage: 3 }).flare)).toMatch(
      /only this, gently and once a day: [^;]+, 2 holds of 5 seconds\./,
    );
  });

  it('leaves the exercises out where nothing can be held', () => {
    const none = made({
      protocol: 'runner-strength',
      usualMorningPain: 0,
      tests: [{ test: 'single-leg-hinge', pain: 0 }],
    });
    expect(said(none.flare)).toContain(
      'For 3 to 4 days leave the exercises out, and keep gently on the move.',
    );
  });
});

describe('light holds because of the screen', () => {
  it('are told to the patient, and whom to ask', () => {
    const { opening } = made({
      screen: { ...ALL_CLEAR, fluoroquinolone: 'yes' },
      clearances: [
        { flag: 'fluoroquinolone', by: 'doctor', on: person().seenOn, decision: 'light holds may go on' },
      ],
    });
    expect(opening.join(' ')).toMatch(/only light holds for now\. Talk to the doctor who prescribed it/);
    expect(made().opening.join(' ')).not.toContain('prescribed');
  });
});

describe('days off once treatment has ended', () => {
  it('are told the same under missed days and under what comes next', () => {
    const { missedDays, whatComesNext } = made(ENDED);
    expect(said(missedDays)).toContain('start with the easier numbers, and stay with them for two weeks');
    expect(said(whatComesNext)).toContain('stay with them for two weeks');
    expect(said(missedDays)).not.toContain('from its first step');
  });
});

describe('advice once treatment has ended', () => {
  it('no longer says to bend less, or to run easy first', () => {
    const ids = made({ ...ENDED, running: RUNNER }).advice.map(({ id }) => id);
    expect(ids).toContain('keep-it-up');
    expect(ids.filter((id) => ['why-it-hurts', 'running-easy-first'].includes(id))).toEqual([]);
  });
});

describe('speed comes back', () => {
  it('to those who run, and to nobody else', () => {
    expect(said(made({ running: RUNNER }).whatComesNext)).toContain('and so does speed');
    expect(said(made().whatComesNext)).not.toContain('speed');
  });
});

describe('a step that takes something down', () => {
  it('says so beside what is new', () => {
    const { steps } = made({ stage: 1, tests: [{ test: 'prone-curl-hold', pain: 4 }], usualMorningPain: 3 });
    const side = 'Standing side push into the wall';
    const now = steps[0]?.prescriptions
      .find(({ title }) => title === side)
      ?.cells.find(({ cell }) => cell === 'sets');
    const next = steps[1]?.prescriptions
      .find(({ title }) => title === side)
      ?.cells.find(({ cell }) => cell === 'sets');
    expect([now?.value, next?.value]).toEqual([4, 3]);
    expect(steps[1]?.change).toContain(`${side} then has 3 holds instead of 4.`);
  });

  it('says nothing of the kind where nothing else changes', () => {
    const { steps } = made();
    expect(steps[1]?.change).toMatch(/^New: more repetitions for [^.]*\. All else stays\.$/);
  });
});

describe('landmarks lying on the back', () => {
  it('give one height, not pillows and centimetres', () => {
    const { howFar } = exercise(made({ stage: 3 }), 'hip-thrust') ?? { howFar: [] };
    expect(howFar.filter((text) => /pillow|above the floor/.test(text))).toHaveLength(1);
  });

  it('give none where the hips stay up and the feet move', () => {
    const kit = { ...FULL_KIT, bench: false };
    const tests = [...person().tests, { test: 'slow-ball-curl', pain: 1 }];
    const ball = exercise(made({ stage: 3, kit, tests }), 'slow-ball-curl');
    expect(ball?.howFar).toEqual(['The whole way, as in the picture']);
  });

  it('of a split squat name no seat, for none is so high', () => {
    const tests = [...person().tests, { test: 'split-squat', pain: 1 }];
    const { howFar } = exercise(made({ stage: 3, tests }), 'split-squat') ?? { howFar: [] };
    expect(howFar[0]).toMatch(/^Rear knee/);
    expect(howFar.join()).not.toContain('seat');
  });

  it('name one heel where one is on the floor', () => {
    expect(exercise(made(), 'single-leg-bridge-raised')?.howFar.at(-1)).toMatch(
      /^Heel \d+ cm away from your buttock$/,
    );
  });
});

describe('a picture', () => {
  it('of a weight that is felt for shows nothing heavy, for one begins without', () => {
    const { exercises } = made({ stage: 3 });
    const felt = exercises.filter(({ facts }) =>
      facts.some(({ text }) => text.startsWith('none at first, a little more')),
    );
    expect(felt.length).toBeGreaterThan(0);
    for (const { title, figures } of felt) {
      const scene = figures?.scene;
      // A rucksack is worn empty; nothing else is held.
      expect(scene?.view === 'side' ? (scene.weight?.kg ?? 0) : 0, title).toBe(0);
    }
  });

  it('says the same degrees as the number beside it', () => {
    const { exercises } = made({
      stage: 1,
      usualMorningPain: 3,
      tests: [{ test: 'prone-curl-hold', pain: 4 }],
      kit: NO_KIT,
    });
    const degrees = exercises.flatMap(
      ({ figures }) =>
        figures?.scene.frames.flatMap((one) => ('posture' in one ? (one.hipFlexionDeg ?? []) : [])) ?? [],
    );
    expect(degrees.length).toBeGreaterThan(0);
    for (const deg of degrees) expect(deg).toBeGreaterThanOrEqual(0);
  });
});

describe('the tendon at the side of the hip', () => {
  it('hears nothing of the sit bone or the back of the thigh', () => {
    const lines = ownLines(made({ ...GLUTEAL, doesNow: [{ what: 'yoga', times: 1 }] }));
    expect(lines.filter((line) => /sit bone|back of the thigh|[Hh]ard seat|hamstring/.test(line))).toEqual(
      [],
    );
  });

  it('has advice of its own, and none of the sit bone', () => {
    const ids = made({ ...GLUTEAL, sitting: { toleranceMinutes: 40 } }).advice.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['nights-and-standing', 'why-the-side-hurts']));
    expect(ids).not.toEqual(expect.arrayContaining(['why-it-hurts']));
    expect(ids).not.toEqual(expect.arrayContaining(['sitting-well']));
  });

  it('is worked daily, as the published trial has it, slept badly or not', () => {
    const poor = made({ ...GLUTEAL, recovery: { sleep: 'poor', stress: 'high', tired: true } });
    expect(poor.calendar.filter(({ kind }) => kind === 'session')).toHaveLength(21);
    expect(poor.record.week.gaveUp).toEqual([]);
  });

  it('carries no weight that nobody tested', () => {
    const kg = made({
      ...GLUTEAL,
      tests: [{ test: 'week-two-exercises', pain: 1 }],
    }).steps[0]?.prescriptions.flatMap(({ cells }) =>
      cells.filter(({ cell }) => cell === 'loadKg').map(({ value }) => value),
    );
    expect(kg?.every((value) => value === 0)).toBe(true);
  });

  it('of week 1 has no steps of its own: the weeks are the steps, as many as the plan reaches', () => {
    expect(made(GLUTEAL).steps.map(({ heading }) => heading)).toEqual([
      'Step 1: now',
      'Step 2: from Tuesday 1 December',
      'Step 3: from Tuesday 8 December',
    ]);
    expect(made({ ...GLUTEAL, reviewOn: day('2026-12-01') }).steps).toHaveLength(1);
  });
});

describe('what the exercises of the plan take the place of', () => {
  it('holds no day of its own and takes none from them', () => {
    const gym = made({ stage: 3, doesNow: [{ what: 'gym legs', times: 2 }] });
    expect(said(gym.activities)).toContain('Do the exercises of this plan instead');
    expect(gym.calendar.filter(({ kind }) => kind === 'other')).toEqual([]);
    expect(gym.calendar.filter(({ kind }) => kind === 'session')).toHaveLength(9);
  });
});

describe('what is hard on too many days', () => {
  const lifting = (times: number, more: Partial<Consult> = {}) =>
    made({ stage: 3, doesNow: [{ what: 'lifting at work', times }], ...more });
  const lighter = 'Make it lighter where you can, most of all on the days of your exercises.';
  const kinds = ({ calendar }: Programme, kind: string) => calendar.filter((one) => one.kind === kind);

  it.each([
    [4, {}],
    [5, {}],
    [7, {}],
    [21, {}],
    [3, { recovery: { sleep: 'poor', stress: 'high', tired: true } }],
  ] as const)('%i times a week: holds no day, and is asked to be lighter', (times, more) => {
    const programme = lifting(times, more);
    expect(said(programme.activities)).toContain(lighter);
    expect(said(programme.activities)).toContain('Change how');
    expect(kinds(programme, 'other')).toEqual([]);
    expect(kinds(programme, 'session').length).toBeGreaterThanOrEqual(6);
    expect(programme.record.remarks.join()).toContain('It counts as everyday load (house choice)');
  });

  it('says in the record how far apart the days would have to lie', () => {
    expect(lifting(5).record.remarks).toContain(
      'Lifting at work: 5 hard days a week cannot lie 48 h apart (3 can). It counts as everyday load (house choice): it holds no day on the recovery clock, and the leaflet asks for less of it.',
    );
  });

  it('is asked for less often where it may wait, what is named last first', () => {
    const both = [
      { what: 'football', times: 2 },
      { what: 'orienteering', times: 2 },
    ];
    const two = made({ stage: 4, doesNow: both });
    expect(two.record.week.gaveUp.join()).toContain(
      'Orienteering not at all instead of twice a week, for now.',
    );
    expect(said(two.activities)).toContain('"Orienteering","Leave for now"');
    expect(kinds(two, 'other').every(({ text }) => text === 'football')).toBe(true);
  });

  it('three days of it do lie apart, and the exercises follow on the same day', () => {
    const three = lifting(3);
    expect(kinds(three, 'other')).toHaveLength(9);
    expect(said(three.week)).toContain('; exercises, after lifting at work');
    expect(three.record.week.gaveUp.join()).toContain('A session follows lifting at work on the same day (');
    expect(said(three.activities)).not.toContain(lighter);
  });

  it('is kept apart where the week has room', () => {
    const once = lifting(1);
    expect(kinds(once, 'other')).toHaveLength(3);
    expect(said(once.week)).not.toContain('after lifting');
  });
});

describe('where a number stands', () => {
  it('is not the source of the dose for a pace and a hold in hand that it says nothing of', () => {
    const cells = made(GLUTEAL).steps[0]?.prescriptions[0]?.cells ?? [];
    const cite = (name: string) => cells.find(({ cell }) => cell === name)?.source.cite;
    expect(cite('sets')).toContain('LEAP');
    expect([cite('tempo'), cite('reserve')]).toEqual(['house rules 3', 'house rules 4']);
  });
});

describe('the earliest dates', () => {
  it('count the sessions that the week has room for', () => {
    const dates = (days: Consult['days']) => JSON.stringify(made({ stage: 3, days }).record.stepsAhead);
    // Six sessions, one a week: 42 days from 24 November, not the 28 of the usual weeks.
    expect(dates(['mon'])).toContain('2027-01-05');
    expect(dates([...WEEKDAYS])).toContain('2026-12-22');
  });
});

describe('hilly everyday routes', () => {
  const hilly = { ...RUNNER, hills: true, speed: true, hillyRoutes: true };

  it('are left while hills wait', () => {
    expect(said(made({ running: hilly }).running)).toContain('Leave the hilly everyday routes');
  });

  it('are no longer left once hills are run', () => {
    const text = said(made({ ...ENDED, running: hilly }).running);
    expect(text).toContain('Run the easy ones on the flat');
    expect(text).not.toContain('Leave the hilly');
  });
});

describe('slow work that carries a weight', () => {
  it('keeps two days between, whatever the week would like', () => {
    const { calendar } = made({ testedSets: [testedSet('hip-hinge', 8, 10, 4)] });
    expect(calendar.filter(({ kind }) => kind === 'session')).toHaveLength(9);
  });
});

describe('a plan that was turned down', () => {
  const opening = (now: Partial<Consult>, before: Partial<Consult>) => {
    const answer = assembleProgramme(person({ revision: 2, ...now }), made(before), workshop);
    return 'programme' in answer ? answer.programme.opening.join(' ') : '';
  };
  const STRONG: Partial<Consult> = { tests: [{ test: 'hip-hinge', pain: 1 }] };
  it.each([
    ['stage 1 after stage 2', { stage: 1 }, { stage: 2 }, true],
    ['step 1 after step 2', { stage: 2, step: 1 }, { stage: 2, step: 2 }, true],
    ['stage 2 after stage 1', { stage: 2 }, { stage: 1 }, false],
    ['the same again', { stage: 2 }, { stage: 2 }, false],
  ] as const)('%s', (_, now, before, isSaid) => {
    const words = opening({ ...STRONG, ...now }, { ...STRONG, ...before });
    expect(words).toContain('This is for your');
    expect(words.includes('asks a little less than the last one')).toBe(isSaid);
  });
});
