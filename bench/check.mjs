// `check` of a library of 500 cards: the command as a whole, and its parts. Run after `npm run prepare`.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { readLibrary } from '#dist/content/readLibrary.js';
import { checkLibrary } from '#dist/programme/check/library.js';

const CARDS = 500;
const ROUNDS = 5;
const LIMIT_MS = 2000;
const ON = '2026-11-25';

const root = fileURLToPath(new URL('..', import.meta.url));
const content = mkdtempSync(join(tmpdir(), 'bench-check-'));
const nobody = mkdtempSync(join(tmpdir(), 'bench-nobody-'));
mkdirSync(join(nobody, 'consults'));
try {
  fill(content);
  const files = read(content);
  const reading = readLibrary(files);
  if (reading.library === null) throw new Error(JSON.stringify(reading.problems.slice(0, 3)));
  const { library, placeOf } = reading;
  console.log(`     ${library.exercises.size} cards, ${checkLibrary(library, ON, placeOf).length} warnings`);
  report('reading the library', () => readLibrary(files));
  report('checking the library', () => checkLibrary(library, ON, placeOf));
  report(`the command, under ${LIMIT_MS} ms`, command, LIMIT_MS);
} finally {
  for (const folder of [content, nobody]) rmSync(folder, { recursive: true });
}

/** The shipped content, its cards copied under new ids; each copy a little apart, so that no answer of the model is asked for twice. */
function fill(folder) {
  cpSync(join(root, 'content'), folder, { recursive: true });
  const cards = readdirSync(join(folder, 'exercises'));
  for (let n = 0; cards.length + n < CARDS; n += 1) {
    const card = cards[n % cards.length];
    const text = readFileSync(join(folder, 'exercises', card), 'utf8');
    const apart = text.replace(/(?<=\n {4}hip: )-?[\d.]+/, (deg) => (Number(deg) + n / 1000).toFixed(3));
    writeFileSync(join(folder, 'exercises', card.replace('.md', `-${n}.md`)), apart);
  }
}

function read(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md') && !file.startsWith('consults'))
    .map((file) => ({
      file: file.replaceAll('\\', '/'),
      bytes: readFileSync(join(folder, file)),
      link: 'no',
    }));
}

/** A whole process from its start to its last byte, with a library and no consults: those are what `build` is timed on. */
function command() {
  const folders = [
    '--content',
    content,
    '--consults',
    join(nobody, 'consults'),
    '--out',
    join(nobody, 'out'),
  ];
  const words = [join(root, 'dist/build/main.js'), 'check', ...folders, '--on', ON, '--json'];
  const { status, stderr } = spawnSync(process.execPath, words, { maxBuffer: 2 ** 26 });
  if (status !== 0) throw new Error(String(stderr).slice(-2000));
}

/** The quickest of the rounds: the others waited for something else on the machine. */
function report(what, work, limitMs = Infinity) {
  const ms = Math.min(...Array.from({ length: ROUNDS }, () => timed(work)));
  console.log(`${ms < limitMs ? 'ok  ' : 'SLOW'} ${what}: ${ms.toFixed(0)} ms`);
  if (ms >= limitMs) process.exitCode = 1;
}

function timed(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}
