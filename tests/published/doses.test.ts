/** Published doses, progressions and session times. Each row: source and mark, given, expected; exact unless said. */
import { describe, expect, it } from 'vitest';
import type { DoseKind } from '../../src/dosing/dose.ts';
import { HEAVY_SLOW_RESISTANCE } from '../../src/dosing/progression.ts';
import { sessionSeconds } from '../../src/dosing/session.ts';
import { tensionSeconds, type TimedDose } from '../../src/dosing/work.ts';

const dose = (
  kind: DoseKind,
  sets: number,
  amount: { repetitions: number } | { holdSeconds: number },
  secondsEachWay: number,
  restSeconds = 0,
): TimedDose => ({
  kind,
  sets,
  repetitions: 'repetitions' in amount ? amount.repetitions : null,
  holdSeconds: 'holdSeconds' in amount ? amount.holdSeconds : null,
  tempo: { goSeconds: secondsEachWay, holdSeconds: 0, backSeconds: secondsEachWay },
  restSeconds,
  timesPerDay: 1,
  reserve: null,
});

const once = (exercise: string, timed: TimedDose) =>
  ({ exercise, dose: timed, legs: 'together', setUpSeconds: 0, sideChangeSeconds: 0 }) as const;

// Repetitions and seconds under tension of one exercise in one session at 3 s up and 3 s down.
// prettier-ignore
const HEAVY_SLOW: readonly [string, number, number, number][] = [
  // source,                                       row, repetitions, seconds
  ['27 Beyer 2015, graphic, week 1 [secondary]',     0, 45, 270],
  ['Beyer 2015, graphic, weeks 2-3 [secondary]',     1, 36, 216],
  ['Beyer 2015, graphic, weeks 4-5 [secondary]',     2, 40, 240],
  ['29 Beyer 2015, weeks 6-8 [memory]',              3, 32, 192],
  ['28 Beyer 2015, graphic, weeks 9-12 [secondary]', 4, 24, 144],
];

describe('heavy slow resistance', () => {
  it.each(HEAVY_SLOW)('%s', (_, row, repetitions, seconds) => {
    const { sets, repetitionMaximum } = HEAVY_SLOW_RESISTANCE[row]!;
    const timed = dose('repetition-maximum', sets, { repetitions: repetitionMaximum }, 3);
    expect([sets * repetitionMaximum, tensionSeconds(timed)]).toEqual([repetitions, seconds]);
  });
});

describe('session time', () => {
  // LOADIT protocol, doi 10.1186/s40814-020-00639-5, table 1 [read]: two exercises, four sets, 2 min between sets.
  // Group 3 is printed as 19:12, which does not add up: 864 s of work and six rests of 120 s are 1584 s.
  it.each([
    ['30 LOADIT group 1, 6 of 6 s [read]: 16:48', 6, 3, 288, 1008],
    ['31 LOADIT group 2, 6 of 2 s [read]: 13:36', 6, 1, 96, 816],
    ['LOADIT group 3, 18 of 6 s: 26:24 by its own parts, not the printed 19:12', 18, 3, 864, 1584],
    ['LOADIT group 4, 18 of 2 s [read]: 16:48', 18, 1, 288, 1008],
  ])('%s', (_, repetitions, secondsEachWay, work, total) => {
    const timed = dose('slow', 4, { repetitions }, secondsEachWay, 120);
    const session = [once('seated', timed), once('standing', timed)];
    expect(2 * tensionSeconds(timed)).toBe(work);
    expect(sessionSeconds(session)).toBe(total);
  });

  it('32 Rio protocol [memory]: five holds of 45 s with 2 min between are 225 s of work and 705 s', () => {
    const timed = dose('hold', 5, { holdSeconds: 45 }, 0, 120);
    expect([tensionSeconds(timed), sessionSeconds([once('hold', timed)])]).toEqual([225, 705]);
  });
});
