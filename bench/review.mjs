// A log of one year, six exercises, read and reviewed. Run after `npm run prepare`.
import { logFile } from '#dist/content/log/format.js';
import { readLog } from '#dist/content/log/readLog.js';
import { reviewOf } from '#dist/review/review.js';
import { addDays, weekdayOf } from '#dist/units/date.js';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';
import { demos, library } from './shipped.mjs';

const LIMIT_MS = 200;
const ROUNDS = 20;
const DAYS = 365;

const consult = {
  ...demos.find(({ alias }) => alias === 'otter'),
  startOn: '2026-01-01',
  reviewOn: '2027-01-01',
};
const protocol = library.protocols.get(consult.protocol);
const cards = [...library.exercises.keys()].slice(0, 6);
const dates = Array.from({ length: DAYS }, (_, index) => addDays(consult.startOn, index));
const empty = {
  occasion: 1,
  card: '',
  side: null,
  edit: 0,
  done: null,
  sets: null,
  repetitions: null,
  seconds: null,
};
const blank = { ...empty, loadKg: null, painDuring: null, morning: null, minutes: null, km: null, note: '' };
const rows = dates.flatMap((date) => [
  { ...blank, date, kind: 'morning', morning: 2 },
  ...cards.map((card) => ({
    ...blank,
    date,
    kind: 'session',
    card,
    side: 'right',
    done: 'yes',
    sets: 3,
    repetitions: 8,
    loadKg: 10,
    painDuring: 1,
  })),
]);
const bytes = new TextEncoder().encode(logFile(rows));
const session = { exercises: cards.map((card) => ({ slot: card, card })), begins: [], without: [] };
const plan = dates.map((on) => ({
  on,
  weekday: weekdayOf(on),
  sessions: [session],
  between: [],
  daily: [],
  runs: [],
}));
const earlier = {
  revision: 1,
  seenOn: consult.startOn,
  protocol: protocol.id,
  stage: 2,
  step: 2,
  exercises: cards.map((card) => ({ card, values: { sets: 3, repetitions: 8, loadKg: 10 } })),
  plan,
};

function review() {
  const file = { file: 'consults/otter-r1.log.csv', bytes, link: 'no' };
  const { log } = readLog(file, { alias: 'otter', revision: 1 }, library.exercises);
  const facts = { consult, earlier, protocol, isLastStep: false, stageSessionsBefore: 0, log };
  return reviewOf({ ...facts, seenOn: '2027-01-01' });
}

const { decision, counts } = review();
if (decision !== 'moveOn' || counts.sessionsDone !== DAYS) throw new Error(`reviewed as ${decision}`);
tell({
  what: 'review: a year of six exercises',
  value: await medianMs(ROUNDS, review),
  unit: 'ms',
  limit: LIMIT_MS,
});
