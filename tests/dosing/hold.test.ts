import { describe, expect, it } from 'vitest';
import { holdFor } from '../../src/dosing/hold.ts';

const RULES = {
  shareTo: 0.7,
  longestSeconds: 45,
  screenedSeconds: null,
  untestedSeconds: 15,
  shareFrom: 0.5,
};

// Dose and tested seconds (null: no test), expected seconds, what decided; rules 4, 11.2 and 11.4 [choice].
describe('holdFor', () => {
  it.each([
    ['the dose', 30, 60, 30, 'dose'],
    ['70 % of 40 s, down to 5 s', 45, 40, 25, 'testedHold'],
    ['70 % of 50 s is 35 s', 45, 50, 35, 'testedHold'],
    ['at most 45 s', 60, 120, 45, 'longest'],
    ['no test: the shortest', 30, null, 15, 'untested'],
    ['no test, and a dose that is shorter still', 10, null, 10, 'dose'],
    ['a dose between fives', 32, 60, 30, 'dose'],
    ['a dose under half of what was held is raised to it', 30, 75, 40, 'shareFrom'],
    ['and stays under the longest', 30, 100, 45, 'longest'],
  ])('%s: dose %s s, tested %s s, hold %s s', (_, dose, tested, holdSeconds, decidedBy) => {
    expect(holdFor(dose, tested, RULES)).toMatchObject({ holdSeconds, why: { decidedBy } });
  });

  it('is short for someone who must not hold long', () => {
    expect(holdFor(45, 120, { ...RULES, screenedSeconds: 15 })).toMatchObject({
      holdSeconds: 15,
      why: { decidedBy: 'screen' },
    });
  });

  it('goes by the dose alone where it is published, and by no shortest where a hold grows', () => {
    const [published, ladder] = [
      { ...RULES, shareFrom: null },
      { ...RULES, untestedSeconds: null },
    ];
    expect(holdFor(5, 60, published)).toMatchObject({ holdSeconds: 5, why: { decidedBy: 'dose' } });
    expect(holdFor(45, null, ladder)).toMatchObject({ holdSeconds: 45, why: { decidedBy: 'dose' } });
  });

  it('gives none when 70 % is under 5 s', () => {
    expect(holdFor(30, 7, RULES)).toEqual({
      none: true,
      why: { rule: 'tooShort', testedSeconds: 7, needed: expect.closeTo(7.14, 2) },
    });
  });
});
