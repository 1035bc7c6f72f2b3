/** Running in plain words: what there may be, how it grows, and what waits. */
import type { PlannedRun, WalkRunRung } from '../../week/plannedRun.ts';
import type { RaceRow } from '../../week/race.ts';
import { order, type RunKind } from '../../week/run.ts';
import type { RunningPlan, RunWeek } from '../../week/runningPlan.ts';
import type { RunDecision } from '../../week/runDecision.ts';
import type { StepRateTarget } from '../../week/stepRate.ts';
import type { Part, Section } from '../programme.ts';
import { countText, dayText, list, listText, numberText, paragraph, section, table } from './plain.ts';

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
  readonly stepRate: StepRateTarget | null;
  readonly ladder: readonly WalkRunRung[];
  /** Fast minutes or climb grow by this factor, one of the two at a time. */
  readonly fastGrowth: number;
  readonly raceEasyDays: readonly RaceRow[];
  /** The protocol's own sentence for this part of the way. */
  readonly stageWords: string;
}

/** Running as decided, or walking for someone who does not run. */
export function runningText(words: RunningWords): Section {
  if (!words.runs)
    return section('running', 'Walking', [
      paragraph('Walking is welcome every day. Keep it flat at first, and take short steps uphill.'),
    ]);
  const { decision, plan, stageWords } = words;
  if (decision.decision === 'none') {
    return section('running', 'Running', [
      paragraph('No running for now. Walk instead, on the flat, as long as it stays comfortable.', 'strong'),
      paragraph('Running comes back in this order: easy and flat, longer, steady, hills or strides, fast.'),
    ]);
  }
  const weeks = plan.weeks.some(({ runs }) => runs.some(({ walkRun }) => walkRun !== null))
    ? walkRunParts(words)
    : distanceParts(words);
  return section('running', 'Running', [
    ...weeks,
    paragraph(stageWords),
    ...waitParts(words),
    ...hardParts(words),
    ...stepRateParts(words.stepRate),
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
  if (run.walkRun !== null) return 'walk and run';
  return [RUN_WORDS[run.kind].replace(' on the flat', ''), amountText(run)].join(' ').trim();
}

function amountText({ km, minutes }: PlannedRun): string {
  if (km !== null) return `${numberText(km)} km`;
  return minutes !== null ? `${minutes} minutes` : '';
}

function walkRunParts({ ladder, plan }: RunningWords): Part[] {
  const runs = plan.weeks[0]?.runs.length ?? 0;
  return [
    paragraph(
      `Walk and run in turn, ${countText(runs, 'time')} a week, on the flat, with a day between.`,
      'strong',
    ),
    table(
      'Walking into running',
      ['Line', 'Walk', 'Run', 'How often'],
      ladder.map(({ rung, walkMinutes, runMinutes, cycles }) => [
        String(rung),
        `${walkMinutes} min`,
        `${runMinutes} min`,
        `${cycles} times`,
      ]),
    ),
    paragraph(
      'Stay on a line for at least a week. Go on to the next one only if the mornings after were settled.',
    ),
  ];
}

function distanceParts(words: RunningWords): Part[] {
  const { decision, plan } = words;
  const easy = order(decision.most) <= order('longer');
  return [
    paragraph(
      `${easy ? 'Easy running' : 'Running'} may go on, as long as the morning check stays settled.`,
      'strong',
    ),
    table('The weeks to the review', ['Week', 'Runs', 'Longest', 'In all'], plan.weeks.map(weekRow)),
    ...(plan.weeks.some(({ runs }) => runs.some(({ kind }) => order(kind) >= order('steady')))
      ? [paragraph('Only a part of a steady, hilly or fast run is so. The rest of its way is easy.')]
      : []),
    ...longestParts(words),
  ];
}

function longestParts({ decision, plan, longestIn30DaysKm }: RunningWords): Part[] {
  const { atMostKm } = plan.longest;
  if (atMostKm === null || longestIn30DaysKm === null) return [];
  const before = `Your longest run of the last 30 days was ${numberText(longestIn30DaysKm)} km.`;
  return [
    paragraph(
      order(decision.most) < order('longer')
        ? `${before} Let no run be longer for now.`
        : `${before} The next longest one is at most ${numberText(atMostKm)} km, and so on, a tenth at a time.`,
    ),
  ];
}

function weekRow(week: RunWeek): string[] {
  const km = (value: number | null) => (value === null ? 'by time' : `${numberText(value)} km`);
  return [
    `${dayText(week.from)} to ${dayText(week.to)}`,
    countText(week.runs.length, 'run'),
    km(week.longestKm),
    km(week.weeklyKm),
  ];
}

const LEAVE_HILLY_ROUTES = 'Leave the hilly everyday routes. Each one counts as a hard run.';
const EASY_ON_THE_FLAT = 'Run the easy ones on the flat. A hilly everyday route counts as a hard run.';

function waitParts({ plan, decision }: RunningWords): Part[] {
  const hillsOpen = order(decision.most) >= order('hills-or-strides');
  const waiting = plan.heldBack.map(({ kind }) => RUN_WORDS[kind]).filter((words) => words !== '');
  const entries = [
    ...(plan.moveToFlat ? [hillsOpen ? EASY_ON_THE_FLAT : LEAVE_HILLY_ROUTES] : []),
    ...(waiting.length > 0 ? [`These wait: ${listText(waiting)}.`] : []),
    ...(hillsOpen
      ? [
          plan.hillsAndFast.rule === 'never-one-week'
            ? 'Do not put hills and fast running in one week.'
            : 'Do not put hills and fast running on neighbouring days.',
        ]
      : []),
    ...plan.races.map(
      (race) => `After the race of ${dayText(race.on)}: easy days until ${dayText(race.easyUntil)}.`,
    ),
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
    paragraph(`${counts} Let fast minutes or climb grow by ${share} a week, and keep the other as it is.`),
    ...(rows.length === 0 ? [] : [paragraph(`Easy days after a race of ${rows.join('; ')}.`)]),
  ];
}

function stepRateParts(target: StepRateTarget | null): Part[] {
  if (target === null) return [];
  return [
    paragraph(
      `Take slightly quicker steps: ${target.toStepsPerMin} a minute instead of ${target.fromStepsPerMin}. Try it for a minute at a time. One thought is enough: your foot lands nearer under you.`,
    ),
  ];
}

/** In place of what the stage would open. */
export const RUN_WHILE_PREGNANT =
  'Easy and flat only while you are pregnant. Walk as soon as running does not feel right.';
