// Makes this clone ready: packages, compiled code and, with --browser, a browser for the page tests.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19))
  fail(`Node ${process.versions.node} is too old; 20.19 or newer is needed.`);

if (!packagesReady()) run('npm', ['ci', '--no-audit', '--no-fund'], 'installing packages');
if (!compiled()) run('npm', ['run', '--silent', 'prepare'], 'compiling');
if (process.argv.includes('--browser')) browserReady();

function packagesReady() {
  const lock = 'package-lock.json';
  const installed = 'node_modules/.package-lock.json';
  if (!existsSync(installed)) return false;
  const wanted = JSON.parse(readFileSync(lock, 'utf8')).packages;
  const have = JSON.parse(readFileSync(installed, 'utf8')).packages;
  return Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).dependencies)
    .concat(Object.keys(JSON.parse(readFileSync('package.json', 'utf8')).devDependencies))
    .every((name) => have[`node_modules/${name}`]?.version === wanted[`node_modules/${name}`]?.version);
}

// Newer sources than the compiled command line: compile again.
function compiled() {
  const made = 'dist/build/main.js';
  if (!existsSync(made)) return false;
  const then = statSync(made).mtimeMs;
  return !readdirSync('src', { recursive: true }).some((file) => statSync(join('src', file)).mtimeMs > then);
}

function browserReady() {
  const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
  if (process.env.CHROMIUM ? existsSync(process.env.CHROMIUM) : places.some((place) => existsSync(place)))
    return;
  const debian = existsSync('/etc/debian_version');
  if (!debian || process.getuid?.() !== 0) {
    fail(
      'The page tests need Chromium. On Debian: apt-get install chromium. Elsewhere install it and set CHROMIUM to its path.',
    );
  }
  run('apt-get', ['update', '-q'], 'looking up Debian packages');
  run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], 'installing Chromium');
}

function run(command, words, what) {
  process.stderr.write(`${what} ...\n`);
  const windows = process.platform === 'win32';
  const { status } = spawnSync(command, words, {
    stdio: ['ignore', 2, 2],
    shell: windows,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) fail(`${command} ${words.join(' ')} failed.`);
}

function fail(message) {
  process.stderr.write(`${message}\n`);
  process.exit(1);
}
