// The fullest leaflet as PDF, one process: milliseconds a programme with other words in each, by the clock and of the
// processor, memory over 200, and warm Chromium printing the same leaflet. Run after `npm run prepare`.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { readPageAssets, readPaperAssets } from '#dist/shell/io/assets.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { leafletPdf } from '#dist/outputs/pdf/leaflet.js';
import { startChromium } from './chromium.mjs';
import { median, processorMs, wallMs } from './clock.mjs';
import { tell } from './row.mjs';
import { copiesOf, demos, programmeOf } from './shipped.mjs';

const PROGRAMMES = 200;
const PDF_LIMIT_MS = 50;
const RATIO_LIMIT = 6;
const GROWTH_LIMIT_MB = 24;
const ROUNDS = 7;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
const assets = await readPaperAssets(null);
const programme = demos.map((consult) => programmeOf(consult)).reduce(fuller);
const programmes = copiesOf([programme], PROGRAMMES + ROUNDS).map(reworded);

await leaflets();
await comparedWithChromium();

function fuller(one, other) {
  return other.exercises.length > one.exercises.length ? other : one;
}

/** Every programme once: the first half warms the memory of words, the second must not grow it. */
async function leaflets() {
  const heapsMb = [];
  const times = { wall: [], processor: [] };
  for (let at = 0; at < PROGRAMMES; at += 1) {
    const write = async () => times.wall.push(await wallMs(() => leafletPdf(programmes[at], assets)));
    times.processor.push(await processorMs(write));
    if (at === PROGRAMMES / 2 || at === PROGRAMMES - 1) heapsMb.push(heapMb());
  }
  const what = `leaflet as PDF (${programme.alias})`;
  tell({ what, value: median(times.wall), unit: 'ms', limit: PDF_LIMIT_MS });
  const own = 'processor time of that, with what compiles and collects beside it';
  tell({ what: own, value: median(times.processor), unit: 'ms' });
  const growth = Math.max(0, heapsMb[1] - heapsMb[0]);
  tell({
    what: `memory grown by the second ${PROGRAMMES / 2} PDFs`,
    value: growth,
    unit: 'MB',
    limit: GROWTH_LIMIT_MB,
  });
}

/** By the wall, in turn, so that a busy minute of the machine falls on both. */
async function comparedWithChromium() {
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
    times.pdf.push(await wallMs(() => leafletPdf(programmes[PROGRAMMES + round], assets)));
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

function heapMb() {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}
