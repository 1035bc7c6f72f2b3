/** Words of the record for what the ladder, the run decision and a race ended in; the codes stay in the room that found them. */
import type { Consult } from '../../../content/library.ts';
import type { ChangeKind } from '../../../dosing/dose.ts';
import type { LadderEnd } from '../../../dosing/ladder.ts';
import type { Amount, Limit } from '../../../dosing/rung.ts';
import type { LongestRun } from '../../../scheduling/growth.ts';
import type { RaceNote } from '../../../scheduling/race.ts';
import { entriesOf, type Reason } from '../../../units/reason.ts';
import type { RunCount } from '../../../scheduling/runCount.ts';
import type { RunLedTo } from '../../../scheduling/afterReview.ts';
import type { RunReasonCode } from '../../../scheduling/runDecision.ts';
import type { Stress } from '../../../scheduling/newStress.ts';
import type { PlanWeek } from '../../../scheduling/planWeek.ts';
import type { Grows } from '../../../scheduling/turns.ts';
import type { Maternity } from '../../../decisions/screen/maternity.ts';
import type { OpenEnd } from '../../../decisions/days/outlook.ts';
import { dayText, listText, numberText, weekdayText } from '../plain.ts';
import { MOVE_WORDS } from './review.ts';
import { RUN_WORDS } from '../patient/running.ts';
import { amountText } from '../patient/steps.ts';
import type { Weekday } from '../../../units/weekday.ts';
import type { LessKm } from '../../../decisions/days/lessKm.ts';

const LIMIT_WORDS: Readonly<Record<Limit, string>> = {
  hipFlexion: 'the cap on hip bend',
  kneeFlexion: 'the cap on knee bend',
  ankleDorsiflexion: 'the cap on ankle bend',
  compression: 'the cap on squeeze',
  tension: 'the cap on pull',
  demand: 'the cap on the share of muscle strength',
  provokedAngle: 'the angle that hurt',
  compressionGrowth: 'peak squeeze would grow too fast for one step',
  hipMomentGrowth: 'the hip moment would grow too fast for one step',
  compressionTimeGrowth: 'squeeze over the session would grow too fast for one step',
  tensionTimeGrowth: 'pull over the session would grow too fast for one step',
  workGrowth: 'the work of the session would grow too fast for one step',
  loadGrowth: 'the weight would grow too fast for one step',
  weekGrowth: 'the week would grow too fast for one step',
  cardsAboveHalfCap: 'no more exercises may stand above half the cap on squeeze',
  minutes: 'the minutes there are',
  kit: 'the weights there are',
  testedLoad: 'the load that was tested',
  rangeStep: 'the next range is more than one step away',
  fixedRange: 'the card has one range',
  noHarderCard: 'no harder card fits',
  unmodelled: 'a card without a pose cannot be compared',
  kind: 'this kind of dose does not change so',
  noTarget: 'the protocol names no end',
  alreadyLeft: 'it would lead back to an easier step',
  steps: 'the ladder is as long as ladders get',
};

/** What stands against more. */
export function limitText(limit: Limit): string {
  return LIMIT_WORDS[limit];
}

/** How one change of an exercise ended. @example 'Bow: range ends at 55°: the cap on squeeze.' */
export function endText(
  { exercise, change, at, stoppedBy }: LadderEnd,
  titleOf: (card: string) => string,
  isLight: boolean,
): string {
  const [what, ends] = ENDING_WORDS[change];
  const where = at === null ? 'at its start' : `at ${endAmountText(change, at, titleOf)}`;
  const limit = isLight && stoppedBy === 'testedLoad' ? LIGHT : stoppedBy && limitText(stoppedBy);
  return `${exercise}: ${what} ${ends} ${where}${limit === null ? '' : `: ${limit}`}.`;
}

const LIGHT = 'the light loads of a first programme after a sudden start';

const ENDING_WORDS: Readonly<Record<ChangeKind, readonly [what: string, ends: string]>> = {
  range: ['range', 'ends'],
  load: ['weight', 'ends'],
  repetitions: ['repetitions', 'end'],
  hold: ['hold', 'ends'],
  sets: ['sets', 'end'],
  tempo: ['pace', 'ends'],
  days: ['days a week', 'end'],
  lever: ['harder versions', 'end'],
};

function endAmountText(change: ChangeKind, at: Amount, titleOf: (card: string) => string): string {
  if (typeof at === 'string') return change === 'lever' ? `“${titleOf(at)}”` : amountText(at);
  const unit: Partial<Record<ChangeKind, string>> = { range: '°', load: ' kg', hold: ' s' };
  return `${amountText(at)}${unit[change] ?? ''}`;
}

type Words<Code extends string> = Readonly<Record<Code, (inputs: Reason['inputs']) => string>>;

const DECISION_WORDS: Words<RunReasonCode> = {
  'does-not-run': () => 'does not run',
  'screen-stops-running': ({ items }) => `none, for the screen says so (${entriesOf(items).join(', ')})`,
  'stage-limits-running': ({ most }) => `the stage goes no further than ${kindText(most)}`,
  'maternity-limits-running': ({ kind, most }) =>
    `${kindText(most)} at most: ${MATERNITY_WORDS[kind as Maternity['kind']]}`,
  'sudden-start': ({ most }) =>
    `${most === 'none' ? 'none' : `${kindText(most)} at most`} in the first programme after a cleared sudden start`,
  'after-walk-run': () =>
    'easy run on the flat at most, for the programme before walked and ran in turn: running comes back kind by kind',
  'review-of-running': ({ revision, move, most }) =>
    `the review of revision ${revision} says ${MOVE_WORDS[move as RunLedTo]}, so ${REVIEW_WORDS[move as RunLedTo]}${most === 'fast' ? '' : `; ${kindText(most)} ${most === 'none' ? 'for now' : 'at most'}`}`,
  'review-of-running-not-followed': ({ revision, move }) =>
    `the review of revision ${revision} says ${MOVE_WORDS[move as RunLedTo]}; the clinician decided otherwise`,
  irritable: () => 'the tendon is irritable',
  'usual-pain': ({ usualPain, from }) => `usual pain is ${usualPain}, and walk-run is the most from ${from}`,
  'test-pain': ({ testPain, from }) => `a test hurt ${testPain}, and walk-run is the most from ${from}`,
  'clinician-own': ({ decision }) => `the clinician's own entry is ${kindText(decision)}`,
  'clinician-own-over-rules': ({ decision }) =>
    `the clinician's own entry, ${kindText(decision)}, goes beyond the house rules`,
  'recorded-decision': ({ decision }) => `the decision of the consult is ${kindText(decision)}`,
  'recorded-decision-not-followed': ({ decision }) =>
    `the decision of the consult, ${kindText(decision)}, is more than the rules allow`,
  'pull-above-stage-cap': ({ pullBw, capBw }) =>
    `easy running pulls with about ${rounded(pullBw)} body weights, above the stage's cap of ${rounded(capBw)}: a decision, not a sum`,
};

const REVIEW_WORDS: Readonly<Record<RunLedTo, string>> = {
  stay: 'no run grows before the next review',
  easeBack: 'the runs begin with a share of what was run (easeBackShare)',
  startAgain: 'running is walked into again',
  beSeen: 'nothing is run before the person was seen',
};

const MATERNITY_WORDS: Readonly<Record<Maternity['kind'], string>> = {
  pregnant: 'pregnancy',
  'after-birth': 'the first weeks after birth, without a recorded clearance',
  'not-recorded': 'pregnant or after birth, weeks not recorded',
};

/** Why running is what it is. */
export function runReasonText({ code, inputs }: Reason<RunReasonCode>): string {
  return `Running: ${DECISION_WORDS[code](inputs)}.`;
}

const LONGEST_WORDS: Words<LongestRun['because']['code']> = {
  'longest-of-30-days': ({ longestIn30DaysKm, growth }) =>
    `the next longest run is at most ${rounded(growth)} times the longest of 30 days, ${rounded(longestIn30DaysKm)} km`,
  'no-run-in-30-days': () => 'no run in 30 days, so walking into running comes first',
  'longest-not-recorded': () => 'the longest run is not recorded, so walking into running comes first',
  'not-running-now': ({ weeksOff }) =>
    `no running now (${weeksOff} weeks off), so walking into running comes first`,
};

/** Why the longest run is what it is. `waits`: what keeps it from growing; null for nothing. */
export function longestText({ code, inputs }: LongestRun['because'], waits: LongestWaits | null): string {
  if (code === 'longest-of-30-days' && waits !== null)
    return `Running: the longest of 30 days, ${rounded(inputs['longestIn30DaysKm'])} km, is no measure yet: ${WAITS_WORDS[waits]}.`;
  return `Running: ${LONGEST_WORDS[code](inputs)}.`;
}

/** That the plan holds fewer kilometres than the person runs. */
export function lessKmText({ usualKm, plannedKm }: LessKm): string {
  return `Running: ${rounded(plannedKm)} km in the fullest week without a race, instead of the ${rounded(usualKm)} km recorded.`;
}

export type LongestWaits = 'walk-run' | 'longer';

const WAITS_WORDS: Readonly<Record<LongestWaits, string>> = {
  'walk-run': 'walking into running comes first',
  longer: 'longer runs wait',
};

const RUN_COUNT_WORDS: Words<RunCount['because']['code']> = {
  'fewest-runs': ({ runs, share }) =>
    `estimated at ${runs}, with which the others are each at most ${rounded(share)} times the longest`,
  'not-days-enough': ({ runs, share }) =>
    `estimated at ${runs}, though the others are then each more than ${rounded(share)} times the longest: there are not days enough for more`,
};

/** Days on which the plan runs and the consult has no time for a session. */
export function otherRunDaysText(days: readonly Weekday[]): string {
  return `Days: those of the consult are the days with time for exercises; runs fall on other days as well (${listText(days.map(weekdayText))}).`;
}

/** How many runs a week there are taken to be, where it is not recorded. */
export function runCountText({ code, inputs }: RunCount['because']): string {
  return `Running: the number of runs a week is not recorded; it is ${RUN_COUNT_WORDS[code](inputs)}.`;
}

const RACE_WORDS: Words<RaceNote> = {
  'race-before-ready': ({ most, raceKm, fitsFrom, dateOpen }) =>
    `${rounded(raceKm)} km, before fast running is back${most === 'fast' ? ' for long enough' : ` (${kindText(most)} at most now)`}; ${dateOpen === 'yes' ? 'from when it would fit is left open' : `it would fit from ${fitsFrom}`}`,
  'race-beyond-longest': ({ longestKm, raceKm }) =>
    `${rounded(raceKm)} km, beyond what may be run by then (${longestKm === null ? 'no run yet' : `${rounded(longestKm)} km`})`,
  'race-in-doubt': ({ doubts }) =>
    `not in the plan without a recorded decision (${entriesOf(doubts).join(', ').replaceAll('-', ' ')})`,
  'race-decided': ({ decision }) => `recorded decision: ${decision}`,
  'race-barred': () => 'not in the plan, whatever is decided: there is no running now',
};

/** What the clinician should know of a race. `dateOpen`: nobody can say yet from when one fits. */
export function raceText(on: string, { code, inputs }: Reason<RaceNote>, dateOpen: boolean): string {
  return `Race on ${on}: ${RACE_WORDS[code]({ ...inputs, dateOpen: dateOpen ? 'yes' : 'no' })}.`;
}

function kindText(kind: Reason['inputs'][string] | undefined): string {
  const words: Readonly<Record<string, string>> = { ...RUN_WORDS, keep: 'to go on running', none: 'no run' };
  return words[String(kind)] ?? String(kind);
}

function rounded(value: Reason['inputs'][string] | undefined): string {
  return typeof value === 'number' ? numberText(Math.round(value * 100) / 100) : String(value);
}

/** Why the pain rule is the stricter one. `from`: the usual pain from which it is. */
export function usualOnlyText(
  { irritability, usualMorningPain }: Pick<Consult, 'irritability' | 'usualMorningPain'>,
  from: number,
): string {
  const because = [
    ...(irritability === 'high' ? ['irritability is high'] : []),
    ...(usualMorningPain >= from
      ? [`usual pain is ${usualMorningPain} (the stricter rule holds from ${from})`]
      : []),
  ];
  return `Pain during exercise: no more than usual, and settled by the evening, for ${listText(because)}.`;
}

/** That a programme is written although usual pain is high. */
export function painDecisionText(usual: number, reason: string): string {
  return `Usual pain is ${usual}: the programme is written by the clinician's own decision (${reason}).`;
}

const GROWS_WORDS: Readonly<Record<Grows, string>> = {
  exercises: 'the exercises',
  running: 'the running',
  sitting: 'the minutes of sitting',
  stepRate: 'the step rate',
};

const STRESS_WORDS: Readonly<Record<Stress, string>> = {
  springs: 'springy exercises begin',
  strides: 'strides begin',
  'hills-or-strides': 'hilly runs or strides begin',
  fast: 'fast runs begin',
};

/** What grows in which week of the plan, for the record; one thing at a time. */
export function growthText(weeks: readonly PlanWeek[]): string {
  const rows = weeks.map(({ from, turn: { grows, begins, because } }) => {
    const why = [
      ...(because === 'first-week' ? ['first week of the programme'] : []),
      ...(because === 'race' ? ['race'] : []),
      ...(because === 'rung' ? ['next rung by its week'] : []),
      ...(begins === null ? [] : [STRESS_WORDS[begins]]),
    ];
    return `${dayText(from)} ${grows === null ? 'nothing' : GROWS_WORDS[grows]}${why.length === 0 ? '' : ` (${why.join(', ')})`}`;
  });
  return `What grows, one thing a week: ${rows.join('; ')}.`;
}

/** In place of the earliest dates of the stages. */
export function openEndRemark(openEnd: OpenEnd): string {
  const why = {
    medicine: 'light holds at most, as long as the prescriber says',
    birth: 'pregnancy or birth',
  };
  return `Dates of later stages and of races are left open: ${why[openEnd]}.`;
}
