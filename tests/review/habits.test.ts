/** Running and sitting by their own rules, and what is asked for: each ground with its numbers and the lines that show it. */
import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../src/content/log/columns.ts';
import type { Because, HabitReview } from '../../src/review/terms.ts';
import { row } from '../content/log/logs.ts';
import {
  CARDS,
  consultFor,
  dayNumber,
  factsFor,
  factsOf,
  mornings,
  onDay,
  reviewRows,
  sessions,
  steady,
} from './facts.ts';
import { reviewOf } from '../../src/review/review.ts';

const GOOD = [...sessions(0, 21), ...mornings(0, steady(21))];
const run = (day: number, more: Partial<LogRow> = {}) =>
  row(onDay(day), 'run', { done: 'yes', km: 6, painDuring: 1, ...more });
const sat = (day: number, minutes: number | null, painDuring: number | null = 1) =>
  row(onDay(day), 'sitting', { minutes, painDuring });
const { toleranceMinutes: TOLERANCE } = consultFor(21).sitting;

const daysOf = ({ entries }: Because) => entries.map(({ date }) => dayNumber(date));
const said = (review: HabitReview | null) =>
  review?.because.map((one) => [one.rule, one.move, one.inputs, daysOf(one)]);

describe('running', () => {
  const of = (rows: readonly LogRow[]) => said(reviewRows([...GOOD, ...rows]).running);
  const amount = (have: number) => ({ have, planned: 3, share: 0.7 });

  it.each<[string, readonly LogRow[], ReturnType<typeof of>]>([
    ['all done', [run(5), run(12), run(19)], [['runs-done', 'moveOn', amount(3), [5, 12, 19]]]],
    [
      'two runs of a day are one day',
      [run(5), run(5, { occasion: 2 }), run(12), run(19)],
      [['runs-done', 'moveOn', amount(3), [5, 5, 12, 19]]],
    ],
    [
      'what was left is no run',
      [run(5), run(12, { done: 'no', km: null, painDuring: null }), run(19)],
      [['runs-few', 'stay', amount(2), [5, 19]]],
    ],
    [
      'kilometres say so without a word',
      [run(5, { done: null }), run(12, { done: null, km: null, minutes: 30 }), run(19)],
      [['runs-done', 'moveOn', amount(3), [5, 12, 19]]],
    ],
    [
      'the last but one hurt',
      [run(5), run(12, { painDuring: 7 }), run(19)],
      [
        ['pain-over-ceiling', 'stay', expect.objectContaining({ during: 7 }), [12]],
        ['runs-done', 'moveOn', amount(3), [5, 12, 19]],
      ],
    ],
    [
      'one before these hurt',
      [run(5, { painDuring: 7 }), run(12), run(19)],
      [['runs-done', 'moveOn', amount(3), [5, 12, 19]]],
    ],
    [
      'the pain of the last is not written',
      [run(5), run(12), run(19, { painDuring: null })],
      [
        ['pain-not-written', 'stay', {}, [19]],
        ['runs-done', 'moveOn', amount(3), [5, 12, 19]],
      ],
    ],
    ['none', [], [['runs-none', 'stay', amount(0), []]]],
  ])('%s', (_, rows, found) => {
    expect(of(rows)).toEqual(found);
  });

  it('counts the planned runs of the days that are judged alone', () => {
    const early = reviewOf(
      factsOf([...GOOD.filter(({ date }) => date < onDay(12)), run(5)], 21, { seenOn: onDay(12) }),
    );
    expect(said(early.running)).toEqual([['runs-done', 'moveOn', { have: 1, planned: 1, share: 0.7 }, [5]]]);
  });

  it('is nothing for somebody who was to run none and ran none', () => {
    const { earlier } = factsFor(factsOf([]).log);
    const none = { ...earlier, plan: earlier.plan.map((day) => ({ ...day, runs: [] })) };
    expect(reviewRows(GOOD, 21, { earlier: none }).running).toBeNull();
    expect(said(reviewRows([...GOOD, run(4)], 21, { earlier: none }).running)).toEqual([
      ['runs-done', 'moveOn', { have: 1, planned: 0, share: 0.7 }, [4]],
    ]);
  });

  // Away from the exercises from day 9 on.
  const AWAY = [...sessions(0, 8), ...mornings(0, steady(21))];
  it.each([
    ['away and not running: starts again', [], 'startAgain'],
    ['away, but running: shorter runs', [run(12)], 'easeBack'],
    ['ran before it was away', [run(5)], 'startAgain'],
    ['ran on the first day missed', [run(9)], 'startAgain'],
  ])('%s', (_, rows, decision) => {
    const review = reviewRows([...AWAY, ...rows]);
    expect(review.decision).toBe('startAgain');
    expect(review.running?.decision).toBe(decision);
    expect(review.running?.because[0]).toMatchObject({ rule: 'away', move: decision });
  });

  it('a long time away is shortened alike, bad mornings are not', () => {
    const long = reviewRows([...sessions(0, 3), ...mornings(0, steady(21)), run(12)]);
    expect(long.running?.because[0]).toMatchObject({ rule: 'long-away', move: 'easeBack' });
    const bad = [
      ...sessions(0, 12),
      ...[14, 16, 18].flatMap((day) =>
        CARDS.map((card) => row(onDay(day), 'session', { card, side: 'right', done: 'part', painDuring: 1 })),
      ),
      ...mornings(0, [...steady(14), 7, 7, ...steady(5)]),
      run(12),
      run(19),
    ];
    expect(reviewRows(bad)).toMatchObject({ decision: 'startAgain', running: { decision: 'startAgain' } });
  });

  it('goes on no further than the exercises as a whole', () => {
    const bad = [...sessions(0, 21), ...mornings(0, [...steady(20), 6]), run(5), run(12), run(19)];
    expect(said(reviewRows(bad).running)?.map(([rule]) => rule)).toEqual(['pain-too-high', 'runs-done']);
  });
});

describe('sitting', () => {
  const of = (rows: readonly LogRow[]) =>
    said(reviewRows([...GOOD, ...rows], 21, { countsSitting: true }).sitting);
  const amount = (have: number) => ({ have, need: 2, toleranceMinutes: TOLERANCE });

  it.each<[string, readonly LogRow[], ReturnType<typeof of>]>([
    [
      'reached twice, to the minute',
      [sat(3, TOLERANCE), sat(8, TOLERANCE)],
      [['sitting-reached', 'moveOn', amount(2), [3, 8]]],
    ],
    [
      'a minute less is less',
      [sat(3, TOLERANCE - 1), sat(8, TOLERANCE)],
      [['sitting-short', 'stay', amount(1), [8]]],
    ],
    [
      'what hurt was not reached, though it was long ago',
      [sat(3, TOLERANCE, 7), sat(8, TOLERANCE), sat(9, TOLERANCE)],
      [['sitting-reached', 'moveOn', amount(2), [8, 9]]],
    ],
    [
      'without its pain it is not known to be reached',
      [sat(3, TOLERANCE, null), sat(8, TOLERANCE)],
      [['sitting-short', 'stay', amount(1), [8]]],
    ],
    [
      'the last time hurt a little',
      [sat(3, TOLERANCE), sat(8, TOLERANCE), sat(9, TOLERANCE, 4)],
      [
        ['pain-over-limit', 'stay', expect.objectContaining({ during: 4 }), [9]],
        ['sitting-reached', 'moveOn', amount(2), [3, 8]],
      ],
    ],
    [
      'the last time hurt too much',
      [sat(3, TOLERANCE), sat(8, TOLERANCE), sat(9, TOLERANCE, 7)],
      [
        ['pain-over-ceiling', 'easeBack', expect.objectContaining({ during: 7 }), [9]],
        ['sitting-reached', 'moveOn', amount(2), [3, 8]],
      ],
    ],
    ['a line without minutes says nothing', [sat(3, null)], [['sitting-none', 'stay', {}, []]]],
  ])('%s', (_, rows, found) => {
    expect(of(rows)).toEqual(found);
  });

  it('is nothing where no minutes were given and none written', () => {
    expect(reviewRows([...GOOD, sat(3, null)]).sitting).toBeNull();
    expect(said(reviewRows([...GOOD, sat(3, TOLERANCE)]).sitting)).toEqual([
      ['sitting-short', 'stay', amount(1), [3]],
    ]);
  });

  it('eases where the exercises start again, and follows them else', () => {
    const away = [...sessions(0, 8), ...mornings(0, steady(21)), sat(3, TOLERANCE), sat(8, TOLERANCE)];
    expect(reviewRows(away).sitting?.decision).toBe('easeBack');
    expect(
      reviewRows(
        away.filter(({ kind }) => kind !== 'sitting'),
        21,
        { countsSitting: true },
      ).sitting?.decision,
    ).toBe('easeBack');
    const bad = [
      ...sessions(0, 21),
      ...mornings(0, [...steady(20), 6]),
      sat(3, TOLERANCE),
      sat(8, TOLERANCE),
    ];
    expect(reviewRows(bad).sitting?.decision).toBe('easeBack');
  });
});

describe('what is asked for', () => {
  const asks = (rows: readonly LogRow[], more = {}) => reviewRows(rows, 21, more).asks;

  it.each<[string, ReturnType<typeof asks>, ReturnType<typeof asks>]>([
    ['nothing written', asks([]), [{ code: 'nothing-written', days: [], inputs: {} }]],
    [
      'mornings of the last week',
      asks([
        ...GOOD.filter((one) => one.kind !== 'morning' || ![15, 18].includes(dayNumber(one.date))),
        run(5),
        run(12),
        run(19),
      ]),
      [
        { code: 'mornings', days: [onDay(15), onDay(18)], inputs: { days: 2 } },
        { code: 'today', days: [onDay(21)], inputs: {} },
      ],
    ],
    [
      'a break by its days, the last one missed',
      asks([...sessions(0, 5), ...sessions(18, 21), ...mornings(0, steady(21)), run(5), run(12), run(19)]),
      [
        { code: 'away', days: [onDay(7), onDay(17)], inputs: { days: 11 } },
        { code: 'sessions', days: [7, 9, 11, 14, 16].map(onDay), inputs: { days: 5 } },
        { code: 'today', days: [onDay(21)], inputs: {} },
      ],
    ],
    [
      'a long one: get in touch',
      asks([...sessions(0, 3), ...mornings(0, steady(21))]),
      [
        { code: 'contact', days: [onDay(4), onDay(20)], inputs: { days: 17 } },
        { code: 'today', days: [onDay(21)], inputs: {} },
      ],
    ],
    [
      'pain that was not written, by the exercises',
      asks([...sessions(0, 21, { painDuring: null }), ...mornings(0, steady(21)), run(5), run(12), run(19)]),
      [
        { code: 'pain', days: [], inputs: { cards: CARDS.join(' ') } },
        { code: 'today', days: [onDay(21)], inputs: {} },
      ],
    ],
    [
      'lines outside, each day once',
      asks([...GOOD, ...mornings(-1, [2]), run(-1), run(5), run(12), run(19)]),
      [
        { code: 'outside', days: [onDay(-1)], inputs: {} },
        { code: 'today', days: [onDay(21)], inputs: {} },
      ],
    ],
    [
      'a review a week late: what was done since, and no morning of that day',
      asks([...GOOD, run(5), run(12), run(19)], { seenOn: onDay(28) }),
      [{ code: 'since-log', days: [onDay(21)], inputs: { days: 7 } }],
    ],
    ['six days late', asks([...GOOD, run(5), run(12), run(19)], { seenOn: onDay(27) }), []],
    [
      'the morning of the review is written',
      asks([...GOOD, ...mornings(21, [2]), run(5), run(12), run(19)]),
      [],
    ],
  ])('%s', (_, found, expected) => {
    expect(found).toEqual(expected);
  });

  it('is said as grounds to stay', () => {
    const grounds = (rows: readonly LogRow[], more = {}) =>
      reviewRows(rows, 21, more).because.map(({ rule, move, inputs, source }) => [
        rule,
        move,
        inputs,
        source,
      ]);
    const own = { cite: 'house rules 4', mark: 'choice' };
    expect(grounds([])).toEqual([['nothing-written', 'stay', {}, own]]);
    expect(grounds([...GOOD, ...mornings(-1, [2])])).toEqual([['outside', 'stay', { lines: 1 }, own]]);
    expect(grounds(GOOD, { seenOn: onDay(28) })).toEqual([['since-log', 'stay', { days: 7 }, own]]);
    expect(grounds(GOOD, { seenOn: onDay(27) }).map(([rule]) => rule)).toEqual(['all-met']);
  });
});

describe('mornings', () => {
  const ground = (scores: readonly number[], rule: Because['rule']) =>
    reviewRows([...sessions(0, 21), ...mornings(0, scores)]).because.find((one) => one.rule === rule);

  it('shows as many as the rule looks at', () => {
    const shown = (scores: readonly number[], rule: Because['rule']) => daysOf(ground(scores, rule)!);
    expect(shown([...steady(20), 5], 'far-over-usual')).toEqual([20]);
    expect(shown([...steady(19), 4, 4], 'over-usual-twice')).toEqual([19, 20]);
    expect(shown([...steady(14), ...steady(7, 4)], 'not-settled')).toEqual([14, 15, 16, 17, 18, 19, 20]);
    const rising = [2, 2, 2, 3, 2, 3, 2, ...[2, 3, 2, 3, 3, 2, 3], ...[3, 3, 3, 4, 3, 3, 3]];
    expect(shown(rising, 'rising')).toHaveLength(14);
  });

  it('level above usual for two weeks stays, with its numbers', () => {
    const level = ground(steady(21, 3), 'above-usual')!;
    expect(level).toMatchObject({ move: 'stay', inputs: { days: 14, usual: 2, over: 1 } });
    expect(daysOf(level)).toEqual(Array.from({ length: 14 }, (_, at) => at + 7));
    expect(ground([...steady(14, 2), ...steady(7, 3)], 'above-usual')).toBeUndefined();
  });

  it('takes the worst of a day', () => {
    const twice = [
      ...sessions(0, 21),
      ...mornings(0, steady(21)),
      row(onDay(20), 'morning', { morning: 6, occasion: 2 }),
    ];
    expect(reviewRows(twice).because[0]).toMatchObject({ rule: 'pain-too-high' });
    expect(reviewRows(twice).series.mornings.at(-1)).toEqual({ on: onDay(20), score: 6 });
  });
});
