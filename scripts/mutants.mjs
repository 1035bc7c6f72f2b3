// Mutation testing file by file: changes one place of the deciding code after another and asks whether a test of the
// room notices. What is known of a file is kept, by the text of the file and of the tests of its room, and not asked
// again; so a run that was stopped goes on where it was, and what it knows by then is a fair sample.
//
//   npm run mutants                        every room
//   npm run mutants -- dosing scheduling   these rooms
//   npm run mutants -- src/dosing/kit.ts   these files
//   npm run mutants -- --known             what is known already, and nothing run
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ROOMS, roomOf } from './mutantRooms.mjs';
import { makeReady } from './ready.mjs';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));

const KEPT = 'node_modules/.cache/mutants';
/** Stryker writes here; see stryker.config.json. */
const REPORT = join(KEPT, 'report.json');
const BREAK = 85;
/** Files of one run of Stryker: starting takes as long as some fifty mutants, and what was found is kept when it ends. */
const BATCH = 6;

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const isRunning = !process.argv.includes('--known');

await makeReady({ browser: false });
mkdirSync(KEPT, { recursive: true });
const files = ROOMS.flatMap(({ name }) => filesOf(name).map((file) => ({ room: name, file })));
const chosen = files.filter(
  ({ room, file }) => asked.length === 0 || asked.includes(room) || asked.includes(file),
);
if (chosen.length === 0)
  stop(
    `no room and no file of one is called ${asked.join(', ')}; the rooms are ${ROOMS.map(({ name }) => name).join(', ')}`,
  );

if (isRunning) for (const { room, files: some } of batches()) tryOut(room, some);
const results = chosen.flatMap(({ room, file }) => {
  const known = knownOf(room, file);
  return known === null ? [] : [{ room, file, ...known }];
});
process.stdout.write(`\n${tableOf(results)}`);
process.exitCode = chosen.length > 0 && scoreOf(results) < BREAK ? 1 : 0;

/** In turn from each room, so that a run that is stopped has tried a fair part of every one. */
function batches() {
  const unknown = chosen.filter(({ room, file }) => knownOf(room, file) === null);
  return ROOMS.flatMap(({ name: room }) => {
    const own = unknown.filter((one) => one.room === room).map(({ file }) => file);
    const count = Math.ceil(own.length / BATCH);
    return Array.from({ length: count }, (_, at) => ({
      room,
      files: own.slice(at * BATCH, (at + 1) * BATCH),
      share: at / count,
    }));
  }).sort((a, b) => a.share - b.share);
}

/** In an order that has nothing to do with their names: neighbours are much alike. */
function filesOf(room) {
  return filesBelow('src')
    .filter((path) => path.endsWith('.ts') && roomOf(path)?.name === room)
    .map((path) => ({ path, hash: createHash('sha256').update(path).digest('hex') }))
    .sort((a, b) => (a.hash < b.hash ? -1 : 1))
    .map(({ path }) => path);
}

function filesBelow(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'))
    .sort();
}

/** The answer that is kept for this very file under these very tests, or null. */
function knownOf(room, file) {
  const place = placeOf(file);
  if (!existsSync(place)) return null;
  const kept = JSON.parse(readFileSync(place, 'utf8'));
  return kept.of === keyOf(room, file) ? kept : null;
}

function placeOf(file) {
  return join(KEPT, `${file.replaceAll('/', '.')}.json`);
}

// A mutant is of one file; the code around it counts where a test was changed for it.
function keyOf(room, file) {
  const hash = createHash('sha256');
  const folders = ROOMS.find(({ name }) => name === room).tests.map((pattern) => dirname(pattern));
  const tests = [...new Set(folders)].flatMap(filesBelow).filter((path) => !path.endsWith('.slow.test.ts'));
  for (const path of [file, 'scripts/mutantRooms.mjs', 'stryker.config.json', ...tests])
    hash.update(path).update('\0').update(readFileSync(path)).update('\0');
  return hash.digest('hex');
}

/** What is found is kept file by file, so that what was tried is not tried again. */
function tryOut(room, files) {
  rmSync(REPORT, { force: true });
  const words = [
    'run',
    '--mutate',
    files.join(','),
    '--concurrency',
    String(Math.max(1, availableParallelism())),
  ];
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/@stryker-mutator/core/bin/stryker.js', ...words],
    {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, MUTANTS_ROOM: room },
    },
  );
  // A batch of types alone has no mutant, and no report.
  if (status !== 0 && !existsSync(REPORT))
    stop(`stryker could not try these; MUTANTS_ROOM=${room} npx stryker ${words.join(' ')} tells why`);
  const report = existsSync(REPORT) ? JSON.parse(readFileSync(REPORT, 'utf8')) : { files: {} };
  for (const file of files) {
    const kept = { of: keyOf(room, file), ...summaryOf(report, file) };
    writeFileSync(placeOf(file), JSON.stringify(kept));
    process.stdout.write(`${textOf(file, kept)}\n`);
  }
}

/** How many were killed, and the words of every survivor. A file of types alone has no mutant. */
function summaryOf({ files: reported }, file) {
  const { source = '', mutants = [] } = reported[file] ?? {};
  const lines = source.split('\n');
  const count = (...kinds) => mutants.filter(({ status }) => kinds.includes(status)).length;
  const killed = count('Killed', 'Timeout');
  const survivors = mutants
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .map(({ location: { start, end }, replacement = '', status }) => {
      const last = start.line === end.line ? end.column - 1 : undefined;
      const was = lines[start.line - 1].slice(start.column - 1, last).slice(0, 90);
      const is = replacement.replaceAll(/\s+/g, ' ').slice(0, 90);
      return `${start.line}:${start.column} ${was} -> ${is}${status === 'NoCoverage' ? ' (no test goes there)' : ''}`;
    });
  // A mutant that never ends counts as noticed; on a machine too busy it may only have been slow.
  return { killed, late: count('Timeout'), survivors };
}

function textOf(file, { killed, late = 0, survivors }) {
  return [
    `${file}: ${killed} of ${killed + survivors.length}${late === 0 ? '' : `, ${late} of them by the clock`}`,
    ...survivors.map((one) => `  ${file}:${one}`),
  ].join('\n');
}

function scoreOf(some) {
  const killed = some.reduce((sum, one) => sum + one.killed, 0);
  const all = some.reduce((sum, one) => sum + one.killed + one.survivors.length, 0);
  return all === 0 ? 100 : (100 * killed) / all;
}

function tableOf(some) {
  const rows = ROOMS.map(({ name }) => [name, some.filter((one) => one.room === name)]).filter(
    ([, own]) => own.length > 0,
  );
  const line = (name, own) => {
    const killed = own.reduce((sum, one) => sum + one.killed, 0);
    const survived = own.reduce((sum, one) => sum + one.survivors.length, 0);
    const all = chosen.filter(({ room }) => name === 'all' || room === name).length;
    return `${name.padEnd(12)}${`${own.length} of ${all}`.padStart(10)} files${String(killed + survived).padStart(7)} mutants${String(survived).padStart(6)} survived${scoreOf(own).toFixed(1).padStart(7)} %\n`;
  };
  return rows.map(([room, own]) => line(room, own)).join('') + (rows.length > 1 ? line('all', some) : '');
}

function stop(message) {
  process.stderr.write(`mutants: ${message}\n`);
  process.exit(64);
}
