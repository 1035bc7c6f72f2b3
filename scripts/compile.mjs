// Compiles src/ into dist/, as `npm ci` and `npm run prepare` do. dist/ is wholly old or wholly new, and holds nothing of
// files that are gone. Types are not looked at here: `npm run types` and `npm test` do that.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const DIST = join(TOP, 'dist');
// The mark of what dist/ was compiled from, written last.
const MARK = '.compiled-from';
const SOURCES = ['src', 'templates'];
const CONFIGS = [
  'tsconfig.json',
  'tsconfig.build.json',
  'package.json',
  'package-lock.json',
  join('scripts', 'bundle.mjs'),
  join('scripts', 'leftOut.mjs'),
  join('scripts', 'program.mjs'),
];

/** Whether dist/ is what the sources as they stand would give. Times of files say nothing after a checkout or a copy. */
export function isCompiled() {
  const mark = join(DIST, MARK);
  return existsSync(mark) && readFileSync(mark, 'utf8') === hashOfSources();
}

/** Compiles, and throws with a sentence when it cannot; dist/ is then as it was. */
export async function compile() {
  const tsc = join(TOP, 'node_modules', 'typescript-native', 'bin', 'tsc');
  if (!existsSync(tsc)) throw new Error('TypeScript is not installed: npm ci --include=dev');
  const hash = hashOfSources();
  const fresh = join(TOP, 'node_modules', `.dist-${process.pid}`);
  try {
    emit(tsc, 'tsconfig.build.json', fresh);
    await bundle(fresh);
    writeFileSync(join(fresh, MARK), hash);
    swap(fresh);
    await keepMade();
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

function emit(tsc, project, outDir) {
  const words = [tsc, '-p', project, '--noCheck', '--outDir', outDir];
  const { status } = spawnSync(process.execPath, words, { cwd: TOP, stdio: ['ignore', 2, 2] });
  if (status !== 0) throw new Error(`compiling ${project} failed`);
}

// The bundler is a package for developers: it is asked for only when there is something to compile.
async function bundle(outDir) {
  const { SCRIPTS, SHEETS, DESK_SCRIPTS, bundledScript, bundledSheet, bundledDeskScript } =
    await import('./bundle.mjs');
  for (const folder of ['scripts', 'styles']) mkdirSync(join(outDir, folder));
  for (const name of Object.keys(SCRIPTS))
    writeFileSync(join(outDir, 'scripts', `${name}.js`), bundledScript(name));
  // Types were left in its folder by the compiler, which knows nothing of the bundles.
  mkdirSync(join(outDir, 'desk'), { recursive: true });
  for (const name of Object.keys(DESK_SCRIPTS))
    writeFileSync(join(outDir, 'desk', `${name}.js`), await bundledDeskScript(name));
  for (const name of SHEETS) writeFileSync(join(outDir, 'styles', `${name}.css`), bundledSheet(name));
  const { bundleProgram } = await import('./program.mjs');
  await bundleProgram(outDir);
}

// Only once it lies in its place: the engine looks at the name of a file too.
async function keepMade() {
  const { keepMade: keep } = await import('./program.mjs');
  keep();
}

function swap(fresh) {
  const old = `${fresh}.old`;
  if (existsSync(DIST)) renameSync(DIST, old);
  renameSync(fresh, DIST);
  rmSync(old, { recursive: true, force: true });
}

function hashOfSources() {
  const sources = SOURCES.flatMap((folder) =>
    readdirSync(join(TOP, folder), { recursive: true })
      .filter((file) => /\.(tsx?|json|css)$/.test(file))
      .map((file) => join(folder, file)),
  );
  const hash = createHash('sha256');
  for (const file of [...CONFIGS, ...sources.sort()])
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(TOP, file)))
      .update('\0');
  return hash.digest('hex');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    await compile();
  } catch (error) {
    // Where only what runs is installed, a dist/ that was compiled before is all that is needed.
    const isThere = existsSync(join(DIST, MARK));
    process.stderr.write(`${error.message}${isThere ? '; dist/ is left as it was' : ''}\n`);
    process.exitCode = isThere && process.env.npm_config_omit?.includes('dev') ? 0 : 1;
  }
}
