// The moving figure of an exercise on a phone's screen, the processor slowed four times, in Chromium: frames a second,
// and what the page's own thread does for each, by the clock on the wall: the best of some short windows, since other work
// on the machine only ever takes frames away. Of all that move in the demo leaflets the slowest one.
// Run after `npm run prepare`.
import { readPageAssets } from '#dist/shell/io/assets.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { startChromium } from './chromium.mjs';
import { tell } from './row.mjs';
import { demos, programmeOf } from './shipped.mjs';

const SLOWED = 4;
const FRAMES_A_SECOND = 60;
// A second of frames begins and ends between two of them.
const LEAST = FRAMES_A_SECOND - 1;
const READY_MS = 5200;
const WINDOW_MS = 600;
const WINDOWS = 8;

const assets = await readPageAssets();
const moves = `the figure moves, processor slowed ${SLOWED} times`;
const browser = await startChromium();
const measured = browser === null ? [] : await measure();
await browser?.close();
const slowest = (key, of) => (measured.length === 0 ? null : of(...measured.map((one) => one[key])));
tell({ what: moves, value: slowest('frames', Math.min), unit: 'frames/s', limit: LEAST, atLeast: true });
tell({
  what: 'the work of a frame of it',
  value: slowest('workMs', Math.max),
  unit: 'ms',
  limit: 16,
});

async function measure() {
  const all = [];
  for (const consult of demos) {
    const programme = programmeOf(consult);
    const { on } = programme.plan.find(({ sessions }) => sessions.length > 0);
    const page = await openedOn(on, leafletHtml(programme, assets));
    const cards = await page.evaluate(() =>
      Object.keys(JSON.parse(document.getElementById('sheet-in-use').textContent).moving.figures),
    );
    for (const card of cards) {
      const start = page.locator(`[data-exercise="${card}"]:not(.off) [data-pacer="start"]`);
      if ((await start.count()) > 0) all.push(await motionOf(page, start.first()));
    }
    await page.context().close();
  }
  return all;
}

/** The leaflet on one of its days; only what says the date is changed, every clock goes on. */
async function openedOn(day, text) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  await context.addInitScript((now) => {
    const Real = Date;
    globalThis.Date = class extends Real {
      constructor(...given) {
        super(...(given.length === 0 ? [now] : given));
      }
    };
  }, `${day}T09:00:00`);
  const page = await context.newPage();
  await page.setContent(text);
  await page.locator('[data-pacer="start"]').first().waitFor({ state: 'attached' });
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await session.send('Performance.enable');
  page.session = session;
  return page;
}

/** From the first repetition on. */
async function motionOf(page, start) {
  await start.click();
  await page.locator('.moving').waitFor();
  await page.waitForTimeout(READY_MS);
  const taskMs = async () => {
    const { metrics } = await page.session.send('Performance.getMetrics');
    return 1000 * metrics.find(({ name }) => name === 'TaskDuration').value;
  };
  const windows = [];
  for (let round = 0; round < WINDOWS; round += 1) windows.push(await windowOf(page, taskMs));
  return {
    frames: Math.max(...windows.map(({ frames }) => frames)),
    workMs: Math.min(...windows.map(({ workMs }) => workMs)),
  };
}

async function windowOf(page, taskMs) {
  const before = await taskMs();
  const frames = await page.evaluate(
    (ms) =>
      new Promise((done) => {
        let [count, from] = [0, null];
        requestAnimationFrame(function next(now) {
          from ??= now;
          if (now - from >= ms) done((1000 * count) / (now - from));
          else {
            count += 1;
            requestAnimationFrame(next);
          }
        });
      }),
    WINDOW_MS,
  );
  return { frames, workMs: ((await taskMs()) - before) / ((frames * WINDOW_MS) / 1000) };
}
