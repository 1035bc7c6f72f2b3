/**
 * The week by sheer trying, written apart from the planner and in hours on a ring of 168: every set of session days,
 * every day or none for each hard run, every day for what has to stand somewhere. Slow, plain, and right.
 */
import { WEEKDAYS, type Weekday } from '../../src/units/weekday.ts';
import type { WeekPlan } from '../../src/scheduling/plan.ts';
import type { Recoverer, RecoveryRules } from '../../src/scheduling/recovery.ts';
import type { WeekWish, WishedRun } from '../../src/scheduling/wish.ts';

interface Hard {
  readonly id: string;
  readonly sort: 'run' | 'fixed' | 'lift';
  readonly hour: number;
  readonly recoveryHours: number;
  /** Of a session: hours to the next thing that is no session. */
  readonly toOthersHours: number;
  readonly family: 'hills' | 'fast' | null;
  /** Stands on its day whatever comes. */
  readonly immovable: boolean;
  readonly waits: boolean;
}

/** What a week is worth, in the order of house rules 6 and then by spacing; the smaller list is the better week. */
export type Worth = readonly number[];

const EASY_LEFT_OUT = 9;

export function hoursOf(
  recovery: 'heavy' | 'energy-storage' | 'easy-run',
  person: Recoverer,
  rules: RecoveryRules,
): number {
  const slow =
    (person.trainingYears ?? 99) < rules.noviceYears.value ||
    (person.weeksAway ?? 0) >= rules.weeksAwayCount.value ||
    person.tired ||
    person.sleep === 'poor';
  const base =
    recovery === 'heavy'
      ? rules.heavyHours.value
      : recovery === 'energy-storage'
        ? rules.energyStorageHours.value
        : rules.easyRunHours.value;
  return base * (slow ? rules.slowFactor.value : 1);
}

const HARD_KIND: Record<string, 'heavy' | 'energy-storage' | undefined> = {
  steady: 'heavy',
  'hills-or-strides': 'energy-storage',
  fast: 'energy-storage',
};
export const isHardRun = (run: WishedRun) => HARD_KIND[run.kind] !== undefined;

const ringGap = (from: number, to: number) => (to > from ? to - from : to - from + 168);

function disturb(one: Hard, other: Hard, wish: WeekWish): boolean {
  if (one.immovable && other.immovable) return false;
  if (one.hour === other.hour) {
    const sorts = [one.sort, other.sort].sort().join('+');
    return sorts !== 'lift+run' && (sorts !== 'fixed+lift' || one.waits || other.waits);
  }
  if (one.family && other.family && one.family !== other.family) {
    if (wish.hillsAndFast === 'never-one-week') return true;
    if (Math.min(ringGap(one.hour, other.hour), ringGap(other.hour, one.hour)) < 48) return true;
  }
  return (
    ringGap(one.hour, other.hour) < clearHours(one, other) ||
    ringGap(other.hour, one.hour) < clearHours(other, one)
  );
}

const clearHours = (one: Hard, next: Hard) =>
  one.sort === 'lift' && next.sort !== 'lift' ? one.toOthersHours : one.recoveryHours;

/** The least (best) worth of any week that keeps the clock, or null when there is none. */
export function bestWorth(wish: WeekWish, person: Recoverer, rules: RecoveryRules): Worth | null {
  let best: Worth | null = null;
  const hardRuns = wish.runs.filter(isHardRun);
  for (const others of waysOfOthers(wish, hardRuns, person, rules)) {
    for (let set = 1; set < 128; set++) {
      const lifts = WEEKDAYS.filter((day, index) => set & (1 << index) && wish.lifts.days.includes(day));
      if (lifts.length === 0 || lifts.length > wish.lifts.perWeek) continue;
      if (lifts.length !== WEEKDAYS.filter((_, index) => set & (1 << index)).length) continue;
      const liftEvents = lifts.map((day) => lift(day, wish, person, rules));
      if (!keepsClock(wish, liftEvents, others)) continue;
      const worth = worthOf(wish, hardRuns, liftEvents, others, person, rules);
      if (best === null || less(worth, best)) best = worth;
    }
  }
  return best;
}

/** Worth of the week the planner made, and a list of what is wrong with it. */
export function judge(plan: WeekPlan, wish: WeekWish, person: Recoverer, rules: RecoveryRules) {
  const hardRuns = wish.runs.filter(isHardRun);
  const lifts = plan.days
    .filter(({ session }) => session)
    .map(({ weekday }) => lift(weekday, wish, person, rules));
  const others = plan.days.flatMap(({ weekday, runs, other }) => [
    ...hardRuns.filter(({ id }) => runs.includes(id)).map((run) => runAt(run, weekday, person, rules)),
    ...wish.fixed
      .filter(({ id }) => other.includes(id))
      .map((point) => fixedAt(point, weekday, person, rules)),
  ]);
  const faults: string[] = [];
  if (!keepsClock(wish, lifts, others)) faults.push('the clock is not kept');
  const placedIds = others.filter(({ sort }) => sort === 'fixed').map(({ id }) => id);
  const missing = wish.fixed.filter(({ id }) => !placedIds.includes(id));
  if (missing.some(({ mayWait }) => mayWait !== true)) faults.push('a fixed point is missing');
  if (
    missing
      .map(({ id }) => id)
      .sort()
      .join() !==
    plan.sport
      .filter(({ leftTimes }) => leftTimes > 0)
      .map(({ id }) => id)
      .sort()
      .join()
  )
    faults.push('what is left out is not said');
  if (
    wish.lifts.kind !== 'light' &&
    others.some(({ waits, hour }) => waits && lifts.some((one) => one.hour === hour))
  )
    faults.push('a heavy session on a match day');
  if (plan.days.some(({ runs, other }) => runs.length > 0 && other.length > 0))
    faults.push('a run on the day of something hard');
  if (lifts.some(({ hour }) => !wish.lifts.days.includes(WEEKDAYS[hour / 24]!)))
    faults.push('a session without time');
  for (const { weekday, runs } of plan.days) {
    if (runs.length > 1) faults.push(`two runs on ${weekday}`);
    if (runs.length > 0 && !wish.runDays.includes(weekday)) faults.push(`a run on ${weekday}`);
  }
  const easy = plan.days.filter(({ runs }) => runs.some((id) => !hardRuns.some((run) => run.id === id)));
  const clear = easyDaysClear(wish, lifts, others, person, rules);
  if (easy.some(({ weekday }) => !clear.includes(weekday))) faults.push('an easy run on a hard day');
  if (
    !spaced(
      easy.map(({ weekday }) => weekday),
      hoursOf('easy-run', person, rules),
    )
  )
    faults.push('easy runs too near');
  const worth = worthOf(wish, hardRuns, lifts, others, person, rules);
  const wishedEasy = wish.runs.length - hardRuns.length;
  if (worth[EASY_LEFT_OUT] !== wishedEasy - easy.length) faults.push('easy runs left out without need');
  return { worth, faults };
}

function liftHoursOf({ lifts }: WeekWish, person: Recoverer, rules: RecoveryRules): number {
  if (lifts.kind === 'light') return lifts.hoursBetween;
  const factor = hoursOf('heavy', person, rules) / rules.heavyHours.value;
  const base = lifts.kind === 'heavy' ? rules.heavyHours.value : rules.energyStorageHours.value;
  return Math.max(lifts.hoursBetween, base) * factor;
}

const hourOf = (day: Weekday) => 24 * WEEKDAYS.indexOf(day);

function lift(day: Weekday, wish: WeekWish, person: Recoverer, rules: RecoveryRules): Hard {
  const { kind, clearOfOthers } = wish.lifts;
  const recoveryHours = liftHoursOf(wish, person, rules);
  const byClock = kind !== 'light' && clearOfOthers === 'clock';
  return {
    id: 'lift',
    sort: 'lift',
    hour: hourOf(day),
    recoveryHours,
    toOthersHours: byClock ? hoursOf(kind, person, rules) : recoveryHours,
    family: null,
    immovable: false,
    waits: false,
  };
}

function runAt(run: WishedRun, day: Weekday, person: Recoverer, rules: RecoveryRules): Hard {
  return {
    id: run.id,
    sort: 'run',
    hour: hourOf(day),
    ...clearOf(hoursOf(HARD_KIND[run.kind]!, person, rules)),
    family: run.kind === 'fast' ? 'fast' : run.kind === 'hills-or-strides' ? 'hills' : null,
    immovable: false,
    waits: false,
  };
}

function fixedAt(
  point: WeekWish['fixed'][number],
  day: Weekday,
  person: Recoverer,
  rules: RecoveryRules,
): Hard {
  return {
    id: point.id,
    sort: 'fixed',
    hour: hourOf(day),
    ...clearOf(hoursOf(point.recovery, person, rules)),
    family: null,
    immovable: point.day !== null && point.mayWait !== true,
    waits: point.mayWait === true,
  };
}

const clearOf = (hours: number) => ({ recoveryHours: hours, toOthersHours: hours });

function keepsClock(wish: WeekWish, lifts: readonly Hard[], others: readonly Hard[]): boolean {
  if (!others.every((one) => one.immovable || one.recoveryHours <= 168)) return false;
  if (!others.every((one, i) => others.slice(i + 1).every((other) => !disturb(one, other, wish))))
    return false;
  if (!lifts.every((one) => one.recoveryHours <= 168)) return false;
  if (!lifts.every((one, i) => lifts.slice(i + 1).every((other) => !disturb(one, other, wish)))) return false;
  if (wish.lifts.kind === 'light') return true;
  return lifts.every((one) => others.every((other) => !disturb(one, other, wish)));
}

function* waysOfOthers(
  wish: WeekWish,
  hardRuns: readonly WishedRun[],
  person: Recoverer,
  rules: RecoveryRules,
): Generator<readonly Hard[]> {
  const choices: (readonly (Hard | null)[])[] = [
    ...wish.fixed.map((point) => [
      ...(point.day === null ? WEEKDAYS : [point.day]).map((day) => fixedAt(point, day, person, rules)),
      ...(point.mayWait === true ? [null] : []),
    ]),
    ...hardRuns.map((run) => [...wish.runDays.map((day) => runAt(run, day, person, rules)), null]),
  ];
  yield* combine(choices, []);
  function* combine(
    left: readonly (readonly (Hard | null)[])[],
    taken: readonly Hard[],
  ): Generator<readonly Hard[]> {
    const [first, ...rest] = left;
    if (first === undefined) {
      if (keepsClock(wish, [], taken)) yield taken;
      return;
    }
    for (const one of first) yield* combine(rest, one === null ? taken : [...taken, one]);
  }
}

function worthOf(
  wish: WeekWish,
  hardRuns: readonly WishedRun[],
  lifts: readonly Hard[],
  others: readonly Hard[],
  person: Recoverer,
  rules: RecoveryRules,
): Worth {
  const kept = new Set(others.map(({ id }) => id));
  const dropped = hardRuns.map(({ id }) => !kept.has(id));
  // Named days first: of two things that may wait the one without a day goes first, then the later-named.
  const points = [
    ...wish.fixed.filter(({ day }) => day !== null),
    ...wish.fixed.filter(({ day }) => day === null),
  ];
  const left = points.map(({ id }) => !kept.has(id));
  const onClock = wish.lifts.kind !== 'light';
  const runHours = others.filter(({ sort }) => sort === 'run').map(({ hour }) => hour);
  const pairs = onClock ? lifts.filter(({ hour }) => runHours.includes(hour)).length : 0;
  const fixedHours = others.filter(({ sort }) => sort === 'fixed').map(({ hour }) => hour);
  const shared = onClock ? lifts.filter(({ hour }) => fixedHours.includes(hour)).length : 0;
  const easyWished = wish.runs.length - hardRuns.length;
  const easyPlaced = mostEasy(
    easyDaysClear(wish, lifts, others, person, rules),
    easyWished,
    hoursOf('easy-run', person, rules),
  );
  const hardHours = [...new Set([...others, ...(onClock ? lifts : [])].map(({ hour }) => hour))];
  return [
    left.filter(Boolean).length,
    Math.min(1, shared),
    Math.max(0, Math.min(2, wish.lifts.perWeek) - lifts.length),
    daysLate(wish, lifts),
    shared,
    dropped.filter(Boolean).length,
    wish.lifts.perWeek - lifts.length,
    pairs,
    // Which were given up, the first-named weighing most.
    Number.parseInt([...left, ...dropped].map(Number).join('') || '0', 2),
    easyWished - easyPlaced,
    ...unevenness(hardHours),
    ...unevenness(lifts.map(({ hour }) => hour)),
  ];
}

/** Days by which the first session misses the first three. */
function daysLate({ startDay }: WeekWish, lifts: readonly Hard[]): number {
  if (startDay === undefined) return 0;
  const waits = lifts.map(({ hour }) => ((hour - hourOf(startDay) + 168) % 168) / 24);
  return Math.max(0, Math.min(...waits) - 2);
}

function unevenness(hours: readonly number[]): number[] {
  const sorted = [...hours].sort((a, b) => a - b);
  const gaps = sorted.map((hour, i) => ringGap(hour, sorted[(i + 1) % sorted.length]!));
  return [-Math.min(168, ...gaps), gaps.reduce((sum, gap) => sum + gap * gap, 0)];
}

function easyDaysClear(
  wish: WeekWish,
  lifts: readonly Hard[],
  others: readonly Hard[],
  person: Recoverer,
  rules: RecoveryRules,
): Weekday[] {
  const hard = wish.lifts.kind === 'light' ? others : [...others, ...lifts];
  const easyHours = hoursOf('easy-run', person, rules);
  return wish.runDays.filter((day) =>
    hard.every(({ hour }) => hour !== hourOf(day) && ringGap(hourOf(day), hour) >= easyHours),
  );
}

function spaced(days: readonly Weekday[], hours: number): boolean {
  return days.every((one) =>
    days.every((other) => one === other || ringGap(hourOf(one), hourOf(other)) >= hours),
  );
}

function mostEasy(clear: readonly Weekday[], wished: number, hours: number): number {
  let most = 0;
  for (let set = 0; set < 1 << clear.length; set++) {
    const days = clear.filter((_, index) => set & (1 << index));
    if (days.length <= wished && days.length > most && spaced(days, hours)) most = days.length;
  }
  return most;
}

function less(one: Worth, other: Worth): boolean {
  const index = one.findIndex((value, i) => value !== other[i]);
  return index >= 0 && one[index]! < other[index]!;
}
