// Flips every byte of a sealed page in turn and opens each in Chromium: the whole leaflet, or the plain message.
// `npm run every-byte -- 100` tries one byte of every hundred.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const [every = '1'] = process.argv.slice(2);
if (!/^[1-9]\d*$/.test(every)) {
  console.error(`${every}: must be a whole number from 1, such as 100 for one byte of every hundred`);
  process.exit(64);
}
const vitest = fileURLToPath(new URL('../node_modules/vitest/vitest.mjs', import.meta.url));
const words = ['run', 'tests/outputs/html/sealed.slow.test.ts', '-t', 'a byte of the', '--testTimeout', '0'];
const { status } = spawnSync(process.execPath, [vitest, ...words], {
  stdio: 'inherit',
  env: { ...process.env, EVERY_BYTE: every },
});
process.exitCode = status ?? 1;
