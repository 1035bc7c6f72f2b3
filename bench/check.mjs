// `check` of a library of 500 cards: the command as a whole, and its parts. Run after `npm run prepare`.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { checkLibrary } from '#dist/lint/library.js';
import { manyFiles } from './cards.mjs';
import { medianMs, quickestMs } from './clock.mjs';
import { command } from './command.mjs';
import { tell } from './row.mjs';
import { libraryOf } from './shipped.mjs';

const LIMIT_MS = 2000;
const ROUNDS = 5;
const ON = '2026-11-25';

const { library, placeOf } = libraryOf(manyFiles);
const row = (what, value, limit) =>
  tell({ what: `${what} ${library.exercises.size} cards`, value, unit: 'ms', limit });
row('reading', await medianMs(ROUNDS, () => libraryOf(manyFiles)));
row('checking', await medianMs(ROUNDS, () => checkLibrary(library, ON, placeOf)));

// A library and no consults: those are what `build` is timed on.
const folder = mkdtempSync(join(tmpdir(), 'bench-check-'));
const [content, consults, out] = ['content', 'consults', 'out'].map((name) => join(folder, name));
try {
  mkdirSync(consults);
  for (const { file, bytes } of manyFiles) {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), bytes);
  }
  const words = ['check', '--content', content, '--consults', consults, '--out', out, '--on', ON, '--json'];
  row('check of', await quickestMs(ROUNDS, () => command(words)), LIMIT_MS);
} finally {
  rmSync(folder, { recursive: true });
}
