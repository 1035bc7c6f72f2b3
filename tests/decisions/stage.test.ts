/** House rules 11.1 and 11.2: which stage the tests speak for, what bars each, and what a clinician's own choice does. */
import { describe, expect, it } from 'vitest';
import type { Consult, Protocol } from '../../src/content/library.ts';
import { screenEffects } from '../../src/decisions/screen/screen.ts';
import { courseOf } from '../../src/decisions/stage/course.ts';
import {
  chooseStage,
  fallenBack,
  stageNumber,
  stageOf,
  stagesAfter,
} from '../../src/decisions/stage/stageChoice.ts';
import { firstStage, proposeStage, sportLimit } from '../../src/decisions/stage/stageProposal.ts';
import { stageRefusals } from '../../src/decisions/stage/stageRefusals.ts';
import { stepNow } from '../../src/decisions/stage/stepNow.ts';
import type { LastDone } from '../../src/decisions/terms/lastDone.ts';
import type { SuddenStart } from '../../src/decisions/terms/suddenStart.ts';
import { ALL_CLEAR, person, testedSet } from '../programme/person.ts';

const enter = (tests: string[], painAtMost: number, more: object = {}) => ({
  tests, painAtMost, settled: false, sport: false, ...more,
}); // prettier-ignore
const slot = (kind: 'hold' | 'slow', ...cards: string[]) => ({
  dose: { kind, repetitions: kind === 'hold' ? null : 10 },
  cards,
});

/** Four stages and the keep stage, in as little as the decisions read. */
const PROTOCOL = {
  id: 'tendon',
  byWeeks: false,
  tests: [
    { id: 'straight', lowFlexion: true },
    { id: 'bent', lowFlexion: false },
    { id: 'held', lowFlexion: true },
    // A hold of the first stage that the protocol says is not straight.
    { id: 'deep-hold', lowFlexion: false },
  ],
  stages: [
    { name: 'Hold', isKeep: false, enter: enter([], 10), slots: [slot('hold', 'bridge', 'deep-hold'), slot('slow', 'curl')] },
    { name: 'Slow', isKeep: false, enter: enter(['straight', 'held'], 3), slots: [slot('slow', 'curl')] },
    { name: 'Far', isKeep: false, enter: enter(['bent'], 3, { settled: true }), slots: [slot('slow', 'lift'), slot('hold', 'stand')] },
    { name: 'Sport', isKeep: false, enter: enter(['one-leg'], 3, { settled: true, sport: true }), slots: [slot('slow', 'jump')] },
    { name: 'Keep', isKeep: true, enter: enter([], 1), slots: [] },
  ],
  limits: { testPainAtMost: { value: 3 } },
  painRule: { neverAbove: { value: 5 }, duringAtMost: { value: 3 } },
} as unknown as Protocol; // prettier-ignore
const KEEP_ONLY = { ...PROTOCOL, stages: PROTOCOL.stages.slice(4) };

const tests = (done: Readonly<Record<string, number>>): Consult['tests'] =>
  Object.entries(done).map(([test, pain]) => ({ test, pain }));
const GOOD = { straight: 0, bent: 0, 'one-leg': 0 };
const RUNS: Consult['running'] = { runs: true, decision: 'keep' } as Consult['running'];
const LIFTED = [testedSet('lift', 10, 8, 2)];
const READY: Partial<Consult> = { tests: tests(GOOD), running: RUNS, testedSets: LIFTED };

const sudden = (stageAtMost: number): SuddenStart =>
  ({ flag: 'popBruise', stageAtMost }) as unknown as SuddenStart;
const done = (stage: LastDone['stage']): LastDone[] => [{ card: 'lift', stage } as LastDone];

/** `stage reached: what bars the next` */
function proposed(of: Partial<Consult>, start: SuddenStart | null = null, last: LastDone[] = []): string {
  const { reached, looked } = proposeStage(person(of), PROTOCOL, start, last);
  return `${reached}: ${looked.at(-1)?.limit?.code ?? 'open'}`;
}

describe('the proposal', () => {
  it.each<[string, Partial<Consult>, string]>([
    ['everything shown', READY, '4: open'],
    ['nothing tested', { tests: tests({}) }, '1: not-tested'],
    ['4 with the hip straight', { ...READY, tests: tests({ ...GOOD, straight: 4 }) }, '1: straight-hip-pain'],
    ['3 with the hip straight', { ...READY, tests: tests({ ...GOOD, straight: 3 }) }, '4: open'],
    ['the worst counts', { ...READY, tests: tests({ held: 4, ...GOOD }) }, '1: straight-hip-pain'],
    [
      'a hold of the first stage counts as one',
      { ...READY, tests: tests({ ...GOOD, bridge: 4 }) },
      '1: straight-hip-pain',
    ],
    [
      'unless the protocol says otherwise',
      { ...READY, tests: tests({ ...GOOD, 'deep-hold': 4 }) },
      '3: sport-pain',
    ],
    ['what is no hold of it does not', { ...READY, tests: tests({ ...GOOD, curl: 4 }) }, '3: sport-pain'],
    ['4 bent', { ...READY, tests: tests({ ...GOOD, bent: 4 }) }, '2: entry-pain'],
    ['3 bent', { ...READY, tests: tests({ ...GOOD, bent: 3 }) }, '4: open'],
    ['not tried bent', { ...READY, tests: tests({ straight: 0 }) }, '2: not-tested'],
    ['tests that stirred it up', { ...READY, response24h: 'up' }, '1: stirred-up'],
    ['not known whether it settled', { ...READY, response24h: 'unknown' }, '2: not-settled'],
    ['high irritability, mild and settled', { ...READY, irritability: 'high' }, '3: irritable-for-sport'],
    [
      'high irritability, not known to be settled',
      { ...READY, irritability: 'high', response24h: 'unknown' },
      '1: irritable',
    ],
    [
      'high irritability and nothing tried straight',
      { ...READY, irritability: 'high', tests: tests({ bent: 0 }) },
      '1: irritable',
    ],
    ['somebody who does no sport', { ...READY, running: { runs: false, decision: 'none' } }, '3: no-sport'],
    [
      'a test of 4 anywhere keeps sport shut',
      { ...READY, tests: tests({ ...GOOD, odd: 4 }) },
      '3: sport-pain',
    ],
    ['no weight shown', { ...READY, testedSets: [] }, '3: no-weight-shown'],
    ['a set without a weight', { ...READY, testedSets: [testedSet('lift', 0, 8, 2)] }, '3: no-weight-shown'],
    [
      'one that hurt 4',
      { ...READY, testedSets: [testedSet('lift', 10, 8, 2, { pain: 4 })] },
      '3: no-weight-shown',
    ],
    ['3', { ...READY, testedSets: [testedSet('lift', 10, 8, 2, { pain: 3 })] }, '4: open'],
    ['of the stage itself', { ...READY, testedSets: [testedSet('jump', 10, 8, 2)] }, '4: open'],
    ['of two stages before', { ...READY, testedSets: [testedSet('curl', 10, 8, 2)] }, '3: no-weight-shown'],
    ['of a hold', { ...READY, testedSets: [testedSet('stand', 10, 1, 0)] }, '3: no-weight-shown'],
  ])('%s', (_, of, expected) => {
    expect(proposed(of)).toBe(expected);
  });

  it.each<[string, LastDone[], string]>([
    ['the stage before done stands for a weight', done(3), '4: open'],
    ['the one before it does not', done(2), '3: no-weight-shown'],
    ['nor what is done to keep strong', done('keepGoing'), '3: no-weight-shown'],
  ])('%s', (_, last, expected) => {
    expect(proposed({ ...READY, testedSets: [] }, null, last)).toBe(expected);
  });

  it.each([
    [2, '2: sudden-start'],
    [3, '3: sudden-start'],
    [4, '4: open'],
  ])('after a sudden start stage %i at most', (most, expected) => {
    expect(proposed(READY, sudden(most))).toBe(expected);
  });

  it('names for each stage the worst of each of its tests, and looks no further than what is shut', () => {
    const twice: Consult['tests'] = [
      { test: 'straight', pain: 1, side: 'right' },
      { test: 'straight', pain: 3, side: 'left' },
      { test: 'held', pain: 2 },
      { test: 'bent', pain: 5 },
    ];
    const { looked } = proposeStage(person({ ...READY, tests: twice }), PROTOCOL, null, []);
    expect(looked.map(({ stage, by }) => [stage, by.map(({ test, pain }) => `${test} ${pain}`)])).toEqual([
      [2, ['straight 3', 'held 2']],
      [3, ['bent 5']],
    ]);
  });

  // Of a protocol by weeks a test may hurt what is usual, up to the ceiling.
  it.each([
    [false, 4, 4, '1: straight-hip-pain'],
    [true, 4, 4, '2: entry-pain'],
    [true, 3, 4, '1: straight-hip-pain'],
  ])('by weeks %s, usual %i, test %i', (byWeeks, usualMorningPain, pain, expected) => {
    const painRule = {
      duringAtMost: { value: 3 }, overUsualAtMost: { value: 1 }, neverAbove: { value: 5 }, usualOnlyFrom: { value: 9 },
      decisionFrom: { value: 7 },
    }; // prettier-ignore
    const weeks = { ...PROTOCOL, byWeeks, painRule } as unknown as Protocol;
    const one = person({ tests: tests({ straight: pain, bent: 5 }), usualMorningPain, irritability: 'low' });
    const { reached, looked } = proposeStage(one, weeks, null, []);
    expect(`${reached}: ${looked.at(-1)?.limit?.code}`).toBe(expected);
  });

  it('begins with stage 1, or with keeping strong where there is nothing else', () => {
    expect(firstStage(PROTOCOL)).toBe(1);
    expect(firstStage(KEEP_ONLY)).toBe('keepGoing');
  });
});

describe('sport', () => {
  const [, , far, sport] = PROTOCOL.stages as unknown as [
    never,
    never,
    Protocol['stages'][0],
    Protocol['stages'][0],
  ];
  it.each<[string, Partial<Consult>, string | null]>([
    ['no test', { tests: [] }, null],
    ['3', { tests: tests({ odd: 3 }) }, null],
    ['4', { tests: tests({ odd: 4, fine: 0 }) }, 'sport-pain'],
    ['irritable', { tests: [], irritability: 'high' }, 'irritable-for-sport'],
  ])('%s', (_, of, expected) => {
    expect(sportLimit(sport, person(of))?.code ?? null).toBe(expected);
    expect(sportLimit(far, person({ ...of, irritability: 'high' }))).toBeNull();
  });
});

describe('the stage that is chosen', () => {
  const effects = (screen: Partial<Consult['screen']> = {}) => {
    const clearances = Object.keys(screen).map((flag) => ({ flag, by: 'Dr Example' }));
    const one = person({
      screen: { ...ALL_CLEAR, ...screen },
      clearances: clearances as Consult['clearances'],
    });
    const found = screenEffects(one, { emergency: {} } as never);
    if ('refusals' in found) throw new Error('the screen must let through');
    return found;
  };
  const choice = (of: Partial<Consult>, protocol = PROTOCOL, held = effects()) =>
    chooseStage(person(of), protocol, held, null, []);
  const LIGHT = effects({ oralSteroid: 'yes' });

  it.each<[string, Partial<Consult>, unknown]>([
    ['the proposal', { ...READY, stage: 'auto' }, [4, 'Sport', 4, 'proposal', []]],
    ['the same, written', { ...READY, stage: 4 }, [4, 'Sport', 4, 'clinician', []]],
    [
      'an earlier one',
      { ...READY, stage: 2, stageBecause: 'slowly' },
      [2, 'Slow', 4, 'clinician', ['own slowly']],
    ],
    [
      'a later one',
      { tests: tests({ straight: 0 }), stage: 3 },
      [3, 'Far', 2, 'clinician', ['own the stage that the test is about']],
    ],
    [
      'keeping strong',
      { ...READY, stage: 'keepGoing' },
      ['keepGoing', 'Keep', 'keepGoing', 'clinician', ['end-of-treatment']],
    ],
  ])('%s', (_, of, expected) => {
    const { chosen, name, proposed: by, chosenBy, because } = choice(of);
    const own = because.flatMap((one) =>
      one.code === 'looked' ? [] : [one.code === 'own' ? `own ${one.reason}` : one.code],
    );
    expect([chosen, name, by, chosenBy, own]).toEqual(expected);
  });

  it('without numbered stages keeping strong is no end of treatment', () => {
    expect(choice({ stage: 'keepGoing' }, KEEP_ONLY).because).toEqual([]);
  });

  it.each<[string, Consult['stage'], number | string | null]>([
    ['auto', 'auto', null],
    ['the first', 1, null],
    ['a later one', 3, 3],
    ['keeping strong', 'keepGoing', 'keepGoing'],
  ])('light holds allow the first alone, whatever is written: %s', (_, stage, written) => {
    expect(choice({ ...READY, stage }, PROTOCOL, LIGHT)).toMatchObject({
      chosen: 1,
      name: 'Hold',
      chosenBy: 'proposal',
      because: [{ code: 'light-holds-only', first: 1, written }],
    });
  });

  const why = { reason: 'test' } as never;
  it.each<[string, Partial<Consult>, unknown]>([
    ['a proposal', { ...READY, stage: 'auto' }, [3, 'Far', 3]],
    ['not what the clinician wrote', { ...READY, stage: 4 }, null],
    ['not the first', { tests: tests({ straight: 9 }), stage: 'auto' }, null],
    ['nor keeping strong', { stage: 'keepGoing' }, null],
  ])('falls back by one: %s', (_, of, expected) => {
    const back = fallenBack(choice(of), PROTOCOL, why);
    expect(back === null ? null : [back.chosen, back.name, back.proposed]).toEqual(expected);
    if (back !== null) expect(back.because.at(-1)).toEqual({ code: 'fell-back', from: 4, to: 3, why });
  });

  it('does not fall back from keeping strong, though it were proposed', () => {
    expect(fallenBack({ ...choice({ stage: 'keepGoing' }), chosenBy: 'proposal' }, PROTOCOL, why)).toBeNull();
  });

  it.each<[string, Partial<Consult>, SuddenStart | null, string]>([
    ['a proposal', { ...READY, stage: 'auto' }, null, ''],
    ['keeping strong', { stage: 'keepGoing' }, null, ''],
    ['the proposal itself', { ...READY, stage: 4 }, null, ''],
    ['the proposal itself without a reason', { ...READY, stage: 4, stageBecause: undefined }, null, ''],
    ['an earlier one without a reason', { ...READY, stage: 1, stageBecause: undefined }, null, ''],
    ['a later one with a reason', { tests: tests({ straight: 0 }), stage: 3 }, null, ''],
    [
      'without',
      { tests: tests({ straight: 0 }), stage: 3, stageBecause: undefined },
      null,
      'stage-above-proposal 3 of 2, shut at 3',
    ],
    [
      'fast work of a sore person, reason or no',
      { ...READY, stage: 4, tests: tests({ straight: 4 }) },
      null,
      'stage-barred 4 sport-pain',
    ],
    [
      'fast work of an irritable one',
      { ...READY, stage: 4, irritability: 'high' },
      null,
      'stage-barred 4 irritable-for-sport',
    ],
    ['more than a sudden start allows', { ...READY, stage: 3 }, sudden(2), 'stage-barred 3 sudden-start'],
    ['what it allows', { ...READY, stage: 2 }, sudden(2), ''],
  ])('is refused: %s', (_, of, start, expected) => {
    const { stageBecause, ...rest } = { ...person(), ...of };
    const consult = (stageBecause === undefined ? rest : { ...rest, stageBecause }) as Consult;
    const chosen = chooseStage(consult, PROTOCOL, effects(), start, []);
    const said = stageRefusals(consult, chosen, PROTOCOL, start).map(({ code, path, why: reason }) => {
      expect([code, path]).toEqual(['does-not-fit', ['stage']]);
      if (reason.reason === 'stage-barred') return `stage-barred ${reason.chosen} ${reason.limit.code}`;
      if (reason.reason === 'stage-above-proposal')
        return `stage-above-proposal ${reason.chosen} of ${reason.proposed}, shut at ${reason.shut?.stage}`;
      return reason.reason;
    });
    expect(said.join()).toBe(expected);
  });

  it('is never refused where it is to keep strong, whatever a keep stage asks of sport', () => {
    const keep = { ...PROTOCOL.stages[4]!, enter: { ...enter([], 1, { sport: true }), words: '' } };
    const protocol = { ...PROTOCOL, stages: [...PROTOCOL.stages.slice(0, 4), keep] } as Protocol;
    const sore = { ...person(), ...READY, irritability: 'high', stage: 'keepGoing' } as Consult;
    const chosen = chooseStage(sore, protocol, effects(), null, []);
    expect(sportLimit(keep, sore)).not.toBeNull();
    expect(stageRefusals(sore, chosen, protocol, sudden(1))).toEqual([]);
  });

  it('has its name, its number and what comes after', () => {
    expect([1, 4, 'keepGoing'].map((name) => stageOf(PROTOCOL, name as 1).name)).toEqual([
      'Hold',
      'Sport',
      'Keep',
    ]);
    expect(() => stageOf(PROTOCOL, 5 as 4)).toThrow('stage 5 of protocol tendon');
    expect(() => stageOf({ ...PROTOCOL, stages: PROTOCOL.stages.slice(0, 4) }, 'keepGoing')).toThrow(
      'keepGoing',
    );
    expect([1, 4, 'keepGoing'].map((name) => stageNumber(PROTOCOL, name as 1))).toEqual([1, 4, 5]);
    const after = (name: 1 | 'keepGoing', protocol = PROTOCOL) =>
      stagesAfter(protocol, name).map(([one]) => one);
    expect(after(1)).toEqual([2, 3, 4, 'keepGoing']);
    expect(after('keepGoing')).toEqual([]);
    expect(after(1, { ...PROTOCOL, stages: PROTOCOL.stages.slice(0, 2) })).toEqual([2]);
  });

  it('tells what a programme is for', () => {
    expect(courseOf(PROTOCOL, 1)).toBe('treatment');
    expect(courseOf(PROTOCOL, 'keepGoing')).toBe('discharge');
    expect(courseOf(KEEP_ONLY, 'keepGoing')).toBe('prevention');
  });
});

describe('the step', () => {
  const earlier = { protocol: 'proximal-hamstring', stage: 2, step: 4 } as never;
  it.each<[string, Partial<Consult>, boolean, number, number | null]>([
    ['as it is written', { step: 3 }, true, 2, 3],
    ['the first of a first revision', {}, false, 2, 1],
    ['nobody knows, where the one before is missing', { revision: 2 }, false, 2, null],
    ['that of the revision before', { revision: 2 }, true, 2, 4],
    ['the first of another stage', { revision: 2 }, true, 3, 1],
    ['the first of another protocol', { revision: 2, protocol: 'other' }, true, 2, 1],
  ])('%s', (_, of, hasEarlier, chosen, expected) => {
    expect(stepNow(person(of), { chosen: chosen as 2 }, hasEarlier ? earlier : null)).toBe(expected);
  });
});
