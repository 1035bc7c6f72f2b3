import { describe, expect, it } from 'vitest';
import type { LadderLimits } from '../../src/dosing/ladderSearch.ts';
import type { Measure } from '../../src/dosing/growth.ts';
import { MOST_STEPS, ladderOfSteps, type Ladder } from '../../src/dosing/ladder.ts';
import type { Cap, ProgressionEntry, Prescribed, Rung } from '../../src/dosing/rung.ts';
import type { LadderCard, LadderExercise } from '../../src/dosing/step.ts';
import type { TimedDose } from '../../src/dosing/work.ts';

const LIMITS: LadderLimits = {
  stepGrowth: 1.3,
  weekGrowth: 1.3,
  floor: { compressionBw: 0.1, tensionBw: 0.1 },
  compressionCapBw: 2,
  cardsAboveHalfCap: 2,
  minutes: null,
};
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
const DEGREES = [45, 50, 55, 60, 65, 70, 75, 80, 85, 90];

const change = (
  kind: ProgressionEntry['change'],
  by: number | null = null,
  to: number | null = null,
): ProgressionEntry => ({
  change: kind,
  by,
  to,
});

interface Wanted extends Partial<Omit<LadderExercise, 'start' | 'cards'>> {
  readonly name?: string;
  readonly card?: Partial<LadderCard>;
  readonly harder?: LadderCard[];
  readonly start?: Partial<Prescribed>;
}

function exercise({ name = 'a', card = {}, harder = [], start = {}, ...more }: Wanted): LadderExercise {
  return {
    when: 'session',
    cards: [{ card: name, rangesDeg: [], loadsKg: [0], legs: 'together', ...card }, ...harder],
    start: { exercise: name, card: name, dose: SLOW, rangeDeg: null, loadKg: 0, daysPerWeek: 3, ...start },
    progression: [],
    atMostKg: null,
    setUpSeconds: 0,
    sideChangeSeconds: 0,
    ...more,
  };
}

// Squeeze and moment that do not change, so that only what a test is about can stop a step.
const still: Measure = () => ({
  compressionBw: 0.2,
  tensionBw: 2,
  hipMomentNm: 50,
  compressionTimeBwS: 0.6,
  tensionTimeBwS: 0.6,
  refusedBy: null,
});

// Romanian deadlift, 70 kg and 1.75 m, reference model: peak squeeze at 45, 70 and 90° with 20 and 40 kg; between them lines.
const DEADLIFT_BW: Record<number, readonly [number, number]> = {
  45: [0.56, 0.75],
  70: [1.53, 2.09],
  90: [2.49, 3.39],
};
const DEADLIFT_NM: Record<number, readonly [number, number]> = {
  45: [62, 82],
  70: [96, 130],
  90: [118, 159],
};
function between(table: Record<number, readonly [number, number]>, deg: number, kg: number): number {
  const [low, high] = deg <= 70 ? [45, 70] : [70, 90];
  const at = (row: number) => {
    const [twenty, forty] = table[row]!;
    return twenty + ((forty - twenty) * (kg - 20)) / 20;
  };
  return at(low) + ((at(high) - at(low)) * (deg - low)) / (high - low);
}
const deadlift =
  (capDeg: number, capBw: number): Measure =>
  (_, { rangeDeg, loadKg }) => {
    const compressionBw = between(DEADLIFT_BW, rangeDeg ?? 45, loadKg);
    const over: Cap | null = compressionBw > capBw ? 'compression' : null;
    return {
      compressionBw,
      tensionBw: 2,
      hipMomentNm: between(DEADLIFT_NM, rangeDeg ?? 45, loadKg),
      compressionTimeBwS: 4 * compressionBw,
      tensionTimeBwS: 4 * compressionBw,
      refusedBy: (rangeDeg ?? 0) > capDeg ? 'hipFlexion' : over,
    };
  };

function climbed(ladder: Ladder) {
  if ('none' in ladder) throw new Error(JSON.stringify(ladder.why));
  return ladder;
}
const states = (rungs: readonly Rung[], of: (at: Prescribed) => unknown) =>
  rungs.map((rung) => of(rung.exercises[0]!));
const climb = (one: LadderExercise, measure = still, limits = LIMITS) =>
  climbed(ladderOfSteps([one], limits, measure));

describe('the range', () => {
  const hinge = (loadKg: number, progression: ProgressionEntry[]) =>
    exercise({
      card: { rangesDeg: DEGREES, loadsKg: [0, 5, 10, 15, 20, 25, 30] },
      start: { rangeDeg: 45, loadKg },
      progression,
    });

  it('opens a Romanian deadlift from 45° step by step, never 45° to 70° at once (0.56 to 1.53, 2.7 times)', () => {
    const { rungs, ends } = climb(hinge(20, [change('range', 10)]), deadlift(70, 2));
    const peaks = rungs.map(({ exercises: [at] }) => between(DEADLIFT_BW, at!.rangeDeg!, at!.loadKg));
    const growths = peaks.slice(1).map((peak, i) => peak / peaks[i]!);
    expect(Math.max(...growths)).toBeLessThanOrEqual(1.3);
    expect(rungs[1]?.changed).toEqual([
      {
        exercise: 'a',
        from: 45,
        to: 50,
        wished: 55,
        stoppedBy: 'compressionGrowth',
        eased: expect.anything(),
      },
    ]);
    expect(ends).toEqual([
      { exercise: 'a', change: 'range', at: 70, reached: 'cap', stoppedBy: 'hipFlexion' },
    ]);
  });

  it('solves the load down when even the smallest opening is too much', () => {
    const { rungs } = climb(hinge(20, [change('range', 10)]), deadlift(70, 2));
    // 45° with 20 kg is 0.56; 50° with 20 kg is 0.754, with 15 kg 0.689, and 1.3 x 0.56 is 0.728.
    expect(rungs[1]?.exercises[0]).toMatchObject({ rangeDeg: 50, loadKg: 15 });
    expect(rungs[1]?.changed[0]?.eased).toEqual([{ change: 'load', from: 20, to: 15 }]);
  });

  it('does not give the load away for a range that a cap bars at this load', () => {
    const { rungs, ends } = climb(hinge(20, [change('range', 10)]), deadlift(90, 0.7));
    expect(states(rungs, (at) => [at.rangeDeg, at.loadKg])).toEqual([[45, 20]]);
    expect(ends[0]).toMatchObject({ at: 45, reached: 'cap', stoppedBy: 'compression' });
  });

  it('waits when the next setting is more than 15° away', () => {
    const steps = exercise({
      card: { rangesDeg: [66, 92] },
      start: { rangeDeg: 66 },
      progression: [change('range')],
    });
    expect(climb(steps).ends).toEqual([
      { exercise: 'a', change: 'range', at: 66, reached: 'stopped', stoppedBy: 'rangeStep' },
    ]);
  });

  it('of a card that cannot be graded stays', () => {
    expect(climb(exercise({ progression: [change('range')] })).ends).toEqual([
      { exercise: 'a', change: 'range', at: null, reached: 'stopped', stoppedBy: 'fixedRange' },
    ]);
  });
});

describe('the load', () => {
  it('goes by repetitions to 20 and back at 8 when the kit steps by more than 10 %', () => {
    const one = exercise({
      card: { loadsKg: [0, 8, 10] },
      start: { loadKg: 8, dose: { ...SLOW, repetitions: 12 } },
      progression: [change('load')],
    });
    const { rungs, ends } = climb(one);
    expect(states(rungs, (at) => [at.loadKg, at.dose.repetitions])).toEqual([
      [8, 12],
      [8, 15],
      [8, 19],
      [8, 20],
      [10, 8],
    ]);
    expect(rungs.map((rung) => rung.change)).toEqual([
      null,
      'repetitions',
      'repetitions',
      'repetitions',
      'load',
    ]);
    expect(ends).toEqual([{ exercise: 'a', change: 'load', at: 10, reached: 'stopped', stoppedBy: 'kit' }]);
  });

  it('keeps the repetitions when the kit steps by 10 % or less', () => {
    const one = exercise({
      card: { loadsKg: [0, 20, 21, 22, 23] },
      start: { loadKg: 20 },
      progression: [change('load')],
    });
    expect(states(climb(one).rungs, (at) => [at.loadKg, at.dose.repetitions])).toEqual([
      [20, 10],
      [22, 10],
      [23, 10],
    ]);
  });

  it.each([
    ['1.5 times the kilograms', [0, 10, 12, 14, 15, 18, 20, 25], 12, [12, 18, 25]],
    ['the next weight of the kit, where it is further off', [0, 4, 12, 16, 40], 4, [4, 12, 16, 40]],
  ])('that is felt for goes on to %s at most', (_, loadsKg, loadKg, expected) => {
    const one = exercise({
      card: { loadsKg },
      start: { loadKg },
      feltGrowth: 1.5,
      progression: [change('load')],
    });
    expect(states(climb(one).rungs, (at) => at.loadKg)).toEqual(expected);
  });

  it('stays at the tested load where the stage says so', () => {
    const one = exercise({
      card: { loadsKg: [20, 21, 22] },
      start: { loadKg: 20 },
      atMostKg: 21,
      progression: [change('load')],
    });
    const { rungs, ends } = climb(one);
    expect(states(rungs, (at) => at.loadKg)).toEqual([20, 21]);
    expect(ends[0]).toMatchObject({ stoppedBy: 'testedLoad' });
  });

  it('follows the repetition maxima from 15 to 8 and has then come to its end', () => {
    const dose: TimedDose = { ...SLOW, kind: 'repetition-maximum', repetitions: 15, reserve: 0 };
    const loadsKg = Array.from({ length: 60 }, (_, i) => 20 + i * 0.5);
    const { rungs, ends } = climb(
      exercise({ card: { loadsKg }, start: { loadKg: 20, dose }, progression: [change('load')] }),
    );
    // Epley is the gentler: 20 x 1.5 / 1.4 = 21.4, 21 x 1.4 / 1.3333 = 22.05, 22 x 1.3333 / 1.2667 = 23.2.
    expect(states(rungs, (at) => [at.dose.repetitions, at.loadKg])).toEqual([
      [15, 20],
      [12, 21],
      [10, 22],
      [8, 23],
    ]);
    expect(ends[0]).toMatchObject({ reached: 'end', stoppedBy: null });
  });

  it('of a card without a pose grows by 1.3 at most, and never from nothing', () => {
    const unmodelled: Measure = () => null;
    const from = (loadKg: number, loadsKg: number[]) =>
      climb(
        exercise({
          card: { loadsKg },
          start: { loadKg, dose: { ...SLOW, repetitions: 20 } },
          progression: [change('load')],
        }),
        unmodelled,
      );
    expect(states(from(8, [8, 10]).rungs, (at) => at.loadKg)).toEqual([8, 10]);
    expect(from(8, [8, 12]).ends[0]).toMatchObject({ stoppedBy: 'loadGrowth' });
    expect(from(0, [0, 2]).ends.at(-1)).toMatchObject({ change: 'load', stoppedBy: 'loadGrowth' });
  });
});

describe('a set without a weight', () => {
  it('goes by repetitions, then the harder card, then the range, then the first load', () => {
    const harder: LadderCard = { card: 'b', rangesDeg: [20, 25, 30], loadsKg: [0, 2], legs: 'each' };
    const one = exercise({
      card: { rangesDeg: [20, 25, 30], loadsKg: [0, 2] },
      harder: [harder],
      start: { rangeDeg: 20, dose: { ...SLOW, repetitions: 16 } },
      progression: [change('load'), change('range', 10), change('repetitions', 4, 20)],
    });
    expect(states(climb(one).rungs, (at) => [at.card, at.dose.repetitions, at.rangeDeg, at.loadKg])).toEqual([
      ['a', 16, 20, 0],
      ['a', 20, 20, 0],
      ['b', 8, 20, 0],
      ['b', 10, 20, 0],
      ['b', 13, 20, 0],
      ['b', 16, 20, 0],
      ['b', 20, 20, 0],
      ['b', 20, 30, 0],
      ['b', 8, 30, 2],
      ['b', 10, 30, 2],
      ['b', 13, 30, 2],
      ['b', 16, 30, 2],
      ['b', 20, 30, 2],
    ]);
  });

  it('never goes on to a card whose hip moment is more than 1.3 times the last', () => {
    const harder: LadderCard = { card: 'b', rangesDeg: [], loadsKg: [0], legs: 'each' };
    const oneLeg: Measure = (card, at) => ({ ...still(card, at)!, hipMomentNm: card === 'a' ? 18 : 67 });
    const { ends } = climb(exercise({ harder: [harder], progression: [change('lever')] }), oneLeg);
    expect(ends[0]).toMatchObject({ at: 'a', stoppedBy: 'hipMomentGrowth' });
  });

  // 30 s of a card that squeezes 1.5 times as much over time would be 1.5 times the session; 25 s are 1.25 times.
  it('holds a harder card for less long where its squeeze over time would grow too fast', () => {
    const harder: LadderCard = { card: 'b', rangesDeg: [], loadsKg: [0], legs: 'each' };
    const longer: Measure = (card, at) => ({
      ...still(card, at)!,
      compressionTimeBwS: card === 'a' ? 0.2 : 0.3,
    });
    const { rungs } = climb(
      exercise({ harder: [harder], start: { dose: HOLD }, progression: [change('lever')] }),
      longer,
    );
    expect(states(rungs, ({ card, dose }) => [card, dose.holdSeconds])).toEqual([
      ['a', 30],
      ['b', 25],
    ]);
    expect(rungs[1]?.changed[0]?.eased).toEqual([{ change: 'hold', from: 30, to: 25 }]);
  });

  it('does not compare a card without a pose with one that has it', () => {
    const harder: LadderCard = { card: 'b', rangesDeg: [], loadsKg: [0], legs: 'each' };
    const half: Measure = (card, at) => (card === 'a' ? still(card, at) : null);
    const { ends } = climb(exercise({ harder: [harder], progression: [change('lever')] }), half);
    expect(ends[0]).toMatchObject({ stoppedBy: 'unmodelled' });
  });
});

describe('holds, sets, tempo, days', () => {
  const hold = (dose: Partial<TimedDose>, ...progression: ProgressionEntry[]) =>
    climb(exercise({ start: { dose: { ...HOLD, ...dose } }, progression }));
  const seconds = (ladder: ReturnType<typeof hold>) =>
    states(ladder.rungs, (at) => [at.dose.sets, at.dose.holdSeconds]);

  it('lengthens holds by 5 s to their end, then adds a set', () => {
    expect(seconds(hold({}, change('hold', 5, 45), change('sets', 1, 5)))).toEqual([
      [4, 30],
      [4, 35],
      [4, 40],
      [4, 45],
      [5, 45],
    ]);
  });

  it('gives a set for the step from 15 s to 20 s, which is a third more', () => {
    expect(seconds(hold({ sets: 5, holdSeconds: 15 }, change('hold', 5, 20)))).toEqual([
      [5, 15],
      [4, 20],
    ]);
  });

  it('gives repetitions for a fourth set, yet never works less for it', () => {
    const one = exercise({
      start: { dose: { ...SLOW, repetitions: 12 } },
      progression: [change('sets', 1, 4)],
    });
    expect(states(climb(one).rungs, (at) => [at.dose.sets, at.dose.repetitions])).toEqual([
      [3, 12],
      [4, 11],
    ]);
  });

  it('shortens the sessions for a third day, so that the week does not jump', () => {
    const one = exercise({
      start: { daysPerWeek: 2, dose: { ...SLOW, repetitions: 12 } },
      progression: [change('days', 1, 3)],
    });
    const { rungs } = climb(one);
    expect(states(rungs, (at) => [at.daysPerWeek, at.dose.sets, at.dose.repetitions])).toEqual([
      [2, 3, 12],
      [3, 3, 10],
    ]);
    expect(rungs[1]?.changed[0]).toMatchObject({ stoppedBy: 'weekGrowth' });
  });

  it('slows repetitions second by second, with fewer of them', () => {
    const one = exercise({
      start: { dose: { ...SLOW, repetitions: 12, tempo: { goSeconds: 2, holdSeconds: 0, backSeconds: 2 } } },
      progression: [change('tempo', 1, 3)],
    });
    expect(states(climb(one).rungs, (at) => [at.dose.tempo.goSeconds, at.dose.repetitions])).toEqual([
      [2, 12],
      [3, 10],
    ]);
  });

  it('says when a kind of dose has no such change, or no end was given', () => {
    expect(hold({}, change('tempo', 1, 4), change('hold')).ends).toMatchObject([
      { change: 'tempo', stoppedBy: 'kind' },
      { change: 'hold', stoppedBy: 'noTarget' },
    ]);
  });
});

describe('the session', () => {
  const two = (progressionA: ProgressionEntry[], progressionB: ProgressionEntry[]) => [
    exercise({ name: 'a', progression: progressionA }),
    exercise({ name: 'b', progression: progressionB }),
  ];

  it('moves every exercise that wants the same kind of change, and only that kind', () => {
    const { rungs } = climbed(
      ladderOfSteps(two([change('repetitions', 2, 12)], [change('repetitions', 2, 12)]), LIMITS, still),
    );
    expect(rungs.map((rung) => rung.changed.map((one) => one.exercise))).toEqual([[], ['a', 'b']]);
  });

  it('takes turns between exercises that want different things', () => {
    const exercises = two([change('repetitions', 2, 14)], [change('tempo', 1, 4)]);
    const { rungs } = climbed(ladderOfSteps(exercises, LIMITS, still));
    expect(rungs.map((rung) => rung.change)).toEqual([null, 'repetitions', 'tempo', 'repetitions']);
  });

  it('keeps to two cards above half the cap', () => {
    const three = ['a', 'b', 'c'].map((name) =>
      exercise({
        name,
        card: { rangesDeg: [40, 45] },
        start: { rangeDeg: 40 },
        progression: [change('range', 5)],
      }),
    );
    const measure: Measure = (_, { rangeDeg }) => ({
      compressionBw: rangeDeg === 40 ? 0.9 : 1.1,
      tensionBw: 2,
      hipMomentNm: 50,
      compressionTimeBwS: 1,
      tensionTimeBwS: 1,
      refusedBy: null,
    });
    const { rungs, ends } = climbed(ladderOfSteps(three, LIMITS, measure));
    expect(rungs.at(-1)?.exercises.map((at) => at.rangeDeg)).toEqual([45, 45, 40]);
    expect(ends.at(-1)).toMatchObject({ exercise: 'c', stoppedBy: 'cardsAboveHalfCap' });
  });

  it('grows pull over the session by no more than 1.3, where nothing is squeezed', () => {
    const pullsMore: Measure = (_, { rangeDeg }) => ({
      compressionBw: 0,
      tensionBw: 2,
      hipMomentNm: 50,
      compressionTimeBwS: 0,
      tensionTimeBwS: rangeDeg === 40 ? 3 : 4.5,
      refusedBy: null,
    });
    const one = exercise({
      card: { rangesDeg: [40, 45] },
      start: { rangeDeg: 40 },
      progression: [change('range', 5)],
    });
    const { rungs } = climb(one, pullsMore);
    // A wider range with half as much pull again asks for fewer repetitions: 8 x 4.5 over 10 x 3 is 1.2.
    expect(rungs.at(-1)?.exercises[0]).toMatchObject({ rangeDeg: 45, dose: { repetitions: 8 } });
  });

  it('goes on to a card that pulls twice as much with fewer sets', () => {
    const pulls: Measure = (card) => ({
      compressionBw: 0,
      tensionBw: 2,
      hipMomentNm: 50,
      compressionTimeBwS: 0,
      tensionTimeBwS: card === 'a' ? 3 : 6,
      refusedBy: null,
    });
    const one = exercise({
      harder: [{ card: 'b', rangesDeg: [], loadsKg: [0], legs: 'together' }],
      progression: [change('lever')],
    });
    const { rungs } = climb(one, pulls);
    // 2 x 8 x 6 over 3 x 10 x 3 is 1.07; 3 x 8 x 6 would be 1.6.
    expect(rungs.at(-1)?.exercises[0]).toMatchObject({ card: 'b', dose: { sets: 2, repetitions: 8 } });
  });

  it('takes the first weight where the minutes leave no room for more repetitions', () => {
    const one = exercise({ card: { loadsKg: [0, 4] }, progression: [change('load')] });
    const { rungs } = climb(one, still, { ...LIMITS, minutes: 6.5 });
    const loads = rungs.map(({ exercises: [at] }) => [at?.loadKg, at?.dose.repetitions]);
    expect(loads).toContainEqual([4, 8]);
    expect(Math.max(...loads.filter(([kg]) => kg === 0).map(([, count]) => count ?? 0))).toBeLessThan(20);
  });

  it('keeps to the minutes there are', () => {
    // 3 x 60 s and 2 x 90 s are 6 min; a repetition more a set makes 18 s.
    const one = exercise({ progression: [change('repetitions', 2, 20)] });
    const { rungs, ends } = climb(one, still, { ...LIMITS, minutes: 6.5 });
    expect(states(rungs, (at) => at.dose.repetitions)).toEqual([10, 11]);
    expect(ends[0]).toMatchObject({ stoppedBy: 'minutes' });
  });

  it('names every fault of a start it may not lower', () => {
    const measure: Measure = (card, at) => ({
      ...still(card, at)!,
      compressionBw: 1.5,
      refusedBy: card === 'b' ? 'tension' : null,
    });
    const exercises = ['a', 'b', 'c'].map((name) => exercise({ name }));
    expect(ladderOfSteps(exercises, LIMITS, measure)).toEqual({
      none: true,
      why: [
        { exercise: 'b', limit: 'tension' },
        { exercise: null, limit: 'cardsAboveHalfCap' },
      ],
    });
  });

  it(`stops at ${MOST_STEPS} steps and says so`, () => {
    const { rungs, ends } = climb(exercise({ progression: [change('repetitions', 1, 180)] }));
    expect(rungs.length).toBe(MOST_STEPS);
    expect(ends[0]).toMatchObject({ at: 9 + MOST_STEPS, reached: 'stopped', stoppedBy: 'steps' });
  });
});
