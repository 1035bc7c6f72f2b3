// One programme of each demo consult: a body never asked about, then the same body with the consult changed. Run after `npm run prepare`.
import { readdirSync, readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { readConsults } from '#dist/content/readConsults.js';
import { readLibrary } from '#dist/content/readLibrary.js';
import { assembleProgramme } from '#dist/programme/assemble.js';

const COLD_LIMIT_MS = 400;
const WARM_LIMIT_MS = 30;
const ROUNDS = 12;

const filesIn = (folder, as) =>
  readdirSync(folder, { recursive: true })
    .filter((file) => file.endsWith('.md'))
    .map((file) => ({ file: `${as}${file}`, bytes: readFileSync(`${folder}/${file}`), link: 'no' }));

const { library } = readLibrary(filesIn('content', '').filter(({ file }) => !file.startsWith('consults')));
if (library === null) throw new Error('the shipped library has a Problem');
const { current } = readConsults(filesIn('content/consults', 'consults/'), library);

/** A round's consult differs from the last in what a clinician changes most. */
const changed = (consult, round) => ({ ...consult, minutesPerDay: consult.minutesPerDay + (round % 3) });

function make(consult, models) {
  const start = performance.now();
  const made = assembleProgramme(consult, null, { library, models, loadleaf: '0' });
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  return performance.now() - start;
}

const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)];

const first = make(current[0], new Map());
for (const consult of current) {
  const rounds = Array.from({ length: ROUNDS }, (_, round) => round);
  const coldMs = median(rounds.map((round) => make(changed(consult, round), new Map())));
  const models = new Map();
  make(consult, models);
  const warmMs = median(rounds.map((round) => make(changed(consult, round), models)));
  console.log(
    `programme: ${consult.alias}: new body ${coldMs.toFixed(0)} ms (limit ${COLD_LIMIT_MS}), same body ${warmMs.toFixed(1)} ms (limit ${WARM_LIMIT_MS}), ${(coldMs / warmMs).toFixed(0)} times`,
  );
  if (coldMs > COLD_LIMIT_MS || warmMs > WARM_LIMIT_MS) process.exitCode = 1;
}
console.log(`programme: the very first of a process ${first.toFixed(0)} ms (limit ${COLD_LIMIT_MS} ms)`);
if (first > COLD_LIMIT_MS) process.exitCode = 1;
