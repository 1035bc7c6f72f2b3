import { describe, expect, it } from 'vitest';
import { loadFor, type LoadRules } from '../../src/dosing/load.ts';
import type { TestedSet, WantedSet } from '../../src/dosing/tested.ts';

const RULES: LoadRules = { formula: 'epley', painAtMost: 3, capacityAbove: 15, maximumAllowed: true };
const SLOW = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
const TESTED: TestedSet = { loadKg: 20, repetitions: 10, reserve: 2, rangeDeg: 45, tempo: SLOW, pain: 2 };
const WANTED: WantedSet = { repetitions: 12, reserve: 3, rangeDeg: 45, tempo: SLOW, atMostKg: null };

// Romanian deadlift to 45°, 70 kg and 1.75 m, reference model: 62 N·m with 20 kg and 82 with 40, so 42 with none.
const HINGE = { unloadedNm: 42, testedNm: 62 };

describe('loadFor', () => {
  it('scales kilograms by effort: 20 kg x 10 with 2 left, for 12 with 3 left, is 20 x 1.4 / 1.5 by Epley', () => {
    expect(loadFor(TESTED, WANTED, RULES, null)).toMatchObject({
      loadKg: expect.closeTo(18.667, 3),
      why: { decidedBy: 'kilograms', testedToFailure: 12, wantedToFailure: 15, byHipMomentKg: null },
    });
  });

  it('takes the hip moment when it is lower: 62 N·m x 0.9333 leaves 15.87 N·m over the body, 15.87 kg', () => {
    expect(loadFor(TESTED, WANTED, RULES, HINGE)).toMatchObject({
      loadKg: expect.closeTo(15.867, 3),
      why: { decidedBy: 'hipMoment', byKilogramsKg: expect.closeTo(18.667, 3) },
    });
  });

  it('takes the kilograms when they are lower: fewer repetitions raise the moment load further', () => {
    const answer = loadFor(TESTED, { ...WANTED, repetitions: 6, reserve: 2 }, RULES, HINGE);
    expect(answer).toMatchObject({
      loadKg: expect.closeTo((20 * 1.4) / (1 + 8 / 30), 6),
      why: { decidedBy: 'kilograms' },
    });
  });

  it('stays at the limit of the stage', () => {
    const answer = loadFor(TESTED, { ...WANTED, repetitions: 6, atMostKg: 20 }, RULES, null);
    expect(answer).toMatchObject({ loadKg: 20, why: { decidedBy: 'limit' } });
  });

  it('over 15 wanted asks both formulas and takes the lower ratio: 15 with 3 left from 20 kg x 12 by Brzycki', () => {
    const answer = loadFor(TESTED, { ...WANTED, repetitions: 15 }, RULES, null);
    expect(answer).toMatchObject({ loadKg: expect.closeTo((20 * (37 - 18)) / (37 - 12), 6) });
  });

  it('does not use a set that hurt more than 3', () => {
    expect(loadFor({ ...TESTED, pain: 4 }, WANTED, RULES, null)).toEqual({
      none: true,
      why: { rule: 'pain', tested: 4, needed: 3 },
    });
  });

  it('never goes across ranges: a test to 45° says nothing of 60°', () => {
    expect(loadFor(TESTED, { ...WANTED, rangeDeg: 60 }, RULES, null)).toEqual({
      none: true,
      why: { rule: 'range', tested: 45, needed: 60 },
    });
  });

  it('uses a test that went further than what is prescribed', () => {
    expect(loadFor({ ...TESTED, rangeDeg: 70 }, WANTED, RULES, null)).toHaveProperty('loadKg');
  });

  it('says when the range of the test was not recorded', () => {
    expect(loadFor({ ...TESTED, rangeDeg: null }, WANTED, RULES, null)).toMatchObject({
      why: { rangeRecorded: false },
    });
  });

  it('does not use a quicker test: 4 s a repetition for 6 s', () => {
    const quick = { goSeconds: 2, holdSeconds: 0, backSeconds: 2 };
    expect(loadFor({ ...TESTED, tempo: quick }, WANTED, RULES, null)).toEqual({
      none: true,
      why: { rule: 'tempo', tested: 4, needed: 6 },
    });
  });

  it('keeps more than 15 repetitions as capacity: the same load for no more than was shown', () => {
    const capacity = { ...TESTED, repetitions: 20, reserve: 0 };
    expect(loadFor(capacity, WANTED, RULES, HINGE)).toMatchObject({
      loadKg: 20,
      why: { decidedBy: 'capacity', ratio: 1 },
    });
    expect(loadFor(capacity, { ...WANTED, repetitions: 20 }, RULES, HINGE)).toEqual({
      none: true,
      why: { rule: 'capacity', testedToFailure: 20, wantedToFailure: 23 },
    });
  });

  it('works out no maximum where none is allowed', () => {
    const young = { ...RULES, maximumAllowed: false };
    expect(loadFor(TESTED, { ...WANTED, repetitions: 6, reserve: 3 }, young, null)).toMatchObject({
      loadKg: 20,
    });
    expect(loadFor(TESTED, WANTED, young, null)).toMatchObject({ none: true, why: { rule: 'capacity' } });
  });

  it('without a weight gives 0 kg for no more than was shown, and none for more', () => {
    const unloaded = { ...TESTED, loadKg: 0 };
    const moment = { unloadedNm: 42, testedNm: 42 };
    expect(loadFor(unloaded, { ...WANTED, repetitions: 8 }, RULES, moment)).toMatchObject({ loadKg: 0 });
    expect(loadFor(unloaded, WANTED, RULES, moment)).toMatchObject({ none: true, why: { rule: 'unloaded' } });
  });

  it('gives none when the body alone is more than the test allows', () => {
    const light = { ...TESTED, loadKg: 2 };
    expect(loadFor(light, WANTED, RULES, { unloadedNm: 42, testedNm: 44 })).toMatchObject({
      none: true,
      why: { rule: 'unloaded' },
    });
  });

  it('gives none over 25 repetitions to failure', () => {
    expect(loadFor(TESTED, { ...WANTED, repetitions: 24 }, RULES, null)).toMatchObject({
      none: true,
      why: { rule: 'tooManyRepetitions', wantedToFailure: 27 },
    });
  });

  it.each<[string, Partial<TestedSet>, Partial<WantedSet>, string]>([
    // what is on the border                          tested                          wanted                        answer
    ['pain of 3', { pain: 3 }, {}, 'kilograms'],
    [
      '15 to failure are a maximum still',
      { repetitions: 13, reserve: 2 },
      { repetitions: 8, reserve: 2 },
      'kilograms',
    ],
    ['16 are capacity', { repetitions: 14, reserve: 2 }, { repetitions: 8, reserve: 2 }, 'capacity'],
    ['as many as were shown', { repetitions: 18, reserve: 2 }, { repetitions: 18, reserve: 2 }, 'capacity'],
    [
      'one more than was shown',
      { repetitions: 18, reserve: 2 },
      { repetitions: 19, reserve: 2 },
      'none: capacity',
    ],
    ['no weight for as many as were shown', { loadKg: 0 }, { repetitions: 10, reserve: 2 }, 'kilograms'],
    ['no weight for one more', { loadKg: 0 }, { repetitions: 11, reserve: 2 }, 'none: unloaded'],
    ['a range that nobody asks for', { rangeDeg: 10 }, { rangeDeg: null }, 'kilograms'],
    ['a tempo that was not recorded', { tempo: null }, {}, 'kilograms'],
    [
      'a tempo that nobody asks for',
      { tempo: { goSeconds: 1, holdSeconds: 0, backSeconds: 1 } },
      { tempo: null },
      'kilograms',
    ],
    ['the same tempo', { tempo: { goSeconds: 2, holdSeconds: 2, backSeconds: 2 } }, {}, 'kilograms'],
    ['a limit as high as the answer', {}, { repetitions: 10, reserve: 2, atMostKg: 20 }, 'kilograms'],
    ['a limit below it', {}, { repetitions: 10, reserve: 2, atMostKg: 19.9 }, 'limit'],
  ])('%s', (_, tested, wanted, expected) => {
    const answer = loadFor({ ...TESTED, ...tested }, { ...WANTED, ...wanted }, RULES, null);
    expect('none' in answer ? `none: ${answer.why.rule}` : answer.why.decidedBy).toBe(expected);
  });

  it.each<[string, number, number, number | null]>([
    // what                                                 unloaded  tested  kg by the hip moment
    ['a steep one: 40 N·m of which 20 are the weight', 20, 40, (40 * (1.4 / 1.5) - 20) / (20 / 20)],
    ['twice as steep, half the kilograms of it', 20, 60, (60 * (1.4 / 1.5) - 20) / (40 / 20)],
    ['a weight that turns nothing', 42, 42, null],
    ['a weight that turns against it', 42, 40, null],
  ])('of the hip moment: %s', (_, unloadedNm, testedNm, byHipMomentKg) => {
    const answer = loadFor(TESTED, WANTED, RULES, { unloadedNm, testedNm });
    const expected = byHipMomentKg === null ? null : expect.closeTo(byHipMomentKg, 9);
    expect(answer).toMatchObject({ why: { byHipMomentKg: expected } });
  });

  it('says that the range was recorded', () => {
    expect(loadFor(TESTED, WANTED, RULES, null)).toMatchObject({ why: { rangeRecorded: true } });
  });
});
