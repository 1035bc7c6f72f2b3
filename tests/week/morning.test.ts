import { describe, expect, it } from 'vitest';
import { afterMissed, flarePlan } from '../../src/week/flare.ts';
import { morningBands, morningDecision, painGate } from '../../src/week/morning.ts';
import { flare, missed, morning, pain } from './houseRules.ts';

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
    [6, 5, [5, 5], 'ease-back', 'pain-too-high'],
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
    [4, 5, null, 6],
    [7, 5, null, 6],
  ] as const)(
    'usual %d: carry on to %d, the same again %j, ease back from %d',
    (usual, carryOnTo, sameAgain, easeBackFrom) => {
      expect(morningBands(usual, morning)).toEqual({ usual, carryOnTo, sameAgain, easeBackFrom });
    },
  );
});

describe('pain during exercise', () => {
  it.each([
    // during  usual  allowed  stop   next
    [3, 0, true, false, 'carry-on'],
    [4, 2, false, false, 'same-again'],
    [4, 3, true, false, 'same-again'],
    [5, 4, true, false, 'same-again'],
    [5, 3, false, false, 'same-again'],
    [6, 6, false, true, 'ease-back'],
    [10, 0, false, true, 'ease-back'],
  ] as const)('%d, usual %d: allowed %s, stop %s, next %s', (during, usual, allowed, stop, next) => {
    expect(painGate(during, usual, pain)).toMatchObject({ allowed, stop, next });
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
  it('is two to three days of holds, walks for runs, half the sitting, then one step back', () => {
    expect(flarePlan(15, flare)).toEqual({
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
