/** Pregnancy and birth in a consult, as their author sees what is wrong with them. */
import { describe, expect, it } from 'vitest';
import { OTTER, printedWith } from './printed.ts';

const before = 'cannotDo:';

describe('does-not-fit', () => {
  it('pregnant and after birth at once', () => {
    const by = 'pregnancy: { weeks: 12 }\nafterBirth: { weeks: 3 }\ncannotDo:';
    expect(printedWith(OTTER, before, by)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:23:13: error does-not-fit afterBirth is { weeks: 3 }; must be left out when pregnancy is recorded.
          afterBirth: { weeks: 3 }
                      ^
      Fix: keep the one that holds today."
    `);
  });

  it('a clearance of a day after the start', () => {
    const by =
      'afterBirth: { weeks: 3, clearance: { by: a doctor, on: 2027-12-01, decision: may run } }\ncannotDo:';
    expect(printedWith(OTTER, before, by)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:56: error does-not-fit afterBirth.clearance.on is 2027-12-01; must be startOn (2026-03-03) or earlier.
          afterBirth: { weeks: 3, clearance: { by: a doctor, on: 2027-12-01, decision: may run } }
                                                                 ^
      Fix: write the day on which it was decided; what is still to be decided lifts nothing."
    `);
  });
});

describe('wrong values', () => {
  it('more weeks than a pregnancy has', () => {
    expect(printedWith(OTTER, before, 'pregnancy: { weeks: 60 }\ncannotDo:')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:21: error out-of-range pregnancy.weeks is 60; must be a whole number from 1 to 43 weeks.
          pregnancy: { weeks: 60 }
                              ^
      Fix: give a whole number from 1 to 43 weeks. Full weeks of pregnancy."
    `);
  });

  it('and none when it is right', () => {
    expect(printedWith(OTTER, before, 'pregnancy: { weeks: 30 }\ncannotDo:')).toBe('');
  });
});
