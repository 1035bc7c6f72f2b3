/**
 * What an entry of a progression offers next, from one state of one exercise: the ways in the order in which they are tried,
 * where it ends, and what stops it. House rules 4 [choice]; repetition maxima 15, 12, 10, 8: summary of Goom 2016 [secondary].
 */
import { describe, expect, it } from 'vitest';
import { triesOf } from '../../src/dosing/tries.ts';
import type { ChangeKind } from '../../src/dosing/dose.ts';
import { amountOf, type Cap, type ProgressionEntry, type Prescribed } from '../../src/dosing/rung.ts';
import {
  STEP_RULES,
  cardOf,
  type LadderCard,
  type LadderExercise,
  type Standing,
  type StepRules,
} from '../../src/dosing/step.ts';
import type { TimedDose } from '../../src/dosing/work.ts';

const SLOW: TimedDose = {
  kind: 'slow',
  sets: 3,
  repetitions: 10,
  holdSeconds: null,
  tempo: { goSeconds: 3, holdSeconds: 0, backSeconds: 3 },
  restSeconds: 90,
  timesPerDay: 1,
  reserve: 3,
};
const HOLD: TimedDose = { ...SLOW, kind: 'hold', repetitions: null, holdSeconds: 30, sets: 4, reserve: null };
const MAXIMUM: TimedDose = { ...SLOW, kind: 'repetition-maximum', repetitions: 15, reserve: 0 };
const CARD: LadderCard = { card: 'a', rangesDeg: [], loadsKg: [0], legs: 'together' };

interface From {
  readonly dose?: Partial<TimedDose>;
  readonly at?: Partial<Prescribed>;
  readonly card?: Partial<LadderCard>;
  readonly harder?: readonly LadderCard[];
  readonly exercise?: Partial<LadderExercise>;
  readonly heaviestKg?: number;
  readonly rules?: Partial<StepRules>;
  readonly capOn?: (at: Prescribed) => Cap | null;
}

function standing(of: From): Standing {
  const at: Prescribed = {
    exercise: 'bow',
    card: 'a',
    dose: { ...SLOW, ...of.dose },
    rangeDeg: null,
    loadKg: 0,
    daysPerWeek: 2,
    ...of.at,
  };
  return {
    exercise: {
      when: 'session',
      cards: [{ ...CARD, ...of.card }, ...(of.harder ?? [])],
      start: at,
      progression: [],
      atMostKg: null,
      setUpSeconds: 0,
      sideChangeSeconds: 0,
      ...of.exercise,
    },
    at,
    heaviestKg: of.heaviestKg ?? 0,
    rules: { ...STEP_RULES, ...of.rules },
    capOn: of.capOn ?? (() => null),
  };
}

const entry = (change: ChangeKind, by: number | null = null, to: number | null = null): ProgressionEntry => ({
  change,
  by,
  to,
});

/** `what: wished: ways`, or what stands against it. */
function offered(change: ProgressionEntry, from: From, of: (at: Prescribed) => string): string {
  const tries = triesOf(change, standing(from));
  if (tries.kind === 'end') return 'end';
  if (tries.kind === 'stopped') return `stopped by ${tries.stoppedBy} at ${tries.wished}`;
  return `${tries.change} ${tries.wished}: ${[...tries.attempts].map(of).join(' ')}`;
}

const volume = ({ dose: { sets, repetitions, holdSeconds } }: Prescribed) =>
  `${sets}x${repetitions ?? `${holdSeconds}s`}`;

describe('repetitions', () => {
  it.each<[string, ProgressionEntry, number, string]>([
    // what                                     entry                          from  ways
    ['four more where nothing is said', entry('repetitions'), 10, 'repetitions 14: 3x14 3x13 3x12 3x11'],
    ['to 20 where nothing is said', entry('repetitions'), 18, 'repetitions 20: 3x20 3x19'],
    ['and no further', entry('repetitions'), 20, 'end'],
    ['to the end that is named', entry('repetitions', 2, 12), 11, 'repetitions 12: 3x12'],
    ['which is an end', entry('repetitions', 2, 12), 12, 'end'],
    ['one at least', entry('repetitions', 0.5, 12), 10, 'repetitions 11: 3x11'],
    ['whole ones', entry('repetitions', 2.9, 20), 10, 'repetitions 12: 3x12 3x11'],
  ])('%s', (_, change, repetitions, expected) => {
    expect(offered(change, { dose: { repetitions } }, volume)).toBe(expected);
  });
});

describe('a hold', () => {
  it.each<[string, ProgressionEntry, number, number, string]>([
    // what                             entry               sets seconds ways
    ['five seconds where nothing is said', entry('hold', null, 45), 3, 30, 'hold 35: 3x35s 2x35s'],
    ['first shorter, then with a set less', entry('hold', 10, 45), 3, 30, 'hold 40: 3x40s 3x35s 2x40s 2x35s'],
    ['to its end', entry('hold', 10, 45), 2, 40, 'hold 45: 2x45s'],
    ['which is an end', entry('hold', 5, 45), 3, 45, 'end'],
    ['with the one set there is', entry('hold', 5, 45), 1, 30, 'hold 35: 1x35s'],
    ['without an end', entry('hold', 5), 3, 30, 'stopped by noTarget at 30'],
  ])('%s', (_, change, sets, holdSeconds, expected) => {
    expect(offered(change, { dose: { ...HOLD, sets, holdSeconds } }, volume)).toBe(expected);
  });
});

describe('sets', () => {
  it.each<[string, ProgressionEntry, Partial<TimedDose>, string]>([
    // Three sets of 10 at 6 s are 180 s; four of 8 are 192 s, four of 7 would be 168 s.
    ['one more, each a little shorter, never less in all', entry('sets', 1, 4), {}, 'sets 4: 4x10 4x9 4x8'],
    ['the most first, fewer then', entry('sets', 2, 5), {}, 'sets 5: 5x10 5x9 5x8 4x10 4x9 4x8'],
    ['one where nothing is said', entry('sets', null, 5), {}, 'sets 4: 4x10 4x9 4x8'],
    ['one at least', entry('sets', 0.5, 5), {}, 'sets 4: 4x10 4x9 4x8'],
    ['to the end', entry('sets', 2, 4), {}, 'sets 4: 4x10 4x9 4x8'],
    ['which is an end', entry('sets', 1, 3), {}, 'end'],
    ['without an end', entry('sets', 1), {}, 'stopped by noTarget at 3'],
    // 2 x 10 s are 20 s: three of 5 s would be less.
    ['of a short hold', entry('sets', 1, 3), { ...HOLD, sets: 2, holdSeconds: 10 }, 'sets 3: 3x10s'],
    // 2 sets of 9 are as much work as 3 of 6, which is no step.
    ['as much work is none', entry('sets', 1, 3), { sets: 2, repetitions: 12 }, 'sets 3: 3x12 3x11 3x10 3x9'],
  ])('%s', (_, change, dose, expected) => {
    expect(offered(change, { dose }, volume)).toBe(expected);
  });
});

describe('tempo', () => {
  const tempo = (goSeconds: number, backSeconds: number) => ({
    dose: { repetitions: 9, tempo: { goSeconds, holdSeconds: 1, backSeconds } },
  });
  const paced = ({ dose }: Prescribed) =>
    `${dose.repetitions}@${dose.tempo.goSeconds}-${dose.tempo.holdSeconds}-${dose.tempo.backSeconds}`;
  it.each<[string, ProgressionEntry, From, string]>([
    [
      'a second a way where nothing is said',
      entry('tempo', null, 4),
      tempo(2, 3),
      'tempo 7: 9@3-1-4 8@3-1-4',
    ],
    ['no further than the end', entry('tempo', 5, 4), tempo(2, 3), 'tempo 8: 9@4-1-4 8@4-1-4'],
    ['quicker too', entry('tempo', 1, 1), tempo(3, 2), 'tempo 3: 9@2-1-1 8@2-1-1'],
    ['quicker no further than the end', entry('tempo', 5, 1), tempo(3, 2), 'tempo 2: 9@1-1-1 8@1-1-1'],
    [
      'one way may have come to its end before',
      entry('tempo', 1, 3),
      tempo(3, 2),
      'tempo 6: 9@3-1-3 8@3-1-3',
    ],
    ['and the other', entry('tempo', 1, 3), tempo(2, 3), 'tempo 6: 9@3-1-3 8@3-1-3'],
    ['both ends are the end', entry('tempo', 1, 3), tempo(3, 3), 'end'],
    ['without an end', entry('tempo', 1), tempo(2, 3), 'stopped by noTarget at 5'],
  ])('%s', (_, change, from, expected) => {
    expect(offered(change, from, paced)).toBe(expected);
  });
});

describe('days', () => {
  const daily = (at: Prescribed) => `${at.daysPerWeek}d:${volume(at)}`;
  it.each<[string, ProgressionEntry, From, string]>([
    [
      'one more, with shorter sessions',
      entry('days', null, 4),
      { dose: { repetitions: 9 } },
      'days 3: 3d:3x9 3d:3x8 3d:2x9 3d:2x8',
    ],
    [
      'the most first',
      entry('days', 2, 4),
      { dose: { repetitions: 8 } },
      'days 4: 4d:3x8 4d:2x8 3d:3x8 3d:2x8',
    ],
    ['one at least', entry('days', 0.5, 4), { dose: { repetitions: 8 } }, 'days 3: 3d:3x8 3d:2x8'],
    ['to the end', entry('days', 3, 3), { dose: { repetitions: 8 } }, 'days 3: 3d:3x8 3d:2x8'],
    ['which is an end', entry('days', 1, 2), {}, 'end'],
    [
      'with the one set there is',
      entry('days', 1, 3),
      { dose: { sets: 1, repetitions: 8 } },
      'days 3: 3d:1x8',
    ],
    ['without an end', entry('days', 1), {}, 'stopped by noTarget at 2'],
  ])('%s', (_, change, from, expected) => {
    expect(offered(change, from, daily)).toBe(expected);
  });
});

describe('the load', () => {
  const loaded = ({ loadKg, dose: { repetitions, holdSeconds } }: Prescribed) =>
    `${loadKg}x${repetitions ?? `${holdSeconds}s`}`;
  const kit = (
    loadsKg: number[],
    loadKg: number,
    dose: Partial<TimedDose> = {},
    exercise: From['exercise'] = {},
  ): From => ({
    card: { loadsKg },
    at: { loadKg },
    dose,
    exercise,
  });
  it.each<[string, ProgressionEntry, From, string]>([
    [
      'within a tenth, the heaviest first, then fewer repetitions with the lightest',
      entry('load'),
      kit([20, 21, 22, 23], 20),
      'load 22: 22x10 21x10 21x10 21x9 21x8',
    ],
    ['a tenth to the gram', entry('load'), kit([10, 11], 10, { repetitions: 8 }), 'load 11: 11x8 11x8'],
    [
      'to the end that is named',
      entry('load', null, 21),
      kit([20, 21, 22], 20, { repetitions: 8 }),
      'load 21: 21x8 21x8',
    ],
    ['which is an end', entry('load', null, 20), kit([20, 21], 20), 'end'],
    ['where the kit ends', entry('load'), kit([20], 20), 'stopped by kit at 20'],
    ['an end below the next weight', entry('load', null, 20.5), kit([20, 21], 20), 'stopped by kit at 20'],
    [
      'the tested load',
      entry('load'),
      kit([20, 21], 20, {}, { atMostKg: 20 }),
      'stopped by testedLoad at 21',
    ],
    [
      'not above the tested load',
      entry('load'),
      kit([20, 21, 22], 20, { repetitions: 8 }, { atMostKg: 21 }),
      'load 21: 21x8 21x8',
    ],
    [
      'over a tenth: repetitions first',
      entry('load'),
      kit([20, 24], 20),
      'repetitions 14: 20x14 20x13 20x12 20x11',
    ],
    ['to 20', entry('load'), kit([20, 24], 20, { repetitions: 19 }), 'repetitions 20: 20x20'],
    ['and then back at 8', entry('load'), kit([20, 24], 20, { repetitions: 20 }), 'load 24: 24x8 24x8'],
    [
      'a hold has no repetitions to give first',
      entry('load'),
      kit([20, 24], 20, { ...HOLD, holdSeconds: 10 }),
      'load 24: 24x10s 24x10s 24x5s',
    ],
  ])('%s', (_, change, from, expected) => {
    expect(offered(change, from, loaded)).toBe(expected);
  });

  it.each<[string, number, number, boolean]>([
    // what                                          load  repetitions  may be loaded for lack of minutes
    ['the first weight may come for lack of minutes', 0, 9, true],
    ['not with few repetitions yet', 0, 8, false],
    ['a second weight does not', 4, 9, false],
  ])('%s', (_, loadKg, repetitions, expected) => {
    const tries = triesOf(entry('load'), standing(kit([0, 4, 8], loadKg, { repetitions })));
    expect(tries).toMatchObject({ kind: 'tries', change: 'repetitions' });
    const lacking = tries.kind === 'tries' ? tries.forLackOfMinutes : undefined;
    expect(lacking !== undefined).toBe(expected);
    if (expected) expect(lacking).toMatchObject({ kind: 'tries', change: 'load', wished: 4 });
  });

  // Epley is the gentler: 20 kg x (1 + 15/30) / (1 + 12/30) = 21.43 kg.
  it.each<[string, From, string]>([
    [
      'the next lower maximum with no more than it allows',
      kit([20, 21, 21.5], 20, MAXIMUM),
      'load 21: 21x12 21x12 21x11 21x10 21x9 21x8',
    ],
    // With three in reserve: 20 x (1 + 18/30) / (1 + 15/30) = 21.33 kg.
    [
      'counted with what is left',
      kit([20, 21.2, 21.4], 20, { ...MAXIMUM, reserve: 3 }),
      'load 21.2: 21.2x12 21.2x12 21.2x11 21.2x10 21.2x9 21.2x8',
    ],
    ['the last is 8', kit([20, 20.5], 20, { ...MAXIMUM, repetitions: 9 }), 'load 20.5: 20.5x8 20.5x8'],
    ['and the end', kit([20, 21], 20, { ...MAXIMUM, repetitions: 8 }), 'end'],
  ])('of maxima: %s', (_, from, expected) => {
    expect(offered(entry('load'), from, loaded)).toBe(expected);
  });

  it('of maxima, taken down for the range, comes back to the heaviest before the end', () => {
    const eight = kit([20, 21], 20, { ...MAXIMUM, repetitions: 8 });
    expect(offered(entry('load'), { ...eight, heaviestKg: 21 }, loaded)).toBe('load 21: 21x8 21x8');
    expect(offered(entry('load'), { ...eight, heaviestKg: 20 }, loaded)).toBe('end');
  });

  it.each<[string, number, number, number, string]>([
    // what                                        named  start  now  ways
    ['an end that is named and lower than the start', 6, 15, 6, 'end'],
    ['before it', 6, 15, 8, 'load 20.5: 20.5x6 20.5x6'],
    [
      'an end that is no lower than the start does not count',
      15,
      15,
      12,
      'load 20.5: 20.5x10 20.5x10 20.5x9 20.5x8',
    ],
  ])('of maxima, to %s', (_, to, first, now, expected) => {
    const dose = { ...MAXIMUM, repetitions: now };
    const start = { ...standing({}).at, dose: { ...MAXIMUM, repetitions: first } };
    const progression = [entry('load'), entry('repetitions', null, to)];
    const from = kit([20, 20.5], 20, dose, { start, progression });
    expect(offered(entry('load'), from, loaded)).toBe(expected);
  });

  it('a maximum goes by its load where it has one, and by repetitions where it has none', () => {
    const dose = { ...MAXIMUM, repetitions: 15 };
    expect(offered(entry('repetitions', 2, 18), kit([20, 21], 20, dose), loaded)).toMatch(/^load 21: 21x12 /);
    expect(offered(entry('repetitions', 2, 18), kit([0, 21], 0, dose), loaded)).toBe(
      'repetitions 17: 0x17 0x16',
    );
    expect(offered(entry('repetitions', 2, 18), kit([20, 21], 20, { repetitions: 15 }), loaded)).toBe(
      'repetitions 17: 20x17 20x16',
    );
  });

  it.each<[string, ProgressionEntry, number[], From['exercise'], string]>([
    ['to half as much again', entry('load'), [10, 12, 15, 16], { feltGrowth: 1.5 }, 'load 15: 15x10 12x10'],
    [
      'or to the next weight, however far',
      entry('load'),
      [10, 24, 25],
      { feltGrowth: 1.5 },
      'load 24: 24x10',
    ],
    ['to the tested load', entry('load'), [10, 12, 15], { feltGrowth: 1.5, atMostKg: 12 }, 'load 12: 12x10'],
    [
      'to the end',
      entry('load', null, 12),
      [10, 12, 15],
      { feltGrowth: 1.5, atMostKg: 15 },
      'load 12: 12x10',
    ],
    ['where the kit ends', entry('load'), [10], { feltGrowth: 1.5 }, 'stopped by kit at 10'],
  ])('that is felt for goes %s', (_, change, loadsKg, exercise, expected) => {
    expect(offered(change, kit(loadsKg, 10, {}, exercise), loaded)).toBe(expected);
  });
});

describe('the range', () => {
  const far = ({ rangeDeg, loadKg, dose: { repetitions } }: Prescribed) =>
    `${rangeDeg}°/${loadKg}x${repetitions}`;
  const ranges = (rangesDeg: number[], rangeDeg: number | null, of: From = {}): From => ({
    card: { rangesDeg, loadsKg: [0] },
    dose: { repetitions: 8 },
    ...of,
    at: { rangeDeg, ...of.at },
  });
  it.each<[string, ProgressionEntry, From, string]>([
    ['5° where nothing is said', entry('range'), ranges([45, 50, 55], 45), 'range 50: 50°/0x8 50°/0x8'],
    [
      'the widest first',
      entry('range', 10),
      ranges([45, 50, 55, 60], 45),
      'range 55: 55°/0x8 50°/0x8 55°/0x8 50°/0x8',
    ],
    ['15° at most', entry('range', 40), ranges([45, 60, 61], 45), 'range 60: 60°/0x8 60°/0x8'],
    ['5° at least', entry('range', 10), ranges([45, 49, 55], 45), 'range 55: 55°/0x8 55°/0x8'],
    ['less only to the end', entry('range', 10), ranges([45, 48], 45), 'range 48: 48°/0x8 48°/0x8'],
    [
      'further than asked where no setting is nearer',
      entry('range', 5),
      ranges([45, 57], 45),
      'range 57: 57°/0x8 57°/0x8',
    ],
    ['but not further than 15°', entry('range', 5), ranges([45, 61], 45), 'stopped by rangeStep at 61'],
    [
      'to the end that is named',
      entry('range', 10, 50),
      ranges([45, 50, 55], 45),
      'range 50: 50°/0x8 50°/0x8',
    ],
    ['which is an end', entry('range', 10, 50), ranges([45, 50, 55], 50), 'end'],
    ['the last setting is an end', entry('range', 10), ranges([45, 50], 50), 'end'],
    ['of a card that has none', entry('range', 10), ranges([], 45), 'stopped by fixedRange at 45'],
    ['of what is not graded', entry('range', 10), ranges([], null), 'stopped by fixedRange at 0'],
    [
      'then a lighter load, and with the lightest fewer repetitions',
      entry('range', 5),
      ranges([45, 50], 45, {
        card: { rangesDeg: [45, 50], loadsKg: [0, 2, 4] },
        at: { loadKg: 4 },
        dose: { repetitions: 9 },
      }),
      'range 50: 50°/4x9 50°/2x9 50°/0x9 50°/0x9 50°/0x8',
    ],
    [
      'never for a range that a cap bars at this load',
      entry('range', 10),
      ranges([45, 50, 55], 45, {
        card: { rangesDeg: [45, 50, 55], loadsKg: [0, 4] },
        at: { loadKg: 4 },
        capOn: ({ rangeDeg }) => ((rangeDeg ?? 0) > 50 ? 'hipFlexion' : null),
      }),
      'range 55: 55°/4x8 50°/4x8 50°/0x8 50°/0x8',
    ],
    [
      'nor for any where a cap bars all',
      entry('range', 10),
      ranges([45, 50], 45, {
        card: { rangesDeg: [45, 50], loadsKg: [0, 4] },
        at: { loadKg: 4 },
        capOn: () => 'hipFlexion',
      }),
      'range 50: 50°/4x8',
    ],
  ])('%s', (_, change, from, expected) => {
    expect(offered(change, from, far)).toBe(expected);
  });
});

describe('a harder card', () => {
  const harder: LadderCard = { card: 'b', rangesDeg: [20, 30, 40], loadsKg: [0, 4, 6], legs: 'each' };
  const whole = (at: Prescribed) => `${at.card}/${at.rangeDeg ?? '-'}°/${at.loadKg}/${volume(at)}`;
  it.each<[string, From, string]>([
    ['there is none', {}, 'stopped by noHarderCard at a'],
    ['the last is the end', { card: { card: 'z' }, harder: [CARD], at: { card: 'a' } }, 'end'],
    [
      'no further and no heavier, with few repetitions, then with a set less',
      { harder: [harder], at: { rangeDeg: 30, loadKg: 5 }, dose: { repetitions: 12 } },
      'lever b: b/30°/4/3x8 b/30°/0/3x8 b/30°/0/3x8 b/30°/0/2x8 b/20°/4/3x8 b/20°/0/3x8 b/20°/0/3x8 b/20°/0/2x8',
    ],
    [
      'no more repetitions than there were',
      { harder: [{ ...harder, rangesDeg: [] }], dose: { repetitions: 6, sets: 1 } },
      'lever b: b/-°/0/1x6 b/-°/0/1x6',
    ],
    [
      'from what is not graded at its gentlest',
      { harder: [harder], dose: { repetitions: 8, sets: 1 } },
      'lever b: b/20°/0/1x8 b/20°/0/1x8',
    ],
    [
      'a hold by its seconds',
      { harder: [{ ...harder, rangesDeg: [] }], dose: { ...HOLD, sets: 1, holdSeconds: 15 } },
      'lever b: b/-°/0/1x15s b/-°/0/1x15s b/-°/0/1x10s b/-°/0/1x5s',
    ],
    // What stands on a machine begins at its lightest.
    [
      'a load that all lie above',
      {
        harder: [{ ...harder, rangesDeg: [], loadsKg: [10] }],
        at: { loadKg: 5 },
        dose: { repetitions: 8, sets: 1 },
      },
      'lever b: b/-°/5/1x8',
    ],
  ])('%s', (_, from, expected) => {
    expect(offered(entry('lever'), from, whole)).toBe(expected);
  });

  it('a card that is not of the exercise is a fault of the program', () => {
    const { exercise, at } = standing({});
    expect(cardOf(exercise, at).card).toBe('a');
    expect(() => cardOf(exercise, { ...at, card: 'c' })).toThrow('card c is not one of the exercise bow');
  });
});

describe('what does not change so', () => {
  it.each<[string, ProgressionEntry, From, string]>([
    ['a hold has no tempo to change', entry('tempo', 1, 4), { dose: HOLD }, 'stopped by kind at 6'],
    ['a hold has no repetitions', entry('repetitions', 1, 4), { dose: HOLD }, 'stopped by kind at 0'],
    ['repetitions are not held', entry('hold', 5, 45), {}, 'stopped by kind at 0'],
  ])('%s', (_, change, from, expected) => {
    expect(offered(change, from, volume)).toBe(expected);
  });

  it.each<[ChangeKind, number | string | null]>([
    ['range', 40],
    ['load', 6],
    ['repetitions', 10],
    ['hold', null],
    ['sets', 3],
    ['tempo', 5],
    ['days', 2],
    ['lever', 'a'],
  ])('%s changes %s', (change, expected) => {
    const tempo = { goSeconds: 3, holdSeconds: 1, backSeconds: 2 };
    const { at } = standing({ dose: { tempo }, at: { rangeDeg: 40, loadKg: 6 } });
    expect(amountOf(change, at)).toBe(expected);
  });
});
