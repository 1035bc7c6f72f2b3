// The whole program as one file with what it needs, so that to start it one file is opened and not seven hundred; and what
// the engine makes of that file, so that it need not compile it each time. Packages seldom needed stay where they are.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { build } from 'esbuild';
import { UNASKED } from './bundle.mjs';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
/** As deep as the rooms of the shell, which find the top of the package by the same way. */
const PROGRAM = join('program', 'whole', 'loadleaf.cjs');
const ON_DEMAND = ['@11ty/eleventy', 'sharp'];

/** Writes the program beside the rooms it is made of. `dist`: the compiled folder, in the top of the package. */
export async function bundleProgram(dist) {
  const { warnings, outputFiles } = await build({
    ...UNASKED,
    entryPoints: [join(dist, 'shell', 'program.js')],
    outfile: join(dist, PROGRAM),
    write: false,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20.19',
    external: ON_DEMAND,
    // The file is CommonJS, which knows its own place by another name.
    define: { 'import.meta.url': 'placeOfProgram' },
    banner: { js: "const placeOfProgram = require('node:url').pathToFileURL(__filename).href;" },
    minifySyntax: true,
    minifyWhitespace: true,
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'silent',
  });
  if (warnings.length > 0) throw new Error(`bundling the program: ${warnings[0].text}`);
  mkdirSync(join(dist, dirname(PROGRAM)), { recursive: true });
  writeFileSync(join(dist, PROGRAM), inAscii(withImporter(outputFiles[0].text)));
}

// Code that the engine kept has forgotten how to import: whoever starts it does that for it.
function withImporter(code) {
  return ON_DEMAND.reduce((text, name) => {
    const call = `import("${name}")`;
    if (!text.includes(call)) throw new Error(`the program imports no ${name} when it is needed`);
    return text.replaceAll(call, `importOnDemand("${name}")`);
  }, code);
}

// Every thread keeps the text of its program: with one letter beyond these it would take two bytes for each, 3 MB more. What
// esbuild leaves stands in patterns and in templates, where the escape is the letter.
function inAscii(code) {
  return code.replace(/[^\0-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** Keeps what the engine made of the program when it had built the demo. In a process of its own, with the flags of the program. */
export function keepMade() {
  const { status, stderr } = spawnSync(process.execPath, [fileURLToPath(import.meta.url)], { cwd: TOP });
  if (status !== 0)
    throw new Error(`building the demo to keep its code failed: ${String(stderr).slice(-1000)}`);
}

// Without the hash before it: dist/ is as it was made, or there is nothing to trust at all.
function keepLibrary(kept) {
  writeFileSync(join(TOP, 'dist', 'program', 'library.bin'), readFileSync(kept).subarray(64));
}

/** What the two printed faces do with letters side by side. */
async function keepLetters() {
  const [{ create }, { letterPairsOf }, { printedFaces }] = await Promise.all([
    import('fontkit'),
    import('../dist/outputs/pdf/letterPairs.js'),
    import('../dist/shell/io/assets.js'),
  ]);
  const pairs = Object.entries(printedFaces()).map(([cut, bytes]) => [cut, letterPairsOf(create(bytes))]);
  writeFileSync(join(TOP, 'dist', 'program', 'letters.json'), JSON.stringify(Object.fromEntries(pairs)));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  setFlagsFromString('--heap-growing-percent=60');
  const { wholeProgram } = await import('../dist/shell/whole.js');
  const whole = wholeProgram();
  await keepLetters();
  const folder = mkdtempSync(join(tmpdir(), 'loadleaf-made-'));
  const words = ['build', '--quiet', '--content', join(TOP, 'content'), '--out', join(folder, 'site')];
  const { program } = whole.load();
  await program([...words, 'otter', 'heron', 'marten']);
  await program(words);
  await program(words);
  if (process.exitCode) throw new Error('the demo has errors');
  writeFileSync(whole.place, whole.made());
  keepLibrary(join(folder, '.site.loadleaf-cache', 'library.bin'));
  rmSync(folder, { recursive: true });
}
