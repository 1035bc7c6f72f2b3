// First paint of the fullest demo leaflet from a file on a phone's screen, the processor slowed four times, in Chromium;
// and when its title and next session are drawn, for a first paint may be of something else.
// Run after `npm run prepare`.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { readPageAssets } from '#dist/shell/io/assets.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { startChromium } from './chromium.mjs';
import { median } from './clock.mjs';
import { tell } from './row.mjs';
import { demos, programmeOf } from './shipped.mjs';

const LIMIT_MS = 300;
const SLOWED = 4;
const ROUNDS = 9;

const assets = await readPageAssets();
const leaflets = demos.map((consult) => leafletHtml(programmeOf(consult), assets));
const fullest = leaflets.reduce((one, other) => (other.length > one.length ? other : one));
const empty = '<!doctype html><title>-</title><h1>-</h1><h2>-</h2>';
const paints = await firstPaints({ fullest: timed(fullest), empty: timed(empty) });
const what = `first paint of leaflet.html from a file, processor slowed ${SLOWED} times`;
for (const [name, key] of [
  [what, 'paint'],
  ['its title and next session drawn', 'headings'],
])
  if (paints === null) tell({ what: name, value: null, unit: 'ms' });
  else {
    const ratio = { times: paints.fullest[key] / paints.empty[key], to: 'an empty page' };
    tell({ what: name, value: paints.fullest[key], unit: 'ms', limit: LIMIT_MS, ratio });
  }

/** The page with its first two headings named to the browser's clock (Element Timing). */
function timed(page) {
  return page.replace('<h1', '<h1 elementtiming="h1"').replace('<h2', '<h2 elementtiming="h2"');
}

/** On screen the second heading of a leaflet is that of the day, which its script puts there. */
function nameToday() {
  new MutationObserver(() =>
    document.getElementById('today-heading')?.setAttribute('elementtiming', 'h2'),
  ).observe(document, { childList: true, subtree: true });
}

/** Medians of each page, shown in turn; null without a browser. */
async function firstPaints(pages) {
  const browser = await startChromium();
  if (browser === null) return null;
  const folder = mkdtempSync(join(tmpdir(), 'bench-paint-'));
  const times = {};
  for (let round = 0; round < ROUNDS; round += 1)
    for (const [name, text] of Object.entries(pages)) {
      const file = join(folder, `${name}.html`);
      writeFileSync(file, text);
      (times[name] ??= []).push(await paintsMs(browser, pathToFileURL(file).href));
    }
  await browser.close();
  rmSync(folder, { recursive: true });
  const medians = (all) => ({
    paint: median(all.map(({ paint }) => paint)),
    headings: median(all.map(({ headings }) => headings)),
  });
  return Object.fromEntries(Object.entries(times).map(([name, all]) => [name, medians(all)]));
}

/** The browser's own first contentful paint and that of the headings, counted from the start of the navigation. */
async function paintsMs(browser, address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  await context.addInitScript(nameToday);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(address);
  const times = await page.evaluate(
    () =>
      new Promise((done) => {
        const seen = new Map();
        const observer = new PerformanceObserver((list) => {
          for (const { name, identifier, startTime } of list.getEntries())
            seen.set(identifier ?? name, startTime);
          const [paint, ...headings] = ['first-contentful-paint', 'h1', 'h2'].map((one) => seen.get(one));
          if (paint && headings.every(Boolean)) done({ paint, headings: Math.max(...headings) });
        });
        for (const type of ['paint', 'element']) observer.observe({ type, buffered: true });
      }),
  );
  await context.close();
  return times;
}
