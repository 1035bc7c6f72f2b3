// One programme of each demo consult, the slowest told: of a body never asked about, of the same body with the consult
// changed, and as the very first of a process. Run after `npm run prepare`.
import { fileURLToPath } from 'node:url';
import { medianMs, wallMs } from './clock.mjs';
import { program } from './command.mjs';
import { tell } from './row.mjs';
import { demos, programmeOf } from './shipped.mjs';

const COLD_LIMIT_MS = 400;
const WARM_LIMIT_MS = 30;
const ROUNDS = 12;
const PROCESSES = 5;

const [first] = process.argv.slice(2);
if (first === undefined) await measure();
else process.stdout.write(String(await wallMs(() => programmeOf(named(first)))));

async function measure() {
  const firstMs = demos.map(({ alias }) =>
    Math.min(...Array.from({ length: PROCESSES }, () => firstOf(alias))),
  );
  const coldMs = [];
  const warmMs = [];
  for (const consult of demos) {
    coldMs.push(await medianMs(ROUNDS, (round) => programmeOf(changed(consult, round))));
    const models = new Map();
    programmeOf(consult, models);
    warmMs.push(await medianMs(ROUNDS, (round) => programmeOf(changed(consult, round), models)));
  }
  const slowest = (what, times, limit) => {
    const value = Math.max(...times);
    tell({ what: `programme, ${what} (${demos[times.indexOf(value)].alias})`, value, unit: 'ms', limit });
  };
  slowest('the very first of a process', firstMs, COLD_LIMIT_MS);
  slowest('a new body', coldMs, COLD_LIMIT_MS);
  slowest('a body known', warmMs, WARM_LIMIT_MS);
}

function firstOf(alias) {
  return Number(program(fileURLToPath(import.meta.url), [alias]));
}

function named(alias) {
  return demos.find((consult) => consult.alias === alias);
}

/** A round's consult differs from the last in what a clinician changes most. */
function changed(consult, round) {
  return { ...consult, minutesPerDay: consult.minutesPerDay + (round % 3) };
}
