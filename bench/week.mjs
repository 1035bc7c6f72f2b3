// A week of sessions, runs and other hard things: a usual one and the hardest the search can meet. Run after `npm run prepare`.
import { planWeek } from '#dist/scheduling/plan.js';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';

const LIMIT_MS = 5;
const ROUNDS = 200;
const DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

const choice = (value) => ({ value, mark: 'choice' });
const house = {
  heavyHours: choice(48),
  energyStorageHours: choice(72),
  easyRunHours: choice(24),
  slowFactor: choice(1.5),
  weeksAwayCount: choice(4),
  noviceYears: choice(1),
  leastLifts: choice(2),
};
// The shortest clock a protocol may set leaves the search the most weeks to look at.
const shortest = { ...house, heavyHours: choice(12), energyStorageHours: choice(12) };
const rested = { trainingYears: 10, weeksAway: 0, tired: false, sleep: 'good' };

const wish = (perWeek, kinds, fixed = [], hillsAndFast = 'never-one-week') => ({
  lifts: { perWeek, kind: 'heavy', hoursBetween: 12, days: DAYS },
  runs: kinds.map((kind, i) => ({ id: `run-${i + 1}`, kind, features: [] })),
  runDays: DAYS,
  hillsAndFast,
  fixed,
  betweenDays: DAYS,
  daily: true,
});
const football = (day) => ({ id: `football ${day}`, day, recovery: 'heavy' });

const WEEKS = [
  [
    'three lifts, hills, fast, easy, football',
    wish(3, ['hills-or-strides', 'fast', 'easy', 'easy'], [football('sat')]),
    house,
  ],
  [
    'four lifts, four hard runs, football twice, shortest clock',
    wish(
      4,
      ['fast', 'hills-or-strides', 'steady', 'steady'],
      [football(null), football(null)],
      'never-neighbours',
    ),
    shortest,
  ],
];

for (const [name, input, rules] of WEEKS) {
  const plan = () => planWeek(input, rested, rules);
  const { fits, because } = plan();
  if (!fits) throw new Error(`no week: ${JSON.stringify(because)}`);
  tell({ what: `week: ${name}`, value: await medianMs(ROUNDS, plan), unit: 'ms', limit: LIMIT_MS });
}
