/**
 * What of a progression is asked in which order, and what a whole session may hold. House rules 4 [choice]: without a weight
 * repetitions, a harder card and range come before a first one.
 */
import { describe, expect, it } from 'vitest';
import type { ChangeKind } from '../../src/dosing/dose.ts';
import { entriesOf, sessionLimit, type LadderSearch, type Trial } from '../../src/dosing/ladderSearch.ts';
import type { Prescribed, ProgressionEntry } from '../../src/dosing/rung.ts';
import type { LadderExercise } from '../../src/dosing/step.ts';
import type { TimedDose } from '../../src/dosing/work.ts';

const SLOW: TimedDose = {
  kind: 'slow',
  sets: 2,
  repetitions: 10,
  holdSeconds: null,
  tempo: { goSeconds: 3, holdSeconds: 0, backSeconds: 3 },
  restSeconds: 60,
  timesPerDay: 1,
  reserve: 3,
};
const HOLD: TimedDose = { ...SLOW, kind: 'hold', repetitions: null, holdSeconds: 30, reserve: null };

const entry = (change: ChangeKind): ProgressionEntry => ({ change, by: null, to: 7 });
const exercise = (when: LadderExercise['when'], ...changes: ChangeKind[]) =>
  ({
    when,
    cards: [{ card: 'bow', rangesDeg: [], loadsKg: [0], legs: 'together' }],
    progression: changes.map(entry),
    setUpSeconds: 0,
    sideChangeSeconds: 0,
  }) as unknown as LadderExercise;
const at = (dose: TimedDose, loadKg = 0): Prescribed => ({
  exercise: 'bow',
  card: 'bow',
  dose,
  rangeDeg: null,
  loadKg,
  daysPerWeek: 2,
});

describe('what is asked first', () => {
  it.each<[what: string, progression: ChangeKind[], now: Prescribed, order: string]>([
    ['with a weight as it is written', ['load', 'sets', 'repetitions'], at(SLOW, 5), 'load sets repetitions'],
    ['a hold as it is written', ['load', 'hold'], at(HOLD), 'load hold'],
    ['what never carries one as it is written', ['range', 'repetitions'], at(SLOW), 'range repetitions'],
    ['without one repetitions and a harder card first', ['load'], at(SLOW), 'repetitions lever load'],
    [
      'then range, the load last of the four, and the rest in its order',
      ['load', 'sets', 'range', 'tempo'],
      at(SLOW),
      'repetitions lever range load sets tempo',
    ],
  ])('%s', (_, progression, now, order) => {
    expect(
      entriesOf(exercise('session', ...progression), now)
        .map(({ change }) => change)
        .join(' '),
    ).toBe(order);
  });

  it('keeps the end that the protocol writes, and none where it names no such change', () => {
    const [repetitions, lever, load] = entriesOf(exercise('session', 'load', 'repetitions'), at(SLOW));
    expect([repetitions, lever, load].map((one) => one?.to)).toEqual([7, null, 7]);
  });
});

// Two sets of ten at 3-0-3 with a minute between: 2 x 60 + 60 s.
const MINUTES = 3;

describe('what a session holds', () => {
  const limits = { compressionCapBw: 1, cardsAboveHalfCap: 1, minutes: 2 * MINUTES };
  const limitFor = (
    whens: readonly LadderExercise['when'][],
    squeezesBw: readonly number[],
    over: Partial<typeof limits> | { readonly minutes: null } = {},
  ) =>
    sessionLimit(
      {
        exercises: whens.map((when) => exercise(when)),
        limits: { ...limits, ...over },
      } as unknown as LadderSearch,
      {
        exercises: whens.map(() => at(SLOW)),
        burdens: whens.map((_, index) => ({ measured: { compressionBw: squeezesBw[index] } })),
      } as unknown as Omit<Trial, 'below'>,
    );

  it.each<[what: string, whens: LadderExercise['when'][], squeezesBw: number[], limit: string | null]>([
    ['one card above half the cap', ['session', 'session'], [0.51, 0.5], null],
    ['two', ['session', 'session'], [0.51, 0.51], 'cardsAboveHalfCap'],
    ['two, but on different days', ['session', 'between'], [0.51, 0.51], null],
    ['two, one of which is done every day', ['session', 'daily'], [0.51, 0.51], 'cardsAboveHalfCap'],
    ['two between sessions', ['between', 'between'], [0.51, 0.51], 'cardsAboveHalfCap'],
    ['as many minutes as there are', ['session', 'session'], [0, 0], null],
    ['more', ['session', 'session', 'session'], [0, 0, 0], 'minutes'],
    ['more, but on different days', ['session', 'session', 'between'], [0, 0, 0], null],
  ])('%s', (_, whens, squeezesBw, limit) => expect(limitFor(whens, squeezesBw) ?? null).toBe(limit));

  it('is as long as it takes where nobody set its minutes', () => {
    expect(limitFor(['session', 'session', 'session'], [0, 0, 0], { minutes: null }) ?? null).toBeNull();
  });
});
