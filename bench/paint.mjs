// First paint of the fullest demo leaflet from a file on a phone's screen, the processor slowed four times, in Chromium.
// Run after `npm run prepare`.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { pageShelf } from '#dist/build/shelf.js';
import { leafletHtml } from '#dist/page/leaflet.js';
import { startChromium } from './chromium.mjs';
import { median } from './clock.mjs';
import { tell } from './row.mjs';
import { demos, programmeOf } from './shipped.mjs';

const LIMIT_MS = 300;
const SLOWED = 4;
const ROUNDS = 9;

const assets = await pageShelf();
const leaflets = demos.map((consult) => leafletHtml(programmeOf(consult), assets));
const fullest = leaflets.reduce((one, other) => (other.length > one.length ? other : one));
const paints = await firstPaints({ fullest, empty: '<!doctype html><title>-</title><p>-' });
const what = `first paint of leaflet.html from a file, processor slowed ${SLOWED} times`;
if (paints === null) tell({ what, value: null, unit: 'ms' });
else {
  const ratio = { times: paints.fullest / paints.empty, to: 'an empty page' };
  tell({ what, value: paints.fullest, unit: 'ms', limit: LIMIT_MS, ratio });
}

/** Median of each page, shown in turn; null without a browser. */
async function firstPaints(pages) {
  const browser = await startChromium();
  if (browser === null) return null;
  const folder = mkdtempSync(join(tmpdir(), 'bench-paint-'));
  const times = {};
  for (let round = 0; round < ROUNDS; round += 1)
    for (const [name, text] of Object.entries(pages)) {
      const file = join(folder, `${name}.html`);
      writeFileSync(file, text);
      (times[name] ??= []).push(await firstPaintMs(browser, pathToFileURL(file).href));
    }
  await browser.close();
  rmSync(folder, { recursive: true });
  return Object.fromEntries(Object.entries(times).map(([name, ms]) => [name, median(ms)]));
}

/** The browser's own first contentful paint, counted from the start of the navigation. */
async function firstPaintMs(browser, address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(address);
  const time = await page.evaluate(
    () =>
      new Promise((done) => {
        new PerformanceObserver((list) => {
          const [paint] = list.getEntriesByName('first-contentful-paint');
          if (paint) done(paint.startTime);
        }).observe({ type: 'paint', buffered: true });
      }),
  );
  await context.close();
  return time;
}
