// Leaflets as PDF, one process: milliseconds a programme, memory over 200, and warm Chromium printing the same leaflet.
// Run after `npm run prepare`.
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

const PROGRAMMES = 200;
const PDF_LIMIT_MS = 50;
const RATIO_LIMIT = 6;
const GROWTH_LIMIT_MB = 24;
const ROUNDS = 7;
const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');

const { leafletPdf } = await import('#dist/paper/leaflet.js');
const { paperShelf } = await import('#dist/build/shelf.js');
const shelf = await paperShelf(null);
const programmes = await manyProgrammes();

await leaflets();
const pdfMs = await comparedWithChromium();
report(
  `leaflet as PDF, one process, under ${PDF_LIMIT_MS} ms`,
  `${pdfMs.toFixed(1)} ms`,
  pdfMs < PDF_LIMIT_MS,
);

/** Every programme once: the first half warms the memory of words, the second must not grow it. */
async function leaflets() {
  const heaps = [];
  let bytes = 0;
  for (const [at, programme] of programmes.entries()) {
    bytes += (await leafletPdf(programme, shelf)).length;
    if (at % (PROGRAMMES / 4) === PROGRAMMES / 4 - 1) heaps.push(heapMb());
  }
  const growth = heaps.at(-1) - heaps[1];
  const told = heaps.map((heap) => heap.toFixed(0)).join(', ');
  report(
    `${PROGRAMMES} leaflets of ${(bytes / PROGRAMMES / 1024).toFixed(0)} KB`,
    `heap ${told} MB`,
    growth < GROWTH_LIMIT_MB,
  );
}

/** Medians of interleaved rounds, so that a busy minute of the machine falls on both. */
async function comparedWithChromium() {
  const browser = await startChromium();
  const times = { pdf: [], chromium: [] };
  for (let round = 0; round < ROUNDS; round += 1) {
    times.pdf.push(await pdfMsOf(programmes.slice(round * 8, round * 8 + 8)));
    if (browser) times.chromium.push(await browser.printMs());
  }
  await browser?.close();
  const pdf = median(times.pdf);
  if (!browser) report('warm Chromium', 'not installed, ratio not measured', true);
  else {
    const chromium = median(times.chromium);
    const ratio = chromium / pdf;
    report(
      `warm Chromium prints the same leaflet in ${chromium.toFixed(0)} ms, at least ${RATIO_LIMIT} times`,
      ratio.toFixed(1),
      ratio >= RATIO_LIMIT,
    );
  }
  return pdf;
}

async function pdfMsOf(some) {
  const start = performance.now();
  for (const programme of some) await leafletPdf(programme, shelf);
  return (performance.now() - start) / some.length;
}

async function startChromium() {
  const executablePath = process.env.CHROMIUM ?? PLACES.find((place) => existsSync(place));
  if (executablePath === undefined) return null;
  const [{ chromium }, { leafletHtml }, { pageShelf }] = await Promise.all([
    import('playwright-core'),
    import('#dist/page/leaflet.js'),
    import('#dist/build/shelf.js'),
  ]);
  const html = new URL(`../dist/bench-paper-${process.pid}.html`, import.meta.url);
  writeFileSync(html, leafletHtml(programmes[0], await pageShelf()));
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const page = await browser.newPage();
  const printMs = async () => {
    const start = performance.now();
    await page.goto(html.href);
    await page.pdf({ tagged: true, preferCSSPageSize: true });
    return performance.now() - start;
  };
  await printMs();
  return {
    printMs,
    close: async () => {
      await browser.close();
      rmSync(html);
    },
  };
}

/** The tests' invented programme with other words in each: no two leaflets wrap alike. */
async function manyProgrammes() {
  const { default: ts } = await import('typescript');
  const source = readFileSync(new URL('../tests/fixtures/programme.ts', import.meta.url), 'utf8');
  const { outputText } = ts.transpileModule(source, {
    compilerOptions: { target: 'es2023', module: 'esnext', verbatimModuleSyntax: true },
  });
  const compiled = new URL(`../dist/bench-paper-${process.pid}.mjs`, import.meta.url);
  writeFileSync(compiled, outputText.replaceAll(/'\.\.\/\.\.\/src\/([^']+)\.ts'/g, "'#dist/$1.js'"));
  try {
    const { otter } = await import(compiled.href);
    return Array.from({ length: PROGRAMMES }, (_, at) => varied(otter, at));
  } finally {
    rmSync(compiled);
  }
}

function varied(programme, at) {
  const word = `${at.toString(36)}ora`;
  const paragraph = (text) => `${text} ${word} ${'lmnopqrst'.slice(at % 7)}.`;
  return {
    ...programme,
    alias: `otter-${at}`,
    title: `Home exercises for otter ${at}`,
    opening: programme.opening.map(paragraph),
    exercises: programme.exercises.map((one) => ({
      ...one,
      title: `${one.title} ${word}`,
      howFar: one.howFar.map(paragraph),
    })),
    advice: programme.advice.map((card) => ({ ...card, heading: paragraph(card.heading) })),
  };
}

function heapMb() {
  collect();
  return process.memoryUsage().heapUsed / 1024 / 1024;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function report(what, value, good) {
  console.log(`${good ? 'ok  ' : 'SLOW'} ${what}: ${value}`);
  if (!good) process.exitCode = 1;
}
