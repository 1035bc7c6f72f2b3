// The whole of `npm test`: makes ready, then types, lint and every test. Closes with one line: N passed, N failed.
// Words after it go to vitest. What is skipped, or cannot even be read, counts as failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeReady } from './ready.mjs';
import { countTests } from './countTests.mjs';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const count = { passed: 0, failed: 0 };

if (readied()) {
  step('types', 'typescript/bin/tsc', ['--noEmit']);
  step('types of the page script', 'typescript/bin/tsc', ['-p', 'src/page/client/tsconfig.json', '--noEmit']);
  step('lint', 'eslint/bin/eslint.js', ['--max-warnings', '0', '.']);
  allTests(process.argv.slice(2));
} else count.failed += 1;

process.stdout.write(`\n${count.passed} passed, ${count.failed} failed\n`);
process.exitCode = count.failed === 0 && count.passed > 0 ? 0 : 1;

function readied() {
  try {
    makeReady({ browser: true });
    return true;
  } catch (error) {
    process.stdout.write(`${error.message}\n`);
    return false;
  }
}

function step(name, program, words) {
  const isGood = run(program, words) === 0;
  process.stdout.write(`${isGood ? 'passed' : 'FAILED'}: ${name}\n`);
  count[isGood ? 'passed' : 'failed'] += 1;
}

function allTests(words) {
  const folder = mkdtempSync(join(tmpdir(), 'loadleaf-test-'));
  const report = join(folder, 'report.json');
  const outputs = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const status = run('vitest/vitest.mjs', ['run', ...outputs, ...words]);
  const tests = countTests(readReport(report), status);
  for (const remark of tests.remarks) process.stdout.write(`${remark}\n`);
  count.passed += tests.passed;
  count.failed += tests.failed;
  rmSync(folder, { recursive: true });
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

function run(program, words) {
  const path = join(TOP, 'node_modules', program);
  return (
    spawnSync(process.execPath, [path, ...words], { cwd: TOP, stdio: ['ignore', 'inherit', 'inherit'] })
      .status ?? 1
  );
}
