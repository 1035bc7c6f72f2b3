/** Values that are not plausible for the person, and confirmations of nothing: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { filesWith, SAMPLE } from '../content/sample.ts';
import { OTTER, printed, printedWith } from './printed.ts';

const confirmed = (path: string, value: string) =>
  `confirmed: [{ path: "${path}", value: ${value}, reason: asked again }]\noverrides:`;

const second = (from: string, to: string) =>
  SAMPLE[OTTER].replace('revision: 1', 'revision: 2').replace(from, to);

describe('implausible', () => {
  it('a slip in a tested load', () => {
    expect(printedWith(OTTER, 'loadKg: 10', 'loadKg: 110')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:41: error implausible testedSets[0].loadKg is 110; must be plausible: at most 76 kg: 8 repetitions with 2 left speak for 147 kg lifted once, and 1.5 times a body mass of 68 kg is expected at most for this exercise.
            - { card: bridge, side: left, loadKg: 110, repetitions: 8, reserve: 2, pain: 2 }
                                                  ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: testedSets.0.loadKg, value: 110, reason: how it was checked }."
    `);
  });

  it('pounds for kilograms', () => {
    expect(printedWith(OTTER, 'loadKg: 10', 'loadKg: 22')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:41: error implausible testedSets[0].loadKg is 22; must be plausible: 10: 22 pounds are 10 kg, which the kit makes, and 22 kg it does not.
            - { card: bridge, side: left, loadKg: 22, repetitions: 8, reserve: 2, pain: 2 }
                                                  ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: testedSets.0.loadKg, value: 22, reason: how it was checked }."
    `);
  });

  it('a weight moved too often', () => {
    expect(printedWith(OTTER, 'repetitions: 8, reserve: 2', 'repetitions: 28, reserve: 2'))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:58: error implausible testedSets[0].repetitions is 28; must be plausible: at most 23, with 2 left and 10 kg: a weight that can be moved more often tells nothing of the load.
            - { card: bridge, side: left, loadKg: 10, repetitions: 28, reserve: 2, pain: 2 }
                                                                   ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: testedSets.0.repetitions, value: 28, reason: how it was checked }."
    `);
  });

  it('a kettlebell by its pounds', () => {
    expect(printedWith(OTTER, 'kettlebellsKg: []', 'kettlebellsKg: [26]')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:29:19: error implausible kit.kettlebellsKg[0] is 26; must be plausible: 12, in kg: 26 is the size in pounds of a kettlebell of 12 kg.
            kettlebellsKg: [26]
                            ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: kit.kettlebellsKg.0, value: 26, reason: how it was checked }."
    `);
  });

  it('a week too long for its longest run', () => {
    expect(printedWith(OTTER, 'weeklyKm: 20', 'weeklyKm: 42')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:42:13: error implausible running.weeklyKm is 42; must be plausible: at most 40 km, 4 times the longest run of 30 days (10 km), or more with runsPerWeek beside it.
            weeklyKm: 42
                      ^
      Fix: mend it, or write running.runsPerWeek; or, if it is right, check it and add to confirmed: - { path: running.weeklyKm, value: 42, reason: how it was checked }."
    `);
  });

  it('the number of another test', () => {
    expect(printedWith(OTTER, 'test: bridge-hold', 'test: single-leg-bridge')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:24:50: error implausible tests[0].seconds is 40; must be plausible: repetitions: single-leg-bridge is counted in repetitions, not held.
            - { test: single-leg-bridge, pain: 3, seconds: 40 }
                                                           ^
      Fix: mend it, or the id of the test; or, if it is right, check it and add to confirmed: - { path: tests.0.seconds, value: 40, reason: how it was checked }."
    `);
  });

  it('a tested weight that doubled and more since the revision before', () => {
    const jump = filesWith({ 'consults/otter-r2.md': second('loadKg: 10', 'loadKg: 24') });
    expect(printed(jump)).toMatchInlineSnapshot(`
      "consults/otter-r2.md:26:41: error implausible testedSets[0].loadKg is 24; must be plausible: 5 to 20 kg: revision 1 has 10 for bridge on this leg.
            - { card: bridge, side: left, loadKg: 24, repetitions: 8, reserve: 2, pain: 2 }
                                                  ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: testedSets.0.loadKg, value: 24, reason: how it was checked }."
    `);
  });

  it('an easier version that hurts far more', () => {
    const pains =
      '- { test: single-leg-bridge, pain: 1 }\n  - { test: bridge, pain: 6 }\n  - { test: bridge-hold';
    expect(printedWith(OTTER, '- { test: bridge-hold', pains)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:25:27: error implausible tests[1].pain is 6; must be plausible: at most 4: single-leg-bridge, a harder version of bridge, stands in tests[0] with 1.
            - { test: bridge, pain: 6 }
                                    ^
      Fix: mend it, or the id of the test; or, if it is right, check it and add to confirmed: - { path: tests.1.pain, value: 6, reason: how it was checked }.

      consults/otter-r1.md:28:79: error implausible testedSets[0].pain is 2; must be plausible: 3 to 9, near the 6 of the test bridge.
            - { card: bridge, side: left, loadKg: 10, repetitions: 8, reserve: 2, pain: 2 }
                                                                                        ^
      Fix: mend the one that is wrong; or, if it is right, check it and add to confirmed: - { path: testedSets.0.pain, value: 2, reason: how it was checked }."
    `);
  });

  it('a mass that is not of this height', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'massKg: 180')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:9: error implausible massKg is 180; must be plausible: 44 to 118 kg at 1.72 m; this is a body mass index of 60.8, and 15 to 40 is expected of somebody who runs.
          massKg: 180
                  ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: massKg, value: 180, reason: how it was checked }."
    `);
  });

  it('a height that is not of this age', () => {
    expect(
      printedWith(OTTER, 'ageYears: 41\nside: left\nheightM: 1.72', 'ageYears: 9\nside: left\nheightM: 1.72'),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:11:10: error implausible heightM is 1.72; must be plausible: 1.05 to 1.55 m at 9 years.
          heightM: 1.72
                   ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: heightM, value: 1.72, reason: how it was checked }.

      consults/otter-r1.md:48:18: error implausible running.trainingYears is 6; must be plausible: at most 4 years at 9: nobody trains before 5.
            trainingYears: 6
                           ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: running.trainingYears, value: 6, reason: how it was checked }."
    `);
  });

  it('trouble that began before anybody has it', () => {
    expect(printedWith(OTTER, 'usualMorningPain: 2', 'usualMorningPain: 2\nsymptomWeeks: 1900'))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:18:15: error implausible symptomWeeks is 1900; must be plausible: at most 1878 weeks at 41 years: such trouble does not begin before 6.
          symptomWeeks: 1900
                        ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: symptomWeeks, value: 1900, reason: how it was checked }."
    `);
  });

  it('a weight nobody has at home', () => {
    expect(printedWith(OTTER, 'dumbbellsKg: [5, 10]', 'dumbbellsKg: [5, 100]')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:28:20: error implausible kit.dumbbellsKg[1] is 100; must be plausible: at most 40 for a dumbbell at home, in kg.
            dumbbellsKg: [5, 100]
                             ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: kit.dumbbellsKg.1, value: 100, reason: how it was checked }."
    `);
  });

  it('the same test with two pains', () => {
    const twice = '- { test: bridge-hold, pain: 3, seconds: 40 }\n  - { test: bridge-hold, pain: 6 }';
    expect(printedWith(OTTER, '- { test: bridge-hold, pain: 3, seconds: 40 }', twice)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:25:32: error implausible tests[1].pain is 6; must be plausible: 3, as in tests[0]: bridge-hold stands there for the same leg, or for a leg that is not named.
            - { test: bridge-hold, pain: 6 }
                                         ^
      Fix: write side for each leg, or keep the entry that is right; or, if it is right, check it and add to confirmed: - { path: tests.1.pain, value: 6, reason: how it was checked }."
    `);
  });

  it('a review that is far away, and one that is too far', () => {
    expect(printedWith(OTTER, 'reviewOn: 2026-03-24', 'reviewOn: 2026-06-24')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:7:11: error implausible reviewOn is 2026-06-24; must be plausible: 2026-05-26 or earlier: this is 17 weeks after startOn, and 12 are expected at most.
          reviewOn: 2026-06-24
                    ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: reviewOn, value: 2026-06-24, reason: how it was checked }."
    `);
    expect(printedWith(OTTER, 'reviewOn: 2026-03-24', 'reviewOn: 2036-03-24')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:7:11: error out-of-range reviewOn is 2036-03-24; must be 2026-09-01 or earlier: 26 weeks after startOn at most.
          reviewOn: 2036-03-24
                    ^
      Fix: write the day of the next review; nothing lifts this limit."
    `);
  });

  it('a score out of the future', () => {
    const score = 'outcomes: [{ on: 2026-03-20, visaH: 60 }]\noverrides:';
    expect(printedWith(OTTER, 'overrides:', score)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:52:18: error implausible outcomes[0].on is 2026-03-20; must be plausible: 2026-03-02 or earlier: it speaks of what has been.
          outcomes: [{ on: 2026-03-20, visaH: 60 }]
                           ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: outcomes.0.on, value: 2026-03-20, reason: how it was checked }."
    `);
  });

  it('another person’s facts in the next revision', () => {
    const jump = filesWith({
      'consults/otter-r2.md': second(
        'ageYears: 41\nside: left\nheightM: 1.72\nmassKg: 68',
        'ageYears: 30\nside: right\nheightM: 1.85\nmassKg: 90',
      ),
    });
    expect(printed(jump)).toMatchInlineSnapshot(`
      "consults/otter-r2.md:9:11: error implausible ageYears is 30; must be plausible: 41 to 42: revision 1, seen 2026-03-02, has 41.
          ageYears: 30
                    ^
      Fix: mend it, or open the right person’s file; or, if it is right, check it and add to confirmed: - { path: ageYears, value: 30, reason: how it was checked }.

      consults/otter-r2.md:10:7: error implausible side is right; must be plausible: left: every test and set that names a leg was done on that one.
          side: right
                ^
      Fix: mend it, or the side of the tests; or, if it is right, check it and add to confirmed: - { path: side, value: right, reason: how it was checked }.

      consults/otter-r2.md:10:7: error implausible side is right; must be plausible: left, as in revision 1.
          side: right
                ^
      Fix: mend it, or open the right person’s file; or, if it is right, check it and add to confirmed: - { path: side, value: right, reason: how it was checked }.

      consults/otter-r2.md:11:10: error implausible heightM is 1.85; must be plausible: 1.69 to 1.75 m: revision 1 has 1.72.
          heightM: 1.85
                   ^
      Fix: mend it, or open the right person’s file; or, if it is right, check it and add to confirmed: - { path: heightM, value: 1.85, reason: how it was checked }.

      consults/otter-r2.md:12:9: error implausible massKg is 90; must be plausible: 61.2 to 74.8 kg: revision 1 has 68.
          massKg: 90
                  ^
      Fix: mend it, or open the right person’s file; or, if it is right, check it and add to confirmed: - { path: massKg, value: 90, reason: how it was checked }."
    `);
  });
});

describe('does-not-fit', () => {
  it('an entry that confirms nothing', () => {
    expect(printedWith(OTTER, 'overrides:', confirmed('testedSets.0.loadKg', '10'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:52:21: error does-not-fit confirmed[0].path is "testedSets.0.loadKg"; must be where a value stands that is not plausible; nothing there needs confirming.
          confirmed: [{ path: "testedSets.0.loadKg", value: 10, reason: asked again }]
                              ^
      Fix: take the entry out, or mend its path."
    `);
  });

  it('an entry that confirms another value, so that the doubt stands', () => {
    const text = SAMPLE[OTTER].replace('loadKg: 10', 'loadKg: 110').replace(
      'overrides:',
      confirmed('testedSets[0].loadKg', '100'),
    );
    expect(printed(filesWith({ [OTTER]: text }))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:41: error implausible testedSets[0].loadKg is 110; must be plausible: at most 76 kg: 8 repetitions with 2 left speak for 147 kg lifted once, and 1.5 times a body mass of 68 kg is expected at most for this exercise.
            - { card: bridge, side: left, loadKg: 110, repetitions: 8, reserve: 2, pain: 2 }
                                                  ^
      Fix: mend it; or, if it is right, check it and add to confirmed: - { path: testedSets.0.loadKg, value: 110, reason: how it was checked }.

      consults/otter-r1.md:52:52: error does-not-fit confirmed[0].value is 100; must be 110, the value at testedSets[0].loadKg.
          confirmed: [{ path: "testedSets[0].loadKg", value: 100, reason: asked again }]
                                                             ^
      Fix: check testedSets[0].loadKg again, then write the value that stands there."
    `);
  });
});

describe('untouched-starter', () => {
  it('a value, and a text of the body', () => {
    const text = SAMPLE[OTTER].replace('clinician: M. Vale', 'clinician: Starter, to be replaced').replace(
      'Seen by video.',
      'This is a starter about an invented person.',
    );
    expect(printed(filesWith({ [OTTER]: text }))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:12: error untouched-starter clinician is Starter, to be replaced; must be a value of your own: this one is the starter's, and would reach a page.
          clinician: Starter, to be replaced
                     ^
      Fix: write what holds here, or take the line out where it may be left out.

      consults/otter-r1.md:58:11: error untouched-starter found a text of the starter; must be a text of your own: this one is the starter's, and would reach a page.
          This is a starter about an invented person.
                    ^
      Fix: write what holds here, or take the line out where it may be left out."
    `);
  });
});

describe('wrong-type', () => {
  it('numbers that are not decimal', () => {
    const text = SAMPLE[OTTER].replace('massKg: 68', 'massKg: 0x3D').replace(
      'minutesPerDay: 30',
      'minutesPerDay: 0o36',
    );
    expect(printed(filesWith({ [OTTER]: text }))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:9: error wrong-type massKg is 0x3D; must be a number in decimal digits, such as 61 or 2.5.
          massKg: 0x3D
                  ^
      Fix: write the number in the digits 0 to 9; put a text that looks like a number into quotes.

      consults/otter-r1.md:38:16: error wrong-type minutesPerDay is 0o36; must be a number in decimal digits, such as 61 or 2.5.
          minutesPerDay: 0o36
                         ^
      Fix: write the number in the digits 0 to 9; put a text that looks like a number into quotes."
    `);
  });
});
