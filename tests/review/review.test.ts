/** Every branch of a review: what is written down, and what it leads to (house rules 4 and 5). */
import { describe, expect, it } from 'vitest';
import { reviewOf } from '../../src/review/review.ts';
import type { Move } from '../../src/review/terms.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import { logFile } from '../../src/content/log/format.ts';
import { readText, row } from '../content/log/logs.ts';
import { CARDS, factsFor, mornings, onDay, reviewRows, sessions, steady, USUAL } from './facts.ts';

/** Of every run that was planned it is written that it was left. */
const NO_RUNS = [5, 12, 19].map((index) => row(onDay(index), 'run', { done: 'no' }));
const GOOD = [...sessions(0, 21), ...mornings(0, steady(21)), ...NO_RUNS];
const without = (from: number, to: number) => [...sessions(0, from), ...sessions(to, 21)];
const withMornings = (scores: readonly number[], from = 0) => [...sessions(0, 21), ...mornings(from, scores)];
const hurt = (last: number) => {
  const rows = sessions(0, 21);
  return [
    ...rows.slice(0, -1),
    { ...(rows.at(-1) as (typeof rows)[number]), painDuring: last },
    ...mornings(0, steady(21)),
  ];
};
const rising = [2, 2, 2, 3, 2, 3, 2, ...[2, 3, 2, 3, 3, 2, 3], ...[3, 3, 3, 4, 3, 3, 3]];

describe('the step', () => {
  it.each<[string, Move, number, string, ReturnType<typeof sessions>]>([
    // rule, what is written down                                 move, next step, ground
    ['4: all done, mornings as usual', 'moveOn', 3, 'all-met', GOOD],
    ['4: nothing written', 'stay', 2, 'nothing-written', []],
    [
      '4: six of nine sessions',
      'stay',
      2,
      'missing-sessionsDoneShare',
      [...sessions(0, 5), ...sessions(9, 12), ...sessions(16, 19), ...mornings(0, steady(21))].filter(
        ({ date }) => date !== onDay(11),
      ),
    ],
    [
      '4: the dose in part alone',
      'stay',
      2,
      'missing-doneSessions',
      [...sessions(0, 21, { done: 'part' }), ...mornings(0, steady(21))],
    ],
    [
      '4: fewer sets than planned',
      'stay',
      2,
      'missing-doneSessions',
      [...sessions(0, 21, { sets: 2 }), ...mornings(0, steady(21))],
    ],
    [
      '4: a morning is missing',
      'stay',
      2,
      'missing-checkDays',
      [...sessions(0, 21), ...mornings(0, steady(20))],
    ],
    ['4: no mornings at all', 'stay', 2, 'missing-checkDays', sessions(0, 21)],
    [
      '5: pain during is not written',
      'stay',
      2,
      'exercise-holds',
      [...sessions(0, 21, { painDuring: null }), ...mornings(0, steady(21))],
    ],
    ['5: +2 once, the last morning', 'stay', 2, 'over-usual-once', withMornings([...steady(20), 4])],
    ['5: +2 twice running', 'easeBack', 1, 'over-usual-twice', withMornings([...steady(19), 4, 4])],
    ['5: six', 'easeBack', 1, 'pain-too-high', withMornings([...steady(20), 6])],
    ['5: +3', 'easeBack', 1, 'far-over-usual', withMornings([...steady(20), 5])],
    [
      '5: a flare that has settled, nothing done since',
      'startAgain',
      1,
      'not-done-since',
      [...sessions(0, 12), ...sessions(18, 18), ...mornings(0, [...steady(11), 7, 7, ...steady(8)])],
    ],
    [
      '5: a flare that has settled, the dose done since',
      'stay',
      2,
      'not-done-since',
      withMornings([...steady(14), 7, 7, ...steady(5)]),
    ],
    ['5: a flare early on, all earned since', 'moveOn', 3, 'all-met', withMornings([7, 7, ...steady(19)])],
    ['5: not settled for a week', 'beSeen', 1, 'not-settled', withMornings([...steady(14), ...steady(7, 4)])],
    ['5: rising for two weeks', 'beSeen', 1, 'rising', withMornings(rising)],
    ['5: two weeks above usual, level', 'stay', 2, 'above-usual', withMornings(steady(21, 3))],
    ['5: five days away', 'moveOn', 3, 'all-met', [...without(7, 9), ...mornings(0, steady(21))]],
    [
      '5: twelve days away, not back yet',
      'startAgain',
      1,
      'away',
      [...sessions(0, 8), ...mornings(0, steady(21))],
    ],
    [
      '5: twelve days away, back for one session',
      'stay',
      2,
      'away',
      [...without(5, 18), ...mornings(0, steady(21))],
    ],
    ['5: sixteen days away', 'startAgain', 1, 'long-away', [...sessions(0, 3), ...mornings(0, steady(21))]],
    ['5: pain 4 during, usual 2', 'stay', 2, 'exercise-holds', hurt(4)],
    ['5: pain 6 during', 'stay', 2, 'exercise-holds', hurt(6)],
    [
      '2: yes to a red flag',
      'beSeen',
      1,
      'alarm',
      [...GOOD, row(onDay(9), 'alarm', { card: 'footDrop', done: 'yes' })],
    ],
  ])('%s: %s', (_, move, step, rule, rows) => {
    const review = reviewRows(rows);
    expect(review.decision).toBe(move);
    expect(review.step).toBe(step);
    expect(review.because.map((one) => one.rule)).toContain(rule);
    expect(review.because.every(({ source }) => source.cite !== '')).toBe(true);
  });

  it('names the entries that decided', () => {
    const { because } = reviewRows(withMornings([...steady(19), 4, 4]));
    expect(because[0]).toMatchObject({
      rule: 'over-usual-twice',
      source: { mark: 'choice' },
      entries: [
        { date: onDay(19), morning: 4 },
        { date: onDay(20), morning: 4 },
      ],
    });
  });

  it('is never before the first', () => {
    const facts = { ...factsFor(readText('').log) };
    const first = reviewRows(withMornings([...steady(19), 4, 4]), 21, {
      earlier: { ...facts.earlier, step: 1 },
    });
    expect(first).toMatchObject({ decision: 'easeBack', stage: 2, step: 1 });
    expect(first.exercises.map(({ decision }) => decision)).toEqual(['easeBack', 'easeBack']);
  });

  it('after more than two weeks away is the first of the stage, and somebody gets in touch', () => {
    const facts = factsFor(readText('').log);
    const review = reviewRows([...sessions(0, 3), ...mornings(0, steady(21))], 21, {
      earlier: { ...facts.earlier, step: 5 },
    });
    expect(review).toMatchObject({ decision: 'startAgain', step: 1 });
    expect(review.asks.map(({ code }) => code)).toContain('contact');
  });
});

describe('the stage', () => {
  it('opens after its last step, when its tests let it', () => {
    const review = reviewRows(GOOD, 21, { isLastStep: true });
    expect(review).toMatchObject({ decision: 'moveOn', stage: 3, step: 1 });
    expect(review.asks).toMatchObject([{ code: 'today' }, { code: 'tests' }]);
  });

  it('asks for its own number of sessions, those of earlier revisions included', () => {
    const short = [...sessions(0, 10), ...mornings(0, steady(10))];
    expect(reviewRows(short, 10, { isLastStep: true })).toMatchObject({
      decision: 'stay',
      stage: 2,
      step: 2,
    });
    expect(reviewRows(short, 10, { isLastStep: true, stageSessionsBefore: 4 })).toMatchObject({
      decision: 'moveOn',
      stage: 3,
    });
    expect(reviewRows(short, 10)).toMatchObject({ decision: 'moveOn', step: 3 });
  });

  it('has an end', () => {
    const { earlier } = factsFor(readText('').log);
    const review = reviewRows(GOOD, 21, { isLastStep: true, earlier: { ...earlier, stage: 4 } });
    expect(review).toMatchObject({ decision: 'stay', stage: 4, step: 2 });
    expect(review.because.map(({ rule }) => rule)).toContain('last-stage');
  });
});

describe('each exercise', () => {
  it('that hurt eases by itself, and the others stay', () => {
    expect(reviewRows(hurt(6)).exercises).toMatchObject([
      { card: CARDS[0], decision: 'stay' },
      { card: CARDS[1], decision: 'easeBack', because: [{ rule: 'pain-over-ceiling' }] },
    ]);
  });

  it('says what was done last and borne, not what was planned', () => {
    const rows = [
      ...sessions(0, 14),
      ...sessions(14, 21, { loadKg: 8, repetitions: 7 }),
      ...mornings(0, steady(21)),
    ];
    expect(reviewRows(rows).exercises[0]?.done).toEqual({
      on: onDay(18),
      sets: 3,
      repetitions: 7,
      seconds: null,
      loadKg: 8,
    });
    const { done } = reviewRows(hurt(6)).exercises[1] as { done: { on: string } };
    expect(done.on).toBe(onDay(16));
  });
});

describe('running and sitting go by their own rules', () => {
  const run = (index: number, painDuring: number) =>
    row(onDay(index), 'run', { done: 'yes', km: 6, painDuring, edit: 1 });

  it.each<[string, Move, ReturnType<typeof sessions>]>([
    ['all runs done', 'moveOn', [run(5, 1), run(12, 1), run(19, 1)]],
    ['one of three', 'stay', [run(5, 1)]],
    ['none', 'stay', []],
    ['the last one hurt', 'easeBack', [run(5, 1), run(12, 1), run(19, 6)]],
    ['the last one hurt a little', 'stay', [run(5, 1), run(12, 1), run(19, 4)]],
    [
      'the pain of the last not written',
      'stay',
      [run(5, 1), run(12, 1), { ...run(19, 1), painDuring: null }],
    ],
  ])('running, %s: %s', (_, move, runs) => {
    expect(reviewRows([...GOOD, ...runs]).running?.decision).toBe(move);
  });

  it('a run that nobody wrote down may have been the last that hurt: it stays, by its day', () => {
    const without = (index: number) =>
      [...GOOD, run(5, 1), run(12, 1), run(19, 1)].filter(
        (one) => one.kind !== 'run' || one.date !== onDay(index),
      );
    // Of three planned two are below the share that going on asks for, so that share stands aside.
    const { protocol } = factsFor(readText(logFile(GOOD)).log);
    const goingOn = { ...protocol.goingOn, sessionsDoneShare: { value: 0.6, mark: 'choice' as const } };
    const of = (index: number) => reviewRows(without(index), 21, { protocol: { ...protocol, goingOn } });
    expect(of(19).running).toMatchObject({
      decision: 'stay',
      because: [{ rule: 'run-not-written', inputs: { days: [onDay(19)] } }, { rule: 'runs-done' }],
    });
    expect(of(19).asks).toContainEqual({ code: 'runs', days: [onDay(19)], inputs: { days: 1 } });
    expect(of(5).running?.decision).toBe('moveOn');
  });

  it('tells the next consult what was run', () => {
    expect(reviewRows([...GOOD, run(5, 1), run(12, 1), run(19, 1)]).runsDone).toEqual({
      longestKm: 6,
      weeklyKm: 6,
    });
    expect(reviewRows(GOOD).runsDone).toBeNull();
  });

  it.each<[string, Move | undefined, ReturnType<typeof sessions>]>([
    [
      'the minutes reached twice',
      'moveOn',
      [8, 15].map((index) => row(onDay(index), 'sitting', { minutes: 60, painDuring: 1 })),
    ],
    ['reached once', 'stay', [row(onDay(8), 'sitting', { minutes: 60, painDuring: 1 })]],
    ['too much at last', 'easeBack', [row(onDay(8), 'sitting', { minutes: 60, painDuring: 7 })]],
    ['not written', 'stay', []],
  ])('sitting, %s: %s', (_, move, rows) => {
    expect(reviewRows([...GOOD, ...rows], 21, { countsSitting: true }).sitting?.decision).toBe(move);
  });

  it('sitting that nobody wrote down is told and asked for, where minutes were given', () => {
    const { sitting, asks } = reviewRows(GOOD, 21, { countsSitting: true });
    expect(sitting?.because.map(({ rule }) => rule)).toEqual(['sitting-none']);
    expect(asks).toContainEqual({ code: 'sitting', days: [], inputs: {} });
    const free = reviewRows(GOOD);
    expect(free.sitting).toBeNull();
    expect(free.asks.map(({ code }) => code)).not.toContain('sitting');
  });

  it('what decides of the mornings stands with the runs', () => {
    const bad = [...GOOD.filter(({ kind }) => kind !== 'morning'), ...mornings(0, [...steady(19), 4, 4])];
    expect(reviewRows(bad).running).toMatchObject({
      decision: 'easeBack',
      because: [{ rule: 'over-usual-twice' }, { rule: 'runs-none' }],
    });
  });
});

describe('what nobody can tell', () => {
  it('a contradiction stays, and asks', () => {
    const twice = {
      ...row(onDay(4), 'session', {
        card: CARDS[0] as string,
        side: 'right',
        done: 'yes',
        sets: 1,
        painDuring: 1,
      }),
    };
    const review = reviewRows([...GOOD, twice]);
    expect(review.decision).toBe('stay');
    expect(review.asks).toMatchObject([{ code: 'contradiction', days: [onDay(4)] }, { code: 'today' }]);
  });

  it('a line that cannot be read stays, and asks', () => {
    const facts = factsFor(readText(`date,kind\n${onDay(3)},sesion\n`).log);
    expect(reviewOf(facts)).toMatchObject({ decision: 'stay', step: 2 });
    expect(reviewOf(facts).asks.map(({ code }) => code)).toContain('unread');
  });

  it('a day outside the programme stays, and asks', () => {
    const review = reviewRows([...GOOD, ...mornings(-3, [2])]);
    expect(review).toMatchObject({ decision: 'stay', asks: [{ code: 'outside' }, { code: 'today' }] });
  });

  it('an early review asks for less than a late one, a late one for what was done since', () => {
    const early = reviewRows([...sessions(0, 10), ...mornings(0, steady(10))], 21, { seenOn: onDay(10) });
    expect(early).toMatchObject({ decision: 'moveOn', until: onDay(10) });
    const late = reviewRows(GOOD, 21, { seenOn: onDay(40) });
    expect(late).toMatchObject({ decision: 'stay', until: onDay(21), asks: [{ code: 'since-log' }] });
  });
});

describe('what was not written down', () => {
  const silent = (at: number, score: number) =>
    mornings(0, steady(21, score)).filter(({ date }) => date !== onDay(at));
  const gone = (at: number) => GOOD.filter(({ date, kind }) => kind !== 'session' || date !== onDay(at));
  const saidNo = (at: number) =>
    CARDS.map((card) => row(onDay(at), 'session', { card, side: 'right', done: 'no' }));

  it.each<[string, Move, string, ReturnType<typeof sessions>]>([
    // what is left out                                                     move, ground
    ['a morning that a quiet week follows', 'moveOn', 'all-met', [...sessions(0, 21), ...silent(10, USUAL)]],
    [
      'the same, but the dose was done in full before it alone',
      'stay',
      'morning-not-written',
      [
        ...sessions(0, 12),
        ...sessions(12, 21, { done: 'part' }),
        ...mornings(0, [...steady(11), 2, ...steady(9)]).filter(({ date }) => date !== onDay(11)),
      ],
    ],
    [
      'a morning within two weeks a little over usual',
      'stay',
      'morning-not-written',
      [
        ...sessions(0, 21),
        ...mornings(0, [...steady(10), 2, 3, ...steady(9)]).filter((one) => one.date !== onDay(12)),
      ].map((one) => (one.date === onDay(3) && one.kind === 'morning' ? { ...one, morning: 3 } : one)),
    ],
    ['the last session', 'stay', 'session-not-written', gone(18)],
    ['the last but one', 'stay', 'session-not-written', gone(16)],
    ['one before these', 'moveOn', 'all-met', gone(14)],
    ['the last session, which was not done', 'moveOn', 'all-met', [...gone(18), ...saidNo(18)]],
    [
      'the last session, which was done a day later',
      'moveOn',
      'all-met',
      [...gone(18), ...sessions(18, 21).map((one) => ({ ...one, date: onDay(19) }))],
    ],
  ])('%s: %s', (_, move, rule, rows) => {
    const review = reviewRows(rows);
    expect(review.because.map((one) => one.rule)).toEqual([rule]);
    expect(review.decision).toBe(move);
  });

  it('is asked for by its days', () => {
    expect(reviewRows(gone(18)).asks).toMatchObject([
      { code: 'sessions', days: [onDay(18)] },
      { code: 'today' },
    ]);
    const part = [
      ...sessions(0, 12),
      ...sessions(12, 21, { done: 'part' }),
      ...silent(11, USUAL),
      ...NO_RUNS,
    ];
    expect(reviewRows(part).asks).toMatchObject([{ code: 'mornings', days: [onDay(11)] }, { code: 'today' }]);
  });

  it('a session of the day before waits for the morning after it', () => {
    const early = [...sessions(0, 10), ...mornings(0, steady(10))];
    const few = (until: number, more: ReturnType<typeof mornings> = []) =>
      reviewRows([...early.filter(({ date }) => date < onDay(until)), ...more], 21, { seenOn: onDay(until) });
    // Sessions on days 0, 2, 4 and 7: without the last one too few.
    expect(few(8).decision).toBe('moveOn');
    const late = [...early.filter((one) => one.date !== onDay(0) || one.kind === 'morning')];
    const of = (rows: typeof late) =>
      reviewRows(
        [...rows, ...saidNo(0)].filter((one) => one.date <= onDay(8)),
        21,
        { seenOn: onDay(8) },
      );
    expect(of(late.filter(({ date }) => date < onDay(8))).because).toMatchObject([
      { rule: 'morning-not-written', inputs: { days: [onDay(8)] } },
    ]);
    expect(of([...late.filter(({ date }) => date < onDay(8)), ...mornings(8, [2])]).decision).toBe('moveOn');
  });

  it('is taken by the number in the protocol', () => {
    const rows = [...sessions(0, 12), ...sessions(12, 21, { done: 'part' }), ...silent(11, USUAL)];
    const facts = factsFor(readText(logFile(rows)).log);
    const { goingOn } = facts.protocol;
    const mild = { ...goingOn, unwrittenCheckAs: { value: USUAL, mark: 'choice' as const } };
    expect(reviewOf({ ...facts, protocol: { ...facts.protocol, goingOn: mild } }).decision).toBe('moveOn');
  });
});

describe('work between the sessions that was not written down', () => {
  const HOLD = 'prone-curl-hold';
  const days = [1, 3, 5, 8, 10, 12, 15, 17, 19];
  const { earlier } = factsFor(readText(logFile(GOOD)).log);
  const withHolds = {
    ...earlier,
    exercises: [...earlier.exercises, { card: HOLD, values: { sets: 4, holdSeconds: 30 } }],
    plan: earlier.plan.map((day, index) =>
      days.includes(index) ? { ...day, between: [{ slot: HOLD, card: HOLD }] } : day,
    ),
  };
  const hold = (index: number, painDuring = 1) =>
    row(onDay(index), 'between', { card: HOLD, side: 'both', done: 'yes', sets: 4, seconds: 30, painDuring });
  const of = (written: readonly number[]) =>
    reviewRows([...GOOD, ...written.map((index) => hold(index))], 21, { earlier: withHolds });
  const ownOf = ({ exercises }: ReturnType<typeof of>) => exercises.find(({ card }) => card === HOLD);

  it('all of it written: it goes on with the rest', () => {
    expect(of(days).decision).toBe('moveOn');
    expect(ownOf(of(days))).toMatchObject({ decision: 'moveOn', because: [{ rule: 'pain-small' }] });
  });

  const unsettled = row(onDay(6), 'morning', { morning: 4 });
  const once = (written: readonly LogRow[]) =>
    reviewRows(
      [...GOOD.filter(({ kind, date }) => kind !== 'morning' || date !== onDay(6)), unsettled, ...written],
      21,
      { earlier: withHolds },
    );

  it('the last left out beside a morning that was up: the step stays, and the day is asked for', () => {
    const review = once(days.slice(0, -1).map((index) => hold(index)));
    expect(review.because.map(({ rule, inputs }) => [rule, inputs])).toEqual([
      ['between-not-written', { days: [onDay(19)] }],
    ]);
    expect(review.decision).toBe('stay');
    expect(review.asks).toContainEqual({ code: 'between', days: [onDay(19)], inputs: { days: 1 } });
  });

  it('one left out before the last two: it goes on', () => {
    expect(of(days.filter((index) => index !== 15)).decision).toBe('moveOn');
  });

  it('all of it written beside a morning that was up once: it goes on', () => {
    expect(once(days.map((index) => hold(index))).decision).toBe('moveOn');
  });

  it.each([
    ['none written', []],
    ['one that hurt', [hold(19, 7)]],
  ])('%s beside a morning that was up: the step stays', (_, written) => {
    expect(once(written).decision).toBe('stay');
  });

  it('one that hurt where all else is written and settled: the session goes on, the hold eases back', () => {
    const review = reviewRows([...GOOD, hold(19, 7)], 21, { earlier: withHolds });
    expect(review.decision).toBe('moveOn');
    expect(ownOf(review)).toMatchObject({ decision: 'easeBack' });
  });

  it('the same exercise in the sessions too: the step stays', () => {
    const plan = withHolds.plan.map((day) => ({
      ...day,
      sessions: day.sessions.map((one) => ({
        ...one,
        exercises: [...one.exercises, { slot: HOLD, card: HOLD }],
      })),
    }));
    const review = reviewRows([...GOOD, hold(19, 7)], 21, { earlier: { ...withHolds, plan } });
    expect(review.decision).toBe('stay');
  });

  it('none written: the session goes on, the hold stays, and is asked for', () => {
    const review = of([]);
    expect(review.decision).toBe('moveOn');
    expect(ownOf(review)).toMatchObject({ decision: 'stay' });
    expect(ownOf(review)?.because.map(({ rule }) => rule)).toContain('between-not-written');
    expect(review.asks).toContainEqual({
      code: 'between',
      days: days.map((index) => onDay(index)),
      inputs: { days: days.length },
    });
  });
});
