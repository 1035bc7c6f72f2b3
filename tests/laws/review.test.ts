/** Laws of a review over random logs: nothing moves on sooner for more pain, for less work, or for the order of the lines. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../src/content/log/columns.ts';
import { logFile } from '../../src/content/log/format.ts';
import { isoDate } from '../../src/units/date.ts';
import { readText, row } from '../content/log/logs.ts';
import type { Earlier } from '../../src/decisions/terms/earlier.ts';
import { CARDS, factsFor, mornings, onDay, reviewRows, sessions, steady } from '../review/facts.ts';
import { reviewOf } from '../../src/review/review.ts';

const DAYS = 21;

// Near what going on asks for, so that both answers come about often.
const score = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 3 }) },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 10 }) },
);
const pain = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 0, max: 3 }) },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 10 }) },
);

const anyMornings = fc
  .array(fc.option(score, { freq: 25 }), { minLength: DAYS, maxLength: DAYS })
  .map((scores) =>
    scores.flatMap((morning, index) => (morning === null ? [] : [row(onDay(index), 'morning', { morning })])),
  );
const planned = sessions(0, DAYS);
const anySessions = fc
  .array(
    fc.record({ there: fc.integer({ min: 0, max: 9 }), during: pain, part: fc.integer({ min: 0, max: 9 }) }),
    {
      minLength: planned.length,
      maxLength: planned.length,
    },
  )
  .map((chances) =>
    planned.flatMap((one, index) => {
      const chance = chances[index];
      if (chance === undefined || chance.there === 0) return [];
      return [
        { ...one, painDuring: chance.during, done: chance.part === 0 ? ('part' as const) : ('yes' as const) },
      ];
    }),
  );
const anyLog = fc.tuple(anySessions, anyMornings).map(([work, scores]) => [...work, ...scores]);

const movesOn = (rows: readonly LogRow[]) => reviewRows(rows, DAYS).decision === 'moveOn';

const HOLD = 'prone-curl-hold';
const HOLD_DAYS = [1, 3, 5, 8, 10, 12, 15, 17, 19];

/** The same plan with a hold between the sessions, and in them as well where it is shared. */
function withHolds(isShared: boolean): Earlier {
  const { earlier } = factsFor(readText(logFile([])).log, DAYS);
  const exercise = { slot: HOLD, card: HOLD };
  return {
    ...earlier,
    exercises: [...earlier.exercises, { card: HOLD, values: { sets: 4, holdSeconds: 30 } }],
    plan: earlier.plan.map((day, index) => ({
      ...day,
      between: HOLD_DAYS.includes(index) ? [exercise] : [],
      sessions: day.sessions.map((one) => ({
        ...one,
        exercises: isShared ? [...one.exercises, exercise] : one.exercises,
      })),
    })),
  };
}

// Most of them settled and written down, for only then the rest is let go on without a hold.
const anyLogWithHolds = fc
  .record({
    work: anySessions,
    whole: fc.boolean(),
    mornings: anyMornings,
    settled: fc.boolean(),
    holds: fc.array(fc.record({ there: fc.integer({ min: 0, max: 9 }), during: pain }), {
      minLength: HOLD_DAYS.length,
      maxLength: HOLD_DAYS.length,
    }),
    // In the sessions it is done with the rest.
    inSessions: fc.integer({ min: 0, max: 3 }),
  })
  .map(({ work, whole, mornings: scores, settled, holds, inSessions }) => [
    ...(whole ? planned : work),
    ...(whole ? planned : work)
      .filter(({ card }) => card === CARDS[0])
      .map((one) => ({ ...one, card: HOLD, repetitions: null, loadKg: null, sets: 4, seconds: 30 }))
      .filter(() => inSessions > 0),
    ...(settled ? mornings(0, steady(DAYS)) : scores),
    ...holds.flatMap(({ there, during }, index) =>
      there === 0
        ? []
        : [
            row(onDay(HOLD_DAYS[index] ?? 0), 'between', {
              card: HOLD,
              side: 'both',
              done: 'yes',
              sets: 4,
              seconds: 30,
              painDuring: during,
            }),
          ],
    ),
  ]);

/** Holds the law over logs of both kinds: those that move on, and those that do not. */
function neverSooner(
  changed: fc.Arbitrary<readonly [readonly LogRow[], readonly LogRow[]]>,
  goesOn: (rows: readonly LogRow[]) => boolean = movesOn,
): void {
  let [on, off] = [0, 0];
  fc.assert(
    fc.property(changed, ([before, after]) => {
      if (goesOn(before)) on += 1;
      else {
        off += 1;
        expect(goesOn(after)).toBe(false);
      }
    }),
    { numRuns: 150 },
  );
  expect(on).toBeGreaterThan(5);
  expect(off).toBeGreaterThan(20);
}

const picks = fc.infiniteStream(fc.integer({ min: 0, max: 9 }));
const next = (chance: Iterator<number>) => chance.next().value as number;

describe('a review never moves on sooner', () => {
  it('for more pain, in the morning or during the exercises', () => {
    neverSooner(
      fc.tuple(anyLog, picks).map(([rows, chance]) => {
        const more = (value: number | null) =>
          value === null ? null : Math.min(10, value + Math.max(0, next(chance) - 6));
        return [
          rows,
          rows.map((one) => ({ ...one, painDuring: more(one.painDuring), morning: more(one.morning) })),
        ];
      }),
    );
  });

  it('for more pain through the first half alone, which makes a rise look level', () => {
    neverSooner(
      anyLog.map((rows) => [
        rows,
        rows.map((one) =>
          one.morning !== null && one.date < onDay(11) ? { ...one, morning: one.morning + 1 } : one,
        ),
      ]),
    );
  });

  it('for fewer sessions: what hurt in them was felt all the same', () => {
    neverSooner(
      fc
        .tuple(anyLog, picks)
        .map(([rows, chance]) => [
          rows,
          rows.map((one) =>
            one.kind === 'session' && next(chance) > 6 ? { ...one, done: 'no' as const, sets: null } : one,
          ),
        ]),
    );
  });

  it('for a line that was not written down, whatever it would have said', () => {
    neverSooner(
      fc.tuple(anyLog, fc.nat()).map(([rows, which]) => {
        const gone = rows.length === 0 ? 0 : which % rows.length;
        return [rows, rows.filter((_, index) => index !== gone)];
      }),
    );
  });

  it('for bad days alone that were not written down', () => {
    neverSooner(
      fc
        .tuple(anyLog, picks)
        .map(([rows, chance]) => [
          rows,
          rows.filter((one) =>
            (one.morning ?? 0) <= 2 && (one.painDuring ?? 0) <= 3 ? next(chance) < 9 : false,
          ),
        ]),
    );
  });

  it.each([
    ['alone', false],
    ['that is one of the sessions too', true],
  ])('for a line of the work between them that was not written down, %s', (_, isShared) => {
    neverSooner(
      fc.tuple(anyLogWithHolds, fc.nat(), fc.boolean()).map(([rows, which, all]) => {
        const holds = rows.filter(({ kind }) => kind === 'between');
        const gone = holds[which % Math.max(1, holds.length)];
        return [rows, rows.filter((one) => one !== gone && !(all && one.kind === 'between'))];
      }),
      (rows) => reviewRows(rows, DAYS, { earlier: withHolds(isShared) }).decision === 'moveOn',
    );
  });

  it('for lines that contradict or cannot be read', () => {
    fc.assert(
      fc.property(
        anyLog.filter((rows) => rows.length > 0),
        (rows) => {
          const [first] = rows as [LogRow];
          expect(movesOn([...rows, { ...first, note: 'another' }])).toBe(false);
          const { log } = readText(`${logFile(rows)}2026-03-03,x\r\n`);
          expect(reviewOf(factsFor(log, DAYS)).decision).not.toBe('moveOn');
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('a review is the same', () => {
  it('for lines in another order, for lines told twice, and for a log in two parts', () => {
    fc.assert(
      fc.property(anyLog, picks, (rows, chance) => {
        const expected = reviewRows(rows, DAYS);
        const order = rows.map((one) => ({ one, at: next(chance) }));
        const shuffled = order.toSorted((a, b) => a.at - b.at).map(({ one }) => one);
        expect(reviewRows(shuffled, DAYS)).toEqual(expected);
        expect(reviewRows([...shuffled, ...rows], DAYS)).toEqual(expected);
        const half = Math.floor(rows.length / 2);
        expect(reviewRows([...shuffled.slice(half), ...shuffled.slice(0, half + 3)], DAYS)).toEqual(expected);
      }),
      { numRuns: 40 },
    );
  });

  it('for a correction that says the same', () => {
    fc.assert(
      fc.property(anyLog, (rows) => {
        const strip = (text: string) => text.replaceAll(/"edit":\d+/g, '');
        const again = reviewRows([...rows, ...rows.map((one) => ({ ...one, edit: 1 }))], DAYS);
        expect(strip(JSON.stringify(again))).toBe(strip(JSON.stringify(reviewRows(rows, DAYS))));
      }),
      { numRuns: 20 },
    );
  });
});

describe('an empty log', () => {
  it.each([7, 21, 120])('of %i days stays', (days) => {
    expect(reviewRows([], days)).toMatchObject({ decision: 'stay', stage: 2, step: 2 });
  });
});

describe('every entry of a ground', () => {
  it('is one of the log', () => {
    fc.assert(
      fc.property(anyLog, (rows) => {
        const { because, exercises } = reviewRows(rows, DAYS);
        const known = new Set(rows.map(({ date, kind }) => `${date} ${kind}`));
        for (const { entries } of [...because, ...exercises.flatMap((one) => one.because)])
          for (const { date, kind } of entries) expect(known).toContain(`${date} ${kind}`);
        expect(because.length).toBeGreaterThan(0);
        for (const { card } of exercises) expect(CARDS).toContain(card);
        for (const { entries } of because)
          for (const { date } of entries) expect(isoDate(date)).not.toBeNull();
      }),
      { numRuns: 30 },
    );
  });
});
