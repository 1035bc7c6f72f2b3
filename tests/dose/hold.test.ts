import { describe, expect, it } from 'vitest';
import { holdFor } from '../../src/dose/hold.ts';

const RULES = { shareTo: 0.7, longestSeconds: 45, screenedSeconds: null };

// Dose and tested seconds (null: no test), expected seconds, what decided; rules 4 [choice].
describe('holdFor', () => {
  it.each([
    ['the dose', 30, 60, 30, 'dose'],
    ['70 % of 40 s, down to 5 s', 45, 40, 25, 'testedHold'],
    ['70 % of 50 s is 35 s', 45, 50, 35, 'testedHold'],
    ['at most 45 s', 60, 120, 45, 'longest'],
    ['no test', 30, null, 30, 'dose'],
    ['a dose between fives', 32, null, 30, 'dose'],
  ])('%s: dose %s s, tested %s s, hold %s s', (_, dose, tested, holdSeconds, decidedBy) => {
    expect(holdFor(dose, tested, RULES)).toMatchObject({ holdSeconds, why: { decidedBy } });
  });

  it('is short for someone who must not hold long', () => {
    expect(holdFor(45, 120, { ...RULES, screenedSeconds: 15 })).toMatchObject({
      holdSeconds: 15,
      why: { decidedBy: 'screen' },
    });
  });

  it('gives none when 70 % is under 5 s', () => {
    expect(holdFor(30, 7, RULES)).toEqual({
      none: true,
      why: { rule: 'tooShort', testedSeconds: 7, needed: expect.closeTo(7.14, 2) },
    });
  });
});
