/** Running as decided for one person: the decision, the weeks to the review, the step rate. */
import type { Consult, Protocol, Stage } from '../../content/library.ts';
import { runDecision, type RunDecision, type MaternityLimit } from '../../scheduling/runDecision.ts';
import { runningPlan, type RunHabit, type RunningPlan } from '../../scheduling/runningPlan.ts';
import { stepRateTarget, type StepRateTarget } from '../../scheduling/stepRate.ts';
import { order, type RunKind } from '../../scheduling/run.ts';
import type { RunWeekRule } from '../../scheduling/runWeek.ts';
import type { PlannedRun } from '../../scheduling/plannedRun.ts';
import { addDays, type IsoDate } from '../../units/date.ts';
import { numberedStages } from '../../content/keepStage.ts';
import { courseOf } from '../stage/course.ts';
import { RUNNING_DECISION } from '../../content/schema/override.ts';
import type { Person } from '../person/person.ts';
import type { ReviewedRunning } from '../terms/earlier.ts';
import { roundDown } from '../../units/round.ts';

export interface RunningFacts {
  readonly decision: RunDecision;
  /** Days of a week that have room for a run. */
  readonly runDays: number;
  readonly plan: RunningPlan;
  /** Each run of a week as its hardest week has it, so that the days found for it hold in every week. */
  readonly pattern: readonly PlannedRun[];
  readonly stepRate: StepRateTarget | null;
  /** The kind of run that would be open but is none of this runner's habits; null when there is none. */
  readonly notUsedTo: RunKind | null;
}

/**
 * The decision within rules, stage, screen and habit, and the runs of a week as they may become before the review.
 * `runDays`: the days of a week that have room for a run, 0 to 7.
 */
export function runningFacts(person: Person, stage: Stage, runDays = DAYS_A_WEEK): RunningFacts {
  const { running, startOn } = person.consult;
  const open = decisionOf(person, stage);
  const habitual = hardestHabit(running);
  const decision = order(habitual) < order(open.most) ? { ...open, most: habitual } : open;
  const target = stepRateTarget(
    { stepsPerMin: running.stepsPerMin ?? null, overStriding: running.overStriding ?? 'notSeen' },
    person.protocol.runningRules,
  );
  const plan = planOf(
    person,
    decision,
    runDays,
    { startOn, reviewOn: addDays(startOn, 7 * PATTERN_WEEKS) },
    null,
  );
  return {
    decision,
    runDays,
    plan,
    pattern: hardestOfEach(plan),
    stepRate: running.runs && decision.decision !== 'none' && 'toStepsPerMin' in target ? target : null,
    notUsedTo: decision === open ? null : open.most,
  };
}

const DAYS_A_WEEK = 7;

// Hills and fast runs take turns by the week: after two weeks each run has been as hard as it gets.
const PATTERN_WEEKS = 2;

/** The same with the weeks of the dated plan: `weekRules` say what each allows. */
export function datedRunning(
  facts: RunningFacts,
  person: Person,
  dates: { readonly startOn: IsoDate; readonly reviewOn: IsoDate },
  weekRules: readonly RunWeekRule[],
): RunningFacts {
  return { ...facts, plan: planOf(person, facts.decision, facts.runDays, dates, weekRules) };
}

function planOf(
  person: Person,
  decision: RunDecision,
  runDays: number,
  dates: { readonly startOn: IsoDate; readonly reviewOn: IsoDate },
  weekRules: readonly RunWeekRule[] | null,
): RunningPlan {
  const { consult, protocol } = person;
  return runningPlan(
    decision,
    afterReview(habitOf(consult.running, protocol, runDays), person),
    numberedStages(protocol.stages).map(({ running: { most } }) => most),
    dates,
    protocol.runningRules,
    protocol.goingOn,
    weekRules,
  );
}

function hardestOfEach({ weeks }: RunningPlan): PlannedRun[] {
  const hardest = new Map<string, PlannedRun>();
  for (const run of weeks.flatMap(({ runs }) => runs)) {
    const before = hardest.get(run.id);
    if (before === undefined || order(run.kind) > order(before.kind)) hardest.set(run.id, run);
  }
  return [...hardest.values()];
}

function decisionOf(person: Person, stage: Stage): RunDecision {
  const { consult, protocol, effects, maternity, sudden, walkedBefore } = person;
  return runDecision(
    {
      runs: consult.running.runs,
      recorded: consult.running.decision,
      clinicianOwn: ownDecision(consult),
      irritability: consult.irritability,
      usualPain: consult.usualMorningPain,
      worstTestPain: Math.max(...consult.tests.map(({ pain }) => pain)),
    },
    {
      // Light holds at most leaves no room for running either.
      noRunning: [...effects.noRunning, ...effects.lightHolds],
      stageMost: stage.running.most,
      maternity: maternityLimit(maternity),
      suddenMost: sudden?.runAtMost ?? null,
      afterWalkRun: walkedBefore,
      review: person.logged?.running ?? null,
      stageTensionBw: stage.caps.tensionBw,
    },
    protocol.runningRules,
  );
}

/** What the review of running leads to, where the clinician has not decided otherwise; null where it goes on. */
export function followedReview({
  consult,
  logged,
}: Pick<Person, 'consult' | 'logged'>): ReviewedRunning | null {
  return ownDecision(consult) === null ? (logged?.running ?? null) : null;
}

// Runs that ease back begin with a share of what was run, and grow from there; runs that stay grow not at all.
function afterReview(habit: RunHabit, person: Person): RunHabit {
  const followed = followedReview(person);
  if (followed?.move === 'stay') return { ...habit, held: true };
  if (followed?.move !== 'easeBack') return habit;
  const { value } = person.protocol.runningRules.easeBackShare;
  const share = (km: number | null) => (km === null ? null : roundDown(km * value, 0.1));
  return { ...habit, weeklyKm: share(habit.weeklyKm), longestIn30DaysKm: share(habit.longestIn30DaysKm) };
}

function maternityLimit(maternity: Person['maternity']): MaternityLimit | null {
  if (maternity === null || maternity.runMost === null) return null;
  return { most: maternity.runMost, kind: maternity.kind, weeks: maternity.weeks };
}

// What the consult does not ask for is handed on as not known.
function habitOf(running: Consult['running'], protocol: Protocol, runDays: number): RunHabit {
  return {
    weeklyKm: running.weeklyKm ?? null,
    longestIn30DaysKm: running.longestIn30DaysKm ?? null,
    runsPerWeek: running.runsPerWeek ?? null,
    runDays,
    weeksOff: running.weeksOff ?? null,
    usedToHills: running.hills ?? false,
    usedToFast: running.speed ?? false,
    hillyRoutes: running.hillyRoutes ?? false,
    weeksBack: weeksWithBoth(running, protocol),
    walkRunRung: null,
    fastMinutes: null,
    climbM: null,
    // Races are judged when the week is known.
    races: [],
  };
}

// What comes back is what there was: nobody is sent to run hills or fast who never did.
function hardestHabit({ hills, speed }: Consult['running']): RunKind {
  if (speed === true) return 'fast';
  return hills === true ? 'hills-or-strides' : 'steady';
}

/** Someone who never stopped has had hills and speed as long as there was training; of anybody else it is not known. */
function weeksWithBoth({ trainingYears, weeksOff }: Consult['running'], { stages }: Protocol): number | null {
  const neverStopped = courseOf({ stages }, 'keepGoing') === 'prevention' && weeksOff === 0;
  return neverStopped && trainingYears !== undefined ? trainingYears * WEEKS_PER_YEAR : null;
}

const WEEKS_PER_YEAR = 52;

// An override of the whole decision: `running.decision`, with its reason in the consult.
function ownDecision(consult: Consult): RunDecision['decision'] | null {
  const own = consult.overrides.find(({ path }) => path === RUNNING_DECISION)?.value;
  return own === 'keep' || own === 'walk-run' || own === 'none' ? own : null;
}
