/** The protocol's own settings are what the week takes: the compiler checks it when it checks this file. */
import { describe, expectTypeOf, it } from 'vitest';
import type { ConsultFrontMatter } from '../../src/content/schema/consult.ts';
import type { ProtocolFrontMatter } from '../../src/content/schema/protocol.ts';
import type { ActivityRule } from '../../src/week/activities.ts';
import type { FlareRules, MissedRules } from '../../src/week/flare.ts';
import type { MorningRules } from '../../src/week/morning.ts';
import type { PainRules } from '../../src/week/painLimits.ts';
import type { WeekRules } from '../../src/week/puzzle.ts';
import type { Recoverer } from '../../src/week/recovery.ts';
import type { RunDecisionRules, RunFacts } from '../../src/week/runDecision.ts';
import type { RunningPlanRules } from '../../src/week/runningPlan.ts';
import type { SittingRules } from '../../src/week/sitting.ts';
import type { StageOnTheWay, StepTimeRules } from '../../src/week/stageDates.ts';
import type { StepRateRules } from '../../src/week/stepRate.ts';
import type { RungRules } from '../../src/week/walkRun.ts';

type Stage = ProtocolFrontMatter['stages'][number];

describe('house numbers come from the protocol as they stand', () => {
  it('fits every rule the week takes', () => {
    expectTypeOf<ProtocolFrontMatter['week']>().toExtend<WeekRules>();
    expectTypeOf<ProtocolFrontMatter['runningRules']>().toExtend<
      RunningPlanRules & RunDecisionRules & StepRateRules
    >();
    expectTypeOf<ProtocolFrontMatter['sittingRules']>().toExtend<SittingRules>();
    expectTypeOf<ProtocolFrontMatter['morningCheck']>().toExtend<MorningRules>();
    expectTypeOf<ProtocolFrontMatter['painRule']>().toExtend<PainRules>();
    expectTypeOf<ProtocolFrontMatter['flare']>().toExtend<FlareRules>();
    expectTypeOf<ProtocolFrontMatter['missedDays']>().toExtend<MissedRules>();
    expectTypeOf<ProtocolFrontMatter['goingOn']>().toExtend<RungRules & StepTimeRules>();
    expectTypeOf<ProtocolFrontMatter['activities'][number]>().toExtend<ActivityRule>();
    expectTypeOf<Stage['usualWeeks']>().toExtend<StageOnTheWay['usualWeeks']>();
  });

  it('fits what the consult records', () => {
    expectTypeOf<ConsultFrontMatter['recovery']['sleep']>().toExtend<Recoverer['sleep']>();
    expectTypeOf<ConsultFrontMatter['running']['decision']>().toExtend<RunFacts['recorded']>();
    expectTypeOf<ConsultFrontMatter['irritability']>().toExtend<RunFacts['irritability']>();
  });
});
