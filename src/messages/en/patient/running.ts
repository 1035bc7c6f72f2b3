/** Running in plain words: what there may be, how it grows, and what waits. */
import { addDays, type IsoDate } from '../../../units/date.ts';
import type { PlannedRun } from '../../../scheduling/plannedRun.ts';
import type { PlanWeek } from '../../../scheduling/planWeek.ts';
import type { JudgedRace, RaceRow } from '../../../scheduling/race.ts';
import { order, type RunKind, RUN_KINDS } from '../../../scheduling/run.ts';
import type { RunningPlan } from '../../../scheduling/runningPlan.ts';
import type { RunDecision } from '../../../scheduling/runDecision.ts';
import type { StepRateTarget } from '../../../scheduling/stepRate.ts';
import { type Part, type Section, list, paragraph, section, table } from '../../shapes.ts';
import { countText, dayText, listText, numberText, timesText, weekdayAndDay } from '../plain.ts';
import type { ReviewedRunning } from '../../../decisions/terms/earlier.ts';
import type { LessKm } from '../../../decisions/days/lessKm.ts';
import { raceParts } from './races.ts';

/** A run in words, for a list or a sentence. */
export const RUN_WORDS: Readonly<Record<RunKind, string>> = {
  none: 'no run',
  'walk-run': 'walk and run in turn',
  easy: 'easy run on the flat',
  longer: 'longer easy run',
  steady: 'steady run',
  'hills-or-strides': 'hills or strides',
  fast: 'fast run',
};

export interface RunningWords {
  readonly runs: boolean;
  readonly decision: RunDecision;
  readonly plan: RunningPlan;
  readonly longestIn30DaysKm: number | null;
  readonly lessKm: LessKm | null;
  /** What the review of the revision before led to, where it is followed. */
  readonly reviewed: ReviewedRunning | null;
  /** The weeks of the dated plan. */
  readonly weeks: readonly PlanWeek[];
  readonly races: readonly JudgedRace[];
  /** Nobody can say yet from when a race fits. */
  readonly dateOpen: boolean;
  readonly raceDays: { readonly taperDays: number; readonly noHeavyDays: number };
  readonly reviewOn: IsoDate;
  /** Strides are among the exercises already: a run with them is not where they begin. */
  readonly stridesBegun: boolean;
  /** The first day of each kind of run that is new in this plan. */
  readonly begins: readonly { readonly kind: RunKind; readonly on: IsoDate }[];
  readonly stepRate: StepRateTarget | null;
  /** The day from which quicker steps are tried; null when that waits for the review. */
  readonly stepRateFrom: IsoDate | null;
  /** Fast minutes or climb grow by this factor, one of the two at a time. */
  readonly fastGrowth: number;
  readonly raceEasyDays: readonly RaceRow[];
  /** The way back lies behind, or there was none: nothing is held back. */
  readonly asYouLike: boolean;
  /** The protocol's own sentence for this part of the way; null where this person may not run as hard as it tells. */
  readonly stageWords: string | null;
}

/** Running as decided, or walking for someone who does not run. */
export function runningText(words: RunningWords): Section {
  if (!words.runs)
    return section('running', 'Walking', [
      paragraph('Walking is welcome every day. Keep it flat at first, and take short steps uphill.'),
    ]);
  const { decision, weeks, stageWords } = words;
  const races = raceParts({ ...words, ...words.raceDays });
  if (decision.decision === 'none') {
    const apart = words.races.some(({ inPlan }) => inPlan) ? `, ${apartText(words.races).toLowerCase()}` : '';
    return section('running', 'Running', [
      ...easedParts(words),
      paragraph(
        `No running for now${apart}. Walk instead, on the flat, as long as it stays comfortable.`,
        'strong',
      ),
      ...races,
      paragraph('Running comes back in this order: easy and flat, longer, steady, hills or strides, fast.'),
    ]);
  }
  const byLadder = weeks.some(({ runs }) => runs.some(({ walkRun }) => walkRun !== null));
  return section('running', 'Running', [
    ...easedParts(words),
    ...(byLadder ? walkRunParts(words) : distanceParts(words)),
    ...races,
    ...beginParts(words),
    // Who walks into running has none of what the stage opens beyond that yet.
    ...(stageWords === null || (byLadder && stageWords !== RUN_WHILE_PREGNANT)
      ? []
      : [paragraph(stageWords)]),
    ...waitParts(words, byLadder),
    ...hardParts(words),
    ...stepRateParts(words),
  ]);
}

/** One run in a few words. @example 'easy run on the flat, 4.2 km' */
export function runText(run: PlannedRun): string {
  if (run.walkRun !== null) {
    const { cycles, walkMinutes, runMinutes } = run.walkRun;
    return `${cycles} times: walk ${walkMinutes} min, run ${runMinutes} min`;
  }
  return [RUN_WORDS[run.kind], amountText(run)].filter((part) => part !== '').join(', ');
}

/** The same for a narrow column. @example 'easy run 4.2 km' */
export function shortRunText(run: PlannedRun): string {
  if (run.walkRun !== null) {
    const { cycles, walkMinutes, runMinutes } = run.walkRun;
    return `walk ${walkMinutes}, run ${runMinutes} min, ${cycles} times`;
  }
  return [RUN_WORDS[run.kind].replace(' on the flat', ''), amountText(run)].join(' ').trim();
}

function amountText({ km, minutes }: PlannedRun): string {
  if (km !== null) return `${numberText(km)} km`;
  return minutes !== null ? `${minutes} minutes` : '';
}

function walkRunParts({ weeks }: RunningWords): Part[] {
  const most = Math.max(...weeks.map(({ runs }) => runs.length));
  const grows = weeks.some(({ turn }) => turn.grows === 'running');
  return [
    paragraph(`Walk and run in turn, ${timesText(most)} a week, on the flat, with a day between.`, 'strong'),
    table(
      'Walking into running',
      ['Week', 'Walk', 'Run', 'How often', 'Outings'],
      weeks.map((week) => [weekText(week), ...walkRunCells(week), outingsText(week, 'outing')]),
    ),
    paragraph(
      grows
        ? 'Go on to the next line only if the mornings after were settled. If not, stay on the line you are on.'
        : 'Stay with this until the review. It grows when the mornings after stay settled.',
    ),
  ];
}

function walkRunCells({ runs }: PlanWeek): string[] {
  const [first] = runs;
  if (first === undefined) return ['-', '-', '-'];
  if (first.walkRun === null) return ['no walk', amountText(first), 'once'];
  // In the order of the week: a race changes them from one day to the next.
  const cycles = runs
    .map(({ walkRun }) => walkRun?.cycles ?? 1)
    .filter((count, index, all) => count !== all[index - 1]);
  const { walkMinutes, runMinutes } = first.walkRun;
  const times = `${cycles.join(', then ')} ${cycles.length === 1 && cycles[0] === 1 ? 'time' : 'times'}`;
  return [`${walkMinutes} min`, `${runMinutes} min`, times];
}

function weekText({ from, to }: PlanWeek): string {
  return from === to ? dayText(from) : `${dayText(from)} to ${dayText(to)}`;
}

/** @example '3 runs and the race' */
function outingsText({ runs, racesKm }: PlanWeek, one: string): string {
  const race =
    racesKm.length === 0 ? '' : racesKm.length === 1 ? 'the race' : countText(racesKm.length, 'race');
  if (runs.length === 0 && race !== '') return race;
  return race === '' ? countText(runs.length, one) : `${countText(runs.length, one)} and ${race}`;
}

const EASED_WHY: Readonly<Record<ReviewedRunning['why'], string>> = {
  runs: 'Running hurt more than is all right',
  mornings: 'Your mornings were worse',
  away: 'You had a break from the exercises',
  alarm: 'You wrote down a warning sign',
  missing: 'Your notes do not show yet how running sits',
};

// Only what the table below holds is said: the decision may be stricter for other reasons.
function easedParts({ reviewed, decision, weeks }: RunningWords): Part[] {
  if (reviewed === null || reviewed.move === 'stay') return [];
  const why = EASED_WHY[reviewed.why];
  if (decision.decision === 'none')
    return [paragraph(`${why}, so running stops until you are told to go on.`)];
  if (weeks.some(({ runs }) => runs.some(({ walkRun }) => walkRun !== null)))
    return [paragraph(`${why}, so running begins again from walking.`)];
  return [paragraph(`${why}, so the runs begin shorter${firstWeekText(weeks[0])}.`)];
}

function firstWeekText(week: PlanWeek | undefined): string {
  if (week === undefined || week.racesKm.length > 0 || week.weeklyKm === null || week.longestKm === null)
    return '';
  return `: ${numberText(week.weeklyKm)} km in the first week, and no run over ${numberText(week.longestKm)} km`;
}

function isEased({ reviewed }: RunningWords): boolean {
  return reviewed?.move === 'easeBack';
}

function distanceParts(words: RunningWords): Part[] {
  const { decision, weeks } = words;
  const easy = order(decision.most) <= order('longer');
  return [
    paragraph(
      isEased(words)
        ? 'Run easy, and only as long as the morning check stays settled.'
        : `${easy ? 'Easy running' : 'Running'} may go on, as long as the morning check stays settled.`,
      'strong',
    ),
    table('The weeks to the review', ['Week', 'Runs', 'Longest', 'In all'], weeks.map(weekRow)),
    ...partlyHardParts(weeks),
    ...(isEased(words) ? [] : lessKmParts(words)),
    ...longestParts(words),
  ];
}

const HARD_WORDS: readonly (readonly [kind: RunKind, word: string])[] = [
  ['steady', 'steady'],
  ['hills-or-strides', 'hilly'],
  ['fast', 'fast'],
];

// Of those runs alone that stand in the weeks.
function partlyHardParts(weeks: readonly PlanWeek[]): Part[] {
  const planned = new Set(weeks.flatMap(({ runs }) => runs.map(({ kind }) => kind)));
  const words = HARD_WORDS.flatMap(([kind, word]) => (planned.has(kind) ? [word] : []));
  if (words.length === 0) return [];
  return [
    paragraph(`On a ${listText(words, 'or')} run only a part is harder. Run the rest of the way easy.`),
  ];
}

function lessKmParts({ lessKm }: RunningWords): Part[] {
  if (lessKm === null) return [];
  const { usualKm, plannedKm } = lessKm;
  return [
    paragraph(
      `You told us of ${numberText(usualKm)} km a week. In this plan it is ${numberText(plannedKm)} km at most.`,
    ),
  ];
}

function longestParts(words: RunningWords): Part[] {
  const { decision, plan, weeks, races, longestIn30DaysKm, asYouLike } = words;
  const { atMostKm } = plan.longest;
  if (atMostKm === null || longestIn30DaysKm === null) return [];
  const before = `Your longest run of the last 30 days was ${numberText(longestIn30DaysKm)} km.`;
  const apart = races.some(({ inPlan }) => inPlan) ? `${apartText(races)}, let` : 'Let';
  // Where longer runs wait, the longest of 30 days is no measure: the table is.
  if (isEased(words) || (!asYouLike && order(decision.most) < order('longer')))
    return [paragraph(`${before} ${apart} no run be longer than the table says.`)];
  const grows = decision.most === 'longer' && weeks.some(({ turn }) => turn.grows === 'running');
  if (grows)
    return [
      paragraph(
        `${before} It grows by a tenth at most, in the weeks of the table and only while the mornings are settled.`,
      ),
    ];
  const plannedKm = Math.max(0, ...weeks.flatMap(({ runs }) => runs.map(({ km }) => km ?? 0)));
  const longer = plannedKm < longestIn30DaysKm ? 'be longer than in this table' : 'be longer';
  return [
    paragraph(
      asYouLike
        ? `${before} ${mayGoLonger(words, atMostKm)}`
        : `${before} ${apart} no run ${longer} for now.`,
    ),
  ];
}

function apartText(races: RunningWords['races']): string {
  return races.filter(({ inPlan }) => inPlan).length > 1 ? 'Apart from the races' : 'Apart from the race';
}

/** For who runs as they like: in which weeks the longest run may grow, if in any. */
function mayGoLonger(words: RunningWords, atMostKm: number): string {
  const quiet = words.weeks.filter((week) => isQuiet(week, words)).map(({ from }) => dayText(from));
  if (quiet.length > 0)
    return `If you go longer, then at most ${numberText(atMostKm)} km, and only in the week from ${listText(quiet, 'or')}.`;
  return words.races.some(({ inPlan }) => inPlan)
    ? `${apartText(words.races)}, longer runs come after the review.`
    : 'Longer runs come after the review.';
}

/** Nothing else grows in it, and no race is near: neither in it, nor in the days it is kept light for one. */
function isQuiet({ from, to, turn }: PlanWeek, { races, raceDays }: RunningWords): boolean {
  return (
    turn.grows === null &&
    races.every(
      ({ inPlan, on, easyUntil }) => !inPlan || to < addDays(on, -raceDays.taperDays) || from > easyUntil,
    )
  );
}

const HILLS_OR_MORE_STRIDES = 'hills, or strides within a run as well';

function beginParts({ begins, stridesBegun }: RunningWords): Part[] {
  if (begins.length === 0) return [];
  return [
    list(
      begins.map(
        ({ kind, on }) =>
          `From ${weekdayAndDay(on)}: ${kind === 'hills-or-strides' && stridesBegun ? HILLS_OR_MORE_STRIDES : RUN_WORDS[kind]}, if your mornings were settled until then. If not, run easy instead.`,
      ),
    ),
  ];
}

function weekRow(week: PlanWeek): string[] {
  const km = (value: number | null) =>
    value !== null ? `${numberText(value)} km` : week.runs.length === 0 ? '-' : 'by time';
  const longest = km(week.longestKm);
  return [
    weekText(week),
    outingsText(week, 'run'),
    week.racesKm.includes(week.longestKm ?? -1) ? `${longest}, the race` : longest,
    km(week.weeklyKm),
  ];
}

const LEAVE_HILLY_ROUTES = 'Leave the hilly everyday routes. Each one counts as a hard run.';
const EASY_ON_THE_FLAT = 'Run the easy ones on the flat. A hilly everyday route counts as a hard run.';

function waitParts({ plan, decision, races }: RunningWords, byLadder: boolean): Part[] {
  const apart = races.some(({ inPlan }) => inPlan) ? `${apartText(races)} these wait` : 'These wait';
  const hillsOpen = order(decision.most) >= order('hills-or-strides');
  const held = byLadder
    ? RUN_KINDS.filter((kind) => order(kind) > order('walk-run'))
    : plan.heldBack.map(({ kind }) => kind);
  const waiting = held.map((kind) => RUN_WORDS[kind]);
  const entries = [
    ...(plan.moveToFlat ? [hillsOpen ? EASY_ON_THE_FLAT : LEAVE_HILLY_ROUTES] : []),
    ...(waiting.length > 0 ? [`${apart}: ${listText(waiting)}.`] : []),
    ...(hillsOpen
      ? [
          plan.hillsAndFast.rule === 'never-one-week'
            ? 'Do not put hills and fast running in one week.'
            : 'Do not put hills and fast running on neighbouring days.',
        ]
      : []),
  ];
  return entries.length === 0 ? [] : [list(entries)];
}

// Until everything is back, hard is what nobody takes for hard; from hills on, how it grows.
function hardParts({ decision, fastGrowth, raceEasyDays }: RunningWords): Part[] {
  const counts =
    'Races, downhill runs, many stairs, a sloped treadmill and high-knee drills count as hard runs too.';
  if (order(decision.most) < order('hills-or-strides')) return [paragraph(counts)];
  const percent = Math.round((fastGrowth - 1) * 100);
  const share = percent === 10 ? 'a tenth' : `${percent} of every 100`;
  const rows = raceEasyDays.map(
    ({ upToKm, from, to }) => `up to ${numberText(upToKm)} km: ${from} to ${to} days`,
  );
  return [
    paragraph(
      `${counts} Let fast minutes or climb grow by ${share} a week at most. Only one of the two grows, in a week in which nothing else does.`,
    ),
    ...(rows.length === 0 ? [] : [paragraph(`Easy days after a race of ${rows.join('; ')}.`)]),
  ];
}

function stepRateParts({ stepRate, stepRateFrom }: RunningWords): Part[] {
  if (stepRate === null) return [];
  const { fromStepsPerMin, toStepsPerMin } = stepRate;
  if (stepRateFrom === null)
    return [
      paragraph('Quicker steps come after the review. Until then, run with the steps you are used to.'),
    ];
  return [
    paragraph(
      `From ${weekdayAndDay(stepRateFrom)}, if your mornings are settled: take slightly quicker steps, ${toStepsPerMin} a minute instead of ${fromStepsPerMin}. Try it for a minute at a time. One thought is enough: your foot lands nearer under you.`,
    ),
  ];
}

/** In place of what the stage would open. */
export const RUN_WHILE_PREGNANT =
  'Easy and flat only while you are pregnant. Walk as soon as running does not feel right.';
