/** The draft of the next revision with what the review led to: a proposal that the clinician keeps or changes. */
import type { ConsultFrontMatter } from '../content/schema/consult.ts';
import { askText, decisionText, groundText, MOVE_WORDS } from '../messages/en/clinician/review.ts';
import type { EasedExercise } from '../decisions/session/easier.ts';
import { RUNNING_DECISION } from '../content/schema/override.ts';
import type { Review } from '../review/terms.ts';
import type { StarterContent } from './starter.ts';

/** What the draft is filled in with. `eased`: the easier numbers of the revision before. */
export interface Reviewed {
  readonly review: Review;
  readonly eased: readonly EasedExercise[];
}

/** Stage, step, the runs that were done, and the easier numbers where no step goes back. */
export function withReview(
  { values, hints }: StarterContent,
  { review, eased }: Reviewed,
  consult: ConsultFrontMatter,
): StarterContent {
  const overrides = [...ownOverrides(consult, eased, review), ...easedOverrides(eased, review)];
  const filled = Object.entries(values).flatMap(([key, value]): [string, unknown][] => {
    if (key === 'stage')
      return [
        [key, review.stage],
        ['step', review.step],
      ];
    return [[key, key === 'running' ? runningOf(value, consult, review) : value]];
  });
  return {
    values: { ...Object.fromEntries(filled), ...(overrides.length === 0 ? {} : { overrides }) },
    hints: new Map([
      ...hints,
      ['stage', stageHint(review)],
      [
        'step',
        'The proposal of the review. Another number is the clinician’s own, and is marked in the record.',
      ],
      ...runningHint(review),
    ]),
  };
}

// The keys of the consult hold no move: the plan takes it from the log, and the clinician decides otherwise by override.
function runningHint({ running, runsDone }: Review): [string, string][] {
  const lines = [
    ...(running === null || running.decision === 'moveOn'
      ? []
      : [
          `The review says of running: ${MOVE_WORDS[running.decision]}. The next plan follows it; other runs are an override of ${RUNNING_DECISION} with its reason. The decision below is that of last time: decide again.`,
          ...running.because.filter(({ move }) => move !== 'moveOn').map(groundText),
        ]),
    ...(runsDone === null
      ? []
      : [
          'Weekly distance and longest run are those of the log; ask weeks off, races and the decision again.',
        ]),
  ];
  return lines.length === 0 ? [] : [['running', lines.join('\n ')]];
}

function stageHint(review: Review): string {
  const asks = review.asks.map((one) => `Ask: ${askText(one)}`);
  return [
    `Review of revision ${review.revision}. ${decisionText(review)}`,
    ...review.because.slice(0, MOST_GROUNDS).map(groundText),
    ...asks,
    'Today’s tests decide as well.',
  ].join('\n ');
}

const MOST_GROUNDS = 4;

// Never less of a week than the run that lies in it.
function runningOf(written: unknown, { running }: ConsultFrontMatter, { runsDone }: Review): unknown {
  if (runsDone === null || !running.runs) return written;
  const { longestKm, weeklyKm } = runsDone;
  return {
    ...(written as object),
    weeklyKm: Math.max(weeklyKm, longestKm),
    longestIn30DaysKm: longestKm,
    weeksOff: 0,
  };
}

function isEased({ decision }: Review['exercises'][number], review: Review): boolean {
  const goesBack = review.stage !== review.before.stage || review.step !== review.before.step;
  return !goesBack && (decision === 'easeBack' || decision === 'startAgain' || decision === 'beSeen');
}

function easedCards(review: Review): ReadonlySet<string> {
  return new Set(review.exercises.flatMap((one) => (isEased(one, review) ? [one.card] : [])));
}

function easedOverrides(eased: readonly EasedExercise[], review: Review) {
  const cards = easedCards(review);
  const reason = `the easier numbers, by the review of revision ${review.revision}`;
  return eased.flatMap(({ card, cells }) =>
    cards.has(card)
      ? Object.entries(cells).map(([cell, value]) => ({ path: `${card}.${cell}`, value, reason }))
      : [],
  );
}

// Of two entries for one cell the easier one of today stands.
function ownOverrides({ overrides }: ConsultFrontMatter, eased: readonly EasedExercise[], review: Review) {
  const taken = new Set(easedOverrides(eased, review).map(({ path }) => path));
  return overrides.filter((one) => !taken.has(one.path) && !isOldRunning(one, review));
}

// A decision of before the log tells nothing of it: running on is decided anew where the runs go back.
function isOldRunning(
  { path, value }: ConsultFrontMatter['overrides'][number],
  { running }: Review,
): boolean {
  if (path !== RUNNING_DECISION || running === null) return false;
  const { decision } = running;
  if (decision === 'beSeen') return value !== 'none';
  return (decision === 'easeBack' || decision === 'startAgain') && value === 'keep';
}
