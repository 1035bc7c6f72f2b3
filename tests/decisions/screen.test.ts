/** House rules 2 and 11.6: what each answer of the screen does, by item, answer, age and what is recorded beside it. */
import { describe, expect, it } from 'vitest';
import type { Consult, Protocol } from '../../src/content/library.ts';
import type { Draft } from '../../src/content/draft.ts';
import type { Log } from '../../src/content/log/log.ts';
import { SCREEN_ITEMS, type ScreenItem } from '../../src/content/schema/consult.ts';
import { PAIN_DECISION } from '../../src/content/schema/override.ts';
import { logAlarms } from '../../src/decisions/screen/alarms.ts';
import { notYetDischarged, stillSore } from '../../src/decisions/screen/discharged.ts';
import { cannotDoOf, maternityOf } from '../../src/decisions/screen/maternity.ts';
import { needsDecision, painDecision, triedAtMost } from '../../src/decisions/screen/painLimits.ts';
import { painfulSide } from '../../src/decisions/screen/painfulSide.ts';
import { effectOf, screenEffects, type Effect } from '../../src/decisions/screen/screen.ts';
import { beganSuddenly, suddenStartOf } from '../../src/decisions/screen/suddenStart.ts';
import { testsOfSide } from '../../src/decisions/screen/testsOfSide.ts';
import { withdrawals } from '../../src/decisions/screen/withdrawal.ts';
import { ALL_CLEAR, day, person } from '../programme/person.ts';

const CLINIC = { emergency: { GB: { number: '999' } } } as unknown as Parameters<typeof screenEffects>[1];

interface Case {
  readonly answer?: 'yes' | 'no' | 'notAsked';
  readonly age?: number;
  readonly cleared?: boolean;
  readonly imaging?: boolean;
  readonly cannotDo?: Consult['cannotDo'];
  readonly country?: string;
}

function personWith(
  item: ScreenItem,
  { answer = 'yes', age = 40, cleared, imaging, cannotDo = [], country = 'GB' }: Case,
): Consult {
  const picture = { kind: 'MRI', on: day('2026-11-19'), result: 'whole' };
  const clearance = { flag: item, by: 'Dr Example', on: day('2026-11-20'), decision: 'may train' };
  return person({
    screen: { ...ALL_CLEAR, [item]: answer },
    ageYears: age,
    cannotDo,
    country: country as Consult['country'],
    clearances: cleared === true ? [imaging === true ? { ...clearance, imaging: picture } : clearance] : [],
  });
}

/** `stop: why`, or what holds: `noRunning item`, `under18`, nothing. */
function outcome(item: ScreenItem, of: Case): string {
  const effects = screenEffects(personWith(item, of), CLINIC);
  if ('refusals' in effects)
    return effects.refusals
      .map(({ code, path, why }) => `${code} ${path.join('.')}: ${why.reason}`)
      .join('; ');
  const { under18, ...lists } = effects;
  const held = Object.entries(lists).flatMap(([name, items]) => items.map((one) => `${name} ${one}`));
  return [...held, ...(under18 ? ['under18'] : [])].join(', ');
}

const ITEMS: Readonly<Record<Effect, readonly ScreenItem[]>> = {
  emergency: [
    'saddleNumbness',
    'bladderBowel',
    'bothLegWeakness',
    'worseningWeakness',
    'footDrop',
    'clotSigns',
  ],
  block: ['fever', 'weightLoss', 'cancerNightPain', 'popBruise', 'suspectedFracture'],
  noRunning: ['hopPain', 'focalBonePain', 'nightBonePain', 'missedPeriods', 'lowEnergy'],
  lightHolds: ['fluoroquinolone', 'oralSteroid', 'recentInjection'],
  shortHolds: ['uncontrolledBloodPressure', 'hernia'],
  under18: ['suddenOnsetUnder18'],
};

describe('the items of house rules 2', () => {
  it.each(Object.entries(ITEMS))('%s', (effect, items) => {
    expect(SCREEN_ITEMS.filter((item) => effectOf(item) === effect).toSorted()).toEqual(items.toSorted());
  });

  it.each(SCREEN_ITEMS)('%s, answered no, holds nobody back', (item) => {
    expect(outcome(item, { answer: 'no' })).toBe('');
  });
});

describe('an answer', () => {
  const stop = (item: ScreenItem, reason = 'screen-stop') => `screen-block screen.${item}: ${reason}`;
  it.each<[string, ScreenItem, Case, string]>([
    ['an emergency stops', 'footDrop', {}, stop('footDrop')],
    ['whatever is cleared', 'footDrop', { cleared: true, imaging: true }, stop('footDrop')],
    ['and not asked', 'footDrop', { answer: 'notAsked' }, stop('footDrop')],
    ['a block stops', 'weightLoss', {}, stop('weightLoss')],
    ['until it is cleared', 'weightLoss', { cleared: true }, ''],
    ['never where nobody asked', 'weightLoss', { cleared: true, answer: 'notAsked' }, stop('weightLoss')],
    ['a pop is not cleared by words', 'popBruise', { cleared: true }, stop('popBruise', 'no-picture')],
    ['but by a picture', 'popBruise', { cleared: true, imaging: true }, ''],
    ['without either it stops', 'popBruise', {}, stop('popBruise')],
    [
      'not asked it stops, words or no words',
      'popBruise',
      { answer: 'notAsked', cleared: true },
      stop('popBruise'),
    ],
    ['no running', 'hopPain', {}, 'noRunning hopPain'],
    ['cleared, running', 'hopPain', { cleared: true }, ''],
    ['not asked, none', 'hopPain', { answer: 'notAsked', cleared: true }, 'noRunning hopPain'],
    ['light holds ask for a decision', 'oralSteroid', {}, stop('oralSteroid', 'light-holds-undecided')],
    ['and stay with it', 'oralSteroid', { cleared: true }, 'lightHolds oralSteroid'],
    ['not asked too', 'oralSteroid', { answer: 'notAsked', cleared: true }, 'lightHolds oralSteroid'],
    ['short holds', 'hernia', {}, 'shortHolds hernia'],
    ['cleared, as long as any', 'hernia', { cleared: true }, ''],
    ['blood pressure', 'uncontrolledBloodPressure', { cleared: true }, ''],
    [
      'blood pressure that stands among what cannot be done today is not cleared',
      'uncontrolledBloodPressure',
      { cleared: true, cannotDo: ['uncontrolled-blood-pressure'] },
      'shortHolds uncontrolledBloodPressure',
    ],
    [
      'nor does a no of the screen lift it',
      'uncontrolledBloodPressure',
      { answer: 'no', cannotDo: ['uncontrolled-blood-pressure'] },
      'shortHolds uncontrolledBloodPressure',
    ],
    [
      'another thing that cannot be done is no screen item',
      'hernia',
      { answer: 'no', cannotDo: ['kneel'] },
      '',
    ],
  ])('%s', (_, item, of, expected) => {
    expect(outcome(item, of)).toBe(expected);
  });

  it.each<[string, Case, string]>([
    ['at 18 the question is not put', { age: 18 }, ''],
    ['nor is not asked then', { age: 18, answer: 'notAsked' }, ''],
    ['at 17 a sudden start stops', { age: 17 }, stop('suddenOnsetUnder18', 'under-18')],
    [
      'and a gradual one without a named decision',
      { age: 17, answer: 'no' },
      stop('suddenOnsetUnder18', 'under-18'),
    ],
    ['a gradual one with it is lighter', { age: 17, answer: 'no', cleared: true }, 'under18'],
    ['a sudden one needs the picture', { age: 17, cleared: true }, stop('suddenOnsetUnder18', 'no-picture')],
    ['and is lighter with it', { age: 17, cleared: true, imaging: true }, 'under18'],
    [
      'not asked acts like a sudden one',
      { age: 17, answer: 'notAsked', cleared: true },
      stop('suddenOnsetUnder18', 'no-picture'),
    ],
    [
      'and is lifted by the picture',
      { age: 17, answer: 'notAsked', cleared: true, imaging: true },
      'under18',
    ],
  ])('under 18: %s', (_, of, expected) => {
    expect(outcome('suddenOnsetUnder18', of)).toBe(expected);
  });

  it.each<[string, string, ScreenItem, unknown]>([
    ['GB', 'emergency', 'footDrop', { number: '999' }],
    ['GB', 'block', 'fever', { number: '999' }],
    ['SE', 'emergency', 'footDrop', null],
  ])('in %s names whom to ring: %s', (country, effect, item, emergency) => {
    const effects = screenEffects(personWith(item, { country }), CLINIC);
    expect('refusals' in effects ? effects.refusals[0]?.why : null).toEqual({
      reason: 'screen-stop', item, answer: 'yes', effect, emergency,
    }); // prettier-ignore
  });

  it('a clearance of another item lifts nothing', () => {
    const one = personWith('fever', { cleared: true });
    const effects = screenEffects({ ...one, screen: { ...ALL_CLEAR, weightLoss: 'yes' } }, CLINIC);
    expect('refusals' in effects && effects.refusals.map(({ path }) => path.join('.'))).toEqual([
      'screen.weightLoss',
    ]);
  });

  it('the picture of another clearance does not clear a pop', () => {
    const picture = { kind: 'X-ray', on: day('2026-11-19'), result: 'no fracture' };
    const words = { by: 'Dr Example', on: day('2026-11-20'), decision: 'may train' };
    const effects = screenEffects(
      person({
        screen: { ...ALL_CLEAR, popBruise: 'yes' },
        clearances: [
          { flag: 'popBruise', ...words },
          { flag: 'suspectedFracture', ...words, imaging: picture },
        ],
      }),
      CLINIC,
    );
    expect(effects).toMatchObject({
      refusals: [{ path: ['screen', 'popBruise'], why: { reason: 'no-picture' } }],
    });
  });

  it.each([
    [17, stop('suddenOnsetUnder18', 'no-picture')],
    [18, ''],
  ])('at %i years words alone clear a sudden start: "%s"', (age, says) =>
    expect(outcome('suddenOnsetUnder18', { age, cleared: true })).toBe(says),
  );

  it('every item that stops is told', () => {
    const effects = screenEffects(
      person({ screen: { ...ALL_CLEAR, fever: 'yes', footDrop: 'notAsked' } }),
      CLINIC,
    );
    expect('refusals' in effects && effects.refusals.map(({ path }) => path.join('.'))).toEqual([
      'screen.footDrop',
      'screen.fever',
    ]);
  });
});

describe('what is told of leaflets in use', () => {
  const log = (change: Partial<Log>): Log =>
    ({
      alias: 'vole', revision: 1, file: 'vole-r1.log.csv', entries: [], contradicted: [], unread: 0,
      alarms: [{ item: 'fever', date: day('2026-12-01'), line: 3, column: 2 }], ...change,
    }); // prettier-ignore
  const told = (one: Log, consult = person()) =>
    logAlarms(new Map([['a', one]]), [consult], null).map(({ alias, line, item, refusal }) => [
      alias,
      line,
      item,
      refusal?.path.join('.') ?? null,
    ]);

  it.each<[string, Partial<Log>, Partial<Consult>, unknown]>([
    ['a yes that stops', {}, {}, [['vole', 3, 'fever', 'screen.fever']]],
    ['of a log of a newer revision', { revision: 2 }, {}, [['vole', 3, 'fever', 'screen.fever']]],
    ['not of an older one: the person has been seen since', {}, { revision: 2 }, []],
    ['not of another person', { alias: 'mole' }, {}, []],
    [
      'a yes that stops none',
      { alarms: [{ item: 'hopPain', date: null, line: 1, column: 1 }] },
      {},
      [['vole', 1, 'hopPain', null]],
    ],
    [
      'a line of which no more can be read',
      { alarms: [{ item: null, date: null, line: 1, column: 1 }] },
      {},
      [['vole', 1, null, null]],
    ],
  ])('%s', (_, change, consult, expected) => {
    expect(told(log(change), person(consult))).toEqual(expected);
  });

  const said = {
    yes: ['fever'],
    screen: null,
    clearances: [],
    cannotDo: [],
    ageYears: 40,
    country: 'GB',
  } as const;
  const draft = (change: Partial<Draft>): Draft =>
    ({ alias: 'vole', revision: 2, file: 'vole-r2.md', consult: null, said, ...change }) as unknown as Draft;
  it.each<[string, Partial<Draft>, readonly string[]]>([
    ['a newer file', {}, ['vole-r2 fever']],
    ['the one in use, broken', { revision: 1 }, ['vole-r1 fever']],
    ['not an older one', { revision: 0 }, []],
    ['one that does not tell its revision', { revision: null }, ['vole fever']],
    ['of somebody without a leaflet', { alias: 'mole', revision: 1 }, ['mole-r1 fever']],
    [
      'not an answer that stops nobody',
      { said: { ...said, yes: ['hopPain'] } as unknown as Draft['said'] },
      [],
    ],
  ])('by a draft: %s', (_, change, expected) => {
    const found = withdrawals([draft(change)], new Map([['vole', 1]]), null);
    expect(found.map(({ item, refusal }) => `${refusal.id} ${item}`)).toEqual(expected);
  });
});

describe('a sudden start', () => {
  const limits = {
    suddenStageAtMost: { value: 2 }, suddenLoadShare: { value: 0.5 }, suddenRunAtMost: { value: 'easy' },
  }; // prettier-ignore
  const protocol = { limits } as unknown as Protocol;
  const clearance = (flag: ScreenItem, on: string) => ({
    flag,
    by: 'Dr Example',
    on: day(on),
    decision: 'may train',
  });
  const start = (consult: Partial<Consult>, seenOn: string | null = null) =>
    suddenStartOf(person(consult), protocol, seenOn === null ? null : ({ seenOn: day(seenOn) } as never));
  const pop = { screen: { ...ALL_CLEAR, popBruise: 'yes' } } as const;
  const young = { screen: { ...ALL_CLEAR, suddenOnsetUnder18: 'yes' } } as const;
  it.each<[string, Partial<Consult>, string | null, string | null]>([
    ['a cleared pop', { ...pop, clearances: [clearance('popBruise', '2026-11-20')] }, null, '2026-11-20'],
    [
      'the latest of two',
      { ...pop, clearances: [clearance('popBruise', '2026-11-20'), clearance('popBruise', '2026-11-10')] },
      null,
      '2026-11-20',
    ],
    [
      'in whatever order',
      { ...pop, clearances: [clearance('popBruise', '2026-11-10'), clearance('popBruise', '2026-11-20')] },
      null,
      '2026-11-20',
    ],
    [
      'not one that a programme has followed',
      { ...pop, clearances: [clearance('popBruise', '2026-11-20')] },
      '2026-11-20',
      null,
    ],
    [
      'but one since',
      { ...pop, clearances: [clearance('popBruise', '2026-11-20')] },
      '2026-11-19',
      '2026-11-20',
    ],
    ['none where the answer is no', { clearances: [clearance('popBruise', '2026-11-20')] }, null, null],
    [
      'no other clearance',
      { screen: { ...ALL_CLEAR, hernia: 'yes' }, clearances: [clearance('hernia', '2026-11-20')] },
      null,
      null,
    ],
    [
      'a start under 18',
      { ...young, ageYears: 17, clearances: [clearance('suddenOnsetUnder18', '2026-11-20')] },
      null,
      '2026-11-20',
    ],
    [
      'not at 18',
      { ...young, ageYears: 18, clearances: [clearance('suddenOnsetUnder18', '2026-11-20')] },
      null,
      null,
    ],
  ])('%s', (_, consult, seenOn, on) => {
    expect(start(consult, seenOn)?.on ?? null).toBe(on);
  });

  it('keeps its limits', () => {
    expect(start({ ...pop, clearances: [clearance('popBruise', '2026-11-20')] })).toEqual({
      flag: 'popBruise', by: 'Dr Example', on: '2026-11-20', imaging: null, stageAtMost: 2, loadShare: 0.5, runAtMost: 'easy',
    }); // prettier-ignore
  });

  it.each<[string, Partial<Consult>, boolean]>([
    ['a pop, whatever the screen says by now', { clearances: [clearance('popBruise', '2026-11-20')] }, true],
    ['a sudden start', { ...young, clearances: [clearance('suddenOnsetUnder18', '2026-11-20')] }, true],
    ['a gradual one', { clearances: [clearance('suddenOnsetUnder18', '2026-11-20')] }, false],
    [
      'another thing',
      { screen: { ...ALL_CLEAR, hernia: 'yes' }, clearances: [clearance('hernia', '2026-11-20')] },
      false,
    ],
    ['nothing', {}, false],
  ])('the story of too much work is not told after %s: %s', (_, consult, expected) => {
    expect(beganSuddenly(person(consult))).toBe(expected);
  });
});

describe('pregnant, or after a birth (house rules 11.14)', () => {
  const maternity = {
    notFlatFromWeek: { value: 20 }, runMostPregnant: { value: 'easy' }, impactFromWeekAfterBirth: { value: 12 },
  }; // prettier-ignore
  const of = (consult: Partial<Consult>) =>
    maternityOf(person(consult), { maternity } as unknown as Protocol);
  // Seen on the 23rd, to be seen again 22 days later: three full weeks to the day before.
  it.each<[number, number, boolean]>([
    [16, 19, true],
    [17, 20, false],
  ])('pregnant in week %i reaches week %i; lies flat: %s', (weeks, reached, liesFlat) => {
    expect(of({ pregnancy: { weeks } })).toEqual({
      kind: 'pregnant', weeks: reached, liesFlat, jumps: false, runMost: 'easy', clearedBy: null,
    }); // prettier-ignore
  });

  it('counts to the day before the review', () => {
    expect(of({ pregnancy: { weeks: 10 }, reviewOn: day('2026-12-14') })?.weeks).toBe(12);
    expect(of({ pregnancy: { weeks: 10 }, reviewOn: day('2026-12-15') })?.weeks).toBe(13);
  });

  const clearance = { by: 'Dr Example', on: day('2026-11-20'), decision: 'may run' };
  it.each<[string, Partial<Consult>, number, boolean, string | null]>([
    ['eleven weeks', { afterBirth: { weeks: 11 } }, 11, false, null],
    ['twelve', { afterBirth: { weeks: 12 } }, 12, true, null],
    [
      'eleven and a week to the start',
      { afterBirth: { weeks: 11 }, startOn: day('2026-11-30') },
      12,
      true,
      null,
    ],
    ['and six days', { afterBirth: { weeks: 11 }, startOn: day('2026-11-29') }, 11, false, null],
    ['eleven, cleared', { afterBirth: { weeks: 11, clearance } }, 11, true, 'Dr Example'],
    ['twelve, cleared for nothing', { afterBirth: { weeks: 12, clearance } }, 12, true, null],
  ])('after birth: %s', (_, consult, weeks, jumps, clearedBy) => {
    expect(of(consult)).toEqual({
      kind: 'after-birth', weeks, liesFlat: true, jumps, runMost: jumps ? null : 'none', clearedBy,
    }); // prettier-ignore
  });

  it('by the cannot-do list alone acts like the cautious side', () => {
    expect(of({ cannotDo: ['pregnant-or-postpartum'] })).toEqual({
      kind: 'not-recorded', weeks: null, liesFlat: false, jumps: false, runMost: 'none', clearedBy: null,
    }); // prettier-ignore
    expect(of({ cannotDo: ['kneel'] })).toBeNull();
    expect(of({})).toBeNull();
  });

  it.each<[string, Partial<Consult>, readonly string[]]>([
    ['nobody', { cannotDo: ['kneel'] }, ['kneel']],
    [
      'pregnant early',
      { pregnancy: { weeks: 10 }, cannotDo: ['kneel'] },
      ['kneel', 'pregnant-or-postpartum'],
    ],
    [
      'pregnant late',
      { pregnancy: { weeks: 30 }, cannotDo: ['lie-prone'] },
      ['lie-prone', 'pregnant-or-postpartum', 'lie-supine'],
    ],
    ['long after birth', { afterBirth: { weeks: 20 } }, []],
  ])('cannot do, %s', (_, consult, expected) => {
    const whole = person(consult);
    expect(cannotDoOf(whole, of(consult))).toEqual(expected);
  });
});

describe('the end of treatment (house rules 11.10), and sides', () => {
  const protocol = {
    limits: { testPainAtMost: { value: 3 } }, runningRules: { usualPainNoRun: { value: 4 } },
  } as unknown as Protocol; // prettier-ignore
  const pain = (...pains: number[]) => pains.map((one) => ({ test: 'hip-hinge', pain: one }));
  it.each<[string, Partial<Consult>, unknown]>([
    ['nothing stands against it', { tests: pain(3, 1) }, null],
    ['high irritability', { tests: pain(0), irritability: 'high' }, { because: 'irritable' }],
    ['usual pain of 4', { tests: pain(0), usualMorningPain: 4 }, { because: 'usualPain', pain: 4, under: 4 }],
    ['of 3', { tests: pain(0), usualMorningPain: 3 }, null],
    ['a test of 4', { tests: pain(1, 4, 2) }, { because: 'testPain', pain: 4, atMost: 3 }],
  ])('%s', (_, consult, expected) => {
    expect(stillSore(person(consult), protocol)).toEqual(expected);
  });

  it('the painful side is the one, of two the worse one, and never guessed', () => {
    expect(painfulSide(person({ side: 'left' }))).toBe('left');
    expect(painfulSide(person({ side: 'both', worseSide: 'right' }))).toBe('right');
    expect(() => painfulSide(person({ side: 'both' }))).toThrow('worseSide');
  });

  it.each<['each' | 'together', readonly number[]]>([
    ['each', [1, 2, 3]],
    ['together', [1, 2, 3, 4]],
  ])('of a card that works %s the tests of the treated leg count', (legs, pains) => {
    const tests: Consult['tests'] = [
      { test: 'a', pain: 1 },
      { test: 'a', pain: 2, side: 'both' },
      { test: 'a', pain: 3, side: 'right' },
      { test: 'a', pain: 4, side: 'left' },
      { test: 'b', pain: 5 },
    ];
    expect(testsOfSide({ id: 'a', legs }, person({ tests })).map((one) => one.pain)).toEqual(pains);
  });
});

describe('high usual pain (house rules 11.5)', () => {
  const painRule = {
    duringAtMost: { value: 3 }, overUsualAtMost: { value: 1 }, neverAbove: { value: 5 }, usualOnlyFrom: { value: 6 },
    decisionFrom: { value: 7 },
  } as unknown as Protocol['painRule']; // prettier-ignore
  it.each([
    // usual, a decision is needed, what was tried may hurt
    [1, false, 3],
    [3, false, 4],
    [4, false, 5],
    [6, false, 5],
    [7, true, 5],
  ])('usual %i: a decision is needed: %s; tried at most %i', (usualMorningPain, needed, tried) => {
    expect(needsDecision(person({ usualMorningPain }), { painRule })).toBe(needed);
    expect(triedAtMost(person({ usualMorningPain }), { painRule })).toBe(tried);
  });

  it('the decision is the reason of its own entry, and of no other', () => {
    const other = { path: 'bridge.sets', value: 2, reason: 'enough' };
    const decision = { path: PAIN_DECISION, value: 7, reason: 'seen twice' };
    expect(painDecision(person({ overrides: [other] }))).toBeNull();
    expect(painDecision(person({ overrides: [other, decision] }))).toBe('seen twice');
  });
});

it('a treatment that cannot end yet is refused at the stage', () => {
  expect(notYetDischarged(person({ stage: 'keepGoing' }), { because: 'irritable' })).toEqual({
    code: 'does-not-fit',
    id: 'vole-r1',
    path: ['stage'],
    why: { reason: 'still-sore', written: 'keepGoing', sore: { because: 'irritable' } },
  });
});
