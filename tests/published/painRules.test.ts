/** Pain gates, spacing and sitting against what trials and models print, with the mark in the title. */
import { describe, expect, it } from 'vitest';
import { morningDecision, painGate } from '../../src/scheduling/morning.ts';
import { notBefore, recoveryHours } from '../../src/scheduling/recovery.ts';
import { calm, clock, morning, pain, rested } from '../scheduling/houseRules.ts';

describe('pain gate on a fixed test task, physiotherapy page on the hamstring tendon [secondary]', () => {
  it.each([
    // pain  tolerated
    [0, true],
    [3, true],
    [4, false],
    [10, false],
  ])('pain %d: tolerated %s', (during, allowed) => {
    expect(painGate(during, calm(0), pain).allowed).toBe(allowed);
  });
});

describe('pain-monitoring model, Silbernagel 2007, Am J Sports Med 35(6):897-906 [memory]', () => {
  const model = { ...pain, duringAtMost: { value: 5, mark: 'memory' } } as const;

  it('5 during is allowed, and carried on when the next morning is back to base', () => {
    expect(painGate(5, calm(2), model).allowed).toBe(true);
    expect(morningDecision(2, 2, [2], morning).answer).toBe('carry-on');
  });

  it('6 is not allowed, during or the next morning', () => {
    expect(painGate(6, calm(2), model)).toMatchObject({ allowed: false, stop: true });
    expect(morningDecision(6, 2, [2], morning).answer).toBe('ease-back');
  });
});

describe('48 h between heavy sessions, LOADIT trial doi 10.1186/s40814-020-00639-5 and NCT06774547 [read]', () => {
  it('after Monday 08:00 the next is not before Wednesday 08:00', () => {
    const mondayEight = 8;
    const { hours } = recoveryHours('heavy', rested, clock);
    expect(hours).toBe(48);
    expect(notBefore(mondayEight, hours)).toBe(2 * 24 + 8);
  });

  it('after Sunday 08:00 it is Tuesday 08:00, round the end of the week', () => {
    expect(notBefore(6 * 24 + 8, 48)).toBe(24 + 8);
  });
});
