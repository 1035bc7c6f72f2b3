/** The protocol's own settings are what the week takes: the compiler checks it when it checks this file. */
import { describe, expectTypeOf, it } from 'vitest';
import type { ConsultFrontMatter } from '../../src/content/schema/consult.ts';
import type { ProtocolFrontMatter } from '../../src/content/schema/protocol.ts';
import type { ActivityRule } from '../../src/scheduling/activities.ts';
import type { FlareRules, MissedRules } from '../../src/scheduling/flare.ts';
import type { MorningRules } from '../../src/scheduling/morning.ts';
import type { PainRules } from '../../src/scheduling/painLimits.ts';
import type { WeekRules } from '../../src/scheduling/weekProblem.ts';
import type { Recoverer } from '../../src/scheduling/recovery.ts';
import type { RunDecisionRules, RunFacts } from '../../src/scheduling/runDecision.ts';
import type { RunningPlanRules } from '../../src/scheduling/runningPlan.ts';
import type { SittingRules } from '../../src/scheduling/sitting.ts';
import type { StageOnTheWay, StepTimeRules } from '../../src/scheduling/stageDates.ts';
import type { StepRateRules } from '../../src/scheduling/stepRate.ts';
import type { RungRules } from '../../src/scheduling/walkRun.ts';

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
