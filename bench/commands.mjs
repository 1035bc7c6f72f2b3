// The commands a physiotherapist waits for, as whole processes: the demo clinic checked and built. Run after `npm run prepare`.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { quickestMs } from './clock.mjs';
import { command } from './command.mjs';
import { tell } from './row.mjs';
import { TOP } from './shipped.mjs';

const ROUNDS = 5;

const out = mkdtempSync(join(tmpdir(), 'bench-commands-'));
const folders = ['--content', join(TOP, 'content'), '--out', out];
try {
  for (const [what, words] of [
    ['check of the demo clinic', ['check']],
    ['build of the demo clinic', ['build']],
    ['build of one consult', ['build', 'otter']],
  ]) {
    const value = await quickestMs(ROUNDS, () => command([...words, ...folders, '--quiet']));
    tell({ what: `${what}, the whole process`, value, unit: 'ms' });
  }
} finally {
  rmSync(out, { recursive: true });
}
