/** Running as decided for one person: the decision, the weeks to the review, the step rate. */
import type { Consult, Protocol, Stage } from '../content/library.ts';
import { runDecision, type RunDecision } from '../week/runDecision.ts';
import { runningPlan, type RunningPlan } from '../week/runningPlan.ts';
import { stepRateTarget, type StepRateTarget } from '../week/stepRate.ts';
import type { WalkRunRung } from '../week/plannedRun.ts';
import { walkRunLadder } from '../week/walkRun.ts';
import type { ScreenEffects } from './screen.ts';

export interface RunningFacts {
  readonly decision: RunDecision;
  readonly plan: RunningPlan;
  readonly stepRate: StepRateTarget | null;
  readonly ladder: readonly WalkRunRung[];
}

/** What the consult does not ask for (weeks since hills came back) is handed on as not known. */
export function runningFacts(
  consult: Consult,
  protocol: Protocol,
  stage: Stage,
  effects: ScreenEffects,
): RunningFacts {
  const { running } = consult;
  const rules = { ...protocol.runningRules, raceEasyDays: protocol.runningRules.raceEasyDays };
  const decision = runDecision(
    {
      runs: running.runs,
      recorded: running.decision,
      clinicianOwn: ownDecision(consult),
      irritability: consult.irritability,
      usualPain: consult.usualMorningPain,
      worstTestPain: Math.max(...consult.tests.map(({ pain }) => pain)),
    },
    { noRunning: effects.noRunning, stageMost: stage.running.most, stageTensionBw: stage.caps.tensionBw },
    rules,
  );
  const plan = runningPlan(
    decision,
    {
      weeklyKm: running.weeklyKm ?? null,
      longestIn30DaysKm: running.longestIn30DaysKm ?? null,
      runsPerWeek: running.runsPerWeek ?? null,
      weeksOff: running.weeksOff ?? null,
      usedToHills: running.hills ?? false,
      usedToFast: running.speed ?? false,
      hillyRoutes: running.hillyRoutes ?? false,
      weeksBack: null,
      walkRunRung: null,
      fastMinutes: null,
      climbM: null,
      races: [],
    },
    protocol.stages.map(({ running: { most } }) => most),
    consult,
    rules,
    protocol.goingOn,
  );
  const target = stepRateTarget(
    { stepsPerMin: running.stepsPerMin ?? null, overStriding: running.overStriding ?? 'notSeen' },
    rules,
  );
  return {
    decision,
    plan,
    stepRate: running.runs && decision.decision !== 'none' && 'toStepsPerMin' in target ? target : null,
    ladder: walkRunLadder(rules),
  };
}

// An override of the whole decision: `running.decision`, with its reason in the consult.
function ownDecision(consult: Consult): RunDecision['decision'] | null {
  const own = consult.overrides.find(({ path }) => path === 'running.decision')?.value;
  return own === 'keep' || own === 'walk-run' || own === 'none' ? own : null;
}
