import { describe, expect, it } from 'vitest';
import { runDecision, type RunFacts, type RunLimits } from '../../src/scheduling/runDecision.ts';
import { running } from './houseRules.ts';

const facts = (change: Partial<RunFacts> = {}): RunFacts => ({
  runs: true,
  recorded: 'keep',
  clinicianOwn: null,
  irritability: 'moderate',
  usualPain: 2,
  worstTestPain: 4,
  ...change,
});
const limits = (change: Partial<RunLimits> = {}): RunLimits => ({
  noRunning: [],
  stageMost: 'steady',
  stageTensionBw: 3.5,
  ...change,
});
const decide = (change: Partial<RunFacts> = {}, bounds: Partial<RunLimits> = {}) =>
  runDecision(facts(change), limits(bounds), running);
const codes = (change: Partial<RunFacts> = {}, bounds: Partial<RunLimits> = {}) =>
  decide(change, bounds).because.map(({ code }) => code);

describe('the decision on running', () => {
  it('keeps running up to what the stage admits, and holds the rest back in order', () => {
    expect(decide()).toMatchObject({
      decision: 'keep',
      most: 'steady',
      heldBack: ['hills-or-strides', 'fast'],
      overRules: false,
    });
    expect(codes()).toEqual(['stage-limits-running', 'recorded-decision']);
  });

  it.each([
    ['irritable', { irritability: 'high' }],
    ['usual-pain', { usualPain: 4 }],
    ['test-pain', { worstTestPain: 6 }],
  ] as const)('allows walk-run at most when %s, whatever was recorded as keep', (code, change) => {
    expect(decide(change)).toMatchObject({ decision: 'walk-run', most: 'walk-run', overRules: false });
    expect(codes(change)).toEqual(['stage-limits-running', code, 'recorded-decision-not-followed']);
  });

  it('opens easy running and no more after a programme of walk and run', () => {
    expect(decide({}, { afterWalkRun: true })).toMatchObject({ decision: 'keep', most: 'easy' });
    expect(codes({}, { afterWalkRun: true })).toContain('after-walk-run');
    expect(decide({}, { afterWalkRun: false }).most).toBe('steady');
  });

  it('is not touched by usual pain 3 and test pain 5', () => {
    expect(decide({ usualPain: 3, worstTestPain: 5 }).decision).toBe('keep');
  });

  it('lets the recorded decision be stricter', () => {
    expect(decide({ recorded: 'walk-run' })).toMatchObject({ decision: 'walk-run' });
    expect(decide({ recorded: 'none' })).toMatchObject({ decision: 'none', most: 'none' });
    expect(codes({ recorded: 'none' }).at(-1)).toBe('recorded-decision');
  });

  it("marks the clinician's own entry over the rules, and lets it reach easy running only", () => {
    const own = decide({ clinicianOwn: 'keep', usualPain: 5 });
    expect(own).toMatchObject({ decision: 'keep', most: 'easy', overRules: true });
    expect(own.because.at(-1)).toEqual({
      code: 'clinician-own-over-rules',
      inputs: { decision: 'keep' },
      mark: 'choice',
    });
    expect(decide({ clinicianOwn: 'walk-run' }, { stageMost: 'none' })).toMatchObject({
      most: 'walk-run',
      overRules: true,
    });
    expect(decide({ clinicianOwn: 'keep' })).toMatchObject({ most: 'steady', overRules: false });
  });

  it('is lifted by nobody when the screen stops it, or for someone who does not run', () => {
    const screened = decide({ clinicianOwn: 'keep' }, { noRunning: ['hopPain', 'lowEnergy'] });
    expect(screened).toMatchObject({ decision: 'none', overRules: false });
    expect(screened.because[0]).toMatchObject({
      code: 'screen-stops-running',
      inputs: { items: ['hopPain', 'lowEnergy'] },
    });
    expect(decide({ runs: false, clinicianOwn: 'keep' }).decision).toBe('none');
  });

  it("says that easy running pulls more than an early stage's cap", () => {
    const early = decide({ recorded: 'walk-run' }, { stageMost: 'walk-run', stageTensionBw: 1.5 });
    const pull = early.because.find(({ code }) => code === 'pull-above-stage-cap');
    expect(pull?.inputs.capBw).toBe(1.5);
    expect(pull?.inputs.pullBw).toBeCloseTo(1.909, 2);
    expect(codes({}, { stageTensionBw: null })).not.toContain('pull-above-stage-cap');
    expect(codes({ recorded: 'none' }, { stageTensionBw: 1.5 })).not.toContain('pull-above-stage-cap');
  });
});
