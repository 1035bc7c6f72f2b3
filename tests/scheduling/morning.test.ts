import { describe, expect, it } from 'vitest';
import { afterMissed, flarePlan } from '../../src/scheduling/flare.ts';
import { painLimits } from '../../src/scheduling/painLimits.ts';
import { morningBands, morningDecision, painGate } from '../../src/scheduling/morning.ts';
import { calm, flare, missed, morning, pain } from './houseRules.ts';

const days = (count: number, score: number | null) => Array.from({ length: count }, () => score);

describe('the morning check', () => {
  it.each([
    // today  usual  the mornings before  answer         code
    [2, 2, [2, 2], 'carry-on', 'within-usual'],
    [3, 2, [2, 2], 'carry-on', 'within-usual'],
    [4, 2, [2, 3], 'same-again', 'over-usual-once'],
    [4, 2, [2, 4], 'ease-back', 'over-usual-twice'],
    [4, 2, [4, null], 'ease-back', 'over-usual-twice'],
    [5, 2, [2, 2], 'ease-back', 'far-over-usual'],
    // High usual pain (house rules 11.5): usual carries on, usual + 2 once is the same again, twice running eases back.
    [4, 4, [4, 4], 'carry-on', 'within-usual'],
    [5, 4, [4, 4], 'carry-on', 'within-usual'],
    [6, 4, [4, 4], 'same-again', 'over-usual-once'],
    [6, 4, [4, 6], 'ease-back', 'over-usual-twice'],
    [7, 4, [4, 4], 'ease-back', 'pain-too-high'],
    [6, 5, [5, 5], 'carry-on', 'within-usual'],
    [7, 5, [5, 5], 'same-again', 'over-usual-once'],
    [7, 5, [5, 7], 'ease-back', 'over-usual-twice'],
    [8, 5, [5, 5], 'ease-back', 'pain-too-high'],
    [6, 6, [6, 6], 'carry-on', 'within-usual'],
    [9, 7, [7, 7], 'same-again', 'over-usual-once'],
    [10, 9, [9, 9], 'carry-on', 'within-usual'],
    [4, 2, [], 'same-again', 'over-usual-once'],
    [2, 2, [null, null], 'carry-on', 'within-usual'],
    [4, 2, days(6, 4), 'contact', 'not-settled'],
    [4, 2, days(5, 4), 'ease-back', 'over-usual-twice'],
  ] as const)('%d today, usual %d, before %j: %s', (today, usual, before, answer, code) => {
    const decision = morningDecision(today, usual, before, morning);
    expect(decision.answer).toBe(answer);
    expect(decision.because[0]?.code).toBe(code);
  });

  it('asks to get in touch when it has been rising for two weeks, even within the band', () => {
    const rising = [2, 2, 3, 2, 3, 2, 3, 3, 3, 3, 3, 3, 3];
    expect(morningDecision(3, 2, rising, morning)).toMatchObject({
      answer: 'contact',
      because: [{ code: 'rising' }],
    });
    expect(morningDecision(3, 2, rising.slice(1), morning).answer).toBe('carry-on');
  });

  it('does not call a steady or falling fortnight rising', () => {
    expect(morningDecision(3, 2, days(13, 3), morning).answer).toBe('carry-on');
    expect(morningDecision(2, 2, [...days(7, 3), ...days(6, 2)], morning).answer).toBe('carry-on');
    expect(morningDecision(3, 2, [...days(7, 2), ...days(6, 3)], morning).answer).toBe('carry-on');
  });

  it.each([
    // usual  carry on to  same again  ease back from
    [0, 1, [2, 2], 3],
    [2, 3, [4, 4], 5],
    [3, 4, [5, 5], 6],
    [4, 5, [6, 6], 7],
    [5, 6, [7, 7], 8],
    [6, 7, [8, 8], 9],
    [7, 8, [9, 9], 10],
    [8, 9, [10, 10], 11],
    [9, 10, null, 11],
    [10, 10, null, 11],
  ] as const)(
    'usual %d: carry on to %d, the same again %j, ease back from %d',
    (usual, carryOnTo, sameAgain, easeBackFrom) => {
      expect(morningBands(usual, morning)).toEqual({ usual, carryOnTo, sameAgain, easeBackFrom });
    },
  );
});

describe('a wider band for the same again', () => {
  it('ends under the fixed score, but never under usual + 2', () => {
    const wide = { ...morning, sameAgainOver: { value: 4, mark: 'choice' } } as const;
    expect(morningBands(0, wide).sameAgain).toEqual([2, 4]);
    expect(morningBands(3, wide)).toMatchObject({ sameAgain: [5, 5], easeBackFrom: 6 });
    expect(morningBands(5, wide)).toMatchObject({ sameAgain: [7, 7], easeBackFrom: 8 });
  });
});

describe('pain during exercise where usual is high, or irritability (house rules 11.5)', () => {
  it.each([
    // usual  irritability  at most  never above  no more than usual
    [0, 'moderate', 3, 5, false],
    [3, 'moderate', 4, 5, false],
    [4, 'low', 4, 4, true],
    [5, 'low', 5, 5, true],
    [6, 'moderate', 6, 6, true],
    [0, 'high', 0, 0, true],
    [2, 'high', 2, 2, true],
  ] as const)(
    'usual %d, irritability %s: up to %d, stop above %d, no more than usual %s',
    (usualPain, irritability, atMost, neverAbove, usualOnly) => {
      expect(painLimits({ usualPain, irritability }, pain)).toEqual({ atMost, neverAbove, usualOnly });
    },
  );

  it.each([
    // during  usual  irritability  allowed  stop   next
    [4, 4, 'moderate', true, false, 'carry-on'],
    [5, 4, 'moderate', false, true, 'ease-back'],
    [2, 2, 'high', true, false, 'carry-on'],
    [3, 2, 'high', false, true, 'ease-back'],
  ] as const)(
    '%d, usual %d, irritability %s: allowed %s, stop %s, next %s',
    (during, usualPain, irritability, allowed, stop, next) => {
      expect(painGate(during, { usualPain, irritability }, pain)).toMatchObject({ allowed, stop, next });
    },
  );
});

describe('pain during exercise', () => {
  it.each([
    // during  usual  allowed  stop   next
    [3, 0, true, false, 'carry-on'],
    [4, 2, false, false, 'same-again'],
    [4, 3, true, false, 'same-again'],
    [5, 3, false, false, 'same-again'],
    [6, 3, false, true, 'ease-back'],
    [10, 0, false, true, 'ease-back'],
  ] as const)('%d, usual %d: allowed %s, stop %s, next %s', (during, usual, allowed, stop, next) => {
    expect(painGate(during, calm(usual), pain)).toMatchObject({ allowed, stop, next });
  });
});

describe('missed days', () => {
  it.each([
    [0, false, 'same-step', false],
    [6, false, 'same-step', false],
    [7, false, 'one-step-back', false],
    [14, false, 'one-step-back', false],
    [15, false, 'stage-start', true],
    [1, true, 'stage-start', true],
  ] as const)('%d days, fever %s: %s, get in touch %s', (count, fever, start, contact) => {
    expect(afterMissed(count, fever, missed)).toMatchObject({ start, contact });
  });
});

describe('a flare', () => {
  it('is a day of rest, two to three days of holds, walks for runs, half the sitting, then one step back', () => {
    expect(flarePlan(15, flare)).toEqual({
      restDays: 1,
      holdsOnlyDays: { from: 2, to: 3 },
      runsBecome: 'walk',
      sittingMinutes: 7,
      startAgain: 'one-step-back',
      startWhen: 'check-back-to-usual',
      mark: 'choice',
    });
    expect(flarePlan(null, flare).sittingMinutes).toBeNull();
  });
});
