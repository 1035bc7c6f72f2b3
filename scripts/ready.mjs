// Makes this clone ready: packages, compiled code and, with --browser, a browser for the page tests.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { compile, isCompiled } from './compile.mjs';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const LEAST_NODE = [20, 19];
// Where Debian and others put it; anywhere else CHROMIUM says.
const BROWSERS = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Installs and compiles what is missing or out of date; throws with a sentence that says what to do when it cannot. */
export async function makeReady({ browser }) {
  checkNode();
  // `npm ci` compiles by its `prepare`.
  if (!packagesReady()) run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], 'installing packages');
  if (!isCompiled()) {
    say('compiling ...');
    await compile();
  }
  if (browser) browserReady();
}

function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const [leastMajor, leastMinor] = LEAST_NODE;
  if (major > leastMajor || (major === leastMajor && minor >= leastMinor)) return;
  throw new Error(`Node ${process.versions.node} is too old: ${LEAST_NODE.join('.')} or newer is needed.`);
}

// Every package of the lock file that this machine needs stands in the list npm keeps of what it installed.
function packagesReady() {
  const list = join(TOP, 'node_modules', '.package-lock.json');
  if (!existsSync(list)) return false;
  const have = packagesOf(list);
  const wanted = Object.entries(packagesOf(join(TOP, 'package-lock.json')));
  return wanted.every(
    ([place, { version, optional, peer }]) =>
      place === '' || optional || peer || have[place]?.version === version,
  );
}

function packagesOf(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

function browserReady() {
  const { CHROMIUM } = process.env;
  if (CHROMIUM !== undefined) {
    if (existsSync(CHROMIUM)) return;
    throw new Error(`The page tests need Chromium; CHROMIUM says ${CHROMIUM}, and nothing is there.`);
  }
  if (BROWSERS.some((place) => existsSync(place))) return;
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0)
    throw new Error(
      'The page tests need Chromium. On Debian: sudo apt-get install chromium. Elsewhere install Chromium or Chrome and set CHROMIUM to the path of the program.',
    );
  run('apt-get', ['update', '-q'], 'looking up Debian packages');
  run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], 'installing Chromium');
}

function run(command, words, what) {
  say(`${what} ...`);
  const { status } = spawnSync(command, words, {
    cwd: TOP,
    stdio: ['ignore', 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) throw new Error(`${command} ${words.join(' ')} failed.`);
}

function say(text) {
  process.stderr.write(`${text}\n`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    await makeReady({ browser: process.argv.includes('--browser') });
  } catch (error) {
    say(error.message);
    process.exitCode = 1;
  }
}
