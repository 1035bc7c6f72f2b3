// The whole of `npm test`: types, lint, then every test. Closes with one line: N passed, N failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folder = mkdtempSync(join(tmpdir(), 'loadleaf-test-'));
const report = join(folder, 'report.json');
let passed = 0;
let failed = 0;

step('types', 'tsc', ['--noEmit']);
step('lint', 'eslint', ['--max-warnings', '0', '.']);
const status = run('vitest', [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
]);
try {
  const counted = JSON.parse(readFileSync(report, 'utf8'));
  passed += counted.numPassedTests;
  failed += counted.numFailedTests;
  const skipped = counted.numPendingTests + counted.numTodoTests;
  if (skipped > 0) {
    process.stdout.write(`${skipped} tests were skipped; none may be.\n`);
    failed += skipped;
  }
} catch {
  process.stdout.write('The tests left no report.\n');
}
// A suite that could not even be read counts no test; it must still fail.
if (status !== 0 && failed === 0) failed += 1;
rmSync(folder, { recursive: true, force: true });

process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);

function step(name, command, words) {
  const good = run(command, words) === 0;
  process.stdout.write(`${good ? 'passed' : 'FAILED'}: ${name}\n`);
  if (good) passed += 1;
  else failed += 1;
}

function run(command, words) {
  return (
    spawnSync(process.execPath, [join('node_modules', ...binOf(command)), ...words], {
      stdio: ['ignore', 'inherit', 'inherit'],
    }).status ?? 1
  );
}

function binOf(name) {
  const home = {
    tsc: ['typescript', 'bin', 'tsc'],
    eslint: ['eslint', 'bin', 'eslint.js'],
    vitest: ['vitest', 'vitest.mjs'],
  };
  return home[name];
}
