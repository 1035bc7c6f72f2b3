// 200 programmes as pages: Eleventy against a plain writer of the same bytes, whole processes. Run after `npm run prepare`.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';

const PROGRAMMES = 200;
const ROUNDS = 5;
const RATIO_LIMIT = 2.5;
const PAGE_LIMIT_MS = 15;

const [way] = process.argv.slice(2);
if (way === undefined) await compare();
else await write(way);

async function compare() {
  const walls = { plain: [], eleventy: [] };
  const perPage = [];
  // Interleaved, so that a busy minute of the machine falls on both.
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [name, times] of Object.entries(walls)) {
      const start = performance.now();
      const { status, stdout, stderr } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), name]);
      if (status !== 0) throw new Error(String(stderr));
      times.push(performance.now() - start);
      if (name === 'plain') perPage.push(Number(stdout));
    }
  }
  const [plain, eleventy, page] = [walls.plain, walls.eleventy, perPage].map(median);
  report(`${PROGRAMMES} programmes, plain writer`, `${plain.toFixed(0)} ms`, true);
  report(`${PROGRAMMES} programmes, Eleventy`, `${eleventy.toFixed(0)} ms`, true);
  report(`ratio, at most ${RATIO_LIMIT}`, (eleventy / plain).toFixed(2), eleventy / plain <= RATIO_LIMIT);
  report(
    `leaflet and record, a page, under ${PAGE_LIMIT_MS} ms`,
    `${page.toFixed(2)} ms`,
    page < PAGE_LIMIT_MS,
  );
}

// One process: render all pages the given way and write them; prints the milliseconds a page of the rendering.
async function write(name) {
  const { pageShelf, TEMPLATES } = await import('#dist/build/shelf.js');
  const { programmePages, renderPages } = await import('#dist/page/site.js');
  const programmes = await manyProgrammes();
  const assets = await pageShelf();
  const start = performance.now();
  const pages =
    name === 'plain'
      ? programmes.flatMap((one) => programmePages(one, assets))
      : await renderPages(programmes, null, assets, TEMPLATES);
  process.stdout.write(String((performance.now() - start) / pages.length));
  const out = mkdtempSync(join(tmpdir(), 'bench-page-'));
  for (const { path, content } of pages) {
    mkdirSync(dirname(join(out, path)), { recursive: true });
    writeFileSync(join(out, path), content);
  }
  rmSync(out, { recursive: true });
}

/** The tests' invented programme under 200 aliases; its TypeScript is stripped here, since a bench runs on compiled code. */
async function manyProgrammes() {
  const { default: ts } = await import('typescript');
  const source = readFileSync(new URL('../tests/fixtures/programme.ts', import.meta.url), 'utf8');
  const { outputText } = ts.transpileModule(source, {
    compilerOptions: { target: 'es2023', module: 'esnext', verbatimModuleSyntax: true },
  });
  const compiled = new URL(`../dist/bench-programme-${process.pid}.mjs`, import.meta.url);
  writeFileSync(compiled, outputText.replaceAll(/'\.\.\/\.\.\/src\/([^']+)\.ts'/g, "'#dist/$1.js'"));
  try {
    const { otter } = await import(compiled.href);
    return Array.from({ length: PROGRAMMES }, (_, at) => ({ ...otter, alias: `otter-${at}` }));
  } finally {
    rmSync(compiled);
  }
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function report(what, value, good) {
  console.log(`${good ? 'ok  ' : 'SLOW'} ${what}: ${value}`);
  if (!good) process.exitCode = 1;
}
