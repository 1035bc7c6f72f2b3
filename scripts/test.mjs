// The whole of `npm test`: makes ready, then types, lint and every test. Closes with one line: N passed, N failed.
// Words after it go to vitest. What is skipped, or cannot even be read, counts as failed.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeReady } from './ready.mjs';
import { countTests } from './countTests.mjs';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const count = { passed: 0, failed: 0 };

if (await readied()) {
  await steps([
    ['types', 'typescript-native/bin/tsc', ['--noEmit']],
    ['types of the page script', 'typescript-native/bin/tsc', ['-p', 'src/client/tsconfig.json', '--noEmit']],
    ['types of the desk', 'typescript-native/bin/tsc', ['-p', 'src/desk/tsconfig.json']],
    ['lint', 'eslint/bin/eslint.js', ['--max-warnings', '0', '.']],
  ]);
  allTests(process.argv.slice(2));
} else count.failed += 1;

process.stdout.write(`\n${count.passed} passed, ${count.failed} failed\n`);
process.exitCode = count.failed === 0 && count.passed > 0 ? 0 : 1;

async function readied() {
  try {
    await makeReady({ browser: true });
    return true;
  } catch (error) {
    process.stdout.write(`${error.message}\n`);
    return false;
  }
}

// All at once, since each keeps one core busy; told in their order.
async function steps(list) {
  const running = list.map(([name, program, words]) => ({ name, ended: heard(program, words) }));
  for (const { name, ended } of running) {
    const { status, said } = await ended;
    const isGood = status === 0;
    process.stdout.write(`${said}${isGood ? 'passed' : 'FAILED'}: ${name}\n`);
    count[isGood ? 'passed' : 'failed'] += 1;
  }
}

function heard(program, words) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [pathOf(program), ...words], {
      cwd: TOP,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text) => (said += text));
    child.on('error', (error) => resolve({ status: 1, said: `${error.message}\n` }));
    child.on('close', (status) => resolve({ status: status ?? 1, said }));
  });
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
  return (
    spawnSync(process.execPath, [pathOf(program), ...words], {
      cwd: TOP,
      stdio: ['ignore', 'inherit', 'inherit'],
    }).status ?? 1
  );
}

function pathOf(program) {
  return join(TOP, 'node_modules', program);
}
