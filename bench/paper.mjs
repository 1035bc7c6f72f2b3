// The fullest leaflet as PDF: the very first of a process; in one process milliseconds a programme with other words in each,
// by the clock and of the processor, the same with every word forgotten before, and memory over 200; and warm Chromium
// printing the same leaflet. Run after `npm run prepare`.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { readPageAssets, readPaperAssets } from '#dist/shell/io/assets.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { forgetWords } from '#dist/outputs/pdf/fonts.js';
import { leafletPdf } from '#dist/outputs/pdf/leaflet.js';
import { startChromium } from './chromium.mjs';
import { median, processorMs, wallMs } from './clock.mjs';
import { program } from './command.mjs';
import { tell } from './row.mjs';
import { copiesOf, demos, programmeOf } from './shipped.mjs';

const PROGRAMMES = 200;
const PDF_LIMIT_MS = 50;
const FIRST_LIMIT_MS = 120;
const RATIO_LIMIT = 6;
const GROWTH_LIMIT_MB = 24;
const ROUNDS = 7;

const programme = demos.map((consult) => programmeOf(consult)).reduce(fuller);
const [way] = process.argv.slice(2);
if (way === 'first') process.stdout.write(String(await firstMs()));
else await measure();

/** The faces opened, and the leaflet drawn: what packages the rooms need is loaded, but nothing of them has been run. */
function firstMs() {
  return wallMs(async () => leafletPdf(programme, await readPaperAssets(null)));
}

async function measure() {
  const own = fileURLToPath(import.meta.url);
  const first = Math.min(...Array.from({ length: ROUNDS }, () => Number(program(own, ['first']))));
  tell({ what: 'the very first PDF of a process', value: first, unit: 'ms', limit: FIRST_LIMIT_MS });
  const assets = await readPaperAssets(null);
  const programmes = copiesOf([programme], PROGRAMMES + ROUNDS).map(reworded);
  await leaflets(programmes.slice(0, PROGRAMMES), assets);
  await comparedWithChromium(programmes.slice(PROGRAMMES), assets);
}

function fuller(one, other) {
  return other.exercises.length > one.exercises.length ? other : one;
}

/** Every programme once: the first half warms the memory of words, the second must not grow it. */
async function leaflets(programmes, assets) {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc');
  const heapsMb = [];
  const times = { wall: [], processor: [], forgotten: [] };
  for (const [at, one] of programmes.entries()) {
    const write = async () => times.wall.push(await wallMs(() => leafletPdf(one, assets)));
    times.processor.push(await processorMs(write));
    if (at === PROGRAMMES / 2 || at === PROGRAMMES - 1) heapsMb.push(heapMb(collect));
  }
  for (const one of programmes.slice(0, ROUNDS * 3)) {
    forgetWords(assets.fonts);
    times.forgotten.push(await wallMs(() => leafletPdf(one, assets)));
  }
  const what = `leaflet as PDF (${programme.alias})`;
  tell({ what, value: median(times.wall), unit: 'ms', limit: PDF_LIMIT_MS });
  const own = 'processor time of that, with what compiles and collects beside it';
  tell({ what: own, value: median(times.processor), unit: 'ms' });
  tell({ what: 'that with every word forgotten before', value: median(times.forgotten), unit: 'ms' });
  const growth = Math.max(0, heapsMb[1] - heapsMb[0]);
  tell({
    what: `memory grown by the second ${PROGRAMMES / 2} PDFs`,
    value: growth,
    unit: 'MB',
    limit: GROWTH_LIMIT_MB,
  });
}

/** By the wall, in turn, so that a busy minute of the machine falls on both. */
async function comparedWithChromium(programmes, assets) {
  const browser = await startChromium();
  const what = 'the same leaflet printed by warm Chromium';
  if (browser === null) return tell({ what, value: null, unit: 'ms' });
  const folder = mkdtempSync(join(tmpdir(), 'bench-paper-'));
  const file = join(folder, 'leaflet.html');
  writeFileSync(file, leafletHtml(programme, await readPageAssets()));
  const page = await browser.newPage();
  const print = async () => {
    await page.goto(pathToFileURL(file).href);
    await page.pdf({ tagged: true, preferCSSPageSize: true });
  };
  await print();
  const times = { pdf: [], chromium: [] };
  for (let round = 0; round < ROUNDS; round += 1) {
    times.pdf.push(await wallMs(() => leafletPdf(programmes[round], assets)));
    times.chromium.push(await wallMs(print));
  }
  await browser.close();
  rmSync(folder, { recursive: true });
  const [pdf, chromium] = [times.pdf, times.chromium].map(median);
  tell({ what, value: chromium, unit: 'ms' });
  tell({
    what: 'that against our PDF',
    value: chromium / pdf,
    unit: 'times',
    limit: RATIO_LIMIT,
    atLeast: true,
  });
}

/** Other words in each: no two leaflets wrap alike. */
function reworded(programme, at) {
  const word = `${at.toString(36)}ora`;
  const paragraph = (text) => `${text} ${word} ${'lmnopqrst'.slice(at % 7)}.`;
  return {
    ...programme,
    title: `${programme.title} ${word}`,
    opening: programme.opening.map(paragraph),
    exercises: programme.exercises.map((one) => ({
      ...one,
      title: `${one.title} ${word}`,
      howFar: one.howFar.map(paragraph),
    })),
    advice: programme.advice.map((card) => ({ ...card, heading: paragraph(card.heading) })),
  };
}

function heapMb(collect) {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}
