/** The revision before, looked back on with its log: what it leads to, and what the next one starts from. */
import type { Consult, Library } from '../content/library.ts';
import type { Log } from '../content/log/log.ts';
import type {
  Earlier,
  EarlierExercise,
  LoggedMornings,
  LoggedRun,
  ReviewedRunning,
} from '../decisions/terms/earlier.ts';
import { reviewOf } from '../review/review.ts';
import { LONGEST_DAYS } from '../review/running.ts';
import type { DoneDose, Review, RuleCode } from '../review/terms.ts';
import { RUN_KINDS } from '../scheduling/run.ts';
import { addDays, type IsoDate } from '../units/date.ts';
import { earlierOf } from './earlier.ts';
import type { Programme } from './programme.ts';

/** A revision that was built, its consult and what was written down of it. */
export interface Logged {
  readonly consult: Consult;
  readonly programme: Programme;
  readonly log: Log;
}

/** The review of a revision on a day. */
export function reviewLogged({ consult, programme, log }: Logged, seenOn: IsoDate, library: Library): Review {
  const protocol = library.protocols.get(consult.protocol);
  const earlier = earlierOf(programme);
  if (protocol === undefined || earlier === null)
    throw new Error(`protocol ${consult.protocol}: content resolves it before a programme is made`);
  const { review } = programme;
  return reviewOf({
    consult,
    earlier,
    protocol,
    isLastStep: programme.steps.every(({ present }) => present),
    countsSitting: programme.inUse.sitting.length > 0,
    stageSessionsBefore: review?.before.stage === programme.stage.chosen ? review.counts.stageSessions : 0,
    log,
    seenOn,
  });
}

/** The day asked for; else that day, and never before what was written down up to the planned review. */
export function reviewDay(
  { consult, log }: Pick<Logged, 'consult' | 'log'>,
  on: IsoDate,
  isAsked: boolean,
): IsoDate {
  const lastOn = log.entries.findLast(({ date }) => date < consult.reviewOn)?.date;
  return isAsked || lastOn === undefined || lastOn < on ? on : addDays(lastOn, 1);
}

/** What the revision before is looked back on with. */
export interface LookedBack {
  /** Mornings that going on looks at. */
  readonly checkDays: number;
  /** The consult of that revision. */
  readonly before: Consult;
  /** Day of the review. */
  readonly seenOn: IsoDate;
}

/** The revision before as the next one starts from it: the step that was decided, and what was done where it was written down. */
export function afterReview(
  earlier: Earlier,
  review: Review,
  { checkDays, before, seenOn }: LookedBack,
): Earlier {
  const sameStage = review.stage === earlier.stage;
  const done = new Map(review.exercises.map((one) => [one.card, one.done]));
  return {
    ...earlier,
    step: sameStage ? review.step : earlier.step,
    exercises: earlier.exercises.map((one) => withDone(one, done.get(one.card))),
    logged: {
      step: review.step,
      grows: review.decision === 'moveOn',
      exercises: review.exercises.flatMap(({ card, done: { on, loadKg } }) =>
        on === null || loadKg === null ? [] : [{ card, on, loadKg }],
      ),
      mornings: lastMornings(review, checkDays),
      longestRun: longestRun(review, before, seenOn),
      running: reviewedRunning(earlier, review),
    },
  };
}

// The longest run that the consult before tells of counts as long as the thirty days go back beyond its start.
function longestRun({ runsDone }: Review, before: Consult, seenOn: IsoDate): LoggedRun | null {
  if (runsDone === null) return null;
  const { longestKm: loggedKm } = runsDone;
  const { longestIn30DaysKm } = before.running;
  const reachesBack = before.startOn > addDays(seenOn, -LONGEST_DAYS);
  if (reachesBack && longestIn30DaysKm === undefined) return null;
  const mostKm = Math.max(loggedKm, reachesBack ? (longestIn30DaysKm ?? 0) : 0);
  return { revision: before.revision, loggedKm, mostKm };
}

function reviewedRunning({ plan }: Earlier, { running, revision }: Review): ReviewedRunning | null {
  if (running === null || running.decision === 'moveOn') return null;
  const { decision: move, because } = running;
  const rules = because.filter((one) => one.move === move).map(({ rule }) => rule);
  const kinds = plan.flatMap(({ runs }) => runs.map(({ kind }) => kind));
  return {
    revision,
    move,
    why: WHY_ORDER.find((why) => rules.some((rule) => WHY[rule] === why)) ?? 'missing',
    mostBefore: RUN_KINDS.findLast((kind) => kinds.includes(kind)) ?? null,
  };
}

// A break after bad mornings came of them.
const WHY_ORDER = ['alarm', 'runs', 'mornings', 'away'] as const;

const WHY: Readonly<Partial<Record<RuleCode, ReviewedRunning['why']>>> = {
  alarm: 'alarm',
  away: 'away',
  'long-away': 'away',
  'over-usual-once': 'mornings',
  'over-usual-twice': 'mornings',
  'far-over-usual': 'mornings',
  'pain-too-high': 'mornings',
  'not-settled': 'mornings',
  rising: 'mornings',
  'above-usual': 'mornings',
  'not-done-since': 'mornings',
  'pain-near-usual': 'runs',
  'pain-over-limit': 'runs',
  'pain-over-ceiling': 'runs',
  'pain-over-usual': 'runs',
};

function lastMornings({ series }: Review, checkDays: number): LoggedMornings | null {
  const last = series.mornings.slice(-checkDays);
  const scores = last.flatMap(({ score }) => score ?? []);
  const until = last.at(-1)?.on;
  if (until === undefined || scores.length === 0) return null;
  return { written: scores.length, worst: Math.max(...scores), until };
}

function withDone({ card, values }: EarlierExercise, done: DoneDose | undefined): EarlierExercise {
  if (done === undefined) return { card, values };
  const written = {
    sets: done.sets,
    repetitions: done.repetitions,
    holdSeconds: done.seconds,
    loadKg: done.loadKg,
  };
  const known = Object.entries(written).filter(
    ([cell, value]) => value !== null && (cell === 'loadKg' || typeof values[cell as 'sets'] === 'number'),
  );
  return { card, values: { ...values, ...Object.fromEntries(known) } };
}
