// First paint of a leaflet from a file, the processor slowed four times, in Chromium. Run after a build: give it the page.
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { resolve } from 'node:path';
import { chromium } from 'playwright-core';

const LIMIT_MS = 300;
const SLOWED = 4;
const ROUNDS = 7;
const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

const [file] = process.argv.slice(2);
if (file === undefined || !existsSync(file)) {
  console.error('Name a leaflet, for example: node bench/paint.mjs _site/private/<alias>/leaflet.html');
  process.exit(64);
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? PLACES.find((place) => existsSync(place)),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update'],
});
const times = [];
for (let round = 0; round < ROUNDS; round += 1) times.push(await firstPaint());
await browser.close();

const middle = times.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)];
console.log(
  `${middle < LIMIT_MS ? 'ok  ' : 'SLOW'} first contentful paint, processor slowed ${SLOWED} times, under ${LIMIT_MS} ms: ${middle.toFixed(0)} ms`,
);
if (middle >= LIMIT_MS) process.exitCode = 1;

async function firstPaint() {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(pathToFileURL(resolve(file)).href);
  const time = await page.evaluate(
    () =>
      new Promise((done) => {
        new PerformanceObserver((list) => {
          const entry = list.getEntriesByName('first-contentful-paint')[0];
          if (entry) done(entry.startTime);
        }).observe({ type: 'paint', buffered: true });
      }),
  );
  await context.close();
  return time;
}
