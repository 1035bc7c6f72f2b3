/** Laws of the dated plan that hold for whoever gets a programme; each throws where it is broken. */
import assert from 'node:assert/strict';
import type { Consult } from '../../src/content/library.ts';
import { weekdayAndDay } from '../../src/messages/en/plain.ts';
import type { Programme } from '../../src/programme/programme.ts';
import type { PlanEntry } from '../../src/decisions/terms/planEntry.ts';
import { addDays, daysBetween } from '../../src/units/date.ts';
import { shipped } from '../programme/shipped.ts';
import { logRows, plannedDay, runningTotals, walkRunRows, weekRows } from './planReader.ts';

export type Law = (programme: Programme, consult: Consult) => void;

const HARD_RUNS = ['steady', 'hills-or-strides', 'fast'];

const springy = ({ card }: { readonly card: string }) =>
  ['energy-storage', 'running-drill'].includes(shipped.exercises.get(card)?.kind ?? '');
const hardRun = ({ runs }: PlanEntry) => runs.some(({ kind }) => HARD_RUNS.includes(kind));
const fastDrill = ({ sessions }: PlanEntry) => sessions.some(({ exercises }) => exercises.some(springy));

/** Days on which a race of the plan is run, as the log prints them. */
export const raceDays = ({ plan }: Programme) => plan.filter(({ races }) => races.length > 0);

/** Only what is still and hardly loaded has sessions off the recovery clock: the first stage, and the outer hip. */
export const isLight = ({ stage, record }: Programme) =>
  stage.chosen === 1 || record.versions.protocol === 'gluteal-tendon';

/** Every day from the start to the day before the review, and a race on the review day as its last. */
export const everyDay: Law = ({ plan }, { startOn, reviewOn, running }) => {
  const length = daysBetween(startOn, reviewOn);
  assert.deepEqual(
    plan.slice(0, length).map(({ on }) => on),
    Array.from({ length }, (_, index) => addDays(startOn, index)),
  );
  const rest = plan.slice(length);
  assert.ok(rest.length <= 1, 'one day at most after the last');
  for (const { on, races, runs, sessions } of rest) {
    assert.equal(on, reviewOn);
    assert.ok(
      running.races?.some((one) => one.on === on),
      `a race on ${on}`,
    );
    assert.deepEqual([races.length > 0, runs.length, sessions.length], [true, 0, 0]);
  }
};

/** Log, week and calendar print the plan, day by day. */
export const printedDays: Law = (programme) => {
  const planned = programme.plan.map((entry) => ({ on: entry.on, day: plannedDay(entry) }));
  assert.deepEqual(logRows(programme), planned);
  const bare = ({ on, day: { runs, ...things } }: ReturnType<typeof weekRows>[number]) => ({
    on,
    ...things,
    runs: runs.map(({ kind }) => kind),
  });
  const week = weekRows(programme);
  assert.deepEqual(week.map(bare), planned.map(bare));
  week.forEach(({ day: { runs } }, index) =>
    runs.forEach(({ amount }, at) => {
      if (amount !== '') assert.equal(amount, planned[index]?.day.runs[at]?.amount);
    }),
  );
  const counted = (kind: string) =>
    programme.calendar.filter((entry) => entry.kind === kind).map(({ on }) => on);
  const having = (has: (entry: PlanEntry) => boolean) => programme.plan.filter(has).map(({ on }) => on);
  assert.deepEqual(
    counted('session'),
    having(({ sessions }) => sessions.length > 0),
  );
  assert.deepEqual(
    counted('race'),
    having(({ races }) => races.length > 0),
  );
  assert.deepEqual(
    counted('easy'),
    having(({ easyAfterRace }) => easyAfterRace),
  );
  assert.deepEqual(new Set(counted('run')), new Set(having(({ runs }) => runs.length > 0)));
};

/** The session that is printed as the next one is the first of the plan. */
export const nextSession: Law = ({ plan, nextSession: next }) => {
  const first = plan.find(({ sessions }) => sessions.length > 0);
  const words = first === undefined ? 'There is no session before' : weekdayAndDay(first.on);
  assert.ok(next.when.startsWith(words), `${next.when} begins with ${words}`);
};

/** Plan and log come to the kilometres of the running table, week by week. */
export const weekKilometres: Law = (programme) => {
  const totals = runningTotals(programme);
  if (totals === null) return;
  const log = logRows(programme);
  totals.forEach((total, index) => {
    const days = log.slice(7 * index, 7 * index + 7);
    const kms = days.flatMap((one) => [...one.day.runs.flatMap(({ km }) => km ?? []), ...one.day.races]);
    if (total === null) assert.deepEqual(kms, []);
    else {
      const sum = kms.reduce((all, km) => all + km, 0);
      assert.ok(
        Math.abs(sum - total) < 1e-6,
        `week ${index + 1}: ${sum} km in the log, ${total} in the table`,
      );
    }
  });
  assert.equal(totals.length, Math.ceil(log.length / 7));
};

/** The plan comes to the outings of the walk-run table. */
export const walkRunOutings: Law = (programme) => {
  walkRunRows(programme)?.forEach(([, walk, run, times, outings = ''], index) => {
    const runs = programme.plan.filter(({ week }) => week === index + 1).flatMap((one) => one.runs);
    assert.equal(
      Number(/^(\d+) outing/.exec(outings)?.[1] ?? 0),
      runs.length,
      `outings of week ${index + 1}`,
    );
    for (const { walkRun, minutes } of runs) {
      if (walkRun === null) assert.equal(run, `${minutes} minutes`);
      else {
        assert.deepEqual([walk, run], [`${walkRun.walkMinutes} min`, `${walkRun.runMinutes} min`]);
        assert.ok(times?.includes(String(walkRun.cycles)), `${times} says ${walkRun.cycles}`);
      }
    }
  });
};

/** Nothing heavy and nothing fast in the four days before a race. */
export const easyBeforeRace: Law = (programme) => {
  for (const { on } of raceDays(programme))
    for (const entry of programme.plan.filter((one) => one.on < on && daysBetween(one.on, on) <= 4)) {
      assert.equal(hardRun(entry), false, `hard run on ${entry.on}`);
      assert.equal(fastDrill(entry), false, `fast drill on ${entry.on}`);
      assert.deepEqual(entry.other, [], entry.on);
      if (entry.sessions.length > 0) assert.ok(isLight(programme), `session on ${entry.on}`);
    }
};

/** Nothing hard in the easy days after a race, but another race that was decided on. */
export const easyAfterRace: Law = (programme, { running }) => {
  for (const entry of programme.plan.filter((one) => one.easyAfterRace)) {
    assert.equal(hardRun(entry), false, `hard run on ${entry.on}`);
    assert.equal(fastDrill(entry), false, `fast drill on ${entry.on}`);
    assert.deepEqual(entry.other, [], entry.on);
    if (entry.sessions.length > 0) assert.ok(isLight(programme), `session on ${entry.on}`);
    if (entry.races.length > 0)
      assert.ok(running.races?.find(({ on }) => on === entry.on)?.decision, `decision for ${entry.on}`);
  }
};

/** The day of a race holds nothing else. */
export const raceDayAlone: Law = (programme) => {
  for (const { on, sessions, runs, between, daily, other } of raceDays(programme))
    assert.deepEqual([sessions, runs, between, daily, other].flat(), [], on);
};

/** What begins, begins in the order springy, strides, hills, fast. */
export const newStresses: Law = ({ growth }) => {
  const order = ['springs', 'strides', 'hills-or-strides', 'fast'];
  const begun = growth.flatMap(({ begins }) => begins ?? []);
  assert.deepEqual(
    begun,
    [...begun].sort((a, b) => order.indexOf(a) - order.indexOf(b)),
  );
};

/** All of them by what they keep. */
export const PLAN_LAWS: Readonly<Record<string, Law>> = {
  'every day is planned': everyDay,
  'what is printed of a day is planned': printedDays,
  'the next session is the first': nextSession,
  'the kilometres of a week are those of its table': weekKilometres,
  'the outings are those of the walk-run table': walkRunOutings,
  'nothing hard before a race': easyBeforeRace,
  'nothing hard after a race': easyAfterRace,
  'nothing beside a race': raceDayAlone,
  'new stresses in their order': newStresses,
};
